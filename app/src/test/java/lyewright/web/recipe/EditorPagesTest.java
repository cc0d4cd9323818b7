package lyewright.web.recipe;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.recipe.Recipe;
import lyewright.web.TestBrowser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The editor in a browser. */
class EditorPagesTest {

    private static EditorBench bench;
    private static TestBrowser browser;

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

    private static String edit(Recipe recipe) {
        return bench.address("recipes/" + recipe.id() + "/edit");
    }

    private static Locator input(Page page, String name) {
        return page.locator("[name='" + name + "']");
    }

    @Test
    void every_state_of_the_page_is_sound_at_every_width() {
        Recipe recipe = bench.tideline();
        for (int width : TestBrowser.WIDTHS) {
            for (TestBrowser.Visit visit :
                    List.of(browser.visit(width), browser.darkVisit(width), browser.visitWithoutScripts(width))) {
                try (visit) {
                    visit.page().navigate(bench.address("recipes/new"));
                    visit.keepPicture("editor", "new");
                    visit.isSound();
                    visit.page().navigate(edit(recipe));
                    visit.keepPicture("editor", "tideline");
                    visit.isSound();
                }
            }
        }
    }
}
