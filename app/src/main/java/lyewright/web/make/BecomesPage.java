package lyewright.web.make;

import lyewright.web.Frame;
import lyewright.web.recipe.BarShown;

/**
 * What a sheet's batch becomes, on a page of its own.
 *
 * @param frame around it
 * @param recipe the recipe's name
 * @param version which version
 * @param back the sheet
 * @param bar what it becomes
 */
public record BecomesPage(Frame frame, String recipe, int version, String back, BarShown bar) {}
