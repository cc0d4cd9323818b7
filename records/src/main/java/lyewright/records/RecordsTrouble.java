package lyewright.records;

import lyewright.measure.Problem;
import org.jspecify.annotations.Nullable;

/**
 * The records could not be read or written just now, for a reason that lies outside the application: no room, no permission,
 * another program in the way. Nothing was half written. It carries what to tell the person in front of the screen.
 */
public final class RecordsTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String what;
    private final String remedy;

    /**
     * A trouble.
     *
     * @param what what is wrong, one clause
     * @param remedy what to do about it, one clause
     * @param cause what the database or the system said; null where it did not notice
     */
    public RecordsTrouble(String what, String remedy, @Nullable Throwable cause) {
        super(what + "; " + remedy, cause);
        this.what = what;
        this.remedy = remedy;
    }

    /** As a problem of the whole. */
    public Problem problem() {
        return new Problem("", what, remedy);
    }

    /** What is wrong and what to do, for a person. */
    public String sentence() {
        return problem().sentence();
    }
}
