package lyewright.web.make;

import java.util.List;
import lyewright.records.recipe.Page;
import lyewright.records.recipe.RecipeSummary;
import lyewright.web.Frame;

/**
 * The page on which a recipe is picked.
 *
 * @param frame around it
 * @param found what was looked for, and the recipes that it is found in
 */
public record PickPage(Frame frame, Found found) {

    /**
     * Recipes that were found.
     *
     * @param words that were looked for
     * @param recipes by name
     */
    public record Found(String words, Page<RecipeSummary> recipes) {

        /** The recipes that are shown. */
        public List<RecipeSummary> shown() {
            return recipes.items();
        }

        /** How many more there are. */
        public long more() {
            return recipes.total() - recipes.items().size();
        }
    }
}
