package lyewright.records.recipe;

/** What became of a draft that was to be kept. */
public sealed interface Kept {

    /**
     * It is kept.
     *
     * @param revision its new revision
     */
    record Saved(int revision) implements Kept {}

    /**
     * Another window kept it meanwhile; nothing was written.
     *
     * @param theirs what that window kept
     */
    record Conflict(Draft theirs) implements Kept {}

    /** It is there no more: another window saved it as a version, or threw it away. Nothing was written. */
    record Gone() implements Kept {}
}
