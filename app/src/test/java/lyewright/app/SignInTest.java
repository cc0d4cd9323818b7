package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import lyewright.cli.Pages;
import lyewright.measure.Outcome;
import lyewright.records.Place;
import lyewright.records.people.Role;
import lyewright.records.setting.Units;
import lyewright.records.store.Author;
import lyewright.web.Listening;
import lyewright.web.Shop;
import lyewright.web.WebServer;
import lyewright.web.people.PeoplePages;
import lyewright.web.people.Porter;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server on which everybody signs in, at the computer itself too. */
class SignInTest {

    private static final String MAKER = Author.DESK.person();
    private static final String GOOD = "mussel shells at low water";

    /** Longer than any password is, so that no test waits for its digest. */
    private static final String TOO_LONG = "x".repeat(300);

    @TempDir
    private Path home;

    private TestDoors doors;

    @BeforeEach
    void a_server_whose_maker_has_a_password() {
        doors = TestDoors.open(home, true);
        doors.shop().records().passwords().set(MAKER, GOOD).orThrow();
    }

    @AfterEach
    void stop() {
        doors.close();
    }

    private TestDoors.Device signedIn(String name, String password) {
        TestDoors.Device device = doors.desk();
        assertThat(device.post("/sign-in", "name", name, "password", password).statusCode())
                .isEqualTo(303);
        return device;
    }

    @Test
    void who_guesses_elsewhere_keeps_nobody_out_behind_a_web_server_that_passes_requests_on() {
        for (int i = 0; i < 31; i++) {
            // what a browser wrote there itself comes first, and counts for nothing
            TestDoors.Device thief = doors.desk().from("198.51.100." + i + ", 203.0.113.9");
            int status = thief.post("/sign-in", "name", "somebody " + i, "password", TOO_LONG)
                    .statusCode();
            assertThat(status).as("try " + i).isEqualTo(i < 30 ? 422 : 429);
        }

        TestDoors.Device maker = doors.desk().from("203.0.113.10");
        assertThat(maker.post("/sign-in", "name", "The maker", "password", GOOD).statusCode())
                .isEqualTo(303);
    }

