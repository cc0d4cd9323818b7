package lyewright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.records.Place;
import lyewright.records.setting.Units;
import lyewright.web.Doors;
import lyewright.web.Listening;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.people.PeoplePages;
import lyewright.web.people.Porter;

/** All pages of a workshop, with both doors, asked by devices that each have cookies of their own. */
final class TestDoors implements AutoCloseable {

    private final Shop shop;
    private final WebServer server;
    private final TestClock clock;

    private TestDoors(Shop shop, WebServer server, TestClock clock) {
        this.shop = shop;
        this.server = server;
        this.clock = clock;
    }

    /** A clock that somebody can set. */
    static final class TestClock extends Clock {

        private Instant now = Instant.parse("2026-11-25T09:00:00Z");

        synchronized void goOn(Duration by) {
            now = now.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public synchronized Instant instant() {
            return now;
        }
    }

    static TestDoors open(Path home, boolean signIn) {
        TestClock clock = new TestClock();
        Shop shop = Shop.open(new Place.Folder(home.resolve("mine")), new Place.Folder(home.resolve("demo")), clock)
                .orThrow();
        shop.startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
        Doors doors = new Doors(signIn, Optional.empty());
        AtomicReference<WebServer> running = new AtomicReference<>();
        PeoplePages people = new PeoplePages(
                shop, doors, () -> Objects.requireNonNull(running.get()).network());
        WebServer server = WebServer.start(
                        new Listening("127.0.0.1", 0, 0, doors, Optional.empty()),
                        new Porter(shop),
                        OwnPages.features(shop, home.resolve("mine"), people))
                .orThrow();
        running.set(server);
        return new TestDoors(shop, server, clock);
    }

    Shop shop() {
        return shop;
    }

    WebServer server() {
        return server;
    }

    TestClock clock() {
        return clock;
    }

    /** The computer itself. */
    Device desk() {
        return new Device("http://localhost:" + server.port());
    }

    /** A device at the network's door, which opens for it. */
    Device device() {
        if (!server.network().isOpen()) {
            desk().post("/settings/people/door/open");
        }
        return new Device("http://127.0.0.1:" + networkPort());
    }

    int networkPort() {
        return server.network().port();
    }

    /** A device that somebody was let in with. */
    Device letIn(String personId) {
        Device device = device();
        HttpResponse<String> in = device.post("/pair", "code", code(personId), "device", "telephone", "on", "/recipes");
        if (in.statusCode() != 303) {
            throw new IllegalStateException(in.body());
        }
        return device;
    }

    /** A code that the desk shows. */
    String code(String personId) {
        HttpResponse<String> way = desk().post("/settings/people/" + personId + "/code");
        String page =
                desk().get(way.headers().firstValue("Location").orElseThrow()).body();
        Matcher code = Pattern.compile("the-code\">([0-9]{4}) ([0-9]{4})<").matcher(page);
        if (!code.find()) {
            throw new IllegalStateException(page);
        }
        return code.group(1) + code.group(2);
    }

    /** A browser with cookies of its own. */
    static final class Device {

        private final String at;
        private final HttpClient browser = HttpClient.newHttpClient();
        private final String forwarded;
        private String cookie = "";

        Device(String at) {
            this(at, "");
        }

        private Device(String at, String forwarded) {
            this.at = at;
            this.forwarded = forwarded;
        }

        /** One like it whose requests a web server passes on, saying where it had them from. */
        Device from(String place) {
            return new Device(at, place);
        }

        String at() {
            return at;
        }

        String cookie() {
            return cookie;
        }

        HttpResponse<String> get(String path) {
            return send(HttpRequest.newBuilder(URI.create(at + path)).GET());
        }

        HttpResponse<String> post(String path, String... namesAndValues) {
            return send(writing(path, namesAndValues));
        }

        /** As the pages' own script does. */
        HttpResponse<String> postInPlace(String path, String... namesAndValues) {
            return send(writing(path, namesAndValues).header("HX-Request", "true"));
        }

        private HttpRequest.Builder writing(String path, String... namesAndValues) {
            StringBuilder form = new StringBuilder();
            for (int i = 0; i < namesAndValues.length; i += 2) {
                form.append(i == 0 ? "" : "&")
                        .append(URLEncoder.encode(namesAndValues[i], StandardCharsets.UTF_8))
                        .append('=')
                        .append(URLEncoder.encode(namesAndValues[i + 1], StandardCharsets.UTF_8));
            }
            return HttpRequest.newBuilder(URI.create(at + path))
                    .header("Origin", at)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(form.toString()));
        }

        private HttpResponse<String> send(HttpRequest.Builder request) {
            if (!cookie.isEmpty()) {
                request.header("Cookie", cookie);
            }
            if (!forwarded.isEmpty()) {
                request.header("X-Forwarded-For", forwarded);
            }
            try {
                HttpResponse<String> answer = browser.send(request.build(), BodyHandlers.ofString());
                answer.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.replaceFirst(";.*", ""));
                return answer;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
