package lyewright.records.store;

import java.sql.SQLException;
import lyewright.records.RecordsTrouble;
import org.jspecify.annotations.Nullable;

/** Turns what a database threw into what a person can do something about; a fault of ours stays what it is. */
final class Troubles {

    private Troubles() {}

    static RuntimeException of(Dialect dialect, SQLException error) {
        RecordsTrouble trouble = trouble(dialect, error);
        return trouble != null
                ? trouble
                : new IllegalStateException("the database refused: " + error.getMessage(), error);
    }

    static RuntimeException of(Dialect dialect, RuntimeException error) {
        RecordsTrouble trouble = error instanceof RecordsTrouble ? null : trouble(dialect, error);
        return trouble != null ? trouble : error;
    }

    /** The first of an error's causes that says something to a person; a pool hides it behind its own words. */
    private static @Nullable RecordsTrouble trouble(Dialect dialect, Throwable error) {
        for (Throwable at = error; at != null; at = at.getCause()) {
            if (at instanceof SQLException said) {
                RecordsTrouble trouble = dialect.trouble(said);
                if (trouble != null) {
                    return trouble;
                }
            }
        }
        return null;
    }
}
