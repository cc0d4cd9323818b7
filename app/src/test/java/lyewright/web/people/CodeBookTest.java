package lyewright.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import lyewright.records.people.Person;
import lyewright.records.people.Role;
import lyewright.records.store.Author;
import lyewright.web.people.CodeBook.Fate;
import lyewright.web.people.CodeBook.Shown;
import org.junit.jupiter.api.Test;

class CodeBookTest {

    private static final Person WENNA = new Person("00000000-0000-0000-0000-00000000000e", "Wenna", Role.HELPER);

    private final CodeBook codes = new CodeBook(Clock.fixed(Instant.parse("2026-11-28T09:00:00Z"), ZoneOffset.UTC));

    private Fate fate(Shown code) {
        return codes.look(code.ref()).orElseThrow().fate();
    }

    @Test
    void a_code_whose_device_could_not_be_let_in_is_good_again() {
        Shown code = codes.show(WENNA, Author.DESK);
        Shown used = codes.use(code.code(), "telephone", "here").orElseThrow();
        assertThat(fate(code)).isEqualTo(Fate.USED);

        codes.giveBack(used);

        assertThat(codes.use(code.code(), "telephone", "here")).isPresent();
    }

    @Test
    void a_code_that_is_given_back_is_not_open_beside_a_later_one() {
        Shown first = codes.show(WENNA, Author.DESK);
        Shown used = codes.use(first.code(), "telephone", "here").orElseThrow();
        Shown later = codes.show(WENNA, Author.DESK);

        codes.giveBack(used);

        assertThat(fate(first)).isEqualTo(Fate.USED);
        assertThat(fate(later)).isEqualTo(Fate.OPEN);
    }
}
