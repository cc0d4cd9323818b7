package lyewright.web.cupboard;

import java.util.List;
import lyewright.records.file.DocumentFiles;
import lyewright.web.TextField;
import lyewright.words.FileSizes;

/**
 * The documents of a lot, as a part of its page.
 *
 * @param address where a new one is sent
 * @param there those that the lot has, the newest first
 * @param takenOff those that were taken off it
 * @param name field for what a new one is called
 * @param others which other lots came with it; empty where none did
 * @param forAll whether a new one is for those too
 * @param troubles what is wrong with the one that was sent, or with taking one off
 */
public record DocumentsPart(
        String address,
        List<Line> there,
        List<Line> takenOff,
        TextField name,
        String others,
        boolean forAll,
        List<String> troubles) {

    /** The largest document that is kept, in words. */
    public static final String LARGEST = FileSizes.said(DocumentFiles.LARGEST);

    /** Copies its lists. */
    public DocumentsPart {
        there = List.copyOf(there);
        takenOff = List.copyOf(takenOff);
        troubles = List.copyOf(troubles);
    }

    /**
     * One of them.
     *
     * @param name what it is called
     * @param says what it is and how long
     * @param when the day and the time that it was put there, or taken off
     * @param who did that
     * @param number the entry of the ledger that tells of it
     * @param address where it is opened; empty where its file has gone
     * @param digest of its bytes
     * @param why why it was taken off, or empty
     */
    public record Line(
            String name,
            String says,
            String when,
            String who,
            long number,
            String address,
            String digest,
            String why) {}
}
