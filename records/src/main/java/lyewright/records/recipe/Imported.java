package lyewright.records.recipe;

/**
 * What became of an imported formula.
 *
 * @param version the version that holds it now
 * @param what how it got there
 */
public record Imported(RecipeVersion version, What what) {

    /** How a formula got where it is. */
    public enum What {
        /** There was no recipe of its name. */
        NEW_RECIPE,
        /** There was: it became the next version. */
        NEXT_VERSION,
        /** It was kept already; nothing was written. */
        ALREADY_KEPT
    }
}
