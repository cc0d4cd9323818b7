package lyewright.records.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@OnBoth
class VersionsTest extends Workbench {

    private String id = "";

    @BeforeEach
    void keep() {
        id = book().add(tideline("5 %")).orThrow().recipeId();
    }

    private RecipeBook book() {
        return records.recipes();
    }

    private static Formula tideline(String superfat) {
        return Formulas.of("Tideline", 1, superfat, "");
    }

    private List<Integer> numbers() {
        return book().versions(id).stream().map(VersionHeader::number).toList();
    }

    // Saving

    @Test
    void saving_writes_over_a_version_that_nothing_was_made_from() {
        RecipeVersion saved =
                book().save(id, 1, tideline("6 %"), false, "a little milder").orThrow();

        assertThat(saved.number()).isEqualTo(1);
        assertThat(saved.formula()).isEqualTo(tideline("6 %"));
        assertThat(saved.why()).isEqualTo("a little milder");
        assertThat(numbers()).containsExactly(1);
    }

    @Test
    void saving_makes_the_next_version_where_that_is_asked_for() {
        RecipeVersion saved = book().save(id, 1, tideline("6 %"), true, "").orThrow();

        assertThat(saved.number()).isEqualTo(2);
        assertThat(saved.formula().version()).isEqualTo(2);
        assertThat(numbers()).containsExactly(2, 1);
        assertThat(book().version(id, 1).orElseThrow().formula()).isEqualTo(tideline("5 %"));
    }

    @Test
    void a_version_that_a_batch_was_made_from_is_never_altered() {
        RecipeVersion made = book().markMade(id, 1).orThrow();

        RecipeVersion saved = book().save(id, 1, tideline("6 %"), false, "").orThrow();

        assertThat(saved.number()).isEqualTo(2);
        assertThat(book().version(id, 1)).contains(made);
        assertThat(made.madeAt()).isPresent();
        assertThat(book().markMade(id, 1).orThrow()).isEqualTo(made);
        assertThat(book().markMade(id, 3).problems()).isNotEmpty();
    }

    @Test
    void the_database_itself_refuses_to_alter_or_delete_what_was_made_from() {
        book().markMade(id, 1).orThrow();

        for (String tinkering : List.of(
                "UPDATE recipe_version SET formula_text = 'other'",
                "UPDATE recipe_version SET made_epoch_ms = NULL",
                "DELETE FROM recipe_version")) {
            assertThatThrownBy(() -> Tinkering.with(place, tinkering)).hasMessageContaining("was made from");
        }
        assertThat(book().version(id, 1).orElseThrow().formula()).isEqualTo(tideline("5 %"));
    }

    @Test
    void saving_upon_a_version_that_is_no_longer_the_newest_is_refused() {
        book().save(id, 1, tideline("6 %"), true, "").orThrow();

        assertThat(book().save(id, 1, tideline("7 %"), false, "").problems())
                .singleElement()
                .satisfies(problem ->
                        assertThat(problem.sentence()).contains("version 2").contains("while you worked on version 1"));
        assertThat(book().find(id).orElseThrow().newest().formula().superfat())
                .isEqualTo(tideline("6 %").superfat());
    }

    @Test
    void a_recipe_that_is_gone_is_not_saved() {
        book().delete(id).orThrow();

        assertThat(book().save(id, 1, tideline("6 %"), false, "").problems()).isNotEmpty();
        assertThat(book().save("no such id", 1, tideline("6 %"), false, "").problems())
                .isNotEmpty();
        assertThat(book().rename(id, "Other").problems()).isNotEmpty();
        assertThat(book().duplicate(id, "Other").problems()).isNotEmpty();
    }

    @Test
    void a_reason_too_long_or_with_a_control_character_is_refused() {
        assertThat(book().save(id, 1, tideline("6 %"), false, "x".repeat(2001)).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.path()).isEqualTo("why"));
        assertThat(book().save(id, 1, tideline("6 %"), false, "a\0b").problems())
                .hasSize(1);
    }

    @Test
    void saving_from_a_draft_lets_go_of_it_in_the_same_step() {
        Draft draft = records.drafts().create(Optional.of(id), 1, "{}");

        book().save(id, 1, tideline("6 %"), false, "", new DraftAt(draft.id(), 1))
                .orThrow();

        assertThat(records.drafts().forRecipe(id)).isEmpty();
    }

    @Test
    void saving_from_a_draft_that_another_window_changed_is_refused_and_writes_nothing() {
        Draft draft = records.drafts().create(Optional.of(id), 1, "{}");
        records.drafts().keep(draft.id(), 1, "{\"superfat\":\"8\"}");

        assertThat(book().save(id, 1, tideline("6 %"), false, "", new DraftAt(draft.id(), 1))
                        .problems())
                .isNotEmpty();
        assertThat(book().add(tideline("6 %"), new DraftAt(draft.id(), 1)).problems())
                .isNotEmpty();

        assertThat(book().find(id).orElseThrow().newest().formula()).isEqualTo(tideline("5 %"));
        assertThat(book().list(Search.all(1, 9)).total()).isEqualTo(1);
        assertThat(records.drafts().find(draft.id())).isPresent();
    }

    // Names

    @Test
    void a_new_name_goes_into_a_version_that_nothing_was_made_from() {
        RecipeVersion renamed = book().rename(id, "Ebb").orThrow();

        assertThat(renamed.number()).isEqualTo(1);
        assertThat(renamed.formula().recipe()).isEqualTo("Ebb");
        assertThat(book().find(id).orElseThrow().name()).isEqualTo("Ebb");
        assertThat(book().list(new Search("ebb", 1, 9)).total()).isEqualTo(1);
        assertThat(book().list(new Search("tideline", 1, 9)).total()).isZero();
        assertThat(book().rename(id, " Ebb").problems()).isNotEmpty();
        assertThat(book().rename(id, "").problems()).isNotEmpty();
    }

    @Test
    void a_new_name_makes_the_next_version_where_a_batch_was_made() {
        book().markMade(id, 1).orThrow();

        RecipeVersion renamed = book().rename(id, "Ebb").orThrow();

        assertThat(renamed.number()).isEqualTo(2);
        assertThat(renamed.why()).isEqualTo("renamed from Tideline");
        assertThat(book().version(id, 1).orElseThrow().formula().recipe()).isEqualTo("Tideline");
    }

    @Test
    void a_duplicate_begins_anew_and_says_where_it_came_from() {
        book().save(id, 1, tideline("6 %"), true, "").orThrow();

        RecipeVersion copy = book().duplicate(id, "Tideline with clay").orThrow();

        assertThat(copy.recipeId()).isNotEqualTo(id);
        assertThat(copy.number()).isEqualTo(1);
        assertThat(copy.why()).isEqualTo("copied from Tideline, version 2");
        assertThat(copy.formula()).isEqualTo(Formulas.of("Tideline with clay", 1, "6 %", ""));
    }

    @Test
    void many_versions_are_listed_newest_first_with_their_reasons() {
        for (int i = 1; i <= 5; i++) {
            book().save(id, i, tideline((i + 5) + " %"), true, "reason " + (i + 1))
                    .orThrow();
        }

        assertThat(numbers()).containsExactly(6, 5, 4, 3, 2, 1);
        assertThat(book().versions(id).get(0).why()).isEqualTo("reason 6");
        assertThat(book().versions("no such id")).isEmpty();
    }
}
