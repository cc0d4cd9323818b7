package lyewright.web;

/**
 * A request that gets a page saying why instead of what it asked for. An exception because it ends the handling of the
 * request wherever that stands; what a person typed into a form is answered by that form instead.
 */
public final class Refused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int status;
    private final String remedy;

    /**
     * A refusal.
     *
     * @param status of HTTP
     * @param what what is wrong, a sentence
     * @param remedy what to do, a sentence
     */
    public Refused(int status, String what, String remedy) {
        super(what, null, false, false);
        this.status = status;
        this.remedy = remedy;
    }

    /** What is asked for is not here. */
    public static Refused notHere(String what, String remedy) {
        return new Refused(404, what, remedy);
    }

    int status() {
        return status;
    }

    String remedy() {
        return remedy;
    }
}
