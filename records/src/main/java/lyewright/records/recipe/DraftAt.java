package lyewright.records.recipe;

/**
 * A draft at one moment, as the window knows it that saves it.
 *
 * @param id its id
 * @param revision the revision the window saw last
 */
public record DraftAt(String id, int revision) {}
