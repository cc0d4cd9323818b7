package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import lyewright.formula.FormulaFile;
import lyewright.records.Records;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Search;
import lyewright.records.setting.Units;
import lyewright.web.make.MakePages;
import lyewright.web.recipe.EditorPages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.start.Start;
import lyewright.web.stores.StoresPages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One window has a page of the maker's own workshop open while another looks round the demo. */
class TwoWorkshopsTest {

    private static final String MINE = "Quay Lane Soap";

    private static final String ROUND = """
            recipe: Round Bar
            version: 1
            use: own
            oils: {coconut: 250 g, olive-virgin: 750 g}
            alkali: sodium
            superfat: 6 %
            water: 33 % lye
            """;

    @TempDir
    private Path home;

    private TestWorkshop workshop;
    private Records mine;
    private String recipe;

    private void start(Path folder) {
        workshop = TestWorkshop.start(
                folder,
                Units.GRAMS,
                shop -> List.of(
                        new Start(shop),
                        new EditorPages(shop),
                        new RecipePages(shop),
                        new MakePages(shop),
                        new StoresPages(shop)));
    }

    @BeforeEach
    void begin() {
        start(home);
        workshop.shop().startMine(Shop.usual(MINE, Units.GRAMS));
        mine = workshop.shop().records();
        recipe = mine.recipes()
                .add(FormulaFile.read(ROUND).formula().orElseThrow())
                .orThrow()
                .recipeId();
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private void somebodyLooksRoundTheDemo() throws Exception {
        workshop.post("/start/demo");
        assertThat(workshop.shop().showsDemo()).isTrue();
    }

    private String edit() {
        return "/recipes/" + recipe + "/edit";
    }

    private static String[] typed(HttpResponse<String> page, String superfat, String pressed) {
        return new String[] {
            "recipe",
            "Round Bar",
            "use",
            "own",
            "oils.0.name",
            "coconut",
            "oils.0.amount",
            "250 g",
            "oils.1.name",
            "olive-virgin",
            "oils.1.amount",
            "750 g",
            "alkali",
            "sodium",
            "superfat",
            superfat,
            "water",
            "33 % lye",
            "draft",
            TestWorkshop.hidden(page, "draft"),
            "revision",
            TestWorkshop.hidden(page, "revision"),
            "window",
            TestWorkshop.hidden(page, "window"),
            "serial",
            TestWorkshop.hidden(page, "serial"),
            "based-on",
            TestWorkshop.hidden(page, "based-on"),
            OpenedIn.FIELD,
            TestWorkshop.hidden(page, OpenedIn.FIELD),
            "do",
            pressed
        };
    }

    @Test
    void what_is_typed_of_my_recipe_goes_on_being_kept_in_my_workshop() throws Exception {
        HttpResponse<String> page = workshop.get(edit());
        somebodyLooksRoundTheDemo();
        HttpResponse<String> answer = workshop.post(edit(), typed(page, "7 %", ""));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains(MINE).doesNotContain("Demo workshop.");
        Draft draft = mine.drafts().forRecipe(recipe).orElseThrow();
        assertThat(draft.form()).contains("7 %");

        HttpResponse<String> saved = workshop.post(edit(), typed(answer, "8 %", "save"));
        assertThat(saved.statusCode()).isEqualTo(303);
        assertThat(mine.recipes().find(recipe).orElseThrow().newest().text()).contains("superfat: 8 %");
        assertThat(workshop.get(TestWorkshop.wayOn(saved)).body())
                .contains("It is saved.")
                .contains("This recipe is in " + MINE + "; you are looking round the demo workshop.");
        assertThat(workshop.shop().showsDemo()).isTrue();
    }

    @Test
    void a_new_recipe_is_kept_where_its_page_was_opened() throws Exception {
        HttpResponse<String> page = workshop.get("/recipes/new");
        somebodyLooksRoundTheDemo();
        HttpResponse<String> begun = workshop.post("/recipes/new", typed(page, "9 %", ""));
        assertThat(mine.drafts().all())
                .singleElement()
                .satisfies(draft -> assertThat(draft.form()).contains("9 %"));
        assertThat(workshop.shop().records().drafts().all()).isEmpty();

        HttpResponse<String> saved = workshop.post("/recipes/new", typed(begun, "9 %", "save"));
        assertThat(saved.statusCode()).isEqualTo(303);
        assertThat(mine.recipes().list(Search.all(1, 10)).items()).hasSize(2);
        assertThat(mine.drafts().all()).isEmpty();
    }

    @Test
    void what_is_typed_in_the_demo_stays_in_the_demo() throws Exception {
        somebodyLooksRoundTheDemo();
        HttpResponse<String> page = workshop.get("/recipes/new");
        Records demo = workshop.shop().records();
        workshop.post("/start/back");
        workshop.post("/recipes/new", typed(page, "4 %", ""));
        assertThat(demo.drafts().all()).hasSize(1);
        assertThat(mine.drafts().all()).isEmpty();
    }

    @Test
    void a_page_of_the_other_workshop_says_so_and_one_button_leads_there() throws Exception {
        String mould = mine.equipment()
                .addBalance(
                        lyewright.makingsheet.Balance.parse("kitchen:5kg:1g").orThrow())
                .orThrow()
                .id();
        somebodyLooksRoundTheDemo();
        for (String address : List.of(
                "/recipes/" + recipe,
                edit(),
                "/recipes/" + recipe + "/versions/1",
                "/make?recipe=" + recipe + "&much=written",
                "/stores/balances/" + mould)) {
            HttpResponse<String> page = workshop.get(address);
            assertThat(page.statusCode()).as(address).isEqualTo(404);
            assertThat(page.body())
                    .as(address)
                    .contains("is in " + MINE + "; you are looking round the demo workshop.")
                    .contains("action=\"/start/back\"")
                    .contains("name=\"on\" value=\"" + address.replace("&", "&amp;") + "\"")
                    .contains("Open it in " + MINE);
        }
        HttpResponse<String> led = workshop.post("/start/back", "on", "/recipes/" + recipe);
        assertThat(TestWorkshop.wayOn(led)).endsWith("/recipes/" + recipe);
        assertThat(workshop.get("/recipes/" + recipe).statusCode()).isEqualTo(200);
    }

    @Test
    void a_page_of_the_demo_leads_into_the_demo() throws Exception {
        somebodyLooksRoundTheDemo();
        String theirs = workshop.shop()
                .records()
                .recipes()
                .list(Search.all(1, 1))
                .items()
                .get(0)
                .id();
        workshop.post("/start/back");
        assertThat(workshop.get("/recipes/" + theirs).body())
                .contains("This recipe is in the demo workshop; you are in " + MINE + ".")
                .contains("action=\"/start/demo\"");
        HttpResponse<String> led = workshop.post("/start/demo", "on", "/recipes/" + theirs);
        assertThat(TestWorkshop.wayOn(led)).endsWith("/recipes/" + theirs);
        assertThat(workshop.shop().showsDemo()).isTrue();
    }

    @Test
    void a_button_of_a_page_that_is_of_the_other_workshop_does_nothing_and_leads_back_to_that_page() throws Exception {
        somebodyLooksRoundTheDemo();
        HttpResponse<String> answer = workshop.post("/recipes/" + recipe + "/delete");
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body())
                .contains("Nothing was changed.")
                .contains("name=\"on\" value=\"/recipes/" + recipe + "\"");
        assertThat(mine.recipes().find(recipe).orElseThrow().deletedAt()).isEmpty();
    }

