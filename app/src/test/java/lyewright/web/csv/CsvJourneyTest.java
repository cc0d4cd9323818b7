package lyewright.web.csv;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.setting.Units;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A maker's spreadsheet goes into the cupboard and comes out again, in a real browser. */
@Tag("journey")
class CsvJourneyTest {

    private static final String AREA = "csv";
    private static final String FILE = """
            Material;kind;Batch;Received;Quantity
            Kokosöl;oil;K-7;25.11.2026;2,5 kg
            Olivenöl;oil;;03/04/2026;5 kg
            """;

    private static TestBrowser browser;

    @TempDir
    Path home;

    private TestWorkshop workshop;

    @BeforeAll
    static void start() {
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
    }

    @BeforeEach
    void open() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new CsvPages(shop)));
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .click();
    }

    private Page chosen(Visit visit) {
        Page page = visit.page();
        page.navigate(workshop.at() + "/stores/csv");
        page.locator("#file")
                .setInputFiles(new FilePayload("cupboard.csv", "text/csv", FILE.getBytes(StandardCharsets.ISO_8859_1)));
        return page;
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_file_is_looked_at_put_right_and_kept(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = chosen(visit);
            visit.keepPicture(AREA, "in-and-out");
            visit.isSound();
            press(page, "Look at it");
            assertThat(page.locator(".csv-told")).hasText("1 new, 0 already there, 1 with a problem");
            visit.keepPicture(AREA, "looked-at");
            visit.isSound();
            page.locator("#days").selectOption("day");
            press(page, "Read it this way");
            assertThat(page.locator(".csv-told")).hasText("2 new, 0 already there");
            press(page, "Keep the 2 new");
            assertThat(page.locator(".csv-told")).hasText("2 new, 0 already there");
            visit.keepPicture(AREA, "kept");
            visit.isSound();
            assertThat(workshop.shop().records().lots().held()).hasSize(2);
        }
    }

    @Test
    void without_scripts_and_in_the_dark_it_is_the_same() throws Exception {
        try (Visit visit = browser.visitWithoutScripts(820)) {
            Page page = chosen(visit);
            press(page, "Look at it");
            press(page, "Keep the 1 new");
            assertThat(page.locator(".csv-told")).hasText("1 new, 0 already there, 1 with a problem");
            Download rest = page.waitForDownload(
                    () -> page.getByText("Download the rows with problems").click());
            assertThat(Files.readString(rest.path())).contains("Olivenöl").contains("may be day and month");
            page.navigate(workshop.at() + "/stores/csv");
            Download all = page.waitForDownload(() -> press(page, "lots.csv"));
            assertThat(Files.readString(all.path())).contains("Kokosöl");
        }
        try (Visit dark = browser.darkVisit(1440)) {
            Page page = chosen(dark);
            press(page, "Look at it");
            dark.keepPicture(AREA, "looked-at");
            dark.isSound();
        }
    }
}
