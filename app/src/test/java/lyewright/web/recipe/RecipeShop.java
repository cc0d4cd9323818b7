package lyewright.web.recipe;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.records.Place;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.Search;
import lyewright.records.setting.Units;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.photograph.PhotographPages;
import lyewright.web.why.WhyPages;

/** A workshop with recipe pages, and a browser of few words. Its recipes are invented. */
public final class RecipeShop implements AutoCloseable {

    /** An ordinary bar in percent. */
    public static final String PLAIN = """
            recipe: Plain
            version: 1
            use: own
            oils:
              coconut: 25 %
              olive-virgin: 65 %
              castor: 10 %
            alkali: sodium
            superfat: 6 %
            water: 32 % lye
            """;

    private static final Pattern ID = Pattern.compile("/recipes/([0-9a-f-]{36})");

    private final HttpClient browser = HttpClient.newHttpClient();
    private final Shop shop;
    private final WebServer server;

    /** An empty workshop in a folder. */
    public RecipeShop(Path home) {
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
        shop = Shop.open(new Place.Folder(home), new Place.Folder(home.resolve("demo")), clock)
                .orThrow();
        shop.startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        server = WebServer.start(
                        "127.0.0.1", 0, List.of(new RecipePages(shop), new PhotographPages(shop), new WhyPages(shop)))
                .orThrow();
    }

    /** Its recipes. */
    public RecipeBook book() {
        return shop.records().recipes();
    }

    /** Deletes every recipe and every draft, so that a test begins with none. */
    public void empty() {
        book().list(Search.all(1, Search.LARGEST_PAGE)).items().forEach(recipe -> book().delete(recipe.id()));
        shop.records().drafts().all().forEach(draft -> shop.records().drafts().discard(draft.id()));
    }

    /** All of it. */
    public Shop shop() {
        return shop;
    }

    /** What to type into a browser, without a slash at the end. */
    public String address() {
        return "http://localhost:" + server.port();
    }

    /** Keeps a recipe and gives its id. */
    public String keep(String text) {
        return book().importFormula(formula(text)).orThrow().version().recipeId();
    }

    /** A formula of its file's text. */
    public static Formula formula(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        return read.formula()
                .orElseThrow(() -> new IllegalArgumentException(read.problems().toString()));
    }

    /** The plain bar under another name, which may hold anything that a file can. */
    public static String named(String name) {
        return PLAIN.replace(
                "recipe: Plain", "recipe: \"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"");
    }

    /** One of the demo workshop's own formulas. */
    public static String example(String name) {
        try {
            return Files.readString(Path.of("..", "examples", name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A page. */
    public HttpResponse<String> get(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address() + path));
        return sent(headers.length == 0 ? request : request.headers(headers));
    }

    /** What is at an address, byte by byte. */
    public HttpResponse<byte[]> bytes(String path) {
        try {
            return browser.send(
                    HttpRequest.newBuilder(URI.create(address() + path)).build(), BodyHandlers.ofByteArray());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A button, or a form of texts: name, text, name, text. */
    public HttpResponse<String> post(String path, String... form) {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < form.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(form[i])
                    .append('=')
                    .append(URLEncoder.encode(form[i + 1], StandardCharsets.UTF_8));
        }
        return sent(write(path, "application/x-www-form-urlencoded").POST(BodyPublishers.ofString(body.toString())));
    }

    /** A file in a form, as a browser sends it. */
    public HttpResponse<String> upload(String path, String field, String name, String type, byte[] content) {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(("--seam\r\nContent-Disposition: form-data; name=\"" + field + "\"; filename=\"" + name
                        + "\"\r\nContent-Type: " + type + "\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(content);
        body.writeBytes("\r\n--seam--\r\n".getBytes(StandardCharsets.UTF_8));
        return sent(
                write(path, "multipart/form-data; boundary=seam").POST(BodyPublishers.ofByteArray(body.toByteArray())));
    }

    /** Any bytes under any type. */
    public HttpResponse<String> send(String path, String type, byte[] body) {
        return sent(write(path, type).POST(BodyPublishers.ofByteArray(body)));
    }

    private HttpRequest.Builder write(String path, String type) {
        return HttpRequest.newBuilder(URI.create(address() + path))
                .header("Origin", address())
                .header("Content-Type", type);
    }

    private HttpResponse<String> sent(HttpRequest.Builder request) {
        try {
            return once(request);
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The server may close a connection that is kept just as it is used again; a browser then asks anew by itself, this one does not. */
    private HttpResponse<String> once(HttpRequest.Builder request) throws IOException, InterruptedException {
        try {
            return browser.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            if (String.valueOf(e.getMessage()).contains("received no bytes")) {
                return browser.send(request.build(), BodyHandlers.ofString());
            }
            throw e;
        }
    }

    /** Where an answer sends on to; an error where it does not. */
    public static String onwards(HttpResponse<String> answer) {
        String location = answer.headers().firstValue("Location").orElseThrow();
        return URI.create(location).getRawPath()
                + (URI.create(location).getRawQuery() == null
                        ? ""
                        : "?" + URI.create(location).getRawQuery());
    }

    /** The id of the recipe that an address is of. */
    public static String idIn(String address) {
        Matcher found = ID.matcher(address);
        if (!found.find()) {
            throw new IllegalArgumentException("no recipe in " + address);
        }
        return found.group(1);
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
