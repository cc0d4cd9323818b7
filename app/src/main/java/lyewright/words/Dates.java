package lyewright.words;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as makers write them: 25 Nov 2026. The clock says in which zone. */
public final class Dates {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

    private Dates() {}

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    public static String day(Instant moment, Clock clock) {
        return DAY.withZone(clock.getZone()).format(moment);
    }

    /** The day and the time of day: 25 Nov 2026, 14:10. */
    public static String minute(Instant moment, Clock clock) {
        return MINUTE.withZone(clock.getZone()).format(moment);
    }
}
