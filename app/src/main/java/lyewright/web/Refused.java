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
    private final boolean ofOurPages;
    private final transient @Nullable Elsewhere elsewhere;
    private final transient @Nullable Door door;

    /**
     * Where to be let in.
     *
     * @param label of the link
     * @param address of the page that asks who one is
     */
    public record Door(String label, String address) {}

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
        this(status, what, remedy, status != 403 && status != 405 && status != 421, null, null);
    }

    private Refused(
            int status,
            String what,
            String remedy,
            boolean ofOurPages,
            @Nullable Elsewhere elsewhere,
            @Nullable Door door) {
        super(what, null, false, false);
        this.status = status;
        this.ofOurPages = ofOurPages;
        this.remedy = remedy;
        this.elsewhere = elsewhere;
        this.door = door;
    }

    /** What is asked for is not here. */
    public static Refused notHere(String what, String remedy) {
        return new Refused(404, what, remedy);
    }

    /** What is asked for is not for whoever asks. */
    public static Refused notTheirs(String what, String remedy) {
        return new Refused(403, what, remedy, true, null, null);
    }

    /** Whoever asks is not let in. What they sent is given back where it was read. */
    static Refused stranger(String what, String remedy, boolean isRead, Door door) {
        return new Refused(401, what, remedy, isRead, null, door);
    }

    /** What was sent is not even read. */
    static Refused unread(int status, String what, String remedy) {
        return new Refused(status, what, remedy, false, null, null);
    }

    static Refused elsewhere(String what, String workshop, boolean demo) {
        return new Refused(404, what, "", true, new Elsewhere(workshop, demo), null);
    }

    Optional<Elsewhere> elsewhere() {
        return Optional.ofNullable(elsewhere);
    }

    Optional<Door> door() {
        return Optional.ofNullable(door);
    }

    /** Whether it was sent from one of our own pages, as far as was looked. */
    boolean isOfOurPages() {
        return ofOurPages;
    }

    /** Whether the same form may be taken next time: without what no text has, or from a device that was let in meanwhile. */
    boolean isWorthAnotherTry() {
        return status == 400 || status == 401;
    }

    int status() {
        return status;
    }

    String remedy() {
        return remedy;
    }
}
