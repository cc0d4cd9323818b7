package lyewright.web.recipe;

import java.time.Clock;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.picture.Drawing;
import lyewright.picture.RecipeMark;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeVersion;
import lyewright.words.Dates;
import lyewright.words.Sentences;

/**
 * Which recipe, in which version, and what it looks like.
 *
 * @param id the recipe's
 * @param name in that version
 * @param number of the version
 * @param newest number of the recipe's newest
 * @param use what it is for
 * @param notes the maker's own
 * @param oils on a line
 * @param saved when, as a date
 * @param made when a batch was first made from it, as a date
 * @param why why it was saved, perhaps empty
 * @param photograph its name, if there is one
 * @param mark drawn of its oils
 * @param overwritten whether saving writes over it, since nothing was made from it
 * @param draft whether changes to it are not saved yet
 * @param deleted when it was deleted, as a date, if it was
 */
public record RecipeHead(
        String id,
        String name,
        int number,
        int newest,
        String use,
        String notes,
        String oils,
        String saved,
        Optional<String> made,
        String why,
        Optional<String> photograph,
        Drawing mark,
        boolean overwritten,
        boolean draft,
        Optional<String> deleted) {

    static RecipeHead of(Recipe recipe, RecipeVersion version, Formula formula, Clock clock) {
        return new RecipeHead(
                recipe.id(),
                formula.recipe(),
                version.number(),
                recipe.newest().number(),
                WrittenWords.use(formula.use()),
                formula.notes(),
                WrittenWords.oils(formula),
                Dates.day(version.savedAt(), clock),
                version.madeAt().map(at -> Dates.day(at, clock)),
                version.why(),
                recipe.photograph(),
                RecipeMark.of(formula),
                version.number() == recipe.newest().number() && version.madeAt().isEmpty(),
                recipe.draftId().isPresent(),
                recipe.deletedAt().map(at -> Dates.day(at, clock)));
    }

    /** Whether it is the recipe's newest version. */
    public boolean isNewest() {
        return number == newest;
    }

    /** When and why it was saved, and when it was first made. */
    public String history() {
        return Sentences.whole("Saved " + saved + (why.isEmpty() ? "" : ": " + why))
                + made.map(date -> " First made " + date + ".").orElse("");
    }

    /** Where the recipe's page is. */
    public String address() {
        return "/recipes/" + id;
    }

    /** Where this version is exported. */
    public String file() {
        return address() + "/" + number + ".yaml";
    }

    /** Where a batch of it is made. */
    public String make() {
        return "/make?recipe=" + id + (isNewest() ? "" : "&version=" + number);
    }
}
