package lyewright.web.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How often somebody may guess. A try counts before it is looked at, so that many at once are no more than one after the other; a
 * right one clears the count. Safe for several threads.
 */
final class Guesses {

    /** So many that somebody guesses at are remembered; of more the oldest are forgotten. */
    private static final int MOST_REMEMBERED = 10_000;

    private final int most;
    private final Duration within;
    private final Clock clock;
    private final Map<String, Count> counts = new LinkedHashMap<>(16, 0.75f, true);

    private record Count(int tries, Instant since) {}

    Guesses(int most, Duration within, Clock clock) {
        this.most = most;
        this.within = within;
        this.clock = clock;
    }

    /** Whether one more is allowed of what somebody guesses at; it counts. */
    synchronized boolean mayTry(String what) {
        Instant now = clock.instant();
        Count last = counts.get(what);
        boolean fresh = last == null
                || now.isBefore(last.since())
                || !now.isBefore(last.since().plus(within));
        Count next = fresh ? new Count(1, now) : new Count(last.tries() + 1, last.since());
        counts.put(what, next);
        if (counts.size() > MOST_REMEMBERED) {
            counts.remove(counts.keySet().iterator().next());
        }
        return next.tries() <= most;
    }

    /** It was right. */
    synchronized void right(String what) {
        counts.remove(what);
    }
}
