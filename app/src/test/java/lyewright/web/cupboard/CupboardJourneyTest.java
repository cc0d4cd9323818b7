package lyewright.web.cupboard;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import lyewright.records.setting.Units;
import lyewright.web.TestBrowser;
import lyewright.web.TestBrowser.Visit;
import lyewright.web.TestWorkshop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cupboard in a real browser: a delivery is received, used from, counted. */
@Tag("journey")
class CupboardJourneyTest {

    private static final String PICTURES = "cupboard";

    @TempDir
    private static Path home;

    private static TestBrowser browser;

    @BeforeAll
    static void start() {
        browser = new TestBrowser();
    }

    @AfterAll
    static void stop() {
        browser.close();
    }

    private static void click(Page page, AriaRole role, String name) {
        page.getByRole(role, new Page.GetByRoleOptions().setName(name)).first().click();
    }

    private static FilePayload file(String name, String content) {
        return new FilePayload(name, "application/octet-stream", content.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 820, 1440})
    void a_delivery_is_received_used_and_counted(int width) {
        try (TestWorkshop workshop = TestWorkshop.start(
                        home.resolve(Integer.toString(width)), Units.GRAMS, shop -> List.of(new CupboardPages(shop)));
                Visit visit = browser.visit(width)) {
            Page page = visit.page();
            page.navigate(workshop.at() + "/stores/cupboard");
            visit.isSound();
            visit.keepPicture(PICTURES, "empty");
            click(page, AriaRole.LINK, "Receive a delivery");
            page.getByLabel("From whom").fill("Northquay Oils");
            page.locator("[name='lines.0.material']").fill("coconut");
            page.locator("[name='lines.0.amount']").fill("5 kg");
            page.locator("[name='lines.1.material']").fill("moon dust");
            page.locator("[name='lines.1.amount']").fill("200 g");
            page.keyboard().press("Enter");
            visit.forgetComplaintsOf(422);
            assertThat(page.locator("[name='lines.1.kind']")).isVisible();
            assertThat(page.locator("[name='lines.0.amount']")).hasValue("5 kg");
            visit.isSound();
            visit.keepPicture(PICTURES, "delivery-asked");
            page.locator("[name='lines.1.kind']").selectOption("colourant");
            click(page, AriaRole.BUTTON, "Receive it");
            assertThat(page.locator(".notice")).containsText("2 lots were received.");
            page.goBack();
            visit.forgetComplaintsOf(422);
            assertThat(page.locator("[name='lines.1.material']")).hasValue("moon dust");
            page.goForward();
            assertThat(page.locator(".notice")).containsText("2 lots were received.");
            assertThat(page.locator(".received")).containsText("5 kg of Coconut oil");
            visit.isSound();
            visit.keepPicture(PICTURES, "received");
            click(page, AriaRole.LINK, "To the cupboard");
            visit.isSound();
            visit.keepPicture(PICTURES, "cupboard");

            click(page, AriaRole.LINK, "moon dust");
            visit.isSound();
            visit.keepPicture(PICTURES, "material");
            page.locator(".things a").first().click();
            page.getByLabel("How much").fill("20 g");
            page.getByLabel("What for, or what happened").fill("Rope Walk");
            click(page, AriaRole.BUTTON, "Take it");
            assertThat(page.locator(".figure-line")).containsText("180 g");
            visit.isSound();
            visit.keepPicture(PICTURES, "lot");
            page.locator(".take-back summary").first().click();
            page.locator(".take-back input").first().fill("wrong tub");
            page.locator(".take-back button").first().click();
            assertThat(page.locator(".figure-line")).containsText("200 g");

            page.getByText("Add a document").click();
            page.getByLabel("The file").setInputFiles(file("half.pdf", "%PDF-1.4 half of it"));
            page.getByLabel("What it is").fill("Letter about moon dust");
            click(page, AriaRole.BUTTON, "Keep it with this lot");
            visit.forgetComplaintsOf(422);
            assertThat(page.locator(".documents .trouble")).containsText("cut off");
            assertThat(page.getByLabel("The file")).isFocused();
            assertThat(page.getByLabel("What it is")).hasValue("Letter about moon dust");
            visit.isSound();
            visit.keepPicture(PICTURES, "document-refused");
            page.getByLabel("The file").setInputFiles(file("letter.txt", "Dear maker, it is from the moon. Invented."));
            click(page, AriaRole.BUTTON, "Keep it with this lot");
            assertThat(page.locator(".notice")).containsText("Kept with this lot: Letter about moon dust.");
            visit.isSound();
            visit.keepPicture(PICTURES, "document");
            click(page, AriaRole.LINK, "Letter about moon dust");
            assertThat(page.locator("body")).containsText("from the moon");

            page.navigate(workshop.at() + "/stores/count");
            page.locator("input[name$='.counted']").first().fill("4 kg");
            click(page, AriaRole.BUTTON, "Keep the count");
            visit.forgetComplaintsOf(422);
            assertThat(page.locator(".trouble").first()).containsText("nothing explains it");
            visit.isSound();
            visit.keepPicture(PICTURES, "count");
            page.locator("input[name$='.why']").first().fill("do not know");
            click(page, AriaRole.BUTTON, "Keep the count");
            assertThat(page.locator(".notice")).containsText("One lot was counted.");

            page.navigate(workshop.at() + "/stores/suppliers");
            visit.isSound();
            visit.keepPicture(PICTURES, "suppliers");
            page.navigate(workshop.at() + "/stores/cupboard/new");
            visit.isSound();
            visit.keepPicture(PICTURES, "new-material");
        }
    }
}
