package lyewright.records.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The connections that read. */
final class Readers implements AutoCloseable {

    private static final int MOST = 4;
    private static final long LONGEST_WAIT_MS = 3_000;

    private final Dialect dialect;
    private final HikariDataSource pool;
    private final Jdbi jdbi;

    Readers(Dialect dialect) {
        this.dialect = dialect;
        HikariConfig config = new HikariConfig();
        config.setDataSource(dialect.readers());
        config.setPoolName("readers");
        config.setMaximumPoolSize(MOST);
        config.setMinimumIdle(1);
        config.setReadOnly(true);
        config.setConnectionTimeout(LONGEST_WAIT_MS);
        // the first reading says what is wrong, in its own words
        config.setInitializationFailTimeout(-1);
        this.pool = new HikariDataSource(config);
        this.jdbi = Statements.told(Jdbi.create(pool));
    }

    <T> T read(Function<Handle, T> work) {
        try (Handle handle = jdbi.open()) {
            Connection connection = handle.getConnection();
            dialect.beginRead(connection);
            try {
                return work.apply(handle);
            } finally {
                dialect.rollback(connection);
            }
        } catch (SQLException e) {
            throw Troubles.of(dialect, e);
        } catch (RuntimeException e) {
            throw Troubles.of(dialect, e);
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
