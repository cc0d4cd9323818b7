package lyewright.records.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.people.LetIn;
import lyewright.records.people.Person;
import lyewright.records.people.Role;
import lyewright.records.store.Author;
import org.junit.jupiter.api.Test;

@OnBoth
class DraftsTest extends Workbench {

    private static final String FORM = "{\"recipe\":\"Tideline\",\"superfat\":\"12,5 oops <b>'\\u0000\"}";

    private Drafts drafts() {
        return records.drafts();
    }

    @Test
    void what_was_typed_outlives_a_restart() {
        Draft draft = drafts().create(Optional.empty(), 0, FORM);
        drafts().keep(draft.id(), 1, FORM + " ");

        restart();

        Draft found = drafts().find(draft.id()).orElseThrow();
        assertThat(found.form()).isEqualTo(FORM + " ");
        assertThat(found.revision()).isEqualTo(2);
        assertThat(found.recipeId()).isEmpty();
        assertThat(found.basedOn()).isZero();
        assertThat(found.changedAt()).isAfter(draft.changedAt());
    }

    @Test
    void of_two_windows_the_later_one_is_shown_what_the_other_kept() {
        Draft draft = drafts().create(Optional.empty(), 0, FORM);
        assertThat(drafts().keep(draft.id(), 1, "first")).isEqualTo(new Kept.Saved(2));

        Kept second = drafts().keep(draft.id(), 1, "second");

        assertThat(second).isInstanceOfSatisfying(Kept.Conflict.class, conflict -> {
            assertThat(conflict.theirs().form()).isEqualTo("first");
            assertThat(conflict.theirs().revision()).isEqualTo(2);
        });
        assertThat(drafts().find(draft.id()).orElseThrow().form()).isEqualTo("first");
    }

    @Test
    void whoever_typed_last_stands_beside_it() {
        Draft draft = drafts().create(Optional.empty(), 0, FORM);
        assertThat(draft.by()).contains(Author.DESK);
        Person wenna = records.people().add("Wenna", Role.MAKER).orThrow();
        LetIn telephone = records.devices().letIn(wenna.id(), "telephone").orThrow();
        Author hers = new Author(wenna.id(), Optional.of(telephone.device().id()));

        records.as(hers).drafts().keep(draft.id(), 1, "hers");

        assertThat(drafts().find(draft.id()).orElseThrow().by()).contains(hers);
    }

    @Test
    void a_recipe_has_one_draft_however_many_windows_begin_one() {
        String recipe =
                records.recipes().add(Formulas.named("Tideline")).orThrow().recipeId();

        Draft first = drafts().create(Optional.of(recipe), 1, "first");
        Draft second = drafts().create(Optional.of(recipe), 1, "second");

        assertThat(second).isEqualTo(first);
        assertThat(drafts().forRecipe(recipe)).contains(first);
        assertThat(drafts().ofNewRecipes(5)).isEmpty();
        assertThat(drafts().forRecipe("no such id")).isEmpty();
    }

    @Test
    void new_recipes_may_have_as_many_drafts_as_there_are_ideas() {
        Draft first = drafts().create(Optional.empty(), 0, "one");
        Draft second = drafts().create(Optional.empty(), 0, "two");

        assertThat(drafts().all()).containsExactly(second, first);
        assertThat(drafts().ofNewRecipes(5)).containsExactly(second, first);
        assertThat(drafts().ofNewRecipes(1)).containsExactly(second);
    }

    @Test
    void a_draft_thrown_away_is_gone_and_says_so() {
        Draft draft = drafts().create(Optional.empty(), 0, FORM);

        drafts().discard(draft.id());

        assertThat(drafts().find(draft.id())).isEmpty();
        assertThat(drafts().keep(draft.id(), 1, FORM)).isEqualTo(new Kept.Gone());
        drafts().discard(draft.id());
    }

    @Test
    void a_form_longer_than_any_person_types_is_not_taken() {
        assertThatThrownBy(() -> drafts().create(Optional.empty(), 0, "x".repeat(Drafts.LONGEST_FORM + 1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(drafts().all()).isEmpty();
    }
}