    @Test
    void the_way_on_never_leads_out_of_the_workshop() throws Exception {
        for (String on : List.of("https://example.org/", "//example.org", "/\\example.org", "recipes", "/a\r\nb")) {
            HttpResponse<String> led = workshop.post("/start/back", "on", on);
            assertThat(TestWorkshop.wayOn(led))
                    .as(on)
                    .matches(way -> way.equals("/") || way.equals(workshop.at() + "/"));
        }
    }

    /** What a restart leaves: the same folders, and nothing known of what was shown. */
    private void lyewrightIsStartedAnew() throws Exception {
        workshop.close();
        start(home);
        mine = workshop.shop().records();
        assertThat(workshop.shop().showsDemo()).isFalse();
    }

    private Records demo() {
        return workshop.shop().always(true).records();
    }

    @Test
    void a_new_recipe_of_the_demo_stays_in_the_demo_after_a_restart() throws Exception {
        somebodyLooksRoundTheDemo();
        HttpResponse<String> page = workshop.get("/recipes/new");
        lyewrightIsStartedAnew();

        HttpResponse<String> begun = workshop.post("/recipes/new", typed(page, "4 %", ""));

        assertThat(begun.statusCode()).isEqualTo(200);
        assertThat(begun.body()).contains("Demo workshop.");
        assertThat(mine.drafts().all()).isEmpty();
        assertThat(demo().drafts().all())
                .singleElement()
                .satisfies(draft -> assertThat(draft.form()).contains("4 %"));
    }

