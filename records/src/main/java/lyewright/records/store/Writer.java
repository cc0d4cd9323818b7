package lyewright.records.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.function.Predicate;
import lyewright.records.RecordsTrouble;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** The one connection that writes. Who wants to write waits in turn; each gets a transaction of their own. */
final class Writer implements AutoCloseable {

    private final Dialect dialect;
    private final ReentrantLock turn = new ReentrantLock(true);
    private final Jdbi jdbi;
    private @Nullable Handle handle;

    Writer(Dialect dialect) {
        this.dialect = dialect;
        this.jdbi = Statements.told(Jdbi.create(dialect::openWriter));
    }

    <T> T write(Function<Handle, T> work, Predicate<T> keep) {
        if (turn.isHeldByCurrentThread()) {
            throw new IllegalStateException("a write within a write would be two transactions");
        }
        turn.lock();
        try {
            return inTransaction(work, keep);
        } catch (SQLException e) {
            drop();
            throw Troubles.of(dialect, e);
        } catch (RecordsTrouble e) {
            drop();
            throw e;
        } finally {
            turn.unlock();
        }
    }

    private <T> T inTransaction(Function<Handle, T> work, Predicate<T> keep) throws SQLException {
        Handle writing = begun();
        Connection connection = writing.getConnection();
        boolean kept = false;
        try {
            T result = work.apply(writing);
            if (keep.test(result)) {
                dialect.commit(connection);
                kept = true;
            }
            return result;
        } catch (RuntimeException e) {
            throw Troubles.of(dialect, e);
        } finally {
            if (!kept) {
                undo(connection);
            }
        }
    }

    /** A transaction that is begun. A connection that died while nobody wrote is no reason to refuse: another is taken, once. */
    private Handle begun() throws SQLException {
        boolean known = handle != null;
        Handle writing = connected();
        try {
            dialect.beginWrite(writing.getConnection());
            return writing;
        } catch (SQLException e) {
            if (!known || writing.getConnection().isValid(1)) {
                throw e;
            }
            drop();
            Handle fresh = connected();
            dialect.beginWrite(fresh.getConnection());
            return fresh;
        }
    }

    /** A failed undoing must not hide why it was needed; letting go of the connection undoes as well. */
    private void undo(Connection connection) {
        try {
            dialect.rollback(connection);
        } catch (SQLException e) {
            drop();
        }
    }

    private Handle connected() throws SQLException {
        Handle open = handle;
        if (open == null) {
            open = opened();
            handle = open;
        }
        return open;
    }

    private Handle opened() {
        try {
            return jdbi.open();
        } catch (ConnectionException e) {
            throw Troubles.of(dialect, e);
        }
    }

    /** Lets go of a connection that may be broken; the next write opens another. */
    private void drop() {
        Handle open = handle;
        handle = null;
        if (open != null) {
            try {
                open.close();
            } catch (RuntimeException e) {
                // it is of no use any more, and why is being said already
            }
        }
    }

    @Override
    public void close() {
        turn.lock();
        try {
            drop();
        } finally {
            turn.unlock();
        }
    }
}
