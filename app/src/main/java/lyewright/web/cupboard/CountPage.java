package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;
import lyewright.web.TextField;

/**
 * Counting the cupboard.
 *
 * @param frame around it
 * @param token tells this count from any other
 * @param lines every lot that holds something by the book, and those that were looked for
 * @param found the material of which emptied lots were looked for; empty where none was
 * @param nothing what is said where there is no such lot; else empty
 * @param count how many things are wrong
 * @param troubles those that belong to no field
 */
public record CountPage(
        Frame frame, String token, List<Line> lines, String found, String nothing, int count, List<String> troubles) {

    /** Copies its lists. */
    public CountPage {
        lines = List.copyOf(lines);
        troubles = List.copyOf(troubles);
    }

    /**
     * A lot.
     *
     * @param called the field's name that carries what it is called
     * @param item what it is a lot of
     * @param code its own code
     * @param book what it holds by the book
     * @param counted what there is
     * @param why what explains the difference
     */
    public record Line(String called, String item, String code, String book, TextField counted, TextField why) {}
}
