package lyewright.web;

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
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.Place;
import lyewright.records.setting.Units;

/** A workshop in a folder of its own, with some pages served, asked over HTTP as a browser without scripts asks. */
public final class TestWorkshop implements AutoCloseable {

    private final Shop shop;
    private final WebServer server;
    private final HttpClient browser = HttpClient.newHttpClient();

    private TestWorkshop(Shop shop, WebServer server) {
        this.shop = shop;
        this.server = server;
    }

    /** Starts "Gannet Stair Soap" with the pages of some features. */
    public static TestWorkshop start(Path home, Units units, Function<Shop, List<Feature>> pages) {
        return start(new Place.Folder(home.resolve("mine")), new Place.Folder(home.resolve("demo")), units, pages);
    }

    /** The same, kept elsewhere. */
    public static TestWorkshop start(Place mine, Place demo, Units units, Function<Shop, List<Feature>> pages) {
        Shop shop = Shop.open(mine, demo, Clock.systemUTC()).orThrow();
        shop.startMine(Shop.usual("Gannet Stair Soap", units));
        return new TestWorkshop(
                shop, WebServer.start("127.0.0.1", 0, pages.apply(shop)).orThrow());
    }

    /** What it keeps and shows. */
    public Shop shop() {
        return shop;
    }

    /** Where its pages are, without the slash at the end. */
    public String at() {
        return "http://localhost:" + server.port();
    }

    /** Asks for a page. */
    public HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return browser.send(HttpRequest.newBuilder(URI.create(at() + path)).build(), BodyHandlers.ofString());
    }

    /** Sends a form: names and values in turn. The way on is not followed. */
    public HttpResponse<String> post(String path, String... namesAndValues) throws IOException, InterruptedException {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            form.append(i == 0 ? "" : "&")
                    .append(URLEncoder.encode(namesAndValues[i], StandardCharsets.UTF_8))
                    .append('=')
                    .append(URLEncoder.encode(namesAndValues[i + 1], StandardCharsets.UTF_8));
        }
        return send(path, "application/x-www-form-urlencoded", form.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** Sends one file in a form. */
    public HttpResponse<String> postFile(String path, String field, byte[] content)
            throws IOException, InterruptedException {
        String edge = "edge-of-a-part";
        String head = "--" + edge + "\r\nContent-Disposition: form-data; name=\"" + field
                + "\"; filename=\"file\"\r\nContent-Type: application/octet-stream\r\n\r\n";
        byte[] start = head.getBytes(StandardCharsets.UTF_8);
        byte[] end = ("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8);
        byte[] body = new byte[start.length + content.length + end.length];
        System.arraycopy(start, 0, body, 0, start.length);
        System.arraycopy(content, 0, body, start.length, content.length);
        System.arraycopy(end, 0, body, start.length + content.length, end.length);
        return send(path, "multipart/form-data; boundary=" + edge, body);
    }

    /** Sends a form in parts, written out. */
    public HttpResponse<String> postParts(String path, String edge, String parts)
            throws IOException, InterruptedException {
        return send(path, "multipart/form-data; boundary=" + edge, parts.getBytes(StandardCharsets.UTF_8));
    }

    private HttpResponse<String> send(String path, String type, byte[] body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(at() + path))
                .header("Origin", at())
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                .build();
        return browser.send(request, BodyHandlers.ofString());
    }

    /** The bytes of an answer. */
    public HttpResponse<byte[]> download(String path) throws IOException, InterruptedException {
        return browser.send(HttpRequest.newBuilder(URI.create(at() + path)).build(), BodyHandlers.ofByteArray());
    }

    /** Where an answer leads on to. */
    public static String wayOn(HttpResponse<?> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    /** The value of a hidden field of a page. */
    public static String hidden(HttpResponse<String> page, String name) {
        Matcher field = Pattern.compile("<input type=\"hidden\" name=\"" + name + "\" value=\"([^\"]*)\"")
                .matcher(page.body());
        return field.find() ? field.group(1) : "";
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
