package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.records.people.Role;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other devices: who is let in, what they see, and how they are shown out again. */
class DoorsTest {

    private static final String MAKER = Author.DESK.person();

    @TempDir
    private Path home;

    private TestDoors doors;
    private String wenna = "";

    @BeforeEach
    void a_workshop_with_a_helper() {
        doors = TestDoors.open(home, false);
        wenna = doors.shop()
                .records()
                .people()
                .add("Wenna", Role.HELPER)
                .orThrow()
                .id();
    }

    @AfterEach
    void stop() {
        doors.close();
    }

    private static String wayOn(HttpResponse<?> answer) {
        return answer.headers().firstValue("Location").orElse("");
    }

    private String lot() {
        String item = doors.shop()
                .records()
                .items()
                .add(ItemSaid.of("Coconut oil", ItemKind.OIL, Identity.ofKey("coconut")))
                .orThrow()
                .id();
        LotSaid said = new LotSaid(
                "",
                Optional.empty(),
                "NQ-118",
                LocalDate.of(2026, 11, 25),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LotStatus.USABLE,
                Optional.empty(),
                "");
        return doors.shop()
                .records()
                .lots()
                .receive(Author.DESK, "", List.of(new Arrival(item, said, 1_000_000)))
                .orThrow()
                .get(0)
                .id();
    }

    @Test
    void the_door_is_shut_until_a_maker_opens_it_and_again_when_they_shut_it() throws Exception {
        assertThat(doors.server().network().isOpen()).isFalse();
        assertThat(doors.desk().get("/settings/people").body()).contains("Open the door");

        TestDoors.Device stranger = doors.device();
        int port = doors.networkPort();
        assertThat(stranger.get("/recipes").statusCode()).isEqualTo(303);

        doors.desk().post("/settings/people/door/shut");
        for (int i = 0; doors.server().network().isOpen() && i < 100; i++) {
            Thread.onSpinWait();
            doors.desk().get("/settings/people");
        }
        assertThat(catchThrowable(() -> new Socket(InetAddress.getLoopbackAddress(), port).close()))
                .isInstanceOf(ConnectException.class);
        assertThat(doors.desk().get("/recipes").statusCode()).isEqualTo(200);
        assertThat(doors.shop().records().devices().mayKnock()).isFalse();
    }

    /** Every address there is: a page that is added later is shut to strangers before anybody thinks of it. */
    @Test
    void a_stranger_is_shown_nothing_but_the_page_that_asks_for_a_code() {
        TestDoors.Device stranger = doors.device();
        List<String> asked = routes();
        assertThat(asked).hasSizeGreaterThan(80);

        for (String route : asked) {
            String path = path(route);
            if (path.equals("/pair") || path.equals("/sign-in") || path.startsWith("/static/")) {
                continue;
            }
            var answer = route.startsWith("POST ") ? stranger.post(path, "name", "x") : stranger.get(path);
            assertThat(answer.statusCode()).as(route).isEqualTo(route.startsWith("POST ") ? 401 : 303);
            assertThat(answer.body()).as(route).doesNotContain("Gannet");
            if (!route.startsWith("POST ")) {
                assertThat(wayOn(answer)).as(route).startsWith("/pair");
            }
        }
        assertThat(stranger.get("/pair").body()).contains("Eight digits").doesNotContain("Gannet");
        assertThat(stranger.get("/sign-in").statusCode()).isEqualTo(404);
    }

    private List<String> routes() {
        return doors.server().routes();
    }

    private static String path(String route) {
        return route.substring(route.indexOf(' ') + 1)
                .replaceAll("\\{[^}]*}", "1")
                .replaceAll("<[^>]*>", "x");
    }

    @Test
    void a_device_comes_in_by_a_code_and_is_known_from_then_on() {
        TestDoors.Device telephone = doors.device();
        String code = doors.code(wenna);

        var in = telephone.post(
                "/pair",
                "code",
                code.substring(0, 4) + " " + code.substring(4),
                "device",
                "telephone",
                "on",
                "/stores");

        assertThat(in.statusCode()).isEqualTo(303);
        assertThat(wayOn(in)).isEqualTo("/stores");
        assertThat(in.headers().firstValue("Set-Cookie").orElse(""))
                .contains("HttpOnly")
                .contains("SameSite=Strict")
                .contains("Path=/");
        assertThat(telephone.get("/recipes").body()).contains("Wenna").contains("Gannet Stair Soap");
        assertThat(doors.desk().get("/settings/people").body()).contains("telephone");
    }

