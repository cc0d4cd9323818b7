package lyewright.web.recipe;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lyewright.records.recipe.Draft;
import lyewright.records.recipe.Recipe;
import lyewright.records.recipe.RecipeBook;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The editor in a browser. */
class EditorPagesTest {

    private static final int DESK = 1440;

    private static EditorBench bench;
    private static TestBrowser browser;
    private Recipe recipe;

    @BeforeAll
    static void start(@TempDir Path home) {
        bench = new EditorBench(home);
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    @BeforeEach
    void keepTheRecipe() {
        recipe = bench.tideline();
    }

    private static RecipeBook recipes() {
        return bench.shop().records().recipes();
    }

    private Optional<Draft> draft() {
        return bench.shop().records().drafts().forRecipe(recipe.id());
    }

    private FormulaForm drafted() {
        return Drafted.read(draft().orElseThrow().form()).orElseThrow().form();
    }

    private Page edit(Visit visit) {
        visit.page().navigate(bench.address("recipes/" + recipe.id() + "/edit"));
        return visit.page();
    }

    private static Locator input(Page page, String name) {
        return page.locator("[name='" + name + "']");
    }

    private static Locator strip(Page page) {
        return page.locator("#strip .value");
    }

    private static Locator trouble(Page page, String name) {
        return page.locator("[data-trouble='" + name + "']");
    }

    private static void press(Page page, String button) {
        page.locator("button[value='" + button + "']").click();
    }

    @Test
    void a_new_recipe_and_a_known_one_are_sound_at_every_width() {
        for (int width : TestBrowser.WIDTHS) {
            for (Visit visit : List.of(browser.visit(width), browser.darkVisit(width))) {
                try (visit) {
                    visit.page().navigate(bench.address("recipes/new"));
                    visit.keepPicture("editor", "new");
                    visit.isSound();
                    edit(visit);
                    visit.keepPicture("editor", "tideline");
                    visit.isSound();
                }
            }
        }
    }

    @Test
    void figures_follow_what_is_typed_and_no_input_is_touched() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            assertThat(strip(page)).hasText("15.0 %");
            Locator superfat = input(page, "superfat");
            superfat.evaluate("input => { input.sameAsBefore = true; }");
            superfat.fill("");
            superfat.pressSequentially("8 %");

            assertThat(strip(page)).hasText("8.0 %");
            assertThat(page.locator("[data-says='superfat']")).hasText(Pattern.compile("8\\.0\\d % by the sheet"));
            assertThat(superfat).isFocused();
            assertThat(superfat.evaluate("input => [input.sameAsBefore, input.selectionStart]"))
                    .isEqualTo(List.of(true, 3));
            assertThat(drafted().superfat()).isEqualTo("8 %");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void a_half_typed_figure_greys_the_last_result_and_is_told_after_a_pause() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            input(page, "oils.0.amount").fill("60");

            assertThat(page.locator("#figures")).hasClass(Pattern.compile("stale"));
            assertThat(strip(page)).hasText("15.0 %");
            assertThat(trouble(page, "oils.0.amount")).hasText("'60' has no unit; write 60 % or 60 g");
            assertThat(input(page, "oils.0.amount")).hasAttribute("aria-invalid", "true");
            assertThat(input(page, "oils.0.amount"))
                    .hasAttribute("aria-describedby", Pattern.compile("f-oils-0-amount-trouble"));
            input(page, "oils.0.amount").fill("60 %");
            assertThat(page.locator("#figures")).not().hasClass(Pattern.compile("stale"));
            assertThat(trouble(page, "oils.0.amount")).hasText("");
            assertThat(drafted().oils().get(0).amount()).isEqualTo("60 %");
        }
    }

    @Test
    void a_recipe_without_a_name_is_reckoned_and_its_name_is_asked_for_when_it_is_saved() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = visit.page();
            page.navigate(bench.address("recipes/new"));
            assertThat(page.locator(".trouble:visible")).hasCount(0);
            input(page, "oils.0.name").fill("Coconut oil");
            input(page, "oils.0.amount").fill("500 g");
            assertThat(strip(page)).hasText("5.0 %");
            assertThat(page).hasURL(Pattern.compile("/recipes/new\\?draft="));
            page.reload();
            assertThat(input(page, "oils.0.name")).hasValue("Coconut oil");

            press(page, "save");
            assertThat(trouble(page, "recipe")).hasText("the recipe has no name; write one");
            assertThat(input(page, "recipe")).isFocused();
            visit.forgetComplaintsOf(422);
            visit.isSound();
            input(page, "recipe").fill("Plain coconut");
            press(page, "save");
            assertThat(page.locator("body")).containsText("recipe: Plain coconut");
            assertThat(page.locator("body")).containsText("coconut: 500 g");
        }
    }

    @Test
    void rows_come_move_and_go_in_place() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            rowsComeMoveAndGo(page);
            assertThat(input(page, "oils.5.name")).isFocused();
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void rows_come_move_and_go_by_whole_pages_without_scripts() {
        try (Visit visit = browser.visitWithoutScripts(DESK)) {
            Page page = edit(visit);
            rowsComeMoveAndGo(page);
            visit.keepPicture("editor", "rows");
            input(page, "superfat").fill("9 %");
            page.locator("noscript button, button:has-text('Show the figures')")
                    .last()
                    .click();
            assertThat(strip(page)).hasText("9.0 %");
        }
    }

    private void rowsComeMoveAndGo(Page page) {
        press(page, "oils.0.down");
        assertThat(input(page, "oils.1.name")).hasValue("coconut");
        press(page, "oils.1.remove");
        assertThat(input(page, "oils.1.name")).hasValue("shea-butter");
        press(page, "additions.1.up");
        assertThat(input(page, "additions.0.of")).hasValue("sea-salt");
        press(page, "oils.add");
        // pressed again at once, whether or not the first row is there yet
        press(page, "oils.add");
        assertThat(input(page, "oils.5.name")).hasValue("");
        page.waitForCondition(() -> drafted().oils().size() == 6);
        assertThat(drafted().additions().get(0).was()).isEqualTo("1");
    }

    @Test
    void what_is_typed_outlives_the_browser_and_the_application() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            input(page, "notes").evaluate("area => area.closest('details').open = true");
            input(page, "notes").fill("Cures eight weeks.\n\n<b>not bold</b>");
            input(page, "water").fill("30 % ly");
            assertThat(page.locator("#figures")).hasClass(Pattern.compile("stale"));
        }
        bench.startAgain();
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            assertThat(input(page, "water")).hasValue("30 % ly");
            assertThat(input(page, "notes")).hasValue("Cures eight weeks.\n\n<b>not bold</b>");
            assertThat(trouble(page, "water")).containsText("'30 % ly' is not a way of saying water");
        }
    }

    @Test
    void two_windows_on_one_recipe_see_each_other() {
        try (Visit one = browser.visit(DESK);
                Visit two = browser.visit(DESK)) {
            Page mine = edit(one);
            Page theirs = edit(two);
            input(theirs, "superfat").fill("11 %");
            assertThat(strip(theirs)).hasText(Pattern.compile("11\\.\\d %"));
            input(mine, "superfat").fill("12 %");
            assertThat(mine.locator("#draft-note")).containsText("Another window changed this recipe");
            assertThat(strip(mine)).hasText(Pattern.compile("12\\.\\d %"));
            assertThat(drafted().superfat()).isEqualTo("11 %");
            one.keepPicture("editor", "two-windows");
            one.isSound();

            press(mine, "mine");
            assertThat(drafted().superfat()).isEqualTo("12 %");
            input(theirs, "superfat").fill("13 %");
            assertThat(theirs.locator("#draft-note")).containsText("Another window changed this recipe");
            press(theirs, "theirs");
            assertThat(input(theirs, "superfat")).hasValue("12 %");
            input(theirs, "superfat").fill("14 %");
            assertThat(strip(theirs)).hasText(Pattern.compile("14\\.\\d %"));
            assertThat(drafted().superfat()).isEqualTo("14 %");
        }
    }

    @Test
    void a_version_that_was_made_stays_and_the_next_is_saved_with_its_reason() {
        recipes().markMade(recipe.id(), 1).orThrow();
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            input(page, "superfat").fill("16 %");
            input(page, "why").fill("a softer bar");
            press(page, "save");
            assertThat(page.locator("body")).containsText("superfat: 16 %");
        }
        assertThat(recipes().versions(recipe.id())).hasSize(2);
        assertThat(recipes().versions(recipe.id()).get(0).why()).isEqualTo("a softer bar");
        assertThat(recipes().version(recipe.id(), 1).orElseThrow().text())
                .isEqualTo(recipe.newest().text());
        assertThat(recipes().version(recipe.id(), 2).orElseThrow().text())
                .contains("superfat: 16 %", "# from the west shore");
        assertThat(draft()).isEmpty();
    }

    @Test
    void the_same_draft_may_be_typed_as_a_file() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            press(page, "as-file");
            Locator file = input(page, "file");
            String text = file.inputValue();
            assertThat(text).contains("  # from the west shore", "superfat: 15 %");
            visit.keepPicture("editor", "file");
            visit.isSound();
            file.fill(text.replace("superfat: 15 %", "superfat: 15"));
            assertThat(trouble(page, "file"))
                    .hasText(Pattern.compile("line 1\\d: '15' is not a percentage; write it as 15 %"));
            file.fill(text.replace("superfat: 15 %", "superfat: 17 %"));
            assertThat(strip(page)).hasText("17.0 %");
            press(page, "as-form");
            assertThat(input(page, "superfat")).hasValue("17 %");
            press(page, "save");
            assertThat(page.locator("body")).containsText("superfat: 17 %");
            assertThat(page.locator("body")).containsText("# from the west shore");
        }
    }

    @Test
    void what_is_typed_here_is_thrown_away_when_that_is_asked_for() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            input(page, "superfat").fill("16 %");
            assertThat(strip(page)).hasText(Pattern.compile("16\\.\\d %"));
            page.locator("summary:has-text('Throw away')").click();
            press(page, "discard");
            assertThat(page.locator("body")).containsText("superfat: 15 %");
        }
        assertThat(draft()).isEmpty();
    }

    @Test
    void scripts_and_more_than_a_field_holds_come_back_as_text() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            input(page, "oils.0.name").fill("\"><script>alert(1)</script>");
            assertThat(trouble(page, "oils.0.name")).containsText("<script>alert(1)</script>");
            input(page, "water").fill("9".repeat(2_001));
            assertThat(trouble(page, "water")).containsText("at most 2000 characters");
            assertThat(page.locator("main script")).hasCount(0);
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void enter_goes_on_and_the_keyboard_alone_is_enough() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = visit.page();
            page.navigate(bench.address("recipes/new"));
            page.keyboard().type("By keys");
            input(page, "oils.0.name").focus();
            page.keyboard().type("coconut");
            page.keyboard().press("Enter");
            page.keyboard().type("40 %");
            page.keyboard().press("Enter");
            page.keyboard().type("castor");
            page.keyboard().press("Enter");
            page.keyboard().type("rest");
            assertThat(strip(page)).hasText("5.0 %");
            assertThat(page.locator("[data-says='oils.1']")).hasText("Castor oil: 600 g, 60.0 %");
            page.keyboard().press("Enter");
            page.keyboard().type("lard");
            page.keyboard().press("Enter");
            page.keyboard().type("10 %");
            page.keyboard().press("Enter");
            assertThat(input(page, "oils.3.name")).isFocused();
        }
    }

    @Test
    void a_new_row_takes_what_is_typed_however_long_the_answer_takes() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            int rows = page.locator("[data-says^='oils.']").count();
            List<Route> held = new ArrayList<>();
            page.route("**/edit", held::add);
            input(page, "oils." + (rows - 1) + ".amount").press("Enter");
            page.keyboard().type("lard");
            page.keyboard().press("Enter");
            page.keyboard().type("3 %");
            page.keyboard().press("Enter");
            page.keyboard().type("babassu");
            assertThat(input(page, "oils." + rows + ".name")).hasValue("lard");
            assertThat(input(page, "oils." + rows + ".amount")).hasValue("3 %");
            assertThat(input(page, "oils." + (rows + 1) + ".name")).hasValue("babassu");
            page.unroute("**/edit");
            held.forEach(Route::resume);
            input(page, "oils." + (rows + 1) + ".amount").fill("2 %");
            assertThat(page.locator("[data-says='oils." + rows + "']")).containsText("Lard");
            press(page, "oils." + rows + ".up");
            assertThat(input(page, "oils." + rows + ".amount")).not().hasValue("3 %");
            assertThat(page.locator("button[value='oils." + (rows + 1) + ".down']"))
                    .isDisabled();
        }
    }

    @Test
    void while_lyewright_does_not_answer_the_window_says_that_nothing_is_kept_and_then_goes_on_by_itself() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            page.route("**/edit", route -> route.abort());
            Locator water = input(page, "water");
            water.fill("30 % lye");

            assertThat(page.locator("#trouble")).containsText("What you type now is not kept.");
            assertThat(page.locator("#trouble")).isInViewport();
            page.unroute("**/edit");
            assertThat(page.locator("#trouble")).hasCount(0);
            assertThat(drafted().water()).isEqualTo("30 % lye");
        }
    }

    @Test
    void what_is_refused_while_typing_is_said_at_the_edge_of_the_window() {
        try (Visit visit = browser.visit(360)) {
            Page page = edit(visit);
            recipes().delete(recipe.id()).orThrow();
            input(page, "notes").evaluate("notes => { notes.closest('details').open = true; }");
            input(page, "notes").fill("more of it");

            assertThat(page.locator("#trouble")).containsText("There is no such recipe.");
            assertThat(page.locator("#trouble")).containsText("What you type now is not kept.");
            assertThat(page.locator("#trouble")).isInViewport();
            assertThat(input(page, "notes")).hasValue("more of it");
        }
    }

    @Test
    void the_button_says_what_saving_does() {
        try (Visit visit = browser.visit(DESK)) {
            Page page = edit(visit);
            Locator save = page.locator("button[value='save']");
            String over = "Save over version " + recipe.newest().number();
            String next = "Save as version " + (recipe.newest().number() + 1);

            assertThat(save).hasAccessibleName(over);
            page.locator("[name='as-next']").check();
            assertThat(save).hasAccessibleName(next);
        }
    }
}
