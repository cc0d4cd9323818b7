package lyewright.web.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How often somebody may guess. A try counts before it is looked at, so that many at once are no more than one after the other; a
 * right one clears the count. Safe for several threads.
 */
final class Guesses {

    /** How long whoever guessed too often waits. */
    static final Duration A_WHILE = Duration.ofMinutes(15);

    /** So many that somebody guesses at are remembered; of more the oldest are forgotten. */
    private static final int MOST_REMEMBERED = 10_000;

    private final int most;
    private final Clock clock;
    private final Map<String, Count> counts = new LinkedHashMap<>(16, 0.75f, true);

    private record Count(int tries, Instant since) {}

    Guesses(int most, Clock clock) {
        this.most = most;
        this.clock = clock;
    }

    /** Whether one more is allowed of what somebody guesses at; it counts. */
    synchronized boolean mayTry(String what) {
        Instant now = clock.instant();
        Count next = Optional.ofNullable(counts.get(what))
                .filter(last ->
                        !now.isBefore(last.since()) && now.isBefore(last.since().plus(A_WHILE)))
                .map(last -> new Count(last.tries() + 1, last.since()))
                .orElseGet(() -> new Count(1, now));
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