    @Test
    void who_guesses_at_a_name_elsewhere_keeps_whoever_has_it_not_out() {
        for (int i = 0; i < 15; i++) {
            doors.desk().from("203.0.113.9").post("/sign-in", "name", "The maker", "password", TOO_LONG);
        }

        assertThat(doors.desk()
                        .from("203.0.113.10")
                        .post("/sign-in", "name", "The maker", "password", GOOD)
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void who_has_a_whole_network_of_addresses_guesses_no_oftener() {
        for (int i = 0; i < 30; i++) {
            doors.desk()
                    .from("2001:db8:1:2::" + Integer.toHexString(i + 1))
                    .post("/sign-in", "name", "somebody " + i, "password", TOO_LONG);
        }

        assertThat(tryFrom("2001:db8:1:2:ffff::9")).isEqualTo(429);
        assertThat(tryFrom("2001:db8:1:3::9")).isEqualTo(422);
    }

    private int tryFrom(String address) {
        return doors.desk()
                .from(address)
                .post("/sign-in", "name", "somebody else", "password", TOO_LONG)
                .statusCode();
    }

    @Test
    void who_signs_in_where_they_are_signed_in_already_is_at_one_device_and_not_at_two() {
        TestDoors.Device maker = signedIn("The maker", GOOD);

        maker.post("/sign-in", "name", "The maker", "password", GOOD);

        assertThat(doors.shop().records().devices().list()).hasSize(1);
        assertThat(maker.get("/recipes").statusCode()).isEqualTo(200);
    }

    @Test
    void who_found_a_makers_telephone_gives_nobody_a_password() {
        TestDoors.Device found = signedIn("The maker", GOOD);

        HttpResponse<String> tried = found.post(
                "/settings/people/" + MAKER + "/password",
                "password",
                "a thief knows this one",
                "own",
                "a guess at it");

        assertThat(tried.statusCode()).isEqualTo(422);
        assertThat(tried.body()).contains("not your password as it is now");
        signedIn("The maker", GOOD);
    }

    @Test
    void many_who_sign_in_at_once_keep_no_page_waiting() throws Exception {
        AtomicInteger turnedAway = new AtomicInteger();
        List<Thread> thieves = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            TestDoors.Device thief = doors.desk();
            String name = "somebody " + i;
            thieves.add(new Thread(() -> {
                if (thief.post("/sign-in", "name", name, "password", "not the right one")
                                .statusCode()
                        == 429) {
                    turnedAway.incrementAndGet();
                }
            }));
        }
        thieves.forEach(Thread::start);
        for (Thread thief : thieves) {
            thief.join();
        }

        assertThat(turnedAway.get()).isPositive();
        assertThat(signedIn("The maker", GOOD).get("/recipes").statusCode()).isEqualTo(200);
    }

    @Test
    void nobody_is_taken_for_the_maker_not_even_at_the_computer_itself() {
        TestDoors.Device anyone = doors.desk();

        HttpResponse<String> asked = anyone.get("/stores/cupboard");

        assertThat(asked.statusCode()).isEqualTo(303);
        assertThat(asked.headers().firstValue("Location")).contains("/sign-in?on=%2Fstores%2Fcupboard");
        assertThat(anyone.post("/settings/people", "name", "x").statusCode()).isEqualTo(401);
        assertThat(anyone.get("/sign-in").body()).doesNotContain("Gannet");
    }

    @Test
    void who_signs_in_goes_on_to_what_they_asked_for() {
        HttpResponse<String> in =
                doors.desk().post("/sign-in", "name", "the maker", "password", GOOD, "on", "/stores/cupboard");

        assertThat(in.headers().firstValue("Location")).contains("/stores/cupboard");
        assertThat(signedIn("The maker", GOOD).get("/settings/people").statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_wrong_password_and_a_name_that_nobody_has_are_told_alike() {
        HttpResponse<String> wrong = doors.desk().post("/sign-in", "name", "The maker", "password", "x");
        HttpResponse<String> nobody = doors.desk().post("/sign-in", "name", "Nobody", "password", GOOD);

        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(nobody.statusCode()).isEqualTo(422);
        assertThat(wrong.body().replace("The maker", "NAME"))
                .isEqualTo(nobody.body().replace("Nobody", "NAME"));
        assertThat(wrong.headers().firstValue("Set-Cookie")).isEmpty();
    }

    @Test
    void after_ten_wrong_passwords_even_the_right_one_waits_a_quarter_of_an_hour() {
        for (int i = 0; i < 10; i++) {
            assertThat(doors.desk()
                            .post("/sign-in", "name", i % 2 == 0 ? "The maker" : " THE MAKER", "password", TOO_LONG)
                            .statusCode())
                    .isEqualTo(422);
        }
        HttpResponse<String> eleventh = doors.desk().post("/sign-in", "name", "The maker", "password", GOOD);
        assertThat(eleventh.statusCode()).isEqualTo(429);
        assertThat(eleventh.headers().firstValue("Retry-After")).contains("900");

        doors.clock().goOn(Duration.ofMinutes(16));
        signedIn("The maker", GOOD);
    }

    @Test
    void somebody_else_is_given_a_password_and_makes_it_their_own() {
        TestDoors.Device maker = signedIn("The maker", GOOD);
        String wenna = doors.shop()
                .always(false)
                .records()
                .people()
                .add("Wenna", Role.HELPER)
                .orThrow()
                .id();
        assertThat(maker.post("/settings/people/" + wenna + "/password", "password", "too short", "own", GOOD)
                        .statusCode())
                .isEqualTo(422);
        assertThat(maker.post(
                                "/settings/people/" + wenna + "/password",
                                "password",
                                "kelp on the north quay",
                                "own",
                                GOOD)
                        .statusCode())
                .isEqualTo(303);

        TestDoors.Device hers = signedIn("Wenna", "kelp on the north quay");
        assertThat(hers.get("/settings/people").statusCode()).isEqualTo(403);
        assertThat(hers.post("/me/password", "before", "not it", "password", GOOD)
                        .statusCode())
                .isEqualTo(422);
        assertThat(hers.post("/me/password", "before", "kelp on the north quay", "password", "gulls over the slip")
                        .statusCode())
                .isEqualTo(303);
        signedIn("Wenna", "gulls over the slip");
    }

    @Test
    void who_signs_out_is_out() {
        TestDoors.Device maker = signedIn("The maker", GOOD);
        String cookie = maker.cookie();

        maker.post("/me/leave");

        assertThat(maker.cookie()).isNotEqualTo(cookie);
        assertThat(maker.get("/recipes").statusCode()).isEqualTo(303);
        assertThat(doors.shop().records().devices().list()).isEmpty();
    }

    @Test
    void passwords_never_go_through_a_network_as_plain_text() {
        Outcome<Listening> asked = Reach.of(order("0.0.0.0", Optional.empty(), Optional.empty()), "");

        Outcome<WebServer> started = WebServer.start(asked.orThrow(), new Porter(doors.shop()), List.of());

        assertThat(started.problems())
                .singleElement()
                .matches(problem -> problem.what().contains("plain text"));
    }

    @Test
    void an_address_that_is_none_and_two_ways_in_at_once_are_refused() {
        assertThat(List.of("soap.example", "ftp://soap.example", "https://soap.example/shop", "https://", "not one"))
                .allSatisfy(typed -> assertThat(Reach.of(order("127.0.0.1", Optional.of(typed), Optional.empty()), "")
                                .problems())
                        .as(typed)
                        .isNotEmpty());
        Pages.Others both = new Pages.Others(true, Optional.empty(), true, Optional.empty(), Optional.empty());
        assertThat(Reach.of(new Pages.Order("127.0.0.1", 0, both, Optional.empty(), home, false, false), "")
                        .problems())
                .isNotEmpty();
    }

    private Pages.Order order(String bind, Optional<String> address, Optional<String> certificate) {
        return new Pages.Order(
                bind,
                0,
                new Pages.Others(false, Optional.empty(), true, address, certificate),
                Optional.empty(),
                home,
                false,
                false);
    }

    @Test
    void a_certificate_of_ones_own_enciphers_what_goes_through() throws Exception {
        Path file = certificate();
        assertThat(Reach.of(order("127.0.0.1", Optional.empty(), Optional.of("own.p12")), "wrong")
                        .problems())
                .isNotEmpty();
        assertThat(Reach.of(order("127.0.0.1", Optional.empty(), Optional.of("none.p12")), "enough")
                        .problems())
                .isNotEmpty();
        Listening listening = Reach.of(order("127.0.0.1", Optional.empty(), Optional.of("own.p12")), "enough")
                .orThrow();
        try (Shop shop = Shop.open(
                        new Place.Folder(home.resolve("other")),
                        new Place.Folder(home.resolve("other-demo")),
                        Clock.systemUTC())
                .orThrow()) {
            shop.startMine(Shop.usual("Gannet Stair Soap", Units.GRAMS));
            PeoplePages people = new PeoplePages(shop, listening.doors(), () -> {
                throw new IllegalStateException("nobody asks");
            });
            try (WebServer server = WebServer.start(
                            listening, new Porter(shop), OwnPages.features(shop, home.resolve("other"), people))
                    .orThrow()) {
                assertThat(server.address()).startsWith("https://localhost:");
                HttpResponse<String> page = trusting(file)
                        .send(
                                HttpRequest.newBuilder(URI.create(server.address() + "sign-in"))
                                        .build(),
                                BodyHandlers.ofString());
                assertThat(page.statusCode()).isEqualTo(200);
                assertThat(page.body()).contains("Sign in").doesNotContain("not enciphered");
                assertThat(page.headers().firstValue("Cross-Origin-Opener-Policy"))
                        .isPresent();
            }
        }
    }

    /** A certificate for localhost, made by the tool that comes with Java. */
    private Path certificate() throws IOException, InterruptedException {
        Path file = home.resolve("own.p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "own",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "san=dns:localhost",
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        "enough",
                        "-keystore",
                        file.toString(),
                        "-validity",
                        "2")
                .redirectErrorStream(true)
                .start();
        keytool.getInputStream().readAllBytes();
        assertThat(keytool.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return file;
    }

    private static HttpClient trusting(Path file) throws IOException, GeneralSecurityException {
        KeyStore own = KeyStore.getInstance("PKCS12");
        try (var in = Files.newInputStream(file)) {
            own.load(in, "enough".toCharArray());
        }
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("own", own.getCertificate("own"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }
}
