package lyewright.records.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import javax.sql.DataSource;
import lyewright.records.Place;
import lyewright.records.RecordsTrouble;
import org.jspecify.annotations.Nullable;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A PostgreSQL server. A writer first takes the schema's own lock, so that of several applications too only one writes at a
 * time: the same order of things as with a file.
 */
final class PostgresDialect implements Dialect {

    /** Tables that refuse some changes. */
    private static final List<String> GUARDED = List.of("recipe_version", "ledger_entry", "stock_move", "lot");

    private static final int PATIENCE_MS = 10_000;

    private final Place.Server place;
    private final int patienceMs;

    PostgresDialect(Place.Server place) {
        this(place, PATIENCE_MS);
    }

    PostgresDialect(Place.Server place, int patienceMs) {
        this.place = place;
        this.patienceMs = patienceMs;
    }

    @Override
    public DataSource readers() {
        PGSimpleDataSource source = migrating();
        source.setReadOnly(true);
        source.setDefaultRowFetchSize(500);
        return source;
    }

    @Override
    public Connection openWriter() throws SQLException {
        return migrating().getConnection();
    }

    @Override
    public PGSimpleDataSource migrating() {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setUrl(place.jdbcUrl());
        source.setUser(place.user());
        source.setPassword(place.password());
        source.setCurrentSchema(place.schema());
        source.setApplicationName("lyewright");
        source.setConnectTimeout(10);
        return source;
    }

    @Override
    public void beginRead(Connection connection) throws SQLException {
        connection.setAutoCommit(false);
        say(connection, "SET TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY");
    }

    @Override
    public void beginWrite(Connection connection) throws SQLException {
        connection.setAutoCommit(false);
        say(connection, "SET LOCAL lock_timeout = '" + patienceMs + "ms'");
        say(connection, "SELECT pg_advisory_xact_lock(hashtextextended('lyewright ' || current_schema(), 0))");
    }

    @Override
    public void commit(Connection connection) throws SQLException {
        connection.commit();
        connection.setAutoCommit(true);
    }

    @Override
    public void rollback(Connection connection) throws SQLException {
        connection.rollback();
        connection.setAutoCommit(true);
    }

    private static void say(Connection connection, String words) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(words);
        }
    }

    @Override
    public @Nullable RecordsTrouble trouble(SQLException error) {
        String state = error.getSQLState() == null ? "" : error.getSQLState();
        if (state.startsWith("08") || state.startsWith("57P")) {
            return new RecordsTrouble(
                    "the database server does not answer", "see that it runs and can be reached, and try again", error);
        }
        if (state.startsWith("28")) {
            return new RecordsTrouble(
                    "the database server does not let '" + place.user() + "' in",
                    "check the user and the password",
                    error);
        }
        return switch (state) {
            case "53100" ->
                new RecordsTrouble(
                        "there is no room left on the database server's disk",
                        "make room on it and try again; what was kept before is unharmed",
                        error);
            case "53300" ->
                new RecordsTrouble(
                        "the database server has no connection to spare", "try again, or let it take more", error);
            case "25006", "42501" ->
                new RecordsTrouble(
                        "the records on the database server may only be read",
                        "give '" + place.user() + "' leave to write to them, and try again",
                        error);
            case "55P03" ->
                new RecordsTrouble(
                        "another program holds the records locked", "close that program and try again", error);
            case "3D000" ->
                new RecordsTrouble("the database server has no such database", "make it, or name another", error);
            case "XX001", "XX002" ->
                new RecordsTrouble(
                        "the records on the database server are damaged", "put a backup in their place", error);
            default -> null;
        };
    }

    @Override
    public String migrations() {
        return "postgresql";
    }

    @Override
    public String schema() {
        return place.schema();
    }

    @Override
    public Guards unguard(Connection connection) throws SQLException {
        for (String table : GUARDED) {
            say(connection, "ALTER TABLE " + table + " DISABLE TRIGGER USER");
        }
        return () -> {
            for (String table : GUARDED) {
                say(connection, "ALTER TABLE " + table + " ENABLE TRIGGER USER");
            }
        };
    }
}
