package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.Places;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Of the demo workshop's recipes: whatever is reckoned leads to why it is that; as far as {@link FiguresWithoutWhy} can see. */
class EveryFigureTest {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private static Shop shop;
    private static WebServer server;
    private static List<String> recipes;

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        Places places = Places.of(home, Map.of()).orThrow();
        shop = Shop.open(places.mine(), places.demo(), Clock.systemUTC()).orThrow();
        server = WebServer.start("127.0.0.1", 0, OwnPages.features(shop, home)).orThrow();
        post("/start/demo", "");
        Matcher found = Pattern.compile("\"/recipes/([0-9a-f-]{36})\"").matcher(get("/recipes"));
        recipes = new ArrayList<>(
                new TreeSet<>(found.results().map(id -> id.group(1)).toList()));
        assertThat(recipes).hasSize(5);
    }

    @AfterAll
    static void close() {
        server.close();
        shop.close();
    }

    @ParameterizedTest
    @CsvSource({
        "/recipes/ID, 60",
        "/recipes/ID/compare, 0",
        "/recipes/ID/edit, 15",
        "/make?recipe=ID, 40",
        "/make?recipe=ID&much=oils&amount=1kg&out=coconut&in=babassu, 40",
        "/make/becomes?recipe=ID&much=total&amount=1500g, 50",
        "/why?recipe=ID, 40"
    })
    void every_figure_that_a_page_marks_leads_to_its_why(String address, int least) throws Exception {
        int all = 0;
        for (String recipe : recipes) {
            String path = address.replace("ID", recipe);
            FiguresWithoutWhy.Seen seen = FiguresWithoutWhy.in(get(path));
            assertThat(seen.without()).as(path).isEmpty();
            assertThat(seen.whys()).as("whys of %s", path).isGreaterThanOrEqualTo(least);
            assertThat(seen.marked()).as("marked figures of %s", path).isGreaterThanOrEqualTo(least / 3);
            all += seen.whys();
        }
        assertThat(all).isGreaterThan(100);
    }

    @Test
    void every_figure_of_two_recipes_beside_each_other_leads_to_its_why() throws Exception {
        FiguresWithoutWhy.Seen seen =
                FiguresWithoutWhy.in(get("/recipes/compare?a=" + recipes.get(0) + "&b=" + recipes.get(1)));

        assertThat(seen.without()).isEmpty();
        assertThat(seen.whys()).isGreaterThan(100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1.2 kg", "300x80x65mm"})
    void every_figure_of_the_notebooks_answer_leads_to_its_why(String mould) throws Exception {
        String answer = post(
                "/notebook",
                "as=text&turn=answer&mouldText=" + encoded(mould) + "&text="
                        + encoded(
                                "Harbour trial\n\ncoconut oil 350 g\nolive (virgin) 350 g\nsoda 98 g\nwater 200 g\n"));

        FiguresWithoutWhy.Seen seen = FiguresWithoutWhy.in(answer);
        assertThat(seen.without()).isEmpty();
        assertThat(seen.whys()).isGreaterThan(5);
    }

    /** The check itself: what it finds, and what it passes over. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<table class=\"told\"><tr><td class=\"number\">12.5 g</td></tr></table> | 1",
                "<table><tr><td class=\"number\">7.25</td></tr></table> | 1",
                "<table><tr><td class=\"number\"><a class=\"why\" href=\"/why\">12.5 g</a> (3 %)</td></tr></table> | 1",
                "<table><tr><td class=\"number\"><a class=\"why\" href=\"/why\">12.5 g</a></td></tr></table> | 0",
                "<dl class=\"facts\"><div><dt>Oils</dt><dd>900 g of oils</dd></div></dl> | 1",
                "<dl class=\"masses\"><div><dd><button class=\"why\">900 g</button></dd></div></dl> | 0",
                "<p class=\"figure\"><span class=\"value\">5.1 %</span></p> | 1",
                "<p class=\"takes\">As it stands it makes 900 g.</p> | 1",
                "<p class=\"says\">350 g, <button class=\"why\">35 %</button></p> | 1",
                "<section class=\"steps\"><p>Pour all the lye (374.0 g).</p></section> | 1",
                "<section class=\"steps\"><p>Cure for 4 to 8 weeks at 20 °C.</p></section> | 0",
                "<p>Elsewhere 900 g.</p> | 0",
                "<figure class=\"picture\"><table><tr><td class=\"number\">900 g</td></tr></table></figure> | 0",
                "<dl class=\"facts\"><dd>98 % pure (assumed), so 120.1 g of it</dd></dl> | 1",
                "<dl class=\"facts\"><dd>98 % pure (assumed)</dd></dl> | 0"
            })
    void a_figure_with_no_why_is_found(String html, int without) {
        assertThat(FiguresWithoutWhy.in(html).without()).hasSize(without);
    }

    private static String get(String path) throws IOException, InterruptedException {
        return body(HttpRequest.newBuilder(URI.create(address(path))).build());
    }

    private static String post(String path, String form) throws IOException, InterruptedException {
        return body(HttpRequest.newBuilder(URI.create(address(path)))
                .header("Origin", address(""))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build());
    }

    private static String body(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> answer = CLIENT.send(request, BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(request.uri().toString()).isLessThan(400);
        return answer.body();
    }

    private static String address(String path) {
        return "http://localhost:" + server.port() + path;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
