package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Formula;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.setting.Units;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What saving will do is said before, and loses no reason. */
class EditorSavingTest {

    @TempDir
    private Path home;

    private TestWorkshop workshop;
    private String recipe;

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new EditorPages(shop), new RecipePages(shop)));
        recipe = book().add(RecipeShop.formula(RecipeShop.PLAIN)).orThrow().recipeId();
        book().save(recipe, 1, formula("7 %"), true, "harder for summer").orThrow();
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private RecipeBook book() {
        return workshop.shop().records().recipes();
    }

    private static Formula formula(String superfat) {
        return RecipeShop.formula(RecipeShop.PLAIN.replace("6 %", superfat));
    }

    private String edit() {
        return "/recipes/" + recipe + "/edit";
    }

    private HttpResponse<String> save(HttpResponse<String> page, String why, boolean asNext) throws Exception {
        List<String> sent = new ArrayList<>(List.of(
                "recipe", "Plain",
                "use", "own",
                "oils.0.name", "coconut",
                "oils.0.amount", "100 %",
                "alkali", "sodium",
                "superfat", "8 %",
                "water", "32 % lye",
                "based-on", TestWorkshop.hidden(page, "based-on"),
                "window", TestWorkshop.hidden(page, "window"),
                "why", why,
                "do", "save"));
        if (asNext) {
            sent.addAll(List.of("as-next", "yes"));
        }
        HttpResponse<String> answer = workshop.post(edit(), sent.toArray(String[]::new));
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer;
    }

    @Test
    void a_version_that_nothing_was_made_from_is_said_to_be_written_over() throws Exception {
        assertThat(workshop.get(edit()).body())
                .contains("You are changing version 2. Nothing was made from it yet, so saving writes over it")
                .contains("<span class=\"over\">Save over version 2</span>")
                .contains("<span class=\"next\">Save as version 3</span>");
    }

    @Test
    void its_reason_stays_unless_it_is_altered() throws Exception {
        HttpResponse<String> page = workshop.get(edit());
        assertThat(page.body())
                .contains("left empty, version 2 keeps the one it has: “harder for summer”")
                .contains("name=\"why\" value=\"\"");
        save(page, "", false);
        assertThat(book().find(recipe).orElseThrow().newest().number()).isEqualTo(2);
        assertThat(book().find(recipe).orElseThrow().newest().why()).isEqualTo("harder for summer");
    }

    @Test
    void another_reason_takes_its_place_whole() throws Exception {
        save(workshop.get(edit()), "more lather", false);
        assertThat(book().find(recipe).orElseThrow().newest().why()).isEqualTo("more lather");
    }

    @Test
    void a_next_version_does_not_take_the_reason_of_the_one_before() throws Exception {
        save(workshop.get(edit()), "", true);
        assertThat(book().find(recipe).orElseThrow().newest().number()).isEqualTo(3);
        assertThat(book().find(recipe).orElseThrow().newest().why()).isEmpty();
        assertThat(book().version(recipe, 2).orElseThrow().why()).isEqualTo("harder for summer");
    }

    @Test
    void a_version_that_was_made_from_is_followed_by_the_next_with_a_reason_of_its_own() throws Exception {
        book().markMade(recipe, 2).orThrow();
        assertThat(workshop.get(edit()).body())
                .contains("what you save becomes version 3")
                .contains("<span class=\"next\">Save as version 3</span>")
                .doesNotContain("Save over")
                .contains("name=\"why\" value=\"\"");
    }

    @Test
    void the_row_of_an_oil_that_wets_out_a_powder_tells_all_of_it() throws Exception {
        String charcoal = book().add(RecipeShop.formula("""
                        recipe: Charcoal
                        use: own
                        oils: {olive-pomace: 42 %, coconut: 58 %}
                        alkali: sodium
                        superfat: 6 %
                        water: 32 % lye
                        additions:
                          - {of: activated-charcoal, amount: 8 g per kg oils, stage: trace, disperse: {in: olive-pomace, ratio: 4 to 1}}
                        """)).orThrow().recipeId();

        assertThat(workshop.get("/recipes/" + charcoal + "/edit").body())
                .containsPattern("Olive pomace oil: <[^>]*>420[^<]*</button>, <[^>]*>42\\.0 %")
                .containsPattern("Coconut oil: <[^>]*>580[^<]*</button>, <[^>]*>58\\.0 %");
    }

    @Test
    void what_was_saved_is_said_on_the_recipes_page() throws Exception {
        HttpResponse<String> saved = save(workshop.get(edit()), "", true);

        assertThat(workshop.get(RecipeShop.onwards(saved)).body()).contains("Plain is saved, as version 3.");
    }
}
