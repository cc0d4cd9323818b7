package lyewright.records;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Somebody at the database with a tool of their own. */
public final class Tinkering {

    private Tinkering() {}

    /** Does it. */
    public static void with(Place place, String sql) {
        try (Connection connection = connect(place);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Does it past everything that would refuse it: guards are taken off and put back, and references are not looked at. */
    public static void underneath(Place place, String... changes) {
        try (Connection connection = connect(place);
                Statement statement = connection.createStatement()) {
            if (place instanceof Place.Server) {
                statement.execute("SET session_replication_role = replica");
                for (String change : changes) {
                    statement.execute(change);
                }
                return;
            }
            List<String> guards = texts(place, "SELECT sql FROM sqlite_master WHERE type = 'trigger'");
            for (String name : texts(place, "SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
                statement.execute("DROP TRIGGER " + name);
            }
            for (String change : changes) {
                statement.execute(change);
            }
            for (String guard : guards) {
                statement.execute(guard);
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asks for the first column's texts. */
    public static List<String> texts(Place place, String sql) {
        List<String> answers = new ArrayList<>();
        try (Connection connection = connect(place);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                answers.add(row.getString(1));
            }
            return answers;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Every row of some tables, as text by the table's name. */
    public static Map<String, String> rows(Place place, List<String> tables) {
        Map<String, String> rows = new TreeMap<>();
        try (Connection connection = connect(place);
                Statement statement = connection.createStatement()) {
            for (String table : tables) {
                try (ResultSet row = statement.executeQuery("SELECT * FROM " + table + " ORDER BY 1, 2")) {
                    rows.put(table, text(row));
                }
            }
            return rows;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(ResultSet row) throws SQLException {
        StringBuilder text = new StringBuilder();
        while (row.next()) {
            for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                text.append(row.getMetaData().getColumnName(i))
                        .append('=')
                        .append(row.getString(i))
                        .append('|');
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** A connection of one's own. */
    public static Connection connect(Place place) throws SQLException {
        if (place instanceof Place.Folder folder) {
            return DriverManager.getConnection("jdbc:sqlite:" + folder.database());
        }
        Place.Server server = (Place.Server) place;
        Connection connection = DriverManager.getConnection(server.jdbcUrl(), server.user(), server.password());
        connection.setSchema(server.schema());
        return connection;
    }
}
