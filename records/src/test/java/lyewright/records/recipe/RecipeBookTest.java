package lyewright.records.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.Use;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

@OnBoth
class RecipeBookTest extends Workbench {

    private RecipeBook book() {
        return records.recipes();
    }

    private String added(String name) {
        return book().add(Formulas.named(name)).orThrow().recipeId();
    }

    private List<String> names(String words) {
        return book().list(new Search(words, 1, 50)).items().stream()
                .map(RecipeSummary::name)
                .toList();
    }

    // Keeping

    @Test
    void a_recipe_comes_back_as_it_was_typed() {
        Formula formula = Formulas.of("Oat & Linden", 1, "6 %", "First line.\nSecond line, ünïcode — 石鹸.");

        RecipeVersion version = book().add(formula).orThrow();

        assertThat(version.number()).isEqualTo(1);
        assertThat(version.formula()).isEqualTo(formula);
        assertThat(version.text()).isEqualTo(FormulaFile.write(formula));
        // the clock of these tests goes on by a second each time it is read, at the opening too
        assertThat(version.savedAt()).isBetween(START, START.plusSeconds(3));
        assertThat(version.madeAt()).isEmpty();
        restart();
        Recipe found = book().find(version.recipeId()).orElseThrow();
        assertThat(found.name()).isEqualTo("Oat & Linden");
        assertThat(found.newest()).isEqualTo(version);
        assertThat(book().version(version.recipeId(), 1)).contains(version);
        assertThat(book().version(version.recipeId(), 2)).isEmpty();
        assertThat(book().find("no such id")).isEmpty();
    }

    @Test
    void a_new_recipe_begins_at_version_1_whatever_number_was_typed() {
        RecipeVersion version =
                book().add(Formulas.of("Plain Castile", 7, "5 %", "")).orThrow();

        assertThat(version.number()).isEqualTo(1);
        assertThat(version.formula().version()).isEqualTo(1);
    }

