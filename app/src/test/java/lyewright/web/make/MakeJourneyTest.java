package lyewright.web.make;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A maker at the bench, in a real browser. */
@Tag("journey")
class MakeJourneyTest {

    private static final String AREA = "make";

    private static MakeShop shop;
    private static TestBrowser browser;

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        shop = new MakeShop(home);
        browser = new TestBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
        shop.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_recipe_is_picked_poured_into_another_mould_and_asked_about(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/make");
            page.getByLabel("Find a recipe").fill("fade");
            assertThat(page.locator(".pick")).hasCount(1);
            visit.keepPicture(AREA, "pick");
            visit.isSound();

            page.locator(".pick").click();
            assertThat(heading(page, "Weigh")).isVisible();
            visit.keepPicture(AREA, "sheet");
            visit.isSound();

            page.getByLabel("Mould", new Page.GetByLabelOptions().setExact(true))
                    .selectOption("typed");
            page.getByLabel("Its inside").fill("12x95ml");
            assertThat(page.locator(".facts").first()).containsText("12 of ");
            assertThat(page).hasURL(Pattern.compile("inside=12x95ml"));
            String masses = page.locator("td.mass").allTextContents().toString();
            page.reload();
            assertThat(page.locator("td.mass").allTextContents().toString()).isEqualTo(masses);

            page.locator("td.mass a").nth(2).click();
            assertThat(page.locator("dialog .reason-value"))
                    .hasText(page.locator("td.mass").nth(2).textContent());
            visit.keepPicture(AREA, "why-beside");
            visit.isSound();
            page.locator("dialog .inputs a.why").first().click();
            assertThat(page.locator("dialog .path")).containsText("exactGrams");
            page.keyboard().press("Escape");
            assertThat(page.locator("dialog")).isHidden();
            assertThat(page.locator("td.mass a").nth(2)).isFocused();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void what_is_typed_wrong_is_said_beside_it_and_the_sheet_waits(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("plain", "much", "total", "amount", "1 kg"));
            Locator amount = page.getByLabel("Amount");
            amount.fill("15 stone");
            assertThat(page.locator("#f-amount-trouble .trouble")).isVisible();
            assertThat(amount).hasAttribute("aria-invalid", "true");
            assertThat(page.locator("#answer")).hasClass("stale");
            assertThat(heading(page, "Weigh")).isVisible();
            assertThat(amount).isFocused();
            visit.keepPicture(AREA, "wrong");
            assertThat(page.getByText("This sheet is the one before.")).isVisible();
            assertThat(page.getByText("Print the sheet, A4")).isHidden();
            visit.isSound();

            amount.fill("1500 g");
            assertThat(page.locator(".facts").first()).containsText("1500.0 g asked");
            assertThat(page.locator("#f-amount-trouble .trouble")).hasCount(0);
            assertThat(amount).hasAttribute("aria-invalid", "false");
            assertThat(page.locator("#answer")).not().hasClass("stale");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void another_oil_is_tried_without_changing_the_recipe(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("plain"));
            page.getByText("What would another oil do?").click();
            page.getByLabel("Take", new Page.GetByLabelOptions().setExact(true)).fill("babassu");
            assertThat(heading(page, "Babassu oil in place of coconut oil")).isVisible();
            page.getByText("Every figure that changes").click();
            visit.keepPicture(AREA, "another-oil");
            visit.isSound();

            page.getByLabel("Take", new Page.GetByLabelOptions().setExact(true)).fill("unicorn");
            assertThat(page.locator("#f-in-trouble .trouble")).isVisible();
            assertThat(page.locator("#answer")).not().hasClass("stale");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_sheet_that_is_not_to_be_made_is_crossed_on_screen_and_on_paper(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("caustic"));
            assertThat(page.getByText("Not to be made as it stands")).isVisible();
            Object crossed = page.locator(".vessel")
                    .first()
                    .evaluate("table => getComputedStyle(table).backgroundImage.includes('gradient')");
            assertThat(crossed).isEqualTo(true);
            visit.keepPicture(AREA, "not-to-be-made");
            visit.isSound();

            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.locator(".cross svg")).isVisible();
            assertThat(page.getByText("Not to be made as it stands")).isVisible();
        }
    }

    @Test
    void the_pages_are_sound_in_the_dark() {
        try (Visit visit = browser.darkVisit(820)) {
            Page page = visit.page();
            for (String address : List.of(
                    shop.make("tideline", "out", "coconut", "in", "babassu"),
                    shop.make("caustic"),
                    "/why?" + shop.query("tideline", "mould", "loaf"),
                    "/why?" + shop.query("tideline", "mould", "loaf") + "&figure=superfat.low95Percent",
                    "/why?" + shop.query("tideline", "mould", "loaf") + "&in=portions")) {
                page.navigate(shop.address() + address);
                visit.isSound();
            }
            visit.keepPicture(AREA, "portions");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void the_reasons_are_sound_as_pages(int width) {
        try (Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(shop.address() + "/why?" + shop.query("tideline", "mould", "loaf"));
            visit.keepPicture(AREA, "figures");
            page.getByLabel("Find a figure").fill("rosemary rounding");
            assertThat(page.locator("#figures tbody tr")).hasCount(2);
            visit.isSound();
            page.navigate(
                    shop.address() + "/why?" + shop.query("tideline", "mould", "loaf") + "&figure=totals.oilsGrams");
            visit.keepPicture(AREA, "why");
            visit.isSound();
            page.navigate(
                    shop.address() + "/why?" + shop.query("tideline", "mould", "loaf") + "&figure=totals.oilGrams");
            visit.forgetComplaintsOf(404);
            assertThat(page.getByText("Perhaps one of these was meant")).isVisible();
            visit.isSound();
        }
    }

    @Test
    void without_scripts_everything_works_by_whole_pages() {
        try (Visit visit = browser.visitWithoutScripts(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("plain"));
            page.getByLabel("How much").selectOption("bars");
            page.getByLabel("Amount").fill("8 x 100 g");
            page.locator(".choose-go").click();
            assertThat(page.locator(".trouble")).containsText("bars, not 8");
            assertThat(page.getByLabel("Amount")).hasValue("8 x 100 g");
            page.getByLabel("Mould", new Page.GetByLabelOptions().setExact(true))
                    .selectOption("");
            page.locator(".choose-go").click();
            assertThat(page.locator(".facts").first()).containsText("800.0 g asked");
            visit.keepPicture(AREA, "sheet");

            page.locator("td.mass a").first().click();
            assertThat(page).hasURL(Pattern.compile("/why\\?"));
            assertThat(page.locator(".formula-line").first()).isVisible();
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void the_keyboard_alone_is_enough() {
        try (Visit visit = browser.visit(1440)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("plain", "much", "total", "amount", "1 kg"));
            page.getByLabel("Mould", new Page.GetByLabelOptions().setExact(true))
                    .focus();
            page.keyboard().press("Tab");
            assertThat(page.getByLabel("How much")).isFocused();
            page.keyboard().press("Tab");
            assertThat(page.getByLabel("Amount")).isFocused();
            page.keyboard().type("0");
            page.keyboard().press("Control+A");
            page.keyboard().type("2 kg");
            assertThat(page.locator(".facts").first()).containsText("2000.0 g asked");
            page.locator("td.mass a").first().focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("dialog")).isVisible();
            page.keyboard().press("Tab");
            assertThat(page.locator("dialog :focus")).hasCount(1);
            page.keyboard().press("Escape");
            assertThat(page.locator("td.mass a").first()).isFocused();
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void a_mould_that_is_chosen_after_none_is_meant_to_be_full_unless_somebody_said_how_much() {
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("notebook"));
            Locator mould = page.getByLabel("Mould", new Page.GetByLabelOptions().setExact(true));
            mould.selectOption(shop.mould("loaf"));
            assertThat(page.getByLabel("How much")).hasValue("full");
            assertThat(page.locator(".facts").first()).containsText("the mould takes");

            page.getByLabel("How much").selectOption("written");
            assertThat(page.locator("#answer")).containsText("This fills the mould to");
            mould.selectOption("");
            mould.selectOption(shop.mould("loaf"));
            assertThat(page.getByLabel("How much")).hasValue("written");
        }
    }

    @Test
    void an_amount_that_is_only_just_asked_for_is_not_marked_as_wrong() {
        try (Visit visit = browser.visit(360)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("plain"));
            page.getByLabel("How much").selectOption("bars");
            assertThat(page.locator(".awaited")).containsText("write it as 10 x 110 g");
            assertThat(page.locator("#waits")).isVisible();
            assertThat(page.locator(".trouble:visible")).hasCount(0);
            visit.isSound();
        }
    }

    @Test
    void an_answer_that_comes_too_late_is_dropped() {
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("plain", "much", "total", "amount", "1 kg"));
            List<Route> held = new ArrayList<>();
            page.route("**/make?**amount=3**", held::add);
            page.getByLabel("Amount").fill("3 kg");
            page.waitForCondition(() -> !held.isEmpty());
            page.getByLabel("Amount").fill("2 kg");
            assertThat(page.locator(".facts").first()).containsText("2000.0 g asked");
            held.forEach(Route::resume);
            page.getByLabel("Amount").fill("4 kg");
            assertThat(page.locator(".facts").first()).containsText("4000.0 g asked");
            assertThat(page).hasURL(Pattern.compile("amount=4"));
        }
    }

    @Test
    void printing_the_page_keeps_the_version_first() {
        String id = shop.add("to print", MakeShop.PLAIN);
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.addInitScript("window.print = () => document.body.setAttribute('data-printed', 'yes')");
            page.navigate(shop.address() + shop.make("to print"));
            page.getByText("Print this page").click();
            assertThat(page.locator("body")).hasAttribute("data-printed", "yes");
            assertThat(shop.records().recipes().version(id, 1).orElseThrow().madeAt())
                    .isPresent();

            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.locator("#choice")).isHidden();
            assertThat(page.getByText("Print this page")).isHidden();
            assertThat(page.locator("td.mass").first()).isVisible();
            assertThat(page.locator(".sheet-title")).containsText("Harbour Plain");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    @Test
    void another_version_is_another_page() {
        String id = shop.add("versions", MakeShop.PLAIN);
        var formula = shop.records().recipes().find(id).orElseThrow().newest().formula();
        shop.records().recipes().save(id, 1, formula, true, "").orThrow();
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("versions"));
            page.getByLabel("Version").selectOption("1");
            assertThat(page).hasURL(Pattern.compile("version=1"));
            assertThat(page.locator(".sheet-title")).containsText("ersion 1");
            assertThat(visit.complaints()).isEmpty();
        }
    }

    /** What is weighed is as large as it must be to be read a metre away: about 5 mm on a tablet of 160 mm. */
    @Test
    void what_is_weighed_is_legible_from_a_metre() {
        try (Visit visit = browser.visit(820)) {
            Page page = visit.page();
            page.navigate(shop.address() + shop.make("tideline"));
            assertThat(pixels(page.locator("td.mass").first())).isGreaterThanOrEqualTo(40);
            assertThat(pixels(page.locator(".take").first())).isGreaterThanOrEqualTo(26);
            assertThat(pixels(page.locator("td.reads a").first())).isGreaterThanOrEqualTo(26);
            assertThat(pixels(page.locator(".steps li > p").first())).isGreaterThanOrEqualTo(20);
        }
    }

    private static double pixels(Locator text) {
        return ((Number) text.evaluate("element => parseFloat(getComputedStyle(element).fontSize)")).doubleValue();
    }

    private static Locator heading(Page page, String name) {
        return page.getByRole(
                AriaRole.HEADING, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
