package lyewright.app;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.people.Role;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A helper's telephone is let in, shows what a helper sees, and is shown out: in real browsers, one at the desk and one at the bench. */
@Tag("journey")
class DoorsJourneyTest {

    private static final String AREA = "people";

    /** What the stylesheet takes out of a helper's pages, beside buttons; the same list as there. */
    private static final Pattern TAKEN_OUT = Pattern.compile(
            ".*/(new|edit)|/settings.*|/notebook.*|/start|/recipes/(import|new|deleted).*|/stores/csv.*");

    private static final int MOST_PAGES = 120;

    @TempDir
    private static Path home;

    private static TestDoors doors;
    private static TestBrowser browser;

    @BeforeAll
    static void a_workshop_with_something_in_it() throws Exception {
        try (TestDoors first = TestDoors.open(home.resolve("first"), false)) {
            first.desk().post("/start/demo");
        }
        // the demo workshop's records, as the maker's own
        Files.createDirectories(home.resolve("second"));
        Files.move(home.resolve("first").resolve("demo"), home.resolve("second").resolve("mine"));
        doors = TestDoors.open(home.resolve("second"), false);
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        doors.close();
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    private static void heading(Page page, String name) {
        assertThat(page.getByRole(
                        AriaRole.HEADING,
                        new Page.GetByRoleOptions().setName(name).setLevel(1)))
                .isVisible();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_telephone_is_let_in_and_shown_out(int width) {
        String name = "Wenna" + width;
        String id =
                doors.shop().records().people().add(name, Role.HELPER).orThrow().id();
        try (Visit desk = browser.visit(width);
                Visit bench = browser.visit(width)) {
            Page at = desk.page();
            at.navigate("http://localhost:" + doors.server().port() + "/settings/people");
            heading(at, "People and devices");
            desk.isSound();
            at.locator("#p-" + id + " form[action$='/code'] button").click();
            heading(at, "Let a device in");
            desk.isSound();
            desk.keepPicture(AREA, "code");
            String code = at.locator(".the-code").textContent();

            Page phone = bench.page();
            phone.navigate("http://localhost:" + doors.networkPort() + "/stores/count");
            heading(phone, "Let this device in");
            bench.isSound();
            bench.keepPicture(AREA, "stranger");
            phone.getByLabel("Code").fill(code);
            phone.getByLabel("Call this device").fill("telephone of " + name);
            press(phone, "Let this device in");
            assertThat(phone.locator("form[action='/stores/count'][method='post']"))
                    .isVisible();
            bench.isSound();
            bench.keepPicture(AREA, "count");

            // the desk's page says so by itself
            assertThat(at.locator("#fate")).containsText("telephone of " + name + " is in");

            phone.navigate("http://localhost:" + doors.networkPort() + "/me");
            heading(phone, name);
            bench.isSound();
            bench.keepPicture(AREA, "me");
            looks(bench, "/recipes", "Recipes");
            phone.locator("main a[href^='/recipes/']:visible").first().click();
            assertThat(phone.getByRole(AriaRole.BUTTON)
                            .filter(new Locator.FilterOptions().setHasText(Pattern.compile("Delete|Duplicate"))))
                    .hasCount(0);
            bench.isSound();
            bench.keepPicture(AREA, "helper-recipe");

            phone.navigate("http://localhost:" + doors.networkPort() + "/stores/count");
            at.navigate("http://localhost:" + doors.server().port() + "/settings/people");
            press(at, "Show telephone of " + name + " of " + name + " out");
            assertThat(at.locator(".notice")).containsText("The device is out");
            desk.isSound();
            desk.keepPicture(AREA, "people");
            phone.locator("form[action='/stores/count'][method='post'] button")
                    .last()
                    .click();
            assertThat(phone.locator("[data-what]")).containsText("not let in");
            bench.forgetComplaintsOf(401);
            bench.isSound();
        }
    }

    private static void looks(Visit visit, String path, String heading) {
        visit.page().navigate("http://localhost:" + doors.networkPort() + path);
        heading(visit.page(), heading);
        visit.isSound();
    }

    /** No link that a helper sees leads to what is not theirs, and no button that they see sends what is refused. */
    @Test
    void a_helper_is_led_nowhere_in_vain() {
        String id = doors.shop()
                .records()
                .people()
                .add("Jory", Role.HELPER)
                .orThrow()
                .id();
        TestDoors.Device phone = doors.letIn(id);
        Deque<String> ahead = new ArrayDeque<>(List.of("/recipes", "/stores", "/stores/cupboard", "/make"));
        Set<String> seen = new HashSet<>(ahead);
        int looked = 0;
        while (!ahead.isEmpty() && looked < MOST_PAGES) {
            String path = ahead.remove();
            var page = phone.get(path);
            looked++;
            assertThat(page.statusCode()).as(path).isIn(200, 302, 303);
            Matcher link = Pattern.compile("<a\\b[^>]*href=\"(/[^\"#]*)").matcher(page.body());
            while (link.find()) {
                String to = link.group(1).replace("&amp;", "&");
                if (!TAKEN_OUT.matcher(to).matches() && !to.startsWith("/static") && seen.add(to)) {
                    ahead.add(to);
                }
            }
        }
        assertThat(looked).isGreaterThan(60);
    }
}
