package lyewright.web.why;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lyewright.formula.FormulaFile;
import lyewright.records.setting.Units;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import lyewright.web.TestWorkshop;
import lyewright.web.make.MakePages;
import lyewright.web.recipe.EditorPages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.start.Start;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of what is typed, and what comes beside a sheet, asked about in a browser. */
@Tag("journey")
class WhyJourneyTest {

    private static final String AREA = "why";

    private static TestWorkshop workshop;
    private static TestBrowser browser;
    private static String tideline = "";
    private static String shave = "";

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        workshop = TestWorkshop.start(
                home,
                Units.GRAMS,
                shop -> List.of(
                        new RecipePages(shop),
                        new EditorPages(shop),
                        new MakePages(shop),
                        new Start(shop),
                        new WhyPages(shop)));
        tideline = keep("tideline");
        shave = keep("harbour-shave");
        browser = new TestBrowser();
    }

    private static String keep(String example) throws Exception {
        return workshop.shop()
                .records()
                .recipes()
                .add(FormulaFile.read(Files.readString(Path.of("..", "examples", example + ".yaml")))
                        .formula()
                        .orElseThrow())
                .orThrow()
                .recipeId();
    }

    @AfterAll
    static void close() {
        browser.close();
        workshop.close();
    }

    private static String address(String path) {
        return workshop.at() + path;
    }

    private static Visit visit(int width, boolean dark) {
        return dark ? browser.darkVisit(width) : browser.visit(width);
    }

    private static void asked(Visit visit, String picture) {
        Page page = visit.page();
        Locator why = page.locator("main button.why:visible").first();
        why.click();
        assertThat(page.locator("dialog .reason-value")).isVisible();
        page.locator("dialog .exact summary").click();
        assertThat(page.locator("dialog .exact-figures")).isVisible();
        visit.keepPicture(AREA, picture);
        visit.isSound();
        page.keyboard().press("Escape");
        assertThat(page.locator("dialog")).isHidden();
        assertThat(why).isFocused();
    }

    @ParameterizedTest
    @CsvSource({"360, false", "820, true", "1440, false"})
    void what_is_typed_is_asked_about_where_it_is_typed(int width, boolean dark) {
        try (Visit visit = visit(width, dark)) {
            visit.page().navigate(address("/recipes/" + tideline + "/edit"));
            asked(visit, "editor");

            visit.page().navigate(address("/notebook"));
            visit.page()
                    .locator("textarea[name=text]")
                    .fill("Trial\ncoconut oil 350 g\nolive oil (virgin) 350 g\nsoda 98 g\nwater 215 g");
            asked(visit, "notebook");
        }
    }

    @ParameterizedTest
    @CsvSource({"360, false", "820, true", "1440, false"})
    void what_the_bar_becomes_and_two_beside_each_other_are_sound(int width, boolean dark) {
        try (Visit visit = visit(width, dark)) {
            for (List<String> page : List.of(
                    List.of("becomes", "/make/becomes?recipe=" + tideline + "&much=total&amount=1500g"),
                    List.of("compare", "/recipes/compare?a=" + tideline + "&b=" + shave),
                    List.of("drawn", "/why?recipe=" + tideline + "&figure=superfat.low95Percent"))) {
                visit.page().navigate(address(page.get(1)));
                visit.keepPicture(AREA, page.get(0));
                visit.isSound();
            }
        }
    }

    @Test
    void without_javascript_it_is_a_page_that_leads_back() {
        try (Visit visit = browser.visitWithoutScripts(820)) {
            Page page = visit.page();
            page.navigate(address("/recipes/" + tideline + "/edit"));
            page.locator("main button.why:visible").first().click();
            assertThat(page.locator(".reason-value")).isVisible();
            visit.fits();
            page.locator("button.link").click();
            assertThat(page.locator("#editor")).isVisible();
        }
    }
}