    @Test
    void what_is_typed_of_a_recipe_of_the_demo_stays_there_after_a_restart() throws Exception {
        somebodyLooksRoundTheDemo();
        String theirs = demo().recipes().list(Search.all(1, 1)).items().get(0).id();
        HttpResponse<String> page = workshop.get("/recipes/" + theirs + "/edit");
        lyewrightIsStartedAnew();

        HttpResponse<String> answer = workshop.post("/recipes/" + theirs + "/edit", typed(page, "4 %", ""));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(demo().drafts().forRecipe(theirs)).isPresent();
        assertThat(workshop.get("/recipes/" + theirs).body()).contains("This recipe is in the demo workshop");
    }

    @Test
    void a_form_for_something_new_that_does_not_say_where_it_belongs_is_kept_nowhere() throws Exception {
        somebodyLooksRoundTheDemo();
        int jugs = demo().equipment().jugs().size();
        lyewrightIsStartedAnew();

        HttpResponse<String> recipe = workshop.post("/recipes/new", "recipe", "Nobody's", "superfat", "4 %");
        HttpResponse<String> jug =
                workshop.post("/stores/jugs", "name", "Nobody's", "empty", "312 g", "use", "lye jug");

        for (HttpResponse<String> answer : List.of(recipe, jug)) {
            assertThat(answer.statusCode()).isEqualTo(409);
            assertThat(answer.body()).contains("does not say which workshop it is for", "Nobody&#39;s");
        }
        assertThat(mine.drafts().all()).isEmpty();
        assertThat(mine.equipment().jugs()).isEmpty();
        assertThat(demo().drafts().all()).isEmpty();
        assertThat(demo().equipment().jugs()).hasSize(jugs);
    }

    @Test
    void a_form_of_a_demo_that_is_gone_is_given_back() throws Exception {
        HttpResponse<String> answer = workshop.post(
                "/stores/jugs", "name", "White", "empty", "312 g", "use", "lye jug", OpenedIn.FIELD, "demo");

        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("is not there any more", "value=\"White\"");
        assertThat(mine.equipment().jugs()).isEmpty();
        assertThat(home.resolve("demo")).doesNotExist();
    }

    @Test
    void an_id_that_neither_has_is_not_here() throws Exception {
        somebodyLooksRoundTheDemo();
        assertThat(workshop.get("/recipes/none").body()).contains("There is no recipe at this address.");
    }

    @Test
    void a_new_jug_or_formula_of_mine_is_never_added_to_the_demo() throws Exception {
        String form = TestWorkshop.hidden(workshop.get("/stores/jugs/new"), OpenedIn.FIELD);
        String paste = TestWorkshop.hidden(workshop.get("/recipes/import"), OpenedIn.FIELD);
        somebodyLooksRoundTheDemo();
        int jugs = workshop.shop().records().equipment().jugs().size();

        HttpResponse<String> jug = workshop.post(
                "/stores/jugs", "name", "White jug", "empty", "312 g", "use", "lye jug", OpenedIn.FIELD, form);
        HttpResponse<String> formula = workshop.post("/recipes/import", "text", ROUND, OpenedIn.FIELD, paste);

        for (HttpResponse<String> answer : List.of(jug, formula)) {
            assertThat(answer.statusCode()).isEqualTo(404);
            assertThat(answer.body()).contains("What you filled in is for " + MINE, "Open it in " + MINE);
        }
        assertThat(workshop.shop().records().equipment().jugs()).hasSize(jugs);
        assertThat(mine.equipment().jugs()).isEmpty();
        assertThat(mine.recipes().list(Search.all(1, 10)).total()).isEqualTo(1);
    }
}
