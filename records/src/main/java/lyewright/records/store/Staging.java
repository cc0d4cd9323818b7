package lyewright.records.store;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.sqlite.SQLiteErrorCode;

/**
 * A database of its own, of any version of the schema, in which a backup's rows are tried before anything is touched. Its
 * constraints judge them; migrating it makes an old backup a new one.
 */
public final class Staging implements AutoCloseable {

    private static final int ROWS_AT_ONCE = 500;
    private static final String FILE = "rows.db";
    private static final String PREFIX = "restoring-";

    private final Path folder;
    private final SqliteDialect dialect;
    private final int version;
    private Connection connection;

    private Staging(Path folder, SqliteDialect dialect, int version, Connection connection) {
        this.folder = folder;
        this.version = version;
        this.dialect = dialect;
        this.connection = connection;
    }

    /** What a column holds. */
    public enum Column {
        /** Text. */
        TEXT,
        /** A whole number of 32 bits. */
        INT,
        /** A whole number of 64 bits. */
        LONG
    }

    /** The version of the schema that this application writes. */
    public static int schemaVersion() {
        return Schema.NEWEST;
    }

    /** Makes one that is empty, in a folder of its own within another. */
    public static Staging in(Path workplace, int version) throws IOException, SQLException {
        Path folder = Files.createTempDirectory(workplace, PREFIX);
        try {
            SqliteDialect dialect = new SqliteDialect(folder.resolve(FILE));
            Schema.migrate(dialect, version);
            return new Staging(folder, dialect, version, begun(dialect));
        } catch (SQLException | RuntimeException e) {
            delete(folder);
            throw e;
        }
    }

    /** Takes away what restores left that never came to an end. Only for who has the folder alone. */
    static void sweep(Path workplace) {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(workplace, PREFIX + "*")) {
            for (Path folder : left) {
                delete(folder);
            }
        } catch (IOException | DirectoryIteratorException e) {
            // it takes room, and does no other harm
        }
    }

    private static Connection begun(SqliteDialect dialect) throws SQLException {
        Connection connection = dialect.openWriter();
        dialect.beginWrite(connection);
        return connection;
    }

    /** The tables that this version of the schema has. */
    public List<String> tables() {
        try {
            return texts("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'flyway!_%' ESCAPE '!'"
                    + " AND name NOT LIKE 'sqlite!_%' ESCAPE '!'");
        } catch (SQLException e) {
            throw Troubles.of(dialect, e);
        }
    }

    /** A table's columns by name. */
    public Map<String, Column> columns(String table) throws SQLException {
        Map<String, Column> columns = new LinkedHashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA table_info(" + table + ")")) {
            while (row.next()) {
                columns.put(
                        row.getString("name"),
                        switch (row.getString("type")) {
                            case "TEXT" -> Column.TEXT;
                            case "INTEGER" -> Column.INT;
                            default -> Column.LONG;
                        });
            }
        }
        return columns;
    }

    /** One column's texts. */
    public List<String> texts(String query) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            while (row.next()) {
                texts.add(row.getString(1));
            }
        }
        return texts;
    }

    /** Fills a table. */
    public Filling fill(String table, Map<String, Column> columns) throws SQLException {
        return new Filling(connection, table, List.copyOf(columns.keySet()));
    }

    /** Whether what no constraint says is so too: every recipe has its newest version. */
    public boolean holdsTogether() throws SQLException {
        return texts("""
                        SELECT r.id FROM recipe r WHERE r.newest_version <> coalesce(
                          (SELECT max(v.number) FROM recipe_version v WHERE v.recipe_id = r.id), 0)
                        """).isEmpty();
    }

    /** Whether an error is a constraint's. */
    public boolean refusedARow(SQLException e) {
        return SQLiteErrorCode.getErrorCode(e.getErrorCode() & 0xff) == SQLiteErrorCode.SQLITE_CONSTRAINT;
    }

    /** Brings the rows to the newest schema. */
    public void update() {
        if (version == Schema.NEWEST) {
            return;
        }
        try {
            dialect.commit(connection);
            connection.close();
            Schema.migrate(dialect, Schema.NEWEST);
            connection = begun(dialect);
        } catch (SQLException e) {
            throw Troubles.of(dialect, e);
        }
    }

    /** Copies a table's rows into another database, which must have the newest schema. */
    void copy(String table, Connection into) throws SQLException {
        List<String> columns = List.copyOf(columns(table).keySet());
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT " + String.join(", ", columns) + " FROM " + table);
                Filling filling = new Filling(into, table, columns)) {
            while (row.next()) {
                Map<String, Object> values = new LinkedHashMap<>();
                for (String column : columns) {
                    Object value = row.getObject(column);
                    if (value != null) {
                        values.put(column, value instanceof Number number ? (Object) number.longValue() : value);
                    }
                }
                filling.add(values);
            }
            filling.finish();
        }
    }

    @Override
    public void close() throws IOException, SQLException {
        try {
            connection.close();
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    /** Rows on their way into a table, some hundred at a time. */
    public static final class Filling implements AutoCloseable {

        private final PreparedStatement statement;
        private final List<String> columns;
        private int waiting;

        Filling(Connection connection, String table, List<String> columns) throws SQLException {
            this.columns = columns;
            this.statement = connection.prepareStatement("INSERT INTO " + table + " (" + String.join(", ", columns)
                    + ") VALUES (" + "?, ".repeat(columns.size() - 1) + "?)");
        }

        /** Adds a row; columns that it does not name are null. */
        public void add(Map<String, Object> row) throws SQLException {
            for (int i = 0; i < columns.size(); i++) {
                statement.setObject(i + 1, row.get(columns.get(i)));
            }
            statement.addBatch();
            if (++waiting == ROWS_AT_ONCE) {
                finish();
            }
        }

        /** Writes what waits. */
        public void finish() throws SQLException {
            statement.executeBatch();
            waiting = 0;
        }

        @Override
        public void close() throws SQLException {
            statement.close();
        }
    }
}
