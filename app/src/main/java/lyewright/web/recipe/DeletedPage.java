package lyewright.web.recipe;

import java.util.List;
import lyewright.web.Frame;

/**
 * Recipes that were deleted.
 *
 * @param frame around it
 * @param recipes the one deleted last first
 * @param pager which page
 */
public record DeletedPage(Frame frame, List<Line> recipes, ListPage.Pager pager) {

    /** Copies its list. */
    public DeletedPage {
        recipes = List.copyOf(recipes);
    }

    /**
     * One of them.
     *
     * @param id the recipe's
     * @param name its name
     * @param version its newest version's number
     * @param deleted when, as a date
     */
    public record Line(String id, String name, int version, String deleted) {}
}
