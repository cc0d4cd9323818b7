package lyewright.records.backup;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lyewright.records.Kind;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import org.jspecify.annotations.Nullable;

/**
 * Makes what a release leaves behind: a folder, the rows of a server, a backup. Run once for each schema that is released, the
 * result committed and never made again: {@code ReleaseFixture records/src/test/resources/released/schema-N}.
 */
final class ReleaseFixture {

    private ReleaseFixture() {}

    public static void main(String[] words) throws IOException, SQLException {
        Path into = Path.of(words[0]);
        Files.createDirectories(into);
        Place.Folder folder = new Place.Folder(into.resolve("home"));
        try (Records records = Records.open(folder, Clock.systemUTC()).orThrow()) {
            Filled.fill(records);
            try (OutputStream out = Files.newOutputStream(into.resolve("backup.lyewright"))) {
                records.backups().write(out);
            }
        }
        Files.delete(folder.home().resolve("lyewright.lock"));
        Place server = Kind.POSTGRESQL.place(into);
        try (Records records = Records.open(server, Clock.systemUTC()).orThrow()) {
            records.backups().restore(into.resolve("backup.lyewright")).orThrow();
        }
        Files.writeString(
                into.resolve("postgresql.sql"), sql(server, List.of(words).subList(1, words.length)));
        // the embedded server ends with this process
        System.exit(0);
    }

    /** The migrations as they are now, and every row. */
    private static String sql(Place server, List<String> migrations) throws IOException, SQLException {
        StringBuilder sql = new StringBuilder("""
                -- A PostgreSQL schema as a release left it. Made by ReleaseFixture; never changed.
                CREATE TABLE flyway_schema_history (
                    installed_rank INTEGER NOT NULL PRIMARY KEY,
                    version        VARCHAR(50),
                    description    VARCHAR(200) NOT NULL,
                    type           VARCHAR(20) NOT NULL,
                    script         VARCHAR(1000) NOT NULL,
                    checksum       INTEGER,
                    installed_by   VARCHAR(100) NOT NULL,
                    installed_on   TIMESTAMP NOT NULL DEFAULT now(),
                    execution_time INTEGER NOT NULL,
                    success        BOOLEAN NOT NULL
                );
                CREATE INDEX flyway_schema_history_s_idx ON flyway_schema_history (success);
                """);
        for (String migration : migrations) {
            try (var in =
                    Objects.requireNonNull(ReleaseFixture.class.getResourceAsStream("/db/migration/" + migration))) {
                sql.append('\n').append(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        List<String> tables = new ArrayList<>(List.of("flyway_schema_history"));
        tables.addAll(TableOrder.TABLES);
        try (Connection connection = Tinkering.connect(server)) {
            for (String table : tables) {
                sql.append('\n').append(inserts(connection, table));
            }
        }
        return sql.toString();
    }

    private static String inserts(Connection connection, String table) throws SQLException {
        StringBuilder sql = new StringBuilder();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT * FROM " + table + " ORDER BY 1, 2")) {
            while (row.next()) {
                List<String> values = new ArrayList<>();
                for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                    values.add(literal(row.getString(i), row.getMetaData().getColumnType(i)));
                }
                String columns = IntStream.rangeClosed(1, values.size())
                        .mapToObj(i -> name(row, i))
                        .collect(Collectors.joining(", "));
                sql.append("INSERT INTO %s (%s) VALUES (%s);%n".formatted(table, columns, String.join(", ", values)));
            }
        }
        return sql.toString();
    }

    private static String name(ResultSet row, int column) {
        try {
            return row.getMetaData().getColumnName(column);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String literal(@Nullable String value, int type) {
        if (value == null) {
            return "NULL";
        }
        boolean bare = type == Types.BIGINT || type == Types.INTEGER;
        return bare ? value : "'" + value.replace("'", "''") + "'";
    }
}
