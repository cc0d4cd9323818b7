package lyewright.web.recipe;

import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as makers write them: 25 Nov 2026. */
final class Dates {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private Dates() {}

    static String day(Instant moment, Clock clock) {
        return DAY.withZone(clock.getZone()).format(moment);
    }
}
