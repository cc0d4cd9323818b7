package lyewright.records.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.formula.Formula;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

@OnBoth
class RecipeBookTest extends Workbench {

    private RecipeBook book() {
        return records.recipes();
    }

    private RecipeVersion added(Formula formula) {
        return book().add(formula).orThrow();
    }

    private List<String> names(String words) {
        return book().list(new Search(words, 1, 50)).items().stream()
                .map(RecipeSummary::name)
                .toList();
    }

    private static List<String> sentences(Outcome<?> outcome) {
        return outcome.problems().stream().map(Problem::sentence).toList();
    }

    // Keeping and finding

    @Test
    void a_recipe_comes_back_as_it_was_typed() {
        Formula formula = Formulas.of("Oat & Linden", 1, "6 %", "First line.\nSecond line, with ünïcode — 石鹸.");

        RecipeVersion version = added(formula);

        assertThat(version.number()).isEqualTo(1);
        assertThat(version.formula()).isEqualTo(formula);
        assertThat(version.savedAt()).isEqualTo(START);
        restart();
        Recipe found = book().find(version.recipeId()).orElseThrow();
        assertThat(found.name()).isEqualTo("Oat & Linden");
        assertThat(found.newest()).isEqualTo(version);
        assertThat(book().version(version.recipeId(), 1)).contains(version);
        assertThat(book().version(version.recipeId(), 2)).isEmpty();
        assertThat(book().find("no such id")).isEmpty();
    }
}
