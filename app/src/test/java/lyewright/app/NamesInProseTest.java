package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.material.Additive;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.records.Places;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A material is called by its name wherever it is spoken of; its key stands only where files are written. */
class NamesInProseTest {

    private static final int OF_EACH_KIND = 4;

    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)(?:#[^\"]*)?\"");

    /** What a maker reads as a file, or types: there a key is what is meant. */
    private static final Pattern OF_FILES =
            Pattern.compile("(?s)<(pre|code|textarea|script|option|datalist)\\b.*?</\\1>");

    /** Pages of the tables tell with which key a formula file names a material. */
    private static final Pattern TELLS_KEYS = Pattern.compile("/stores/(tables|materials).*");

    /** Keys that are no words of the trade as well. */
    private static final Pattern KEYS = keys();

    private static Pattern keys() {
        Tables tables = Tables.bundled();
        Set<String> names = Stream.concat(
                        tables.oils().stream().map(Oil::name),
                        tables.additives().stream().map(Additive::name))
                .collect(Collectors.toSet());
        String all = Stream.concat(
                        tables.oils().stream().map(Oil::key),
                        tables.additives().stream().map(Additive::key))
                .filter(key -> key.contains("-") && names.stream().noneMatch(name -> name.contains(key)))
                .collect(Collectors.joining("|"));
        return Pattern.compile("(?<![\\w.-])(" + all + ")(?![\\w-])");
    }

    static List<String> keysIn(String page) {
        String prose = OF_FILES.matcher(page).replaceAll(" ").replaceAll("<[^>]*>", " ");
        List<String> found = new ArrayList<>();
        Matcher key = KEYS.matcher(prose);
        while (key.find()) {
            found.add(prose.substring(Math.max(0, key.start() - 40), Math.min(prose.length(), key.end() + 40))
                    .replaceAll("\\s+", " "));
        }
        return found;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<p>The lavender-oil is 4 % of the oils.</p> | 1",
                "<p>The lavender oil is 4 % of the oils.</p> | 0",
                "<pre>oils: {shea-butter: 10 %}</pre><input value=\"olive-virgin\"> | 0",
                "<li>shea-butter</li> | 1",
                "<p>vessels.oil pot.olive-virgin.weighGrams</p> | 0"
            })
    void a_key_in_a_sentence_is_found(String page, int found) {
        assertThat(keysIn(page)).hasSize(found);
    }

    @Test
    void no_page_of_the_demo_workshop_speaks_in_keys(@TempDir Path home) throws Exception {
        Places places = Places.of(home, Map.of()).orThrow();
        HttpClient client = HttpClient.newHttpClient();
        try (Shop shop = Shop.open(places.mine(), places.demo(), Clock.systemUTC())
                        .orThrow();
                WebServer server = WebServer.start("127.0.0.1", 0, OwnPages.features(shop, home))
                        .orThrow()) {
            String own = "http://localhost:" + server.port();
            client.send(
                    HttpRequest.newBuilder(URI.create(own + "/start/demo"))
                            .header("Origin", own)
                            .POST(HttpRequest.BodyPublishers.noBody())
                            .build(),
                    BodyHandlers.discarding());
            Deque<String> ahead = new ArrayDeque<>(List.of("/recipes", "/start", "/notebook"));
            Set<String> seen = new HashSet<>(ahead);
            Map<String, Integer> kinds = new HashMap<>();
            List<String> keys = new ArrayList<>();
            int pages = 0;
            while (!ahead.isEmpty()) {
                String path = ahead.remove();
                HttpResponse<String> answer = client.send(
                        HttpRequest.newBuilder(URI.create(own + path.replace("|", "%7C")))
                                .build(),
                        BodyHandlers.ofString());
                if (!answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                    continue;
                }
                pages++;
                if (!TELLS_KEYS.matcher(path).matches()) {
                    keysIn(answer.body()).forEach(found -> keys.add(path + ": " + found));
                }
                Matcher links = LINK.matcher(answer.body());
                while (links.find()) {
                    String link = links.group(1).replace("&amp;", "&");
                    if (seen.add(link) && kinds.merge(kind(link), 1, Integer::sum) <= OF_EACH_KIND) {
                        ahead.add(link);
                    }
                }
            }
            assertThat(pages).isGreaterThan(60);
            assertThat(keys).isEmpty();
        }
    }

    /** An address without what tells one page of its kind from another; whys are told apart by the last word of their figure. */
    private static String kind(String link) {
        String figure = link.contains("figure=") ? link.replaceAll(".*figure=(?:.*\\.)?", "") : "";
        return link.replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "ID")
                        .replaceAll("/[0-9]+", "/N")
                        .replaceAll("/tables/[a-z0-9-]+", "/tables/KEY")
                        .replaceAll("=[^&]*", "")
                + figure;
    }
}
