package lyewright.records.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Arrays;
import lyewright.measure.Outcome;
import lyewright.records.Place;
import lyewright.records.RecordsTrouble;
import org.jspecify.annotations.Nullable;

/** Opens a place's database, making or migrating it where that is needed, or says in plain words why not. */
public final class Opening {

    private static final byte[] SQLITE = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private Opening() {}

    /** Opens to read and write, for one application at a time where it is a folder. */
    public static Outcome<Database> toWrite(Place place, Clock clock) {
        return place instanceof Place.Folder folder ? folder(folder, clock) : server((Place.Server) place, clock, true);
    }

    /** Opens only to read, beside an application that may be using it. What is there must be there already. */
    public static Outcome<Database> toRead(Place place, Clock clock) {
        if (!(place instanceof Place.Folder folder)) {
            return server((Place.Server) place, clock, false);
        }
        if (!Files.isRegularFile(folder.database())) {
            return Outcome.refused("there is no workshop in " + folder.home(), "name the workshop's folder");
        }
        return database(folder, clock, null, false);
    }

    /** Whether a place has a workshop's records, of whichever release. */
    public static boolean isThere(Place place) {
        if (place instanceof Place.Folder folder) {
            return Files.isRegularFile(folder.database());
        }
        Dialect dialect = new PostgresDialect((Place.Server) place);
        try {
            return version(dialect) > Schema.NONE;
        } catch (SQLException e) {
            throw Troubles.of(dialect, e);
        }
    }

    private static Outcome<Database> folder(Place.Folder place, Clock clock) {
        Path home = place.home();
        HomeLock lock;
        try {
            Files.createDirectories(home);
            lock = HomeLock.take(home);
        } catch (FileAlreadyExistsException e) {
            return Outcome.refused(home + " is a file, not a folder", "name a folder for the workshop");
        } catch (IOException e) {
            return unwritable(home, e);
        }
        if (lock == null) {
            return Outcome.refused(
                    "another Lyewright is using the workshop in " + home,
                    "use the pages of the one that runs, or end it first, or name another folder");
        }
        Staging.sweep(home);
        Outcome<Database> opened = database(place, clock, lock, true);
        if (opened instanceof Outcome.Refused) {
            release(lock);
        }
        return opened;
    }

    private static <T> Outcome<T> unwritable(Path home, IOException e) {
        boolean full = e instanceof FileSystemException said
                && said.getReason() != null
                && said.getReason().contains("No space left");
        return full
                ? Outcome.refused("there is no room left on the disk that holds " + home, "make room on it")
                : Outcome.refused(
                        "the folder " + home + " cannot be written to",
                        "give yourself leave to write to it, or name another folder");
    }

    private static void release(HomeLock lock) {
        try {
            lock.close();
        } catch (IOException e) {
            // the process's end will do it
        }
    }

    private static Outcome<Database> database(
            Place.Folder place, Clock clock, @Nullable HomeLock lock, boolean writing) {
        Path file = place.database();
        SqliteDialect dialect = new SqliteDialect(file);
        try {
            if (Files.exists(file)) {
                if (!isSqlite(file)) {
                    return Outcome.refused(
                            file + " is not a database",
                            "move it elsewhere, then put a backup in its place: lyewright restore");
                }
                if (writing && !(Files.isWritable(file) && Files.isWritable(place.home()))) {
                    return Outcome.refused(
                            file + " may only be read",
                            "give yourself leave to write to it and to its folder, and try again");
                }
            }
            return prepared(dialect, clock, lock, writing, file.toString(), Files.exists(file));
        } catch (IOException e) {
            return Outcome.refused(file + " cannot be read", "see that it is there and that you may read it");
        }
    }

    /** An empty file is a database to SQLite: one that was begun and not got to. */
    private static boolean isSqlite(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(SQLITE.length);
            return head.length == 0 || Arrays.equals(head, SQLITE);
        }
    }

    private static Outcome<Database> server(Place.Server place, Clock clock, boolean writing) {
        return prepared(new PostgresDialect(place), clock, null, writing, "schema " + place.schema(), true);
    }

    private static Outcome<Database> prepared(
            Dialect dialect, Clock clock, @Nullable HomeLock lock, boolean writing, String where, boolean exists) {
        try {
            int version = exists ? version(dialect) : Schema.NONE;
            if (version > Schema.NEWEST) {
                return Outcome.refused(
                        where + " was written by a newer Lyewright",
                        "open it with that one; nothing in it was touched");
            }
            if (version == Schema.FOREIGN) {
                return Outcome.refused(
                        where + " holds something that is not a workshop's records", "name another folder or schema");
            }
            if (version < Schema.NEWEST) {
                if (!writing) {
                    return Outcome.refused(
                            where + " was written by an older Lyewright",
                            "start this one once, which brings it up to date");
                }
                Schema.migrate(dialect, Schema.NEWEST);
            }
            Database database = new Database(dialect, clock, lock, writing);
            return writing ? proven(database) : Outcome.ok(database);
        } catch (SQLException e) {
            return refused(Troubles.of(dialect, e));
        } catch (RuntimeException e) {
            return refused(Troubles.of(dialect, e));
        }
    }

    private static int version(Dialect dialect) throws SQLException {
        try (Connection connection = dialect.readers().getConnection()) {
            return Schema.version(connection, dialect.schema());
        }
    }

    /** What cannot be written to is found out now, not when the first recipe is saved. */
    private static Outcome<Database> proven(Database database) {
        try {
            database.write(handle -> handle.execute(Schema.NO_CHANGE));
            return Outcome.ok(database);
        } catch (RuntimeException e) {
            database.close();
            return refused(e);
        }
    }

    private static <T> Outcome<T> refused(RuntimeException e) {
        if (e instanceof RecordsTrouble trouble) {
            return Outcome.refused(trouble.problem());
        }
        throw e;
    }
}
