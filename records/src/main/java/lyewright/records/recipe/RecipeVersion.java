package lyewright.records.recipe;

import java.time.Instant;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;

/**
 * One version of a recipe.
 *
 * @param recipeId the recipe's id
 * @param number its number, from 1
 * @param text its formula file
 * @param why why it was saved, perhaps empty
 * @param savedAt when it was saved last
 * @param madeAt when a batch was first made from it; from then on it is never altered
 */
public record RecipeVersion(
        String recipeId, int number, String text, String why, Instant savedAt, Optional<Instant> madeAt) {

    /** The formula that its text says. */
    public Formula formula() {
        FormulaFile.Read read = FormulaFile.read(text);
        return read.formula()
                .orElseThrow(() -> new IllegalStateException("version " + number + " of recipe " + recipeId
                        + " does not read: " + read.problems().get(0).sentence()));
    }
}
