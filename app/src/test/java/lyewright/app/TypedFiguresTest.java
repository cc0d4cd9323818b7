package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.Places;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is being typed has no address: its figures say why when they are asked with the whole form, kept or not. */
class TypedFiguresTest {

    private static final Pattern ASKS = Pattern.compile(
            "<button class=\"why\"[^>]* formaction=\"([^\"]+)\" name=\"figure\" value=\"([^\"]+)\">([^<]+)</button>");
    private static final Pattern VALUE = Pattern.compile("class=\"reason-value\">([^<]+)<");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]+(?:\\.[0-9]+)?");

    private static final String RECIPE = form(
            "opened-in", "demo",
            "recipe", "Trial",
            "use", "own",
            "oils.0.name", "coconut",
            "oils.0.amount", "30 %",
            "oils.1.name", "olive-virgin",
            "oils.1.amount", "rest",
            "alkali", "sodium",
            "superfat", "6 %",
            "water", "33 % lye",
            "additions.0.of", "lavender-oil",
            "additions.0.amount", "2 % of oils",
            "additions.0.stage", "every portion",
            "portions.0.name", "plain",
            "portions.0.share", "60 %",
            "portions.1.name", "kelp",
            "portions.1.share", "rest");

    private static final String PAPER = "coconut 350 g\nolive-virgin 350 g\nsoda 98 g\nwater 200 g\n";

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private static Shop shop;
    private static WebServer server;

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        Places places = Places.of(home, Map.of()).orThrow();
        shop = Shop.open(places.mine(), places.demo(), Clock.systemUTC()).orThrow();
        server = WebServer.start("127.0.0.1", 0, OwnPages.features(shop, home)).orThrow();
    }

    @AfterAll
    static void close() {
        server.close();
        shop.close();
    }

    private static String form(String... namesAndValues) {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            form.append(i == 0 ? "" : "&")
                    .append(encoded(namesAndValues[i]))
                    .append('=')
                    .append(encoded(namesAndValues[i + 1]));
        }
        return form.toString();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static HttpResponse<String> post(String path, String form, boolean inPlace) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address(path)))
                .header("Origin", address(""))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form));
        return CLIENT.send((inPlace ? request.header("HX-Request", "true") : request).build(), BodyHandlers.ofString());
    }

    private static String address(String path) {
        return "http://localhost:" + server.port() + path;
    }

    private static void lookRound() throws Exception {
        assertThat(post("/start/demo", "", false).statusCode()).isEqualTo(303);
    }

    /** Each button of a page, pressed with the form it stands in: the reason is that of the figure on the button. */
    private static int allSayWhy(String page, String form) throws Exception {
        List<MatchResult> buttons = ASKS.matcher(page).results().toList();
        for (MatchResult button : buttons) {
            String asked = form + "&figure=" + encoded(button.group(2));
            HttpResponse<String> panel = post(button.group(1).replace("&amp;", "&"), asked, true);
            assertThat(panel.statusCode()).as(button.group()).isEqualTo(200);
            assertThat(panel.body()).contains("class=\"formula-line\"").doesNotContain("<html");
            Matcher value = VALUE.matcher(panel.body());
            assertThat(value.find()).isTrue();
            assertThat(rounded(value.group(1), button.group(3)))
                    .as("%s shows %s, its reason %s", button.group(2), button.group(3), value.group(1))
                    .isEqualByComparingTo(number(button.group(3)));
        }
        return buttons.size();
    }

    private static BigDecimal rounded(String exact, String shown) {
        BigDecimal value = number(exact).abs();
        return (shown.endsWith(" kg") ? value.movePointLeft(3) : value)
                .setScale(number(shown).scale(), RoundingMode.HALF_UP);
    }

    private static BigDecimal number(String text) {
        Matcher number = NUMBER.matcher(text);
        assertThat(number.find()).as(text).isTrue();
        return new BigDecimal(number.group());
    }

    @Test
    void every_figure_of_the_editor_says_why_of_what_is_typed() throws Exception {
        lookRound();
        String page = post("/recipes/new", RECIPE + "&do=reckon", false).body();

        assertThat(allSayWhy(page, RECIPE)).isGreaterThan(15);
    }

    @Test
    void asking_keeps_nothing_and_follows_what_is_typed() throws Exception {
        lookRound();
        int drafts = shop.records().drafts().all().size();
        String other = RECIPE.replace("6+%25", "9+%25");

        assertThat(post("/why/draft", RECIPE + "&figure=superfat.askedPercent", true)
                        .body())
                .contains("reason-value\">6 %");
        assertThat(post("/why/draft", other + "&figure=superfat.askedPercent", true)
                        .body())
                .contains("reason-value\">9 %");
        assertThat(shop.records().drafts().all()).hasSize(drafts);
    }

    @Test
    void without_javascript_it_is_a_page_from_which_one_goes_on_typing() throws Exception {
        lookRound();
        HttpResponse<String> page = post("/why/draft?back=/recipes/new", RECIPE + "&figure=alkali.naohGrams", false);

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("<h1>Sodium hydroxide to weigh</h1>", "Back to what you typed")
                .contains("<form id=\"editor\" class=\"way\" method=\"post\" action=\"/recipes/new\">")
                .contains("<input type=\"hidden\" name=\"oils.0.amount\" value=\"30 %\">")
                .contains("form=\"editor\"")
                .doesNotContain("name=\"figure\" value=\"alkali.naohGrams\"");
        assertThat(allSayWhy(page.body(), RECIPE)).isPositive();
    }

    @Test
    void one_goes_back_to_the_editor_only() throws Exception {
        lookRound();
        for (String back : List.of("https://example.org/", "//example.org", "/settings", "/recipes/x/edit")) {
            assertThat(post("/why/draft?back=" + encoded(back), RECIPE + "&figure=totals.oilsGrams", false)
                            .body())
                    .contains("action=\"/recipes/new\"")
                    .doesNotContain("example.org");
        }
    }

    @Test
    void what_cannot_be_reckoned_has_no_why_yet_and_says_so() throws Exception {
        lookRound();
        HttpResponse<String> panel =
                post("/why/draft", RECIPE.replace("olive-virgin", "unicorn") + "&figure=totals.oilsGrams", true);

        assertThat(panel.statusCode()).isEqualTo(422);
        assertThat(panel.body()).contains("What is typed cannot be reckoned as it stands.", "unicorn");
        assertThat(post("/why/draft", RECIPE + "&figure=%3Cscript%3E", true).body())
                .doesNotContain("<script>");
    }

    @Test
    void every_figure_of_the_notebook_says_why_with_a_mould_and_without() throws Exception {
        lookRound();
        for (String mould : List.of("", "1.2 kg", "300x80x65mm")) {
            String form = form("as", "text", "text", PAPER, "mouldText", mould);
            String page = post("/notebook", form + "&turn=answer", false).body();

            assertThat(allSayWhy(page, form)).as(mould).isGreaterThan(6);
        }
    }

    @Test
    void the_notebook_says_why_before_there_is_a_workshop(@TempDir Path empty) throws Exception {
        Places places = Places.of(empty, Map.of()).orThrow();
        String form = form("as", "text", "text", PAPER, "figure", "superfat.sheetPercent");
        try (Shop none = Shop.open(places.mine(), places.demo(), Clock.systemUTC())
                        .orThrow();
                WebServer first = WebServer.start("127.0.0.1", 0, OwnPages.features(none, empty))
                        .orThrow()) {
            String own = "http://localhost:" + first.port();
            HttpResponse<String> page = CLIENT.send(
                    HttpRequest.newBuilder(URI.create(own + "/notebook/why"))
                            .header("Origin", own)
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(HttpRequest.BodyPublishers.ofString(form))
                            .build(),
                    BodyHandlers.ofString());

            assertThat(page.statusCode()).isEqualTo(200);
            assertThat(page.body()).contains("<h1>Superfat of the sheet</h1>", "action=\"/notebook\"");
        }
    }
}
