package lyewright.web.recipe;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lyewright.web.TestBrowser;
import lyewright.web.photograph.SomePhotograph;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The recipes as a maker goes through them, in a real browser. */
@Tag("journey")
class RecipeJourneyTest {

    private static final String AREA = "recipes";

    @TempDir
    static Path home;

    private static RecipeShop shop;
    private static TestBrowser browser;

    private String tideline = "";

    @BeforeAll
    static void open() {
        shop = new RecipeShop(home);
        browser = new TestBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
        shop.close();
    }

    @BeforeEach
    void recipes() {
        shop.empty();
        for (String name : List.of("plain-castile", "oat-and-linden", "harbour-shave", "rope-walk-charcoal")) {
            shop.keep(RecipeShop.example(name));
        }
        tideline = shop.keep(RecipeShop.example("tideline"));
        String milder = RecipeShop.example("tideline").replace("superfat: 18 %", "superfat: 16 %");
        shop.book()
                .save(tideline, 3, RecipeShop.formula(milder), true, "Lathers sooner with a little less left over.")
                .orThrow();
    }

    static Stream<Integer> widths() {
        return TestBrowser.WIDTHS.stream();
    }

    @ParameterizedTest
    @MethodSource("widths")
    void a_maker_finds_a_recipe_looks_at_it_and_at_what_changed(int width) {
        try (TestBrowser.Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/recipes");
            visit.keepPicture(AREA, "list");
            visit.isSound();

            page.getByRole(AriaRole.SEARCHBOX).pressSequentially("tide");
            assertThat(page.locator(".card")).hasCount(1);
            assertThat(page).hasURL(Pattern.compile("q=tide"));
            visit.isSound();

            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Tideline"))
                    .click();
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName("Tideline")))
                    .isVisible();
            visit.keepPicture(AREA, "recipe");
            visit.isSound();
            for (Locator fold : page.locator("details").all()) {
                fold.locator("summary").click();
            }
            visit.keepPicture(AREA, "recipe-unfolded");
            visit.isSound();

            page.getByText("What changed from 3").click();
            assertThat(page.getByText("superfat 18 → 16 %", new Page.GetByTextOptions().setExact(false)))
                    .isVisible();
            visit.keepPicture(AREA, "compare");
            visit.isSound();

