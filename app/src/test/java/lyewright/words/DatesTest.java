package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class DatesTest {

    private static final Clock AUCKLAND = Clock.fixed(Instant.EPOCH, ZoneId.of("Pacific/Auckland"));

    @Test
    void a_month_has_three_letters_september_too() {
        assertThat(Dates.day(LocalDate.of(2026, 9, 1))).isEqualTo("1 Sep 2026");
    }

    @Test
    void a_moment_is_the_day_and_the_time_of_the_zone_that_the_clock_is_in() {
        Instant moment = Instant.parse("2026-11-25T13:10:00Z");

        assertThat(Dates.day(moment, AUCKLAND)).isEqualTo("26 Nov 2026");
        assertThat(Dates.minute(moment, AUCKLAND)).isEqualTo("26 Nov 2026, 02:10");
    }
}
