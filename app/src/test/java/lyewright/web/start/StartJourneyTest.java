package lyewright.web.start;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The first minutes, in a browser. */
@Tag("journey")
class StartJourneyTest {

    private static final String AREA = "start";
    private static final Pattern ANSWERED = Pattern.compile("This is an? [0-9.]+ % superfat, give or take .*");

    private static TestBrowser browser;

    @TempDir
    private Path folder;

    private StartServer server;

    @BeforeAll
    static void open() {
        browser = new TestBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @BeforeEach
    void start() {
        server = new StartServer(folder);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void from_the_first_page_to_a_kept_recipe(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(server.address("/"));
            assertThat(page).hasURL(server.address("/start"));
            visit.isSound();
            visit.keepPicture(AREA, "1-first-page");

            Locator text = page.getByLabel("As it stands on paper");
            text.pressSequentially("Harbour trial\ncoconut oil 350 g\nolive oil 350 g\ncastor 50 g\nsoda 1");
            assertThat(page.locator("#troubles")).containsText("Which 'olive oil' is it?");
            assertThat(page.locator("[data-typing]")).containsText("soda 1");
            visit.keepPicture(AREA, "2-half-typed");
            text.pressSequentially("08 g\nwater 215 g\nlavender 20 g at trace");
            visit.isSound();
            page.getByRole(AriaRole.BUTTON, button("Olive oil (virgin)")).click();
            assertThat(text)
                    .hasValue("Harbour trial\ncoconut oil 350 g\nolive oil (virgin) 350 g\ncastor 50 g\nsoda 108 g\n"
                            + "water 215 g\nlavender 20 g at trace");
            assertThat(page.locator("#verdict")).hasText(ANSWERED);
            assertThat(page.locator("#sheet")).containsText("As it stands it makes 1093 g");

            page.getByLabel("Your mould").fill("300 x 80 x 65 mm");
            assertThat(page.locator("#sheet")).containsText("Your loaf takes 1.4 times this recipe.");
            visit.isSound();
            visit.keepPicture(AREA, "3-answered");

            page.locator("#k-workshop").fill("Quay Lane Soap");
            page.getByRole(AriaRole.BUTTON, button("Keep it as a recipe")).click();
            assertThat(page).hasURL(Pattern.compile(".*/recipes/[0-9a-f-]{36}"));
            assertThat(page.locator("h1")).hasText("Harbour trial");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void every_state_of_the_notebook_is_sound_dark_and_light(int width) {
        List<Visit> visits =
                width == 820 ? List.of(browser.visit(width), browser.darkVisit(width)) : List.of(browser.visit(width));
        for (Visit visit : visits) {
            try (visit) {
                Page page = visit.page();
                page.navigate(server.address("/notebook"));
                visit.isSound();
                Locator text = page.getByLabel("As it stands on paper");
                text.fill("coconut 350 g\nsoda 90 g\nwater 120 g");
                assertThat(page.locator("#answer .caution").first()).containsText("stays caustic");
                visit.isSound();
                visit.keepPicture(AREA, "4-too-much-soda");
                text.fill("coconut 350 g\nnothing known 5 g\nsoda 50 g\nwater 120 g");
                page.getByLabel("Your mould").focus();
                assertThat(page.locator(".numbers .wrong")).hasText("2");
                assertThat(page.locator("#verdict")).hasText("The answer comes when line 2 is understood.");
                visit.isSound();
                visit.keepPicture(AREA, "5-a-line-is-wrong");
                text.fill("coconut 350 g\nsoda 50 g\nwater 120 g");
                assertThat(page.locator("#verdict")).hasText(ANSWERED);
                page.getByRole(AriaRole.BUTTON, button("In boxes instead")).click();
                assertThat(page.getByLabel("What, row 1")).hasValue("coconut");
                visit.isSound();
                visit.keepPicture(AREA, "6-in-boxes");
            }
        }
    }

    @Test
    void the_keyboard_alone_is_enough() {
        try (Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            page.navigate(server.address("/start"));
            tabTo(page, "f-text");
            page.keyboard().type("Harbour trial\ncoconut 350 g\nolvie-virgin 350 g\nsoda 105 g\nwater 215 g");
            assertThat(page.locator("[data-choose]")).hasCount(1);
            tabToText(page, "Line 3");
            page.keyboard().press("Enter");
            assertThat(page.getByLabel("As it stands on paper")).isFocused();
            page.keyboard().type("olive-virgin 350 g");
            assertThat(page.locator("#verdict")).hasText(ANSWERED);
            tabTo(page, "f-mould-text");
            page.keyboard().type("1500 g");
            assertThat(page.locator("#sheet")).containsText("1500 g is one and a half times this recipe.");
            tabTo(page, "k-workshop");
            page.keyboard().type("Quay Lane Soap");
            tabToText(page, "Keep it as a recipe");
            page.keyboard().press("Enter");
            assertThat(page.locator("h1")).hasText("Harbour trial");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    private static void tabTo(Page page, String id) {
        tabUntil(page, "id => document.activeElement.id === id", id);
    }

    private static void tabToText(Page page, String text) {
        tabUntil(page, "text => document.activeElement.textContent.trim() === text", text);
    }

    private static void tabUntil(Page page, String reached, String argument) {
        for (int i = 0; i < 60; i++) {
            if (Boolean.TRUE.equals(page.evaluate(reached, argument))) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the keyboard does not reach " + argument);
    }

    @Test
    void without_javascript_the_same_is_done_by_whole_pages() {
        try (Visit visit = browser.visitWithoutScripts(820)) {
            Page page = visit.page();
            page.navigate(server.address("/start"));
            page.getByLabel("As it stands on paper").fill("coconut 350 g\ncastro 50 g\nsoda 55 g\nwater 120 g");
            page.getByLabel("Your mould").fill("1 kg");
            page.getByRole(AriaRole.BUTTON, button("Work it out")).click();
            visit.forgetComplaintsOf(422);
            assertThat(page.locator("#troubles")).containsText("Did you mean castor oil?");
            page.getByRole(AriaRole.BUTTON, button("Castor oil")).click();
            assertThat(page.locator("#verdict")).hasText(ANSWERED);
            assertThat(page.locator("#sheet")).containsText("1 kg is ");
            visit.keepPicture(AREA, "7-whole-page");
            page.getByRole(AriaRole.BUTTON, button("Keep it as a recipe")).click();
            visit.forgetComplaintsOf(422);
            assertThat(page.locator("#k-name-trouble")).containsText("The recipe has no name yet.");
            visit.keepPicture(AREA, "8-name-asked");
            page.locator("#k-name").fill("Trial");
            page.locator("#k-workshop").fill("Quay Lane Soap");
            page.getByRole(AriaRole.BUTTON, button("Keep it as a recipe")).click();
            assertThat(page.locator("h1")).hasText("Trial");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void what_was_typed_is_there_again_after_the_page_was_left() {
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(server.address("/notebook"));
            page.getByLabel("As it stands on paper").fill("coconut 350 g\nsoda 50 g\nwater 120 g");
            assertThat(page.locator("#verdict")).hasText(ANSWERED);
            page.navigate("about:blank");
            page.navigate(server.address("/notebook"));
            assertThat(page.getByLabel("As it stands on paper")).hasValue("coconut 350 g\nsoda 50 g\nwater 120 g");
            assertThat(page.locator("#verdict")).hasText(ANSWERED);
        }
    }

    @Test
    void the_answer_to_an_older_text_never_stays() {
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(server.address("/notebook"));
            Locator text = page.getByLabel("As it stands on paper");
            for (int soda = 40; soda <= 50; soda++) {
                text.fill("coconut 350 g\nsoda " + soda + " g\nwater 120 g");
            }
            assertThat(page.locator("#sheet")).containsText("50.0 g");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void the_demo_workshop_is_looked_round() {
        try (Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            page.navigate(server.address("/"));
            page.getByRole(AriaRole.BUTTON, button("Look round the demo workshop"))
                    .first()
                    .click();
            assertThat(page.locator("h1")).hasText("Recipes of Gannet Stair Soap");
            page.navigate(server.address("/notebook"));
            page.getByLabel("Your mould").selectOption("Ash loaf");
            page.getByLabel("As it stands on paper").fill("coconut 350 g\nsoda 50 g\nwater 120 g");
            assertThat(page.locator("#sheet")).containsText("Ash loaf takes");
            visit.isSound();
            visit.keepPicture(AREA, "9-in-the-demo-workshop");
            page.navigate(server.address("/start"));
            visit.isSound();
            visit.keepPicture(AREA, "10-start-mine");
            page.getByLabel("Your workshop's name").last().fill("Quay Lane Soap");
            page.getByRole(AriaRole.BUTTON, button("Start mine")).click();
            assertThat(page.locator("h1")).hasText("Recipes of Quay Lane Soap");
            assertThat(visit.complaints()).isEmpty();
        }
    }
}
