package lyewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Codes, by which a device is let in. */
class CodesTest extends AtTheDoors {

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
        assertThat(doors.desk().get(wayOn(way) + "/fate").headers().firstValue("HX-Retarget"))
                .as("what was shown gives way to it")
                .hasValue("#code-shown");
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
}
