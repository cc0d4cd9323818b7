package lyewright.records.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
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
    private final @Nullable Writer writer;
    private final Clock clock;
    private final TimeOrderedIds ids;
    private final @Nullable HomeLock lock;
    private final Author author;

    Database(Dialect dialect, Clock clock, @Nullable HomeLock lock, boolean writing) {
        this.lock = lock;
        this.dialect = dialect;
        this.clock = clock;
        this.ids = new TimeOrderedIds(clock);
        this.writer = writing ? new Writer(dialect) : null;
        this.readers = new Readers(dialect);
        this.author = Author.DESK;
    }

    private Database(Database same, Author author) {
        this.lock = same.lock;
        this.dialect = same.dialect;
        this.clock = same.clock;
        this.ids = same.ids;
        this.writer = same.writer;
        this.readers = same.readers;
        this.author = author;
    }

    /** The same database as somebody writes in it. Closing either closes both. */
    public Database by(Author who) {
        return who.equals(author) ? this : new Database(this, who);
    }

    /** Who writes: the maker at the computer itself unless {@link #by} says otherwise. */
    public Author author() {
        return author;
    }

    /** Reads, all statements seeing the same moment. */
    public <T> T read(Function<Handle, T> work) {
        return readers.read(work);
    }

    /** Writes; whatever the work throws undoes all of it. */
    public <T> T write(Function<Handle, T> work) {
        return writer().write(work, result -> true);
    }

    /** Writes what may be refused; a refusal undoes all of it. */
    public <T> Outcome<T> decide(Function<Handle, Outcome<T>> work) {
        return writer().write(work, result -> result instanceof Outcome.Ok);
    }

    private Writer writer() {
        if (writer == null) {
            throw new IllegalStateException("these records were opened only to be read");
        }
        return writer;
    }

    /** The present moment, epoch milliseconds. */
    public long now() {
        return clock.millis();
    }

    /** A new id. Later ones sort after earlier ones. */
    public String newId() {
        return ids.next();
    }

    /**
     * Puts the rows of a staging in the place of all rows of these tables, which come after those they refer to.
     *
     * @param tables which
     * @param staging the rows
     * @param then what else is written in the same transaction
     */
    public void replaceAll(List<String> tables, Staging staging, Consumer<Handle> then) {
        write(handle -> {
            try {
                replace(handle.getConnection(), tables, staging);
                then.accept(handle);
                return true;
            } catch (SQLException e) {
                throw meaning(e);
            }
        });
    }

    private void replace(Connection connection, List<String> tables, Staging staging) throws SQLException {
        Dialect.Guards guards = dialect.unguard(connection);
        try (Statement statement = connection.createStatement()) {
            for (int i = tables.size() - 1; i >= 0; i--) {
                statement.execute("DELETE FROM " + tables.get(i));
            }
        }
        for (String table : tables) {
            staging.copy(table, connection);
        }
        guards.restore();
    }

    /** What an error means to a person, or that it is a fault of ours. */
    public RuntimeException meaning(SQLException error) {
        return Troubles.of(dialect, error);
    }

    /** Lets go of everything. Closing twice is harmless. */
    @Override
    public void close() {
        // readers first: who closes SQLite last tidies its log, and a reader may not
        readers.close();
        if (writer != null) {
            writer.close();
        }
        if (lock != null) {
            try {
                lock.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
