package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed when no command is named. */
class PagesCommandTest {

    private final List<Pages.Order> orders = new ArrayList<>();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void nothing_typed_shows_the_pages_on_this_computer_and_opens_a_browser() {
        assertThat(run(shown())).isZero();
        assertThat(orders)
                .containsExactly(new Pages.Order(
                        "127.0.0.1", 4310, Pages.Others.NOBODY, Optional.empty(), Path.of("here"), true, false));
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("they are there\n");
    }

    @Test
    void port_folder_and_silence_can_be_asked_for() {
        assertThat(run(shown(), "--port", "5000", "--home", "bench", "--no-browser"))
                .isZero();
        assertThat(orders)
                .containsExactly(new Pages.Order(
                        "127.0.0.1", 5000, Pages.Others.NOBODY, Optional.of("bench"), Path.of("here"), false, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "65536", "99999999999", "http", "", "43.1"})
    void what_is_no_port_is_refused(String port) {
        assertThat(run(shown(), "--port", port)).isEqualTo(2);
        assertThat(orders).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("--port: is no port; write a number from 1 to 65535");
        assertThat(out.size()).isZero();
    }

    @Test
    void pages_that_cannot_be_shown_say_why_and_print_nothing() {
        Pages taken = order -> Outcome.refused("port 4310 is taken", "choose another");
        assertThat(run(taken)).isEqualTo(2);
        assertThat(out.size()).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("port 4310 is taken; choose another");
    }

    private Pages shown() {
        return order -> {
            orders.add(order);
            return Outcome.ok(new Pages.Shown() {
                @Override
                public String told() {
                    return "they are there\n";
                }

                @Override
                public void untilStopped() {}
            });
        };
    }

    private int run(Pages pages, String... args) {
        return Cli.run(
                args,
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                Path.of("here"),
                pages);
    }
}
