package lyewright.records.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.function.Function;
import lyewright.measure.Outcome;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * A workshop's database. Reads see one moment each, from a pool of their own; writes wait for each other and are one
 * transaction each, done wholly or not at all. What stands in the way outside the application is a
 * {@link lyewright.records.RecordsTrouble}. Safe for any thread; work given to it must not call it again.
 */
public final class Database implements AutoCloseable {

    private final Dialect dialect;
    private final Readers readers;
    private final Writer writer;
    private final Clock clock;
    private final TimeOrderedIds ids;
    private final @Nullable HomeLock lock;

    Database(Dialect dialect, Clock clock, @Nullable HomeLock lock) {
        this.lock = lock;
        this.dialect = dialect;
        this.clock = clock;
        this.ids = new TimeOrderedIds(clock);
        this.writer = new Writer(dialect);
        this.readers = new Readers(dialect);
    }

    /** Reads, all statements seeing the same moment. */
    public <T> T read(Function<Handle, T> work) {
        return readers.read(work);
    }

    /** Writes; whatever the work throws undoes all of it. */
    public <T> T write(Function<Handle, T> work) {
        return writer.write(work, result -> true);
    }

    /** Writes what may be refused; a refusal undoes all of it. */
    public <T> Outcome<T> decide(Function<Handle, Outcome<T>> work) {
        return writer.write(work, result -> result instanceof Outcome.Ok);
    }

    /** The present moment, epoch milliseconds. */
    public long now() {
        return clock.millis();
    }

    /** A new id. Later ones sort after earlier ones. */
    public String newId() {
        return ids.next();
    }

    /** What this database does in its own way. */
    Dialect dialect() {
        return dialect;
    }

    /** Lets go of everything. Closing twice is harmless. */
    @Override
    public void close() {
        // readers first: who closes SQLite last tidies its log, and a reader may not
        readers.close();
        writer.close();
        if (lock != null) {
            try {
                lock.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
