package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;

/**
 * What the lines of a delivery became.
 *
 * @param frame around it
 * @param lines as they stood on the form
 */
public record ReceivedPage(Frame frame, List<Line> lines) {

    /** Copies its list. */
    public ReceivedPage {
        lines = List.copyOf(lines);
    }

    /**
     * One lot.
     *
     * @param code its own code, which is written on the jar
     * @param address its page
     * @param amount how much came
     * @param item what it is a lot of
     * @param recipes what recipes call that, as a sentence goes on
     * @param says what else is said of it
     */
    public record Line(String code, String address, String amount, String item, String recipes, String says) {}
}
