package lyewright.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A request that gets a page saying why instead of what it asked for. An exception because it ends the handling of the
 * request wherever that stands; what a person typed into a form is answered by that form instead.
 */
public final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final String remedy;
    private final transient @Nullable Elsewhere elsewhere;

    /**
     * Where it is instead: in the other workshop.
     *
     * @param workshop which, as in a sentence
     * @param demo whether that is the demo workshop
     */
    record Elsewhere(String workshop, boolean demo) {}

    /**
     * A refusal.
     *
     * @param status of HTTP
     * @param what what is wrong, a sentence
     * @param remedy what to do, a sentence
     */
    public Refused(int status, String what, String remedy) {
        this(status, what, remedy, null);
    }

    private Refused(int status, String what, String remedy, @Nullable Elsewhere elsewhere) {
        super(what, null, false, false);
        this.status = status;
        this.remedy = remedy;
        this.elsewhere = elsewhere;
    }

    /** What is asked for is not here. */
    public static Refused notHere(String what, String remedy) {
        return new Refused(404, what, remedy);
    }

    static Refused elsewhere(String what, String workshop, boolean demo) {
        return new Refused(404, what, "", new Elsewhere(workshop, demo));
    }

    Optional<Elsewhere> elsewhere() {
        return Optional.ofNullable(elsewhere);
    }

    /** Whether it was sent from one of our own pages, as far as was looked. */
    boolean isOfOurPages() {
        return status != 403 && status != 405 && status != 421;
    }

    /** Whether the same form, without what no text has, may be taken next time. */
    boolean isWorthAnotherTry() {
        return status == 400;
    }

    int status() {
        return status;
    }

    String remedy() {
        return remedy;
    }
}
