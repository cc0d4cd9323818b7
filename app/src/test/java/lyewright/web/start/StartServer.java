package lyewright.web.start;

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
import lyewright.records.Place;
import lyewright.web.Feature;
import lyewright.web.Frame;
import lyewright.web.Shop;
import lyewright.web.WebServer;

/** The pages of the start on a server of their own, with a plain page where the recipes will be. */
final class StartServer implements AutoCloseable {

    /** Names an icon, or a browser would look for one that is not there. */
    private static final String HEAD = "<!DOCTYPE html><html lang=en><title>Recipes</title><link rel=icon href="
            + Frame.outside("").file("mark.svg") + ">";

    final Shop shop;
    private final WebServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    StartServer(Path folder) {
        shop = Shop.open(
                        new Place.Folder(folder.resolve("mine")),
                        new Place.Folder(folder.resolve("demo")),
                        Clock.systemUTC())
                .orThrow();
        Feature recipes = routes -> {
            routes.get(
                    "/recipes",
                    ctx -> ctx.html(HEAD + "<h1>Recipes of " + shop.workshop().name() + "</h1>"));
            routes.get(
                    "/recipes/{id}",
                    ctx -> ctx.html(HEAD + "<h1>"
                            + shop.records()
                                    .recipes()
                                    .find(ctx.pathParam("id"))
                                    .orElseThrow()
                                    .name() + "</h1>"));
        };
        server = WebServer.start("127.0.0.1", 0, List.of(new Start(shop), recipes))
                .orThrow();
    }

    String address(String path) {
        return "http://localhost:" + server.port() + path;
    }

    HttpResponse<String> get(String path) throws Exception {
        return client.send(HttpRequest.newBuilder(URI.create(address(path))).build(), BodyHandlers.ofString());
    }

    /** A form as a browser posts it: names and values in turn. */
    HttpResponse<String> post(String path, String... namesAndValues) throws Exception {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(encoded(namesAndValues[i]))
                    .append('=')
                    .append(encoded(namesAndValues[i + 1]));
        }
        HttpRequest request = HttpRequest.newBuilder(URI.create(address(path)))
                .header("Origin", address(""))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                .build();
        return client.send(request, BodyHandlers.ofString());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** What can be read on a page, without its marks. */
    static String text(HttpResponse<String> answer) {
        return answer.body()
                .replaceAll("(?s)<(svg|select|textarea).*?</\\1>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace("&#39;", "'")
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ");
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