    @Test
    void where_to_go_on_is_never_somewhere_else() {
        TestDoors.Device telephone = doors.device();

        var in =
                telephone.post("/pair", "code", doors.code(wenna), "device", "telephone", "on", "//elsewhere.example/");

        assertThat(wayOn(in)).isEqualTo("/");
    }

    @Test
    void a_code_is_good_once() {
        String code = doors.code(wenna);
        assertThat(doors.device().post("/pair", "code", code, "device", "one").statusCode())
                .isEqualTo(303);

        var again = doors.device().post("/pair", "code", code, "device", "two");

        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("No such code is open");
    }

    @Test
    void a_code_is_good_for_ten_minutes() {
        String code = doors.code(wenna);
        doors.clock().goOn(Duration.ofMinutes(10));

        assertThat(doors.device().post("/pair", "code", code, "device", "late").statusCode())
                .isEqualTo(422);
    }

    @Test
    void five_wrong_codes_end_the_right_one_and_the_desk_is_told() {
        var way = doors.desk().post("/settings/people/" + wenna + "/code");
        String page = doors.desk().get(wayOn(way)).body();
        String code = page.replaceAll("(?s).*the-code\">([0-9]{4}) ([0-9]{4})<.*", "$1$2");
        String wrong = code.equals("00000000") ? "00000001" : "00000000";
        TestDoors.Device thief = doors.device();
        for (int i = 0; i < 5; i++) {
            assertThat(thief.post("/pair", "code", wrong, "device", "x").statusCode())
                    .isEqualTo(422);
        }

        assertThat(thief.post("/pair", "code", code, "device", "x").statusCode())
                .isEqualTo(422);
        assertThat(doors.desk().get(wayOn(way) + "/fate").body())
                .contains("Five wrong codes were typed")
                .contains("127.0.0.1");
    }

    @Test
    void who_tries_too_many_codes_waits_a_quarter_of_an_hour() {
        TestDoors.Device thief = doors.device();
        for (int i = 0; i < 30; i++) {
            thief.post("/pair", "code", "1", "device", "x");
        }
        String code = doors.code(wenna);
        assertThat(thief.post("/pair", "code", code, "device", "x").statusCode())
                .isEqualTo(429);

        doors.clock().goOn(Duration.ofMinutes(16));
        String next = doors.code(wenna);
        assertThat(thief.post("/pair", "code", next, "device", "x").statusCode())
                .isEqualTo(303);
    }

    @Test
    void a_device_needs_a_name_and_the_code_is_still_good_then() {
        String code = doors.code(wenna);
        TestDoors.Device telephone = doors.device();

        var unnamed = telephone.post("/pair", "code", code, "device", " ");

        assertThat(unnamed.statusCode()).isEqualTo(422);
        assertThat(unnamed.body()).contains(code);
        assertThat(telephone.post("/pair", "code", code, "device", "telephone").statusCode())
                .isEqualTo(303);
    }

    /** As many as may be on their way at once, none of which ever ends. */
    @Test
    void strangers_who_send_bit_by_bit_keep_no_makers_file_waiting() throws Exception {
        URI network = URI.create(doors.device().at());
        List<Socket> slow = new ArrayList<>();
        try {
            for (String path : List.of("/pair", "/recipes", "/pair", "/recipes", "/pair", "/recipes")) {
                Socket socket = new Socket(network.getHost(), network.getPort());
                slow.add(socket);
                socket.setSoTimeout(5_000);
                socket.getOutputStream()
                        .write(("POST " + path + " HTTP/1.1\r\nHost: " + network.getAuthority() + "\r\nOrigin: "
                                        + network
                                        + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                                        + "Transfer-Encoding: chunked\r\n\r\n1\r\nc\r\n")
                                .getBytes(StandardCharsets.US_ASCII));
            }
            for (Socket socket : slow) {
                assertThat(new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))
                                .readLine())
                        .containsAnyOf("413", "401");
            }
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    /** Every address there is: what is added later is a maker's until somebody says otherwise. */
    @Test
    void a_helper_may_send_what_is_weighed_ticked_or_counted_and_nothing_else() {
        TestDoors.Device telephone = doors.letIn(wenna);

        List<String> let = routes().stream()
                .filter(route -> route.startsWith("POST "))
                .filter(route -> !route.equals("POST /me/leave"))
                .filter(route -> telephone.post(path(route), "name", "x").statusCode() != 403)
                .collect(Collectors.toList());

        assertThat(let)
                .containsExactlyInAnyOrder(
                        "POST /make/sheet.pdf",
                        "POST /make/printed",
                        "POST /stores/lots/{id}/take",
                        "POST /stores/count",
                        "POST /ledger/verify",
                        "POST /pair",
                        "POST /sign-in",
                        "POST /me/password");
    }

