package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.Places;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page of the demo workshop that a link leads to, on both databases, and what each has to keep. */
class EveryPageTest {

    private static final int LARGEST = 150 * 1024;

    /** Pages of one kind differ in what they show; so many of each are opened. */
    private static final int OF_EACH_KIND = 3;

    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/[^\"#]*)(?:#[^\"]*)?\"");

    private static final Pattern FORBIDDEN = Pattern.compile(
            "<script(?![^>]*\\ssrc=)|\\sstyle=\"|\\son[a-z]+=\"|\\shx-on|javascript:|=\"js:|<style|http-equiv");

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void every_page_of_a_folder_is_there_small_and_without_inline_code(@TempDir Path home) throws Exception {
        lookRound(Places.of(home, Map.of()).orThrow(), home);
    }

    @Test
    void every_page_of_a_postgresql_server_is_there_small_and_without_inline_code(@TempDir Path home) throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
            Map<String, String> environment =
                    Map.of(Places.DATABASE, server.getJdbcUrl("postgres", "postgres"), Places.USER, "postgres");
            lookRound(Places.of(home, environment).orThrow(), home);
        }
    }

    private void lookRound(Places places, Path home) throws Exception {
        try (Shop shop = Shop.open(places.mine(), places.demo(), Clock.systemUTC())
                        .orThrow();
                WebServer server = WebServer.start("127.0.0.1", 0, OwnPages.features(shop, home))
                        .orThrow()) {
            String own = "http://localhost:" + server.port();
            assertThat(ask(own, "POST", "/start/demo").statusCode()).isEqualTo(303);
            Map<String, Integer> kinds = crawl(own);
            assertThat(kinds.keySet())
                    .contains(
                            "/recipes/ID",
                            "/recipes/ID/edit",
                            "/make?recipe",
                            "/stores",
                            "/stores/tables/KEY",
                            "/ledger",
                            "/ledger/head",
                            "/settings");
            assertThat(kinds).hasSizeGreaterThan(30);
        }
    }

    /** Follows every link; gives how many pages of each kind were opened. */
    private Map<String, Integer> crawl(String own) throws Exception {
        Map<String, Integer> kinds = new TreeMap<>();
        Map<String, String> from = new HashMap<>();
        Deque<String> ahead = new ArrayDeque<>(Set.of("/recipes", "/start", "/notebook"));
        Set<String> seen = new HashSet<>(ahead);
        while (!ahead.isEmpty()) {
            String path = ahead.remove();
            HttpResponse<byte[]> answer = ask(own, "GET", path);
            if (answer.statusCode() == 302 || answer.statusCode() == 303) {
                String to =
                        answer.headers().firstValue("Location").orElseThrow().replace(own, "");
                if (seen.add(to)) {
                    from.put(to, path);
                    ahead.add(to);
                }
                continue;
            }
            assertThat(answer.statusCode())
                    .as("%s, linked from %s", path, from.get(path))
                    .isEqualTo(200);
            if (!answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                continue;
            }
            String page = new String(answer.body(), StandardCharsets.UTF_8);
            keepsTheRules(path, page);
            Matcher links = LINK.matcher(page);
            while (links.find()) {
                String link = links.group(1).replace("&amp;", "&");
                if (seen.add(link) && kinds.merge(kind(link), 1, Integer::sum) <= OF_EACH_KIND) {
                    from.put(link, path);
                    ahead.add(link);
                }
            }
        }
        return kinds;
    }

    private static void keepsTheRules(String path, String page) {
        assertThat(page.getBytes(StandardCharsets.UTF_8).length)
                .as("bytes of %s", path)
                .isLessThan(LARGEST);
        Matcher forbidden = FORBIDDEN.matcher(page);
        assertThat(
                        forbidden.find()
                                ? page.substring(
                                        Math.max(0, forbidden.start() - 60),
                                        Math.min(page.length(), forbidden.end() + 60))
                                : "")
                .as("inline code in %s", path)
                .isEmpty();
        assertThat(page).as(path).contains("<title>", "<h1", "lang=\"en-GB\"").doesNotContain("null<", ">null");
    }

    /** An address without what tells one page of its kind from another. */
    private static String kind(String link) {
        URI uri = URI.create(link.replace(" ", "%20").replace("|", "%7C"));
        String path = uri.getPath()
                .replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "ID")
                .replaceAll("/static/[0-9a-f]+/", "/static/")
                .replaceAll("/tables/[a-z0-9-]+", "/tables/KEY")
                .replaceAll("/[0-9]+", "/N");
        String query = uri.getRawQuery() == null ? "" : "?" + uri.getRawQuery().replaceAll("=[^&]*", "");
        return path + query;
    }

    private HttpResponse<byte[]> ask(String own, String method, String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(own + path.replace("|", "%7C")))
                .method(method, HttpRequest.BodyPublishers.noBody())
                .header("Origin", own)
                .build();
        return client.send(request, BodyHandlers.ofByteArray());
    }
}
