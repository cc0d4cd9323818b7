package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.records.people.Role;
import lyewright.records.store.Author;
import org.junit.jupiter.api.Test;

/** Other devices: what is shown to those that were not let in, what is the desk's, and how they are shown out again. */
class DoorsTest extends AtTheDoors {

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

    @Test
    void strangers_who_send_bit_by_bit_keep_no_makers_file_waiting() throws Exception {
        assertThat(slowly("", "/pair", "/recipes"))
                .allMatch(answer -> answer.contains("413") || answer.contains("401"));
    }

    @Test
    void a_helper_who_sends_bit_by_bit_keeps_no_makers_file_waiting_either() throws Exception {
        assertThat(slowly(doors.letIn(wenna).cookie(), "/stores/count", "/recipes"))
                .allMatch(answer -> answer.contains("413"));
    }

    /** What is answered to as many as may be on their way at once, none of which ever ends. */
    private List<String> slowly(String cookie, String... paths) throws IOException {
        URI network = URI.create(doors.device().at());
        List<Socket> slow = new ArrayList<>();
        List<String> answers = new ArrayList<>();
        try {
            for (int i = 0; i < 6; i++) {
                Socket socket = new Socket(network.getHost(), network.getPort());
                slow.add(socket);
                socket.setSoTimeout(5_000);
                socket.getOutputStream()
                        .write(("POST " + paths[i % paths.length] + " HTTP/1.1\r\nHost: " + network.getAuthority()
                                        + "\r\nOrigin: " + network + "\r\nCookie: " + cookie
                                        + "\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                                        + "Transfer-Encoding: chunked\r\n\r\n1\r\nc\r\n")
                                .getBytes(StandardCharsets.US_ASCII));
            }
            for (Socket socket : slow) {
                answers.add(new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))
                        .readLine());
            }
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
        return answers;
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
    void what_somebody_else_has_not_finished_typing_is_shown_with_their_name() {
        TestDoors.Device telephone = doors.letIn(wenna);
        doors.shop().records().people().change(wenna, "Wenna", Role.MAKER).orThrow();
        Author hers = new Author(wenna, Optional.empty());
        doors.shop().records().as(hers).drafts().create(Optional.empty(), 0, "{\"schema\":1}");

        assertThat(doors.desk().get("/recipes/new").body()).containsPattern("[0-9]{2}:[0-9]{2}, Wenna");
        assertThat(telephone.get("/recipes/new").body()).doesNotContainPattern("[0-9]{2}:[0-9]{2}, Wenna");
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
    void somebody_leaves_a_device_by_themselves() {
        TestDoors.Device telephone = doors.letIn(wenna);

        telephone.post("/me/leave");

        assertThat(telephone.get("/recipes").statusCode()).isEqualTo(303);
        assertThat(doors.shop().records().devices().list()).isEmpty();
    }
}
