package lyewright.web.ledger;

import java.util.List;
import java.util.Optional;
import lyewright.web.Frame;
import lyewright.web.TextField;

/**
 * The page of the ledger.
 *
 * @param frame around it
 * @param head as it is printed; empty where nothing was written yet
 * @param count how many entries
 * @param field for a head that is held on paper
 * @param said what verifying found, where that was asked for
 * @param lines entries, the newest first
 * @param newer where newer ones are; empty where these are the newest
 * @param older where older ones are; empty where these are the oldest
 */
public record LedgerPage(
        Frame frame,
        String head,
        long count,
        TextField field,
        Optional<Said> said,
        List<Line> lines,
        String newer,
        String older) {

    /** Copies its list. */
    public LedgerPage {
        lines = List.copyOf(lines);
    }

    /** How many there are, in words. */
    public String entries() {
        return count == 1 ? "1 entry" : count + " entries";
    }

    /**
     * What verifying found.
     *
     * @param whole whether all is as it was written
     * @param sentence that, in a sentence
     * @param held what the head on paper says to it, or what is hidden without one
     * @param findings what is not as it was written
     * @param more how many there are beyond those
     * @param looked what was looked at beside the entries, and how far
     */
    public record Said(
            boolean whole, String sentence, String held, List<String> findings, long more, List<String> looked) {

        /** Copies its lists. */
        public Said {
            findings = List.copyOf(findings);
            looked = List.copyOf(looked);
        }
    }

    /**
     * One entry.
     *
     * @param number its number
     * @param when it was written
     * @param who wrote it
     * @param what it tells
     * @param address of what it tells of; empty where there is no page
     */
    public record Line(long number, String when, String who, String what, String address) {}
}
