package lyewright.records;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;

/** Records of one kind that are new for each test, and a clock that goes on a second whenever somebody looks at it. */
public abstract class Workbench {

    /** When the first thing happens. */
    protected static final Instant START = Instant.parse("2026-11-25T09:00:00Z");

    @Parameter
    protected Kind kind = Kind.SQLITE;

    @TempDir
    protected Path folder = Path.of("");

    protected final TickingClock clock = new TickingClock();
    protected Place place = new Place.Folder(Path.of(""));
    protected Records records;

    @BeforeEach
    void open() {
        place = kind.prepared(folder);
        records = Records.open(place, clock).orThrow();
    }

    @AfterEach
    void close() {
        records.close();
    }

    /** Closes the records and opens them again, as a restart does. */
    protected void restart() {
        records.close();
        records = Records.open(place, clock).orThrow();
    }

    /** A clock for tests. */
    protected static final class TickingClock extends Clock {

        private Instant next = START;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        /** Time passes, or, where it is less than nothing, somebody sets the clock back. */
        public synchronized void goOn(Duration by) {
            next = next.plus(by);
        }

        @Override
        public synchronized Instant instant() {
            Instant now = next;
            next = now.plusSeconds(1);
            return now;
        }
    }
}
