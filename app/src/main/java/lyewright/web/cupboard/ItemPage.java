package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;

/**
 * A stocked material, with its lots.
 *
 * @param frame around it
 * @param name what it is called
 * @param edit where it is changed
 * @param more where more of it is received
 * @param left how much may be used
 * @param low whether it should be bought
 * @param facts what is said of it
 * @param alike what is easily taken for it
 * @param lots all that hold something, in the order they are used up
 * @param gone lots that are used up, the newest first
 * @param remove where it is taken out of the cupboard; empty while it has lots that hold something
 */
public record ItemPage(
        Frame frame,
        String name,
        String edit,
        String more,
        String left,
        boolean low,
        List<Fact> facts,
        Alike alike,
        List<LotLine> lots,
        List<LotLine> gone,
        String remove) {

    /** Copies its lists. */
    public ItemPage {
        facts = List.copyOf(facts);
        lots = List.copyOf(lots);
        gone = List.copyOf(gone);
    }

    /**
     * Something said of it.
     *
     * @param what what it is
     * @param says what it says
     */
    public record Fact(String what, String says) {}

    /**
     * A lot.
     *
     * @param code its own code
     * @param address its page
     * @param left what it holds
     * @param level that as a share of what came, percent
     * @param from from whom, and which of their lots
     * @param bestBefore its last day, or that nobody said
     * @param state what keeps it from being used, or empty
     */
    public record LotLine(
            String code, String address, String left, int level, String from, String bestBefore, String state) {}
}
