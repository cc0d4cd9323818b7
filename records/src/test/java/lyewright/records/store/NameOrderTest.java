package lyewright.records.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class NameOrderTest {

    @Test
    void letters_in_another_dress_are_the_same_letters_to_a_search() {
        assertThat(NameOrder.folded("CRÈME Brûlée Ørsted Łódź STRAẞE ﬁne ΌΛΟΣ ½"))
                .isEqualTo("creme brulee orsted lodz strasse fine ολοσ 1⁄2");
        assertThat(NameOrder.folded("straße")).isEqualTo("strasse");
    }

    @Test
    void a_key_is_short_enough_for_an_index_whatever_the_name() {
        assertThat(NameOrder.key("é".repeat(200))).hasSizeLessThanOrEqualTo(1200);
        assertThat(NameOrder.key("abc")).isLessThan(NameOrder.key("abd"));
    }

    @Test
    void ids_sort_by_when_they_were_made_even_while_the_clock_stands_still() {
        TimeOrderedIds ids = new TimeOrderedIds(Clock.fixed(Instant.ofEpochMilli(1_764_000_000_000L), ZoneOffset.UTC));
        String last = "";
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 20_000; i++) {
            String id = ids.next();
            assertThat(id).hasSize(36).isGreaterThan(last);
            seen.add(id);
            last = id;
        }
        assertThat(seen).hasSize(20_000);
        assertThat(UUID.fromString(last).version()).isEqualTo(7);
        assertThat(UUID.fromString(last).variant()).isEqualTo(2);
        // 48 bits of milliseconds lead (RFC 9562, section 5.7)
        assertThat(UUID.fromString(new TimeOrderedIds(
                                        Clock.fixed(Instant.ofEpochMilli(1_645_557_742_000L), ZoneOffset.UTC))
                                .next())
                        .toString())
                .startsWith("017f22e2-79b0-7");
    }
}
