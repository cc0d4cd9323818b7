package lyewright.web.stores;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.material.OwnMaterials;
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

/** The stores in a real browser: typed, seen, undone. */
@Tag("journey")
class StoresJourneyTest {

    private static final String PICTURES = "stores";

    @TempDir
    private static Path home;

    private static TestWorkshop workshop;
    private static TestBrowser browser;

    @BeforeAll
    static void start() {
        workshop = TestWorkshop.start(home, Units.GRAMS, shop -> List.of(new StoresPages(shop)));
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        workshop.close();
    }

    @BeforeEach
    void clear() {
        workshop.shop().startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        EquipmentRegister register = workshop.shop().records().equipment();
        register.moulds().forEach(mould -> register.removeMould(mould.id()));
        register.balances().forEach(balance -> register.removeBalance(balance.id()));
        register.jugs().forEach(jug -> register.removeJug(jug.id()));
        OwnMaterials materials = workshop.shop().records().materials();
        materials.list().forEach(material -> materials.remove(material.id()));
    }

    private static Page open(Visit visit, String path) {
        visit.page().navigate(workshop.at() + path);
        return visit.page();
    }

    private static void click(Page page, AriaRole role, String name) {
        page.getByRole(role, new Page.GetByRoleOptions().setName(name)).first().click();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_mould_is_drawn_while_it_is_typed_kept_and_taken_out_again(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = open(visit, "/stores");
            visit.isSound();
            visit.keepPicture(PICTURES, "empty");
            click(page, AriaRole.LINK, "Add a mould");
            visit.isSound();
            visit.keepPicture(PICTURES, "mould-kinds");
            page.locator("a.kind", new Page.LocatorOptions().setHasText("A long box"))
                    .click();
            page.getByLabel("Length, width and height inside").pressSequentially("300 x 80");
            assertThat(page.locator("#shown")).containsText("has 2 measures, not 3");
            page.getByLabel("Length, width and height inside").pressSequentially(" x 65 mm");
            assertThat(page.locator("#shown svg")).isVisible();
            page.getByLabel("A bar's thickness").pressSequentially("25 mm");
            assertThat(page.locator("#shown")).containsText("12 bars, 25 mm thick.");
            assertThat(page.locator("#shown")).containsText("Holds 1560 ml");
            visit.isSound();
            visit.keepPicture(PICTURES, "mould-typed");
            click(page, AriaRole.BUTTON, "Add it");
            visit.forgetComplaintsOf(422);
            assertThat(page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)))
                    .hasAttribute("aria-invalid", "true");
            assertThat(page.getByLabel("A bar's thickness")).hasValue("25 mm");
            visit.isSound();
            visit.keepPicture(PICTURES, "mould-without-name");
            page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Long loaf");
            click(page, AriaRole.BUTTON, "Add it");
            assertThat(page.locator(".notice")).containsText("Long loaf was added.");
            visit.isSound();
            visit.keepPicture(PICTURES, "mould-added");
            click(page, AriaRole.BUTTON, "Take it out again");
            assertThat(page.locator(".notice")).containsText("Long loaf was removed.");
            click(page, AriaRole.BUTTON, "Put it back");
            click(page, AriaRole.LINK, "Long loaf");
            visit.isSound();
            visit.keepPicture(PICTURES, "mould");
            click(page, AriaRole.BUTTON, "Remove this mould");
            assertThat(page.locator("#moulds")).containsText("None yet");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_certificate_goes_before_the_tables(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = open(visit, "/stores/tables");
            page.getByLabel("Find an oil or an addition").pressSequentially("coconut");
            assertThat(page.locator("#found h2").first()).isVisible();
            page.waitForCondition(() -> page.locator("#found tbody tr").count() < 20);
            assertThat(page.url()).contains("q=coconut");
            visit.isSound();
            visit.keepPicture(PICTURES, "tables-searched");
            click(page, AriaRole.LINK, "Coconut oil");
            visit.isSound();
            visit.keepPicture(PICTURES, "table-card");
            click(page, AriaRole.LINK, "Use a certificate of my own for it");
            assertThat(page.locator("#shown")).containsText("248 to 265");
            page.getByLabel("Saponification value, mg KOH/g").pressSequentially("257 ± 1.5");
            assertThat(page.locator("#shown")).containsText("With this a sheet computes with 257.0 mg KOH/g");
            page.getByLabel("Where the figures come from").fill("certificate N-77");
            visit.isSound();
            visit.keepPicture(PICTURES, "certificate");
            click(page, AriaRole.BUTTON, "Add it");
            assertThat(page.locator("#materials")).containsText("257 ± 1.5 mg KOH/g");
            assertThat(page.locator("#materials")).containsText("certificate N-77");
            visit.isSound();
        }
    }

    @Tag("sweep")
    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void every_other_page_is_sound_in_light_and_dark(int width) throws Exception {
        fill();
        String jug = workshop.shop().records().equipment().jugs().get(0).id();
        String balance = workshop.shop().records().equipment().balances().get(0).id();
        List<String> pages = List.of(
                "/stores",
                "/stores/tables",
                "/stores/tables/green-clay",
                "/stores/moulds/new?kind=slab",
                "/stores/moulds/new?kind=tube",
                "/stores/moulds/new?kind=cavities",
                "/stores/moulds/new?kind=unmeasured",
                "/stores/balances/new",
                "/stores/balances/" + balance,
                "/stores/jugs/" + jug,
                "/stores/materials/new",
                "/stores/materials/new?kind=oil",
                "/stores/materials/new?kind=oils",
                "/stores/materials/new?kind=lye",
                "/stores/materials/new?kind=milk",
                "/stores/materials/new?kind=tables");
        try (Visit visit = browser.visit(width)) {
            pages.forEach(path -> look(visit, path));
        }
        if (width == 820) {
            try (Visit visit = browser.darkVisit(width)) {
                pages.forEach(path -> look(visit, path));
            }
        }
    }

    private static void look(Visit visit, String path) {
        Page page = open(visit, path);
        // what is folded away must be sound too
        page.evaluate("() => document.querySelectorAll('details').forEach(fold => { fold.open = true; })");
        visit.isSound();
        visit.keepPicture(
                PICTURES, path.substring(1).replaceAll("[0-9a-f-]{36}", "one").replaceAll("[^a-z]+", "-"));
    }

    private static void fill() throws Exception {
        workshop.post(
                "/stores/moulds",
                "kind",
                "loaf",
                "name",
                "Long loaf",
                "size",
                "300 x 80 x 65 mm",
                "bar",
                "25 mm",
                "blade",
                "1.5 mm",
                "ends",
                "5 mm",
                "trim",
                "3 mm");
        workshop.post(
                "/stores/moulds",
                "kind",
                "slab",
                "name",
                "Kitchen slab",
                "size",
                "14 x 9.5 x 1.25 in",
                "bar",
                "2.5 x 3 in");
        workshop.post("/stores/moulds", "kind", "tube", "name", "Drainpipe", "size", "300 x 76 mm", "bar", "25 mm");
        workshop.post("/stores/moulds", "kind", "cavities", "name", "Shells", "size", "12 x 95 ml");
        workshop.post("/stores/moulds", "kind", "unmeasured", "name", "Old wooden box", "water", "1.52 kg");
        workshop.post("/stores/balances", "name", "kitchen", "capacity", "5 kg", "step", "1 g");
        workshop.post("/stores/balances", "name", "letters", "capacity", "11 lb", "step", "0.05 oz", "class", "III");
        workshop.post("/stores/jugs", "name", "White jug", "empty", "312 g", "use", "lye jug");
        workshop.post("/stores/jugs", "name", "Blue jug", "empty", "298 g", "use", "lye jug");
        workshop.post(
                "/stores/materials",
                "kind",
                "oil",
                "key",
                "house-olive",
                "saponification value",
                "189.5 ± 1.0",
                "source",
                "certificate L-204");
        workshop.post(
                "/stores/materials",
                "kind",
                "oils",
                "key",
                "a-bucket-with-a-very-long-name-that-nobody-would-write-on-a-label",
                "oils",
                "house-olive 60\ncoconut 40");
    }

    @Test
    void a_workshop_in_ounces_is_asked_and_told_in_ounces_first() throws Exception {
        workshop.shop().startMine(Shop.usual("Gannet Stair Soap", Units.OUNCES));
        fill();
        try (Visit visit = browser.visit(820)) {
            Page page = open(visit, "/stores");
            assertThat(page.locator("#jugs")).containsText("11 oz (312 g)");
            assertThat(page.locator("#balances")).containsText("carries 11 lb in steps of 0.05 oz");
            visit.keepPicture(PICTURES, "in-ounces");
            open(visit, "/stores/moulds/new?kind=loaf");
            assertThat(page.getByText("as in 12 x 3 x 2.5 in")).isVisible();
            page.getByLabel("Length, width and height inside").fill("12\" x 3\" x 2½\"");
            assertThat(page.locator("#shown")).containsText("Holds 1475 ml (51.9 oz of water)");
            assertThat(page.locator("#shown svg")).containsText("12 in");
            visit.isSound();
        }
    }

    @Test
    void a_mould_is_added_with_the_keyboard_alone() {
        try (Visit visit = browser.visit(820)) {
            Page page = open(visit, "/stores");
            tabTo(page, "Add a mould");
            page.keyboard().press("Enter");
            page.waitForURL("**/moulds/new");
            tabTo(page, "Cavities");
            page.keyboard().press("Enter");
            page.waitForURL("**kind=cavities");
            tabTo(page, "f-name");
            page.keyboard().type("Shells");
            page.keyboard().press("Tab");
            page.keyboard().type("12 x 95 ml");
            page.keyboard().press("Enter");
            assertThat(page.locator(".notice")).containsText("Shells was added.");
            tabTo(page, "Take it out again");
            page.keyboard().press("Enter");
            assertThat(page.locator(".notice")).containsText("Shells was removed.");
        }
    }

    /** Presses Tab until the focus is on what has a text or an id. */
    private static void tabTo(Page page, String what) {
        for (int i = 0; i < 60; i++) {
            page.keyboard().press("Tab");
            Object here = page.evaluate("() => { const here = document.activeElement;"
                    + " return here.matches('a, button, input') ? here.id + ' ' + here.textContent : ''; }");
            if (String.valueOf(here).contains(what)) {
                return;
            }
        }
        throw new AssertionError("the focus never comes to " + what + " at " + page.url());
    }

    @Test
    void everything_works_without_scripts() {
        try (Visit visit = browser.visitWithoutScripts(820)) {
            Page page = open(visit, "/stores/moulds/new?kind=tube");
            page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Drainpipe");
            page.getByLabel("Length and diameter inside").fill("300 by 76 mm");
            click(page, AriaRole.BUTTON, "Add it");
            assertThat(page.locator(".notice")).containsText("Drainpipe was added.");
            assertThat(page.locator("#moulds svg")).isVisible();
            visit.keepPicture(PICTURES, "added");
            open(visit, "/stores/tables");
            page.getByLabel("Find an oil or an addition").fill("shea");
            click(page, AriaRole.BUTTON, "Find");
            Locator rows = page.locator("#found tbody tr");
            assertThat(rows.count()).isBetween(1, 10);
            click(page, AriaRole.LINK, "Shea butter (unrefined)");
            assertThat(page.locator("h1")).containsText("Shea butter");
        }
    }
}
