package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is let in, and what every answer carries. */
class WebServerTest {

    private static WebServer server;
    private static final HttpClient BROWSER = HttpClient.newHttpClient();

    @BeforeAll
    static void start() {
        Feature writes = routes -> {
            routes.get("/thing", ctx -> ctx.result("a thing"));
            routes.post("/thing", ctx -> ctx.result("written " + ctx.formParam("a")));
            routes.get("/broken", ctx -> {
                throw new IllegalStateException("a secret of ours");
            });
        };
        server = WebServer.start("127.0.0.1", 0, List.of(writes)).orThrow();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void a_write_from_our_own_page_is_let_in() throws Exception {
        assertThat(post("/thing", "Origin", own()).statusCode()).isEqualTo(200);
        assertThat(post("/thing", "Referer", own() + "/thing").statusCode()).isEqualTo(200);
    }

    @Test
    void a_write_from_elsewhere_or_from_nowhere_is_refused() throws Exception {
        assertThat(post("/thing", "Origin", "http://elsewhere.example").statusCode())
                .isEqualTo(403);
        assertThat(post("/thing", "Origin", "null").statusCode()).isEqualTo(403);
        assertThat(post("/thing", "Origin", own() + "0").statusCode()).isEqualTo(403);
        assertThat(post("/thing", "Origin", own().replace("http:", "https:")).statusCode())
                .isEqualTo(403);
        assertThat(post("/thing", "X-Nothing", "1").statusCode()).isEqualTo(403);
        assertThat(post("/thing", "Origin", "http://elsewhere.example").body()).contains("Nothing was changed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"elsewhere.example", "localhost.elsewhere.example:4310", "127.0.0.1.example", ""})
    void a_foreign_name_for_this_computer_is_refused(String host) throws Exception {
        assertThat(raw("GET /thing HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"))
                .matches("(?s)HTTP/1.1 4(00|21) .*")
                .doesNotContain("a thing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]", "LOCALHOST"})
    void this_computers_own_names_are_answered(String host) throws Exception {
        assertThat(raw("GET /thing HTTP/1.1\r\nHost: " + host + ":" + server.port() + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "TRACE", "OPTIONS"})
    void only_reading_and_posting_are_known(String method) throws Exception {
        assertThat(raw(method + " /thing HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .matches("(?s)HTTP/1.1 (404|405) .*")
                .doesNotContain("a thing");
    }

    @Test
    void every_answer_carries_the_defences() throws Exception {
        for (String path : List.of("/thing", "/nothing", "/broken")) {
            HttpResponse<String> answer = get(path);
            assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
                    .contains("default-src 'none'")
                    .contains("script-src 'self'")
                    .doesNotContain("unsafe");
            assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(answer.headers().firstValue("X-Frame-Options")).contains("DENY");
            assertThat(answer.headers().firstValue("Server")).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /thing/%ff HTTP/1.1\r\nHost: localhost",
                "GET /thing?a=x%00 HTTP/1.1\r\nHost: localhost",
                "GET /thing/%zz HTTP/1.1\r\nHost: localhost",
                "GET /thing/..;/x HTTP/1.1\r\nHost: localhost",
                "GET /<script>alert(1)</script> HTTP/1.1\r\nHost: localhost",
                "GET /thing HTTP/1.1\r\nHost: localhost\r\nHost: elsewhere.example",
                "GET /thing HTTP/1.1\r\nHost: localhost:99999",
                "GET /thing HTTP/1.1\r\nNo-Host: localhost"
            })
    void what_the_server_underneath_refuses_is_answered_in_our_words(String request) throws Exception {
        assertThat(raw(request + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400")
                .contains("Content-Security-Policy: default-src 'none'")
                .contains("X-Content-Type-Options: nosniff")
                .contains("What was sent cannot be read.")
                .doesNotContain("MESSAGE")
                .doesNotContain("script>alert");
    }

    @Test
    void an_address_without_end_is_said_to_be_too_long() throws Exception {
        assertThat(raw("GET /thing?" + "x".repeat(20_000)
                        + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 414")
                .contains("too long");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "multipart/form-data",
                "multipart/form-data; boundary=X",
                "application/x-www-form-urlencoded; charset=nobodys",
                "application/x-www-form-urlencoded; charset=%"
            })
    void a_form_that_is_put_together_wrongly_is_the_senders_fault(String type) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(own() + "/thing"))
                .header("Origin", own())
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString("--X a=1"))
                .build();
        HttpResponse<String> answer = BROWSER.send(request, BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("What was sent cannot be read.");
    }

    @Test
    void our_own_fault_shows_a_page_and_none_of_our_secrets() throws Exception {
        HttpResponse<String> answer = get("/broken");
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.body())
                .contains("not your doing")
                .doesNotContain("secret")
                .doesNotContain("Exception");
    }

    @Test
    void an_address_without_a_page_says_so() throws Exception {
        HttpResponse<String> answer = get("/nothing");
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no page at this address");
    }

    @Test
    void what_a_page_links_to_is_there_and_may_be_kept() throws Exception {
        Matcher files = Pattern.compile("(?:href|src)=\"(/static/[^\"]+)\"")
                .matcher(get("/nothing").body());
        int found = 0;
        while (files.find()) {
            HttpResponse<String> file = get(files.group(1));
            assertThat(file.statusCode()).as(files.group(1)).isEqualTo(200);
            assertThat(file.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
            found++;
        }
        assertThat(found).isGreaterThanOrEqualTo(5);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/static/x/../../web/index.txt",
                "/static/x/..%2f..%2f..%2flyewright%2fapp%2fMain.class",
                "/static/0000000000000000/index.txt",
                "/static/0000000000000000/../lyewright.css",
                "/static//etc/passwd",
                "/static/%2e%2e/%2e%2e/etc/passwd"
            })
    void no_other_file_can_be_reached(String path) throws Exception {
        assertThat(raw("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .matches("(?s)HTTP/1.1 4(00|04) .*");
    }

    @Test
    void a_form_of_five_megabytes_is_refused() throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(own() + "/thing"))
                .header("Origin", own())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("a=" + "x".repeat(5 << 20)))
                .build();
        assertThat(BROWSER.send(request, BodyHandlers.ofString()).statusCode()).isEqualTo(413);
    }

    @Test
    void it_listens_on_this_computer_only() {
        Outcome<WebServer> wide = WebServer.start("0.0.0.0", 0, List.of());
        assertThat(wide.problems()).hasSize(1);
        assertThat(wide.problems().get(0).sentence())
                .contains("would be taken for the maker")
                .contains("--devices");
    }

    @Test
    void a_port_that_is_taken_is_said_to_be_taken() {
        Outcome<WebServer> second = WebServer.start("127.0.0.1", server.port(), List.of());
        assertThat(second.problems()).hasSize(1);
        assertThat(second.problems().get(0).sentence()).contains("port " + server.port() + " is taken");
    }

    private static String own() {
        return "http://localhost:" + server.port();
    }

    private static HttpResponse<String> get(String path) throws Exception {
        return BROWSER.send(HttpRequest.newBuilder(URI.create(own() + path)).build(), BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String path, String header, String value) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(own() + path))
                .header(header, value)
                .POST(HttpRequest.BodyPublishers.noBody())
                .build();
        return BROWSER.send(request, BodyHandlers.ofString());
    }

    /** What no well-behaved browser would send. */
    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
