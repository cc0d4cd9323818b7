package lyewright.web.recipe;

import java.time.Clock;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.picture.Drawing;
import lyewright.picture.RecipeMark;
import lyewright.records.recipe.RecipeSummary;
import lyewright.words.Dates;

/**
 * A recipe in the list.
 *
 * @param id the recipe's
 * @param name its name
 * @param apart what tells it from another of the same name; empty where there is none
 * @param line version, use and superfat
 * @param oils its oils
 * @param photograph its name, if there is one
 * @param mark drawn of its oils where there is none
 * @param draft whether changes to it are not saved yet
 * @param old what of the cupboard is old for it
 */
public record RecipeCard(
        String id,
        String name,
        Optional<String> apart,
        String line,
        String oils,
        Optional<String> photograph,
        Optional<Drawing> mark,
        boolean draft,
        Optional<StockAges.Brief> old) {

    static RecipeCard of(RecipeSummary summary, StockAges ages, Clock clock) {
        Optional<Formula> formula = FormulaFile.read(summary.text()).formula();
        String superfat = formula.flatMap(WrittenWords::superfat)
                .map(text -> " · " + text)
                .orElse("");
        return new RecipeCard(
                summary.id(),
                summary.name(),
                summary.hasNamesake()
                        ? Optional.of("first saved " + Dates.day(summary.addedAt(), clock))
                        : Optional.empty(),
                "version " + summary.newestVersion() + " · " + WrittenWords.use(summary.use()) + superfat,
                formula.map(WrittenWords::oils).orElse(""),
                summary.photograph(),
                summary.photograph().isPresent() ? Optional.empty() : formula.map(RecipeMark::of),
                summary.draftId().isPresent(),
                formula.flatMap(ages::brief));
    }
}
