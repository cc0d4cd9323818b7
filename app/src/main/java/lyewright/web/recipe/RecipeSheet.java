package lyewright.web.recipe;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.records.setting.Workshop;
import lyewright.web.Shop;
import lyewright.words.UnitsShown;

/**
 * The sheet that a recipe's page is about, and what asks why one of its figures is what it is: as written where the oils are
 * masses, else for a kilogram of oils; on the workshop's balances, of its alkali.
 */
public final class RecipeSheet {

    private static final double KILOGRAM = 1000;

    private RecipeSheet() {}

    /**
     * Makes it.
     *
     * @param formula of a version
     * @param shop whose balances and alkali it is made with
     * @return the sheet, or why there is none
     */
    public static Outcome<MakingSheet> of(Formula formula, Shop shop) {
        return ResolvedFormula.of(formula, Tables.bundled(), purities(shop.workshop()))
                .then(resolved -> MakingSheet.of(
                        resolved,
                        formula.inMasses() ? Fill.AS_WRITTEN : Fill.oilMass(KILOGRAM),
                        shop.records().equipment().equipment()));
    }

    /** How pure a workshop's alkali is; what is not set, or does not read, is assumed. */
    public static Purities purities(Workshop workshop) {
        String sodium = workshop.sodiumPurity().map(text -> "naoh=" + text).orElse("");
        String potassium = workshop.potassiumPurity().map(text -> "koh=" + text).orElse("");
        String both = sodium.isEmpty() || potassium.isEmpty() ? sodium + potassium : sodium + "," + potassium;
        return both.isEmpty() || !(Purities.parse(both) instanceof Outcome.Ok<Purities> ok)
                ? Purities.ASSUMED
                : ok.value();
    }

    /** For how much it is. */
    static String basis(MakingSheet sheet, UnitsShown units) {
        return sheet.fill().target() instanceof Fill.AsWritten
                ? "as written: " + units.about(sheet.totals().oils()) + " of oils"
                : "for " + units.kilogram() + " of oils";
    }

    /**
     * Where it says why a figure of this sheet is what it is.
     *
     * @param recipeId the recipe
     * @param version which version of it
     * @param figure its path
     * @return the address
     */
    static String why(String recipeId, int version, String figure) {
        return "/why?recipe=" + encoded(recipeId) + "&version=" + version + "&figure=" + encoded(figure);
    }

    /**
     * A version of a recipe.
     *
     * @param recipeId whose
     * @param number which
     */
    record Version(String recipeId, int number) {}

    /** Where it says why a row of a comparison changes as it does. */
    static String whyItChanges(Version a, Version b, String row) {
        return "/why/change?a=" + encoded(a.recipeId()) + "&of-a=" + a.number() + "&b=" + encoded(b.recipeId())
                + "&of-b=" + b.number() + "&figure=" + encoded(row);
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