            page.locator(".side").first().getByRole(AriaRole.LINK).click();
            assertThat(page.getByText("An old version.")).isVisible();
            visit.keepPicture(AREA, "old-version");
            visit.isSound();
        }
    }

    @ParameterizedTest
    @MethodSource("widths")
    void a_recipe_is_deleted_put_back_and_copied(int width) {
        try (TestBrowser.Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/recipes/" + tideline);
            button(page, "Delete").click();
            assertThat(page.getByText("Tideline is deleted.")).isVisible();
            assertThat(page.locator(".card")).hasCount(4);
            visit.keepPicture(AREA, "deleted-just-now");
            visit.isSound();

            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Deleted recipes"))
                    .click();
            visit.keepPicture(AREA, "deleted");
            visit.isSound();
            page.locator("form[action='/recipes/" + tideline + "/undelete'] button")
                    .click();
            assertThat(page.getByText("Tideline is back.")).isVisible();

            button(page, "Duplicate").click();
            assertThat(page.getByRole(
                            AriaRole.HEADING,
                            new Page.GetByRoleOptions()
                                    .setName("Tideline, a copy")
                                    .setLevel(1)))
                    .isVisible();
            visit.isSound();
        }
    }

    @ParameterizedTest
    @MethodSource("widths")
    void a_file_is_put_right_where_it_came_back_and_imported(int width) {
        try (TestBrowser.Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/recipes/import");
            visit.isSound();
            page.locator("#file").setInputFiles(file("plain.yaml", RecipeShop.PLAIN.replace("6 %", "6,5 %")));
            button(page, "Import").click();
            assertThat(page.getByText("Line 9, column 11")).isVisible();
            visit.forgetComplaintsOf(422);
            visit.keepPicture(AREA, "import");
            visit.isSound();

            Locator text = page.locator("#text");
            text.fill(text.inputValue().replace("6,5 %", "6.5 %"));
            button(page, "Import").click();
            assertThat(page.getByText("Plain is a new recipe")).isVisible();
            visit.isSound();
        }
    }

    private static FilePayload file(String name, String text) {
        return new FilePayload(name, "application/yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @MethodSource("widths")
    void a_photograph_stands_on_the_page_and_in_the_list(int width) {
        try (TestBrowser.Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/recipes/" + tideline);
            page.locator("#photograph").setInputFiles(new FilePayload("x.svg", "image/jpeg", SomePhotograph.svg()));
            button(page, "Add photograph").click();
            assertThat(page.getByText("a drawing (SVG)", new Page.GetByTextOptions().setExact(false)))
                    .isVisible();
            visit.forgetComplaintsOf(422);
            visit.isSound();

            page.locator("#photograph").setInputFiles(new FilePayload("bar.jpg", "image/jpeg", SomePhotograph.jpeg()));
            button(page, "Add photograph").click();
            assertThat(page.getByRole(AriaRole.IMG, new Page.GetByRoleOptions().setName("Photograph of Tideline")))
                    .isVisible();
            visit.keepPicture(AREA, "recipe-with-photograph");
            visit.isSound();
            page.navigate(shop.address() + "/recipes?q=tideline");
            assertThat(page.locator(".card img")).hasJSProperty("naturalWidth", 480);
            visit.keepPicture(AREA, "list-with-photograph");
            visit.isSound();
        }
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @Test
    void dark_pages_are_as_sound() {
        try (TestBrowser.Visit visit = browser.darkVisit(820)) {
            for (String path : List.of("", "/" + tideline, "/" + tideline + "/compare", "/import", "/deleted")) {
                visit.page().navigate(shop.address() + "/recipes" + path);
                visit.keepPicture(
                        AREA, "page" + path.replace(tideline, "recipe").replace('/', '-'));
                visit.isSound();
            }
        }
    }

    @Test
    void hostile_names_stay_inside_the_window() {
        shop.empty();
        for (String name : List.of("<script>alert(1)</script>", "صابون الغار", "lot 7 صابون, mild", "n".repeat(200))) {
            shop.keep(RecipeShop.named(name));
        }
        for (int width : TestBrowser.WIDTHS) {
            try (TestBrowser.Visit visit = browser.visit(width)) {
                visit.page().navigate(shop.address() + "/recipes");
                visit.keepPicture(AREA, "hostile-names");
                visit.fits();
                for (String recipe : visit.page().locator(".card-link").all().stream()
                        .map(link -> link.getAttribute("href"))
                        .toList()) {
                    visit.page().navigate(shop.address() + recipe);
                    visit.fits();
                    visit.page().navigate(shop.address() + recipe + "/compare");
                    visit.fits();
                }
            }
        }
    }

    @Test
    void all_of_it_works_without_javascript() throws IOException {
        try (TestBrowser.Visit visit = browser.visitWithoutScripts(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/recipes");
            page.locator("#q").fill("castile");
            page.locator("#q").press("Enter");
            assertThat(page.locator(".card")).hasCount(1);
            page.locator(".card-link").click();
            Download download =
                    page.waitForDownload(() -> page.getByText("Formula file").click());
            assertThat(download.suggestedFilename()).isEqualTo("Plain Castile 1.yaml");
            assertThat(Files.readString(download.path())).contains("recipe: Plain Castile");
            page.locator("#photograph").setInputFiles(new FilePayload("bar.jpg", "image/jpeg", SomePhotograph.jpeg()));
            button(page, "Add photograph").click();
            assertThat(page.getByText("The photograph is kept.")).isVisible();
            button(page, "Delete").click();
            button(page, "Put it back").click();
            assertThat(page.getByText("Plain Castile is back.")).isVisible();
            page.navigate(shop.address() + "/recipes/import");
            page.locator("#text").fill(RecipeShop.PLAIN);
            button(page, "Import").click();
            assertThat(page.getByText("Plain is a new recipe")).isVisible();
            page.getByText("Compare with another").click();
            page.locator("#b").selectOption("Tideline");
            button(page, "Compare").click();
            assertThat(page.getByText("What differs")).isVisible();
        }
    }

    @Test
    void a_keyboard_is_enough() {
        try (TestBrowser.Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/recipes");
            tabTo(page, "#q");
            page.keyboard().type("castile");
            assertThat(page.locator(".card")).hasCount(1);
            tabTo(page, ".card-link");
            page.keyboard().press("Enter");
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName("Plain Castile")))
                    .isVisible();
            tabTo(page, "details.fold > summary");
            page.keyboard().press("Enter");
            assertThat(page.locator("details.fold").first()).hasAttribute("open", "");
            tabTo(page, "form[action$='/delete'] button");
            page.keyboard().press("Enter");
            assertThat(page.getByText("Plain Castile is deleted.")).isVisible();
            tabTo(page, ".notice button");
            page.keyboard().press("Enter");
            assertThat(page.getByText("Plain Castile is back.")).isVisible();
        }
    }

    /** By the tab key alone, to the first element of a kind that it reaches. */
    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 200; i++) {
            page.keyboard().press("Tab");
            if (Boolean.TRUE.equals(page.evaluate("s => document.activeElement.matches(s)", selector))) {
                return;
            }
        }
        throw new AssertionError("the tab key does not reach " + selector);
    }
}