    @Test
    void a_helper_does_not_see_what_they_could_only_fill_in_in_vain() {
        TestDoors.Device telephone = doors.letIn(wenna);

        assertThat(List.of(
                        "/settings",
                        "/settings/people",
                        "/settings/backup",
                        "/recipes/new",
                        "/recipes/import",
                        "/notebook",
                        "/start",
                        "/stores/moulds/new",
                        "/stores/deliveries/new",
                        "/stores/csv",
                        "/stores/csv/out",
                        "/start/",
                        "/recipes/new/",
                        "/recipes/deleted/",
                        "/recipes/1/edit/",
                        "/stores/moulds/new/"))
                .allSatisfy(path ->
                        assertThat(telephone.get(path).statusCode()).as(path).isEqualTo(403));
        assertThat(List.of("/recipes", "/make", "/stores", "/stores/cupboard", "/stores/count", "/ledger", "/me"))
                .allSatisfy(path ->
                        assertThat(telephone.get(path).statusCode()).as(path).isEqualTo(200));
        assertThat(telephone.get("/recipes").body()).doesNotContain("href=\"/settings\"");
    }

    @Test
    void what_the_desk_shows_is_for_the_desk_to_say() {
        TestDoors.Device telephone = doors.letIn(MAKER);

        assertThat(telephone.post("/start/demo").statusCode()).isEqualTo(422);
        assertThat(doors.desk().get("/recipes").body()).doesNotContain("Demo workshop.");

        doors.desk().post("/start/demo");
        telephone.post("/start/back");
        assertThat(doors.desk().get("/recipes").body()).contains("Demo workshop.");
        assertThat(telephone.get("/recipes").body()).doesNotContain("Demo workshop.");
        doors.desk().post("/start/back");
        assertThat(doors.desk().get("/recipes").body()).doesNotContain("Demo workshop.");
    }

    @Test
    void a_form_that_is_given_back_shows_what_was_typed_under_words_and_only_that() {
        String lot = lot();
        String[] counted = {
            "opened-in",
            "mine",
            "token",
            "token-0009",
            "f" + lot.substring(1) + ".counted",
            "",
            lot + ".counted",
            "900 g"
        };
        String page = doors.device().post("/stores/count", counted).body();
        assertThat(page)
                .contains("line 2 amount counted")
                .containsPattern("type=\"hidden\" name=\"token\" value=\"token-0009\"")
                .doesNotContain(">token<")
                .doesNotContain(lot.substring(0, 8) + " ")
                .contains("Send it again");
        String helpers = doors.letIn(wenna)
                .post("/stores/deliveries", "token", "token-0010", "lines.0.bestBefore", "2027-01-31")
                .body();
        assertThat(helpers)
                .contains("This is for a maker to do")
                .contains("line 1 best before")
                .contains("copy from here")
                .doesNotContain("Send it again")
                .doesNotContain(">token<");
        assertThat(doors.device()
                        .post("/stores/lots/" + lot + "/status", "status", "refused")
                        .body())
                .contains("Then do it again.")
                .doesNotContain("from here");
    }

    @Test
    void what_a_helper_takes_is_in_the_ledger_under_their_name() {
        String lot = lot();
        TestDoors.Device telephone = doors.letIn(wenna);
        String form = telephone.get("/stores/lots/" + lot).body();
        String token = form.replaceAll(
                "(?s).*action=\"/stores/lots/[^\"]*/take\".*?name=\"token\" value=\"([^\"]*)\".*", "$1");

        var taken = telephone.post(
                "/stores/lots/" + lot + "/take",
                "token",
                token,
                "amount",
                "250 g",
                "kind",
                "use",
                "purpose",
                "Tideline");

        assertThat(taken.statusCode()).isEqualTo(303);
        assertThat(doors.shop().records().lots().find(lot).orElseThrow().left()).isEqualTo(750_000);
        assertThat(doors.shop().records().lots().moves(lot).get(0).author().person())
                .isEqualTo(wenna);
        assertThat(doors.shop().records().lots().moves(lot).get(0).author().device())
                .isPresent();
        assertThat(doors.desk().get("/ledger").body()).contains("Wenna");
    }

