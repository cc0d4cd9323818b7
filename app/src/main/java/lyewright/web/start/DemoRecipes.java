package lyewright.web.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.RecipeVersion;

/** The demo workshop's recipes, each version with why it was made; their formulas lie beside this class as files. */
enum DemoRecipes {
    PLAIN_CASTILE("plain-castile"),
    TIDELINE(
            "tideline",
            "Version 1 was harsh after a week of use, and it broke at the cut. Less salt and more superfat.",
            "Northquay sent a certificate with the olive oil, so its own figure is in. The clay goes into two fifths only,"
                    + " for a fade."),
    OAT_AND_LINDEN(
            "oat-and-linden",
            "The oats scratched, and the milk alone browned. Linden tea for the rest of the water, fewer oats, no oven."),
    ROPE_WALK_CHARCOAL(
            "rope-walk-charcoal",
            "The lather was grey and the cedarwood alone too thin. Less charcoal, some cocoa butter, a little patchouli."),
    HARBOUR_SHAVE(
            "harbour-shave",
            "Too soft to stand in the dish. More sodium, less potassium, some castor.",
            "Friends who try it wanted it slicker. Superfat 4, less glycerin, sandalwood.");

    private final String file;

    @SuppressWarnings("ImmutableEnumChecker") // a copy that no one can change
    private final List<String> reasons;

    /** The reasons are those of the versions from 2 on. */
    DemoRecipes(String file, String... reasons) {
        this.file = file;
        this.reasons = List.of(reasons);
    }

    /** Keeps all its versions; a batch was made from each but the newest. */
    void keep(RecipeBook book) {
        RecipeVersion newest = book.add(formula(1)).orThrow();
        for (String reason : reasons) {
            book.markMade(newest.recipeId(), newest.number()).orThrow();
            newest = book.save(newest.recipeId(), newest.number(), formula(newest.number() + 1), true, reason)
                    .orThrow();
        }
    }

    /** What the newest version says. */
    Formula newest() {
        return formula(1 + reasons.size());
    }

    private Formula formula(int version) {
        String name = "demo/" + file + "-" + version + ".yaml";
        try (InputStream in = DemoRecipes.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the file " + name + " is missing from the application");
            }
            FormulaFile.Read read = FormulaFile.read(in.readAllBytes());
            return read.formula()
                    .orElseThrow(() -> new IllegalStateException(
                            name + ": " + read.problems().get(0).sentence()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
