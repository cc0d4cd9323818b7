package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is sent slowly, or not to the end, keeps nobody else waiting. */
class ArrivalsTest {

    private static final int SLOW = 60;
    private static final Duration AT_ONCE = Duration.ofSeconds(2);
    private static final int MANY = 60;
    private static final int LARGE = 2 << 20;

    private final HttpClient browser = HttpClient.newHttpClient();
    private final List<Socket> open = new ArrayList<>();
    private final AtomicInteger handled = new AtomicInteger();
    private final WebServer server = start();

    private WebServer start() {
        Feature pages = routes -> {
            routes.get("/page", ctx -> ctx.result("a page"));
            routes.post("/body", ctx -> {
                handled.incrementAndGet();
                ctx.result("handled " + ctx.bodyAsBytes().length);
            });
            routes.post("/form", ctx -> ctx.result("read " + ctx.formParam("a")));
            routes.post(
                    "/file",
                    ctx -> ctx.result("read "
                            + Uploads.file(ctx, "file", "")
                                    .orThrow()
                                    .map(file -> Arrays.hashCode(bytes(file.content())))
                                    .orElse(0)));
        };
        return WebServer.start("127.0.0.1", 0, List.of(pages)).orThrow();
    }

    private static byte[] bytes(java.io.InputStream in) {
        try (in) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @BeforeEach
    void warm() throws Exception {
        HttpRequest first = HttpRequest.newBuilder(URI.create(own() + "/page")).build();
        assertThat(browser.send(first, BodyHandlers.ofString()).body()).isEqualTo("a page");
    }

    @AfterEach
    void stop() throws IOException {
        for (Socket socket : open) {
            socket.close();
        }
        server.close();
    }

    private String own() {
        return "http://localhost:" + server.port();
    }

    private HttpResponse<String> page() throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(own() + "/page"))
                .timeout(AT_ONCE)
                .build();
        return browser.send(request, BodyHandlers.ofString());
    }

    /** Begins to send, and stops in the middle. */
    private Socket begin(String path, String type, long length, int sent) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
        open.add(socket);
        String head = "POST " + path + " HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\nOrigin: " + own()
                + "\r\nContent-Type: " + type + "\r\nContent-Length: " + length + "\r\n\r\n";
        socket.getOutputStream().write((head + "a=" + "x".repeat(sent)).getBytes(StandardCharsets.ISO_8859_1));
        return socket;
    }

    @Test
    void sixty_forms_that_do_not_come_whole_keep_no_page_waiting() throws Exception {
        for (int i = 0; i < SLOW; i++) {
            begin("/form", "application/x-www-form-urlencoded", 1000, 10);
        }

        assertThat(page().statusCode()).isEqualTo(200);
        assertThat(browser.send(
                                HttpRequest.newBuilder(URI.create(own() + "/form"))
                                        .timeout(AT_ONCE)
                                        .header("Origin", own())
                                        .header("Content-Type", "application/x-www-form-urlencoded")
                                        .POST(BodyPublishers.ofString("a=b"))
                                        .build(),
                                BodyHandlers.ofString())
                        .body())
                .isEqualTo("read b");
    }

    @Test
    void sixty_files_that_do_not_come_whole_keep_no_page_waiting() throws Exception {
        for (int i = 0; i < SLOW; i++) {
            begin("/form", "application/x-www-form-urlencoded", 3 << 20, i < Arrivals.MOST_FILES ? 600 << 10 : 10);
        }

        assertThat(page().statusCode()).isEqualTo(200);
        Socket last = open.get(SLOW - 1);
        assertThat(new String(last.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                .startsWith("HTTP/1.1 503")
                .contains("Too much is on its way here at once.");
    }

    private String answered() throws Exception {
        for (int i = 0; i < 200; i++) {
            for (Socket socket : open) {
                if (socket.getInputStream().available() > 0) {
                    return new String(
                            socket.getInputStream().readNBytes("HTTP/1.1 503".length()), StandardCharsets.UTF_8);
                }
            }
            Thread.sleep(50);
        }
        return "nothing";
    }

    @Test
    void forms_that_do_not_come_whole_take_up_no_more_than_there_is_room_for() throws Exception {
        int length = 512 << 10;
        for (int i = 0; i <= Arrivals.MOST_WAITED_FOR / length; i++) {
            begin("/form", "application/x-www-form-urlencoded", length, 10);
        }

        // which of them is one too many is for the server to say
        assertThat(answered()).startsWith("HTTP/1.1 503");
        assertThat(page().statusCode()).isEqualTo(200);

        for (Socket socket : open) {
            socket.close();
        }
        HttpRequest next = HttpRequest.newBuilder(URI.create(own() + "/form"))
                .header("Origin", own())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("a=" + "b".repeat(length - 2)))
                .build();
        HttpResponse<String> answer = browser.send(next, BodyHandlers.ofString());
        for (int i = 0; answer.statusCode() == 503 && i < 100; i++) {
            Thread.sleep(50);
            answer = browser.send(next, BodyHandlers.ofString());
        }
        assertThat(answer.body()).startsWith("read bbb");
    }

    @Test
    void what_is_sent_is_handled_once_however_it_came() throws Exception {
        byte[] content = "a=".concat("x".repeat(1 << 20)).getBytes(StandardCharsets.US_ASCII);
        for (int i = 0; i < MANY; i++) {
            int length = i % 2 == 0 ? content.length : 100 + i;
            HttpRequest request = HttpRequest.newBuilder(URI.create(own() + "/body"))
                    .header("Origin", own())
                    .header("Content-Type", "application/octet-stream")
                    .POST(BodyPublishers.ofByteArray(content, 0, length))
                    .build();
            assertThat(browser.send(request, BodyHandlers.ofString()).body()).isEqualTo("handled " + length);
        }

        assertThat(handled).hasValue(MANY);
    }

    @Test
    void a_file_of_two_megabytes_arrives_byte_for_byte_and_makes_room_for_the_next() throws Exception {
        byte[] content = new byte[LARGE];
        new java.util.Random(4).nextBytes(content);
        byte[] head = "--X\r\nContent-Disposition: form-data; name=\"file\"; filename=\"f\"\r\n\r\n"
                .getBytes(StandardCharsets.US_ASCII);
        byte[] end = "\r\n--X--\r\n".getBytes(StandardCharsets.US_ASCII);

        for (int i = 0; i < 2 * Arrivals.MOST_FILES; i++) {
            HttpRequest request = HttpRequest.newBuilder(URI.create(own() + "/file"))
                    .header("Origin", own())
                    .header("Content-Type", "multipart/form-data; boundary=X")
                    .POST(BodyPublishers.ofByteArrays(List.of(head, content, end)))
                    .build();
            assertThat(browser.send(request, BodyHandlers.ofString()).body())
                    .isEqualTo("read " + Arrays.hashCode(content));
        }
    }
}
