package lyewright.records.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.recipe.Imported.What;
import org.junit.jupiter.api.Test;

@OnBoth
class ImportTest extends Workbench {

    private Imported imported(int version, String superfat) {
        return records.recipes()
                .importFormula(Formulas.of("Tideline", version, superfat, ""))
                .orThrow();
    }

    private long versions() {
        String id = records.recipes().list(Search.all(1, 9)).items().get(0).id();
        return records.recipes().versions(id).size();
    }

    @Test
    void a_name_that_is_new_makes_a_recipe_that_keeps_the_files_number() {
        Imported first = imported(3, "5 %");

        assertThat(first.what()).isEqualTo(What.NEW_RECIPE);
        assertThat(first.version().number()).isEqualTo(3);
        assertThat(first.version().formula()).isEqualTo(Formulas.of("Tideline", 3, "5 %", ""));
    }

    @Test
    void the_same_file_again_changes_nothing() {
        imported(3, "5 %");

        Imported again = imported(3, "5 %");

        assertThat(again.what()).isEqualTo(What.ALREADY_KEPT);
        assertThat(again.version().number()).isEqualTo(3);
        assertThat(versions()).isEqualTo(1);
    }

    @Test
    void another_formula_of_the_name_becomes_the_next_version_whatever_its_number() {
        imported(3, "5 %");

        Imported next = imported(3, "6 %");

        assertThat(next.what()).isEqualTo(What.NEXT_VERSION);
        assertThat(next.version().number()).isEqualTo(4);
        assertThat(imported(9, "7 %").version().number()).isEqualTo(5);
        assertThat(records.recipes()
                        .version(next.version().recipeId(), 3)
                        .orElseThrow()
                        .formula()
                        .superfat())
                .isEqualTo(Formulas.of("Tideline", 3, "5 %", "").superfat());
    }

    @Test
    void the_newest_version_but_for_its_number_is_kept_already() {
        imported(1, "5 %");
        imported(3, "6 %");

        assertThat(imported(3, "6 %").what()).isEqualTo(What.ALREADY_KEPT);
        assertThat(versions()).isEqualTo(2);
    }

    @Test
    void an_older_version_is_kept_already_only_with_its_number() {
        imported(1, "5 %");
        imported(1, "6 %");

        assertThat(imported(1, "5 %").what()).isEqualTo(What.ALREADY_KEPT);
        assertThat(imported(2, "5 %").version().number()).isEqualTo(3);
    }

    @Test
    void a_deleted_recipe_does_not_take_an_import() {
        String id = imported(1, "5 %").version().recipeId();
        records.recipes().delete(id).orThrow();

        assertThat(imported(1, "5 %").version().recipeId()).isNotEqualTo(id);
    }

    @Test
    void of_two_recipes_of_the_name_neither_is_guessed() {
        records.recipes().add(Formulas.of("Tideline", 1, "5 %", "")).orThrow();
        records.recipes().add(Formulas.of("Tideline", 1, "6 %", "")).orThrow();

        assertThat(records.recipes()
                        .importFormula(Formulas.of("Tideline", 1, "7 %", ""))
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.path()).isEqualTo("recipe"));
        assertThat(imported(1, "6 %").what()).isEqualTo(What.ALREADY_KEPT);
    }
}