    @Test
    void who_is_shown_out_has_an_open_page_that_writes_nothing_and_keeps_what_was_typed() {
        String lot = lot();
        TestDoors.Device telephone = doors.letIn(wenna);
        String device = doors.shop().records().devices().list().get(0).id();

        doors.desk().post("/settings/people/devices/" + device + "/out");

        var taken = telephone.post("/stores/lots/" + lot + "/take", "amount", "250 g", "purpose", "Tideline at noon");
        assertThat(taken.statusCode()).isEqualTo(401);
        assertThat(taken.body())
                .contains("not let in")
                .contains("Tideline at noon")
                .contains("href=\"/pair\"")
                .contains("send it again from here")
                .containsPattern("(?s)<form[^>]*class=\"helpers\" data-sent.*<button[^>]*>Send it again");
        assertThat(telephone.postInPlace("/stores/count", "x", "1").statusCode())
                .isEqualTo(401);
        assertThat(wayOn(telephone.get("/stores/lots/" + lot))).isEqualTo("/pair?on=%2Fstores%2Flots%2F" + lot);
        assertThat(doors.shop().records().lots().find(lot).orElseThrow().left()).isEqualTo(1_000_000);
    }

    @Test
    void a_maker_at_another_device_does_what_a_maker_does_and_signs_it() {
        String ruth = doors.shop()
                .records()
                .people()
                .add("Ruth", Role.MAKER)
                .orThrow()
                .id();
        TestDoors.Device laptop = doors.letIn(ruth);

        assertThat(laptop.get("/settings/people").statusCode()).isEqualTo(200);
        assertThat(laptop.post("/settings/people", "name", "Jory", "may", "helper")
                        .statusCode())
                .isEqualTo(303);
        assertThat(doors.shop().records().signatures().last(1).get(0).author().person())
                .isEqualTo(ruth);
    }

    @Test
    void another_device_works_in_the_makers_own_workshop_whatever_the_desk_looks_at() {
        TestDoors.Device laptop = doors.letIn(MAKER);
        doors.desk().post("/start/demo");
        assertThat(doors.desk().get("/recipes").body()).contains("Demo workshop");

        assertThat(laptop.get("/recipes").body()).contains("Gannet Stair Soap").doesNotContain("Demo workshop");
        assertThat(doors.desk().get("/settings/people").statusCode()).isEqualTo(404);
    }

    @Test
    void the_desk_needs_no_leave_and_a_device_cannot_pass_for_it() {
        TestDoors.Device stranger = doors.device();

        assertThat(doors.desk().get("/pair").statusCode()).isEqualTo(404);
        assertThat(doors.desk().get("/me").statusCode()).isEqualTo(404);
        TestDoors.Device pretending = new TestDoors.Device(stranger.at().replace("127.0.0.1", "localhost"));
        assertThat(pretending.get("/recipes").statusCode()).isEqualTo(303);
    }

    @Test
    void a_foreign_name_that_somebody_points_here_is_not_answered_at_the_networks_door_either() throws Exception {
        doors.device();
        for (String host : List.of("elsewhere.example", "192.0.2.99", "127.0.0.1.example")) {
            try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), doors.networkPort())) {
                socket.getOutputStream()
                        .write(("GET /pair HTTP/1.1\r\nHost: " + host + ":" + doors.networkPort()
                                        + "\r\nConnection: close\r\n\r\n")
                                .getBytes(StandardCharsets.US_ASCII));
                assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                        .startsWith("HTTP/1.1 421");
            }
        }
    }

    @Test
    void when_a_maker_becomes_a_helper_their_open_pages_write_nothing_more() {
        String ruth = doors.shop()
                .records()
                .people()
                .add("Ruth", Role.MAKER)
                .orThrow()
                .id();
        TestDoors.Device laptop = doors.letIn(ruth);
        doors.shop().records().people().change(ruth, "Ruth", Role.HELPER).orThrow();

        var tried = laptop.post("/stores/suppliers", "name", "North Quay Oils");

        assertThat(tried.statusCode()).isEqualTo(403);
        assertThat(tried.body()).contains("a helper weighs, ticks and counts").contains("North Quay Oils");
    }

    @Test
    void somebody_leaves_a_device_by_themselves() {
        TestDoors.Device telephone = doors.letIn(wenna);

        telephone.post("/me/leave");

        assertThat(telephone.get("/recipes").statusCode()).isEqualTo(303);
        assertThat(doors.shop().records().devices().list()).isEmpty();
    }
}
