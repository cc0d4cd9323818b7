package lyewright.web.why;

import java.util.function.UnaryOperator;
import lyewright.makingsheet.MakingSheet;
import lyewright.web.make.MakeChoice;

/**
 * Whose figures are asked about.
 *
 * @param recipe the recipe's name
 * @param version which version
 * @param choice what is made of it; without mould or amount it is the recipe alone
 * @param back where its figures stand
 * @param sheet the sheet that they are of
 * @param why where a figure of that sheet says why, by its path
 */
public record WhyAsked(
        String recipe, int version, MakeChoice choice, String back, MakingSheet sheet, UnaryOperator<String> why) {

    /** What the figures are of. */
    public String basis() {
        return choice.asksForASheet()
                ? ""
                : "Of the recipe alone: in its own masses, or for a kilogram of oils where it is in percent.";
    }
}
