package lyewright.records.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import lyewright.records.RecordsTrouble;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;

/**
 * A database in one file. The writer begins with BEGIN IMMEDIATE: a transaction that finds out only at its first write that
 * somebody else writes would fail at once, whatever it is told about waiting.
 */
final class SqliteDialect implements Dialect {

    private static final int PATIENCE_MS = 5_000;

    private final Path file;
    private final int patienceMs;

    SqliteDialect(Path file) {
        this(file, PATIENCE_MS);
    }

    SqliteDialect(Path file, int patienceMs) {
        this.file = file;
        this.patienceMs = patienceMs;
    }

    @Override
    public DataSource readers() {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(patienceMs);
        return source(config);
    }

    @Override
    public Connection openWriter() throws SQLException {
        seeThatItIsThere();
        return source(writing()).getConnection();
    }

    /** A file that was deleted under an open connection takes every write, and is gone with the connection. */
    private void seeThatItIsThere() {
        if (!Files.exists(file)) {
            throw new RecordsTrouble(
                    file + " is not there any more, so nothing was kept",
                    "put its folder back where it was, or start Lyewright again; a backup made before that may still hold"
                            + " everything",
                    null);
        }
    }

    @Override
    public DataSource migrating() {
        return source(writing());
    }

    private SQLiteConfig writing() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(patienceMs);
        return config;
    }

    private SQLiteDataSource source(SQLiteConfig config) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    @Override
    public void beginRead(Connection connection) throws SQLException {
        say(connection, "BEGIN");
    }

    @Override
    public void beginWrite(Connection connection) throws SQLException {
        seeThatItIsThere();
        say(connection, "BEGIN IMMEDIATE");
    }

    @Override
    public void commit(Connection connection) throws SQLException {
        say(connection, "COMMIT");
    }

    @Override
    public void rollback(Connection connection) throws SQLException {
        say(connection, "ROLLBACK");
    }

    private static void say(Connection connection, String words) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(words);
        }
    }

    @Override
    public @Nullable RecordsTrouble trouble(SQLException error) {
        SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(error.getErrorCode() & 0xff);
        return switch (code) {
            case SQLITE_FULL ->
                new RecordsTrouble(
                        "there is no room left on the disk that holds " + file,
                        "make room on it and try again; what was kept before is unharmed",
                        error);
            case SQLITE_READONLY, SQLITE_PERM ->
                new RecordsTrouble(
                        file + " may only be read",
                        "give yourself leave to write to it and to its folder, and try again",
                        error);
            case SQLITE_BUSY, SQLITE_LOCKED ->
                new RecordsTrouble(
                        "another program holds " + file + " locked", "close that program and try again", error);
            case SQLITE_CANTOPEN, SQLITE_AUTH ->
                new RecordsTrouble(
                        file + " cannot be opened", "see that its folder is there and that you may write to it", error);
            case SQLITE_NOTADB, SQLITE_CORRUPT, SQLITE_FORMAT ->
                new RecordsTrouble(
                        file + " is damaged",
                        "move it elsewhere, then put a backup in its place: lyewright restore",
                        error);
            case SQLITE_IOERR ->
                new RecordsTrouble(
                        "the disk that holds " + file + " failed to read or to write",
                        "see that it is connected and sound, and try again",
                        error);
            default -> null;
        };
    }

    @Override
    public String migrations() {
        return "sqlite";
    }

    @Override
    public String schema() {
        return "";
    }

    /** SQLite cannot switch triggers off: they are taken away and, before the transaction ends, made again by their own words. */
    @Override
    public Guards unguard(Connection connection) throws SQLException {
        List<String> words = new ArrayList<>();
        List<String> names = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet found =
                        statement.executeQuery("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'")) {
            while (found.next()) {
                names.add(found.getString(1));
                words.add(found.getString(2));
            }
        }
        for (String name : names) {
            say(connection, "DROP TRIGGER " + name);
        }
        return () -> {
            for (String trigger : words) {
                say(connection, trigger);
            }
        };
    }
}
