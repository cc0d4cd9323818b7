package lyewright.records.store;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.UUID;

/** Ids that sort by the time they were made: UUIDs of version 7 (RFC 9562, section 5.7), counting on within a millisecond. */
final class TimeOrderedIds {

    private static final int COUNTS_IN_A_MILLISECOND = 1 << 12;
    private static final long VERSION = 0x7000L;
    private static final long VARIANT = 0x8000_0000_0000_0000L;
    private static final long BELOW_VARIANT = 0x3fff_ffff_ffff_ffffL;

    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private long lastMillis;
    private int count;

    TimeOrderedIds(Clock clock) {
        this.clock = clock;
    }

    synchronized String next() {
        long now = clock.millis();
        if (now > lastMillis) {
            lastMillis = now;
            count = random.nextInt(COUNTS_IN_A_MILLISECOND / 2);
        } else if (++count == COUNTS_IN_A_MILLISECOND) {
            // the clock stands still or went back: borrow from the future, order matters more
            lastMillis++;
            count = 0;
        }
        long high = (lastMillis << 16) | VERSION | count;
        return new UUID(high, (random.nextLong() & BELOW_VARIANT) | VARIANT).toString();
    }
}
