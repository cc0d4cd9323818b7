package lyewright.web.csv;

import java.util.List;
import lyewright.web.Frame;

/**
 * Where a file is chosen or pasted, and everything is written out.
 *
 * @param frame around it
 * @param text as pasted
 * @param troubles what is wrong with what was sent
 * @param outs the files that can be had
 */
public record CsvPage(Frame frame, String text, List<String> troubles, List<Out> outs) {

    /** Copies its lists. */
    public CsvPage {
        troubles = List.copyOf(troubles);
        outs = List.copyOf(outs);
    }

    /**
     * A file that can be had.
     *
     * @param name its name
     * @param holds what is in it
     */
    public record Out(String name, String holds) {}
}
