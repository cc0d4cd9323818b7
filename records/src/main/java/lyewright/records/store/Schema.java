package lyewright.records.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/**
 * Which tables there are. Each release's database is brought to the newest by the migrations. A database that is there
 * already is not asked of Flyway: loading it would be a good part of a start, and one query says the same.
 */
final class Schema {

    /** The version of the newest migration. */
    static final int NEWEST = 6;

    /** Nothing there at all. */
    static final int NONE = 0;

    /** Tables, but not ours. */
    static final int FOREIGN = -1;

    private static final String HISTORY = "flyway_schema_history";

    /** Changes nothing, and is refused where nothing may be changed. */
    static final String NO_CHANGE = "DELETE FROM " + HISTORY + " WHERE 1 = 0";

    // held, for a logger that nobody holds forgets what it was told
    private static final Logger FLYWAY = Logger.getLogger("org.flywaydb");

    private Schema() {}

    /** The version of a database: what was migrated to last, {@link #NONE} or {@link #FOREIGN}. */
    static int version(Connection connection, String schema) throws SQLException {
        try (ResultSet history = connection.getMetaData().getTables(null, pattern(schema), HISTORY, null)) {
            if (history.next()) {
                return newest(connection, schema);
            }
        }
        try (ResultSet any =
                connection.getMetaData().getTables(null, pattern(schema), "%", new String[] {"TABLE", "VIEW"})) {
            return any.next() ? FOREIGN : NONE;
        }
    }

    private static String pattern(String schema) {
        return schema.isEmpty() ? "%" : schema.replace("_", "\\_").replace("%", "\\%");
    }

    private static int newest(Connection connection, String schema) throws SQLException {
        String table = schema.isEmpty() ? HISTORY : '"' + schema.replace("\"", "\"\"") + "\"." + HISTORY;
        try (Statement statement = connection.createStatement();
                ResultSet newest = statement.executeQuery("SELECT max(CAST(version AS INTEGER)) FROM " + table
                        + " WHERE success AND version IS NOT NULL")) {
            return newest.next() ? newest.getInt(1) : NONE;
        }
    }

    /** Brings a database to a version. */
    static void migrate(Dialect dialect, int version) {
        FLYWAY.setLevel(Level.WARNING);
        FluentConfiguration flyway = Flyway.configure(Schema.class.getClassLoader())
                .dataSource(dialect.migrating())
                .locations("classpath:db/migration/common", "classpath:db/migration/" + dialect.migrations())
                .target(Integer.toString(version))
                .failOnMissingLocations(true)
                .validateMigrationNaming(true);
        if (!dialect.schema().isEmpty()) {
            flyway.schemas(dialect.schema()).createSchemas(true);
        }
        flyway.load().migrate();
    }
}
