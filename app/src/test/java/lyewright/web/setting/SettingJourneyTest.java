package lyewright.web.setting;

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
import lyewright.measure.WrittenMass;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.JugUse;
import lyewright.records.setting.Units;
import lyewright.web.Shop;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Settings, a backup taken and put back, in a real browser. */
@Tag("journey")
class SettingJourneyTest {

    private static final String AREA = "settings";

    @TempDir
    private static Path home;

    private static TestWorkshop workshop;
    private static TestBrowser browser;

    @BeforeAll
    static void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new SettingPages(shop, home.resolve("mine"))));
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        workshop.close();
    }

    @BeforeEach
    void one_jug() {
        workshop.shop().backToMine();
        EquipmentRegister register = workshop.shop().records().equipment();
        register.jugs().forEach(jug -> register.removeJug(jug.id()));
        register.addJug("White jug", WrittenMass.ofGrams("312"), JugUse.LYE_JUG).orThrow();
        workshop.shop()
                .records()
                .settings()
                .save(Shop.usual("Gannet Stair Soap", Units.GRAMS))
                .orThrow();
    }

    private static Page open(Visit visit) {
        visit.page().navigate(workshop.at() + "/settings");
        return visit.page();
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .click();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void settings_are_put_right_where_they_are_wrong_and_kept(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = open(visit);
            visit.keepPicture(AREA, "as-they-are");
            visit.isSound();

            page.getByLabel("Currency").fill("Thaler");
            press(page, "Save the settings");
            visit.forgetComplaintsOf(422);
            assertThat(page.locator("#f-currency-trouble")).isVisible();
            assertThat(page.getByLabel("Currency")).hasValue("Thaler");
            visit.keepPicture(AREA, "wrong");
            visit.isSound();

            page.getByLabel("Currency").fill("EUR");
            page.getByLabel("Ounces").check();
            press(page, "Save the settings");
            assertThat(page.locator(".notice")).isVisible();
            assertThat(page.getByLabel("Ounces")).isChecked();
            visit.isSound();
            assertThat(workshop.shop()
                            .records()
                            .settings()
                            .workshop()
                            .orElseThrow()
                            .units())
                    .isEqualTo(Units.OUNCES);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_backup_is_looked_into_before_it_takes_the_place_of_everything(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = open(visit);
            Download backup = page.waitForDownload(
                    () -> page.getByText("Download a backup").click());
            EquipmentRegister register = workshop.shop().records().equipment();
            register.jugs().forEach(jug -> register.removeJug(jug.id()));

            page.locator("#f-backup")
                    .setInputFiles(new FilePayload(
                            "holiday.zip", "application/zip", "no zip".getBytes(StandardCharsets.UTF_8)));
            press(page, "Look into it");
            visit.forgetComplaintsOf(422);
            assertThat(page.locator("#f-backup-trouble")).isVisible();
            visit.keepPicture(AREA, "no-backup");
            visit.isSound();

            page.locator("#f-backup").setInputFiles(backup.path());
            press(page, "Look into it");
            assertThat(page.locator("h1")).hasText("Put this backup back?");
            assertThat(register.jugs()).isEmpty();
            visit.keepPicture(AREA, "put-back");
            visit.isSound();
            press(page, "Put it back in place of everything");
            assertThat(page.locator(".notice")).isVisible();
            assertThat(workshop.shop().records().equipment().jugs()).hasSize(1);
        }
    }

    @Test
    void without_scripts_and_in_the_dark_it_is_the_same() throws Exception {
        try (Visit dark = browser.darkVisit(820)) {
            open(dark);
            dark.keepPicture(AREA, "as-they-are");
            dark.isSound();
        }
        try (Visit visit = browser.visitWithoutScripts(820)) {
            Page page = open(visit);
            page.getByLabel("Fahrenheit").check();
            press(page, "Save the settings");
            assertThat(page.getByLabel("Fahrenheit")).isChecked();
            Download backup = page.waitForDownload(
                    () -> page.getByText("Download a backup").click());
            assertThat(Files.size(backup.path())).isPositive();
            assertThat(visit.complaints()).isEmpty();
        }
    }
}
