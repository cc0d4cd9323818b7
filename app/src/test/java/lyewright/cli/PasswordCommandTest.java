package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.people.Role;
import lyewright.records.store.Author;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/** {@code password}: the way in of whoever has no password yet, or forgot it. */
@ResourceLock(Resources.SYSTEM_PROPERTIES)
class PasswordCommandTest {

    @TempDir
    Path folder;

    private final InputStream before = System.in;

    @BeforeEach
    void a_workshop_with_two_people() {
        try (Records records = open()) {
            records.people().add("Wenna", Role.HELPER).orThrow();
        }
    }

    @AfterEach
    void give_the_keyboard_back() {
        System.setIn(before);
    }

    private Records open() {
        return Records.open(new Place.Folder(folder.resolve("shop")), Clock.systemUTC())
                .orThrow();
    }

    private Run run(String typed, String... args) {
        System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
        return Run.in(folder, args);
    }

    @Test
    void the_makers_password_is_set_by_a_line_that_is_sent() {
        Run set = run("mussel shells at low water\n", "password", "--home", "shop");

        assertThat(set.exit()).isZero();
        assertThat(set.out()).contains("The maker can sign in").doesNotContain("mussel");
        try (Records records = open()) {
            assertThat(records.passwords().check("The maker", "mussel shells at low water"))
                    .isPresent();
        }
    }

    @Test
    void somebody_elses_is_set_by_their_name() {
        assertThat(run("kelp on the north quay", "password", "wenna", "--home", "shop")
                        .exit())
                .isZero();
        try (Records records = open()) {
            assertThat(records.passwords().having()).hasSize(1).doesNotContain(Author.DESK.person());
        }
    }

    @Test
    void what_is_too_short_and_who_is_not_there_are_refused() {
        assertThat(run("soap\n", "password", "--home", "shop").err()).contains("12 characters");
        assertThat(run("", "password", "--home", "shop").exit()).isEqualTo(2);
        assertThat(run("kelp on the north quay", "password", "Jory", "--home", "shop")
                        .err())
                .contains("'Jory' does not work here");
        try (Records records = open()) {
            assertThat(records.passwords().having()).isEmpty();
        }
    }

    @Test
    void a_workshop_that_is_in_use_is_left_alone() {
        try (Records records = open()) {
            assertThat(run("kelp on the north quay", "password", "--home", "shop")
                            .err())
                    .contains("another Lyewright is using the workshop");
            assertThat(records.passwords().having()).isEmpty();
        }
    }
}