    @Test
    void a_formula_that_breaks_the_rules_is_refused_with_its_path() {
        Formula good = Formulas.named("Tideline");
        Formula nameless = FormulaText.of(good, "", 1).formula();

        assertThat(book().add(nameless).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.path()).isEqualTo("recipe"));
        assertThat(names("")).isEmpty();
    }

    @Test
    void what_looks_like_an_injection_is_only_a_name() {
        List<String> names = List.of(
                "'; DROP TABLE recipe; --",
                "\" OR \"\"=\"",
                "%",
                "_",
                "Robert'); DELETE FROM recipe_version;",
                ":name ?1 $1 <script>alert(1)</script>",
                "back\\slash!");
        names.forEach(this::added);

        assertThat(names("")).containsExactlyInAnyOrderElementsOf(names);
        assertThat(names("'; DROP")).containsExactly("'; DROP TABLE recipe; --");
        assertThat(names("%")).containsExactly("%");
        assertThat(names("_")).containsExactlyInAnyOrder("_", "Robert'); DELETE FROM recipe_version;");
        assertThat(names("slash!")).containsExactly("back\\slash!");
    }

    // Lists

    @Test
    void names_stand_in_the_order_people_look_for_them() {
        Stream.of("zest", "Éclair", "apple", "Zebra", "eclipse", "Apple", "Ähre", "Ωmega", "Яблоко", "earth")
                .forEach(this::added);

        assertThat(names(""))
                .containsExactly(
                        "Ähre", "apple", "Apple", "earth", "Éclair", "eclipse", "Zebra", "zest", "Ωmega", "Яблоко");
    }

    @Test
    void a_search_finds_words_of_name_oils_and_notes_without_case_and_accents() {
        book().add(Formulas.of("Crème brûlée", 1, "5 %", "For the Øresund fair"))
                .orThrow();
        book().add(Formulas.of("Harbour Shave", 1, "5 %", "ΟΔΥΣΣΕΥΣ")).orThrow();
        added("Plain Castile");

        assertThat(names("creme")).containsExactly("Crème brûlée");
        assertThat(names("BRULEE oresund")).containsExactly("Crème brûlée");
        assertThat(names("οδυσσευς")).containsExactly("Harbour Shave");
        assertThat(names("olive-virgin")).hasSize(3);
        assertThat(names("castile coconut")).containsExactly("Plain Castile");
        assertThat(names("castile lard")).isEmpty();
        assertThat(names("  ")).hasSize(3);
    }

    @Test
    void a_list_comes_by_pages_and_says_how_many_there_are() {
        IntStream.rangeClosed(1, 25).forEach(i -> added("Bar %02d".formatted(i)));

        Page<RecipeSummary> third = book().list(new Search("bar", 3, 10));

        assertThat(third.total()).isEqualTo(25);
        assertThat(third.pages()).isEqualTo(3);
        assertThat(third.items().stream().map(RecipeSummary::name))
                .containsExactly("Bar 21", "Bar 22", "Bar 23", "Bar 24", "Bar 25");
        assertThat(book().list(new Search("", 9, 10)).items()).isEmpty();
        assertThat(book().list(new Search("", -1, 0)).items()).hasSize(1);
    }

    @Test
    void a_list_says_what_stands_in_it() {
        String id = book().add(Formulas.read("""
                        recipe: Tideline
                        use: sale
                        oils: {coconut: 100 %}
                        alkali: sodium
                        superfat: 18 %
                        water: 34 % lye
                        """)).orThrow().recipeId();
        Draft draft = records.drafts().create(Optional.of(id), 1, "{}");

        RecipeSummary line = book().list(Search.all(1, 10)).items().get(0);

        assertThat(line.id()).isEqualTo(id);
        assertThat(line.use()).isEqualTo(Use.SALE);
        assertThat(line.newestVersion()).isEqualTo(1);
        assertThat(FormulaFile.read(line.text()).formula()).isPresent();
        assertThat(line.draftId()).contains(draft.id());
        assertThat(line.photograph()).isEmpty();
        assertThat(line.hasNamesake()).isFalse();
    }

    @Test
    void two_recipes_may_share_a_name_and_the_list_says_so() {
        String first = added("Tideline");
        String second = added("Tideline");
        added("Rope Walk Charcoal");

        assertThat(book().list(Search.all(1, 10)).items())
                .filteredOn(RecipeSummary::hasNamesake)
                .extracting(RecipeSummary::id)
                .containsExactly(first, second);
        book().delete(second).orThrow();
        assertThat(book().find(first).orElseThrow().hasNamesake()).isFalse();
    }

    // Deleting

    @Test
    void a_deleted_recipe_leaves_the_list_and_comes_back_as_it_was() {
        String id = added("Tideline");
        Recipe before = book().find(id).orElseThrow();

        book().delete(id).orThrow();

        assertThat(names("")).isEmpty();
        assertThat(book().deleted(1, 10).items()).extracting(DeletedRecipe::id).containsExactly(id);
        assertThat(book().deleted(1, 10).total()).isEqualTo(1);
        assertThat(book().find(id).orElseThrow().deletedAt()).isPresent();
        assertThat(book().delete(id).problems()).isNotEmpty();
        assertThat(book().undelete(id).orThrow()).isEqualTo(before);
        assertThat(names("")).containsExactly("Tideline");
        assertThat(book().undelete("no such id").problems()).isNotEmpty();
    }

    // Photographs

    @Test
    void a_recipe_takes_only_a_photograph_that_is_kept() {
        String id = added("Tideline");
        String hash = records.photographs().keep(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 1, 2});

        assertThat(book().setPhotograph(id, Optional.of("0".repeat(64))).problems())
                .isNotEmpty();
        assertThat(book().setPhotograph(id, Optional.of(hash)).orThrow().photograph())
                .contains(hash);
        assertThat(book().list(Search.all(1, 10)).items().get(0).photograph()).contains(hash);
        assertThat(book().setPhotograph(id, Optional.empty()).orThrow().photograph())
                .isEmpty();
    }
}
