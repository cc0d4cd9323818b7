package lyewright.web.start;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A choice that is pressed at once after typing is taken, and takes nothing away that was typed. */
@Tag("journey")
class NotebookClickTest {

    private static final String TEXT = "Bar\ncoconut 200 g\nolive 300 g\nsuperfat 5 %\nwater 150 g\n";

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

    private Locator typed(Page page) {
        page.navigate(server.address("/notebook"));
        Locator text = page.getByLabel("As it stands on paper");
        text.fill(TEXT);
        assertThat(page.locator("#troubles")).containsText("Which 'olive' is it?");
        return text;
    }

    /** Leaving the text asks for an answer; it comes while the button is down, however long that is. */
    @Test
    void an_answer_that_comes_while_a_choice_is_pressed_takes_no_click_away() {
        try (Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            Locator text = typed(page);
            text.press("Control+End");
            page.keyboard().type("castor 50 g");
            page.locator("[data-choose]").first().hover();
            page.waitForResponse("**/notebook/answer", () -> page.mouse().down());
            page.evaluate("() => new Promise(done => requestAnimationFrame(() => setTimeout(done, 30)))");
            page.mouse().up();

            assertThat(text).hasValue(TEXT.replace("olive 300", "olive oil (virgin) 300") + "castor 50 g");
            assertThat(page.locator("#verdict")).containsText("superfat");
        }
    }

    @Test
    void a_choice_changes_only_its_own_words_of_what_was_typed_since() {
        try (Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            Locator text = typed(page);
            page.route("**/notebook/answer", route -> {}); // no answer any more: the choices are of the text above
            text.fill("# tried in spring\n" + TEXT.replace("olive 300", "olive 350"));
            page.evaluate("() => document.querySelector('[data-choose]').click()");
            assertThat(text).hasValue("# tried in spring\n" + TEXT.replace("olive 300", "olive 350"));

            text.fill(TEXT.replace("olive 300", "olive 350"));
            page.evaluate("() => document.querySelector('[data-choose]').click()");
            assertThat(text).hasValue(TEXT.replace("olive 300", "olive oil (virgin) 350"));

            text.fill("# tried in spring\n" + TEXT);
            page.evaluate("() => document.querySelector('[data-choose]').click()");
            assertThat(text).hasValue("# tried in spring\n" + TEXT.replace("olive 300", "olive oil (virgin) 300"));
        }
    }

    @Test
    void what_is_focused_stays_so_when_the_answer_comes() {
        try (Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            Locator text = typed(page);
            text.press("Control+End");
            page.keyboard().type("castor 50 g");
            page.waitForResponse(
                    "**/notebook/answer",
                    () -> page.locator("[data-choose]").first().focus());
            assertThat(page.locator("#choice-3-0")).isFocused();
        }
    }
}
