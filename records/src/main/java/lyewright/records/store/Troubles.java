package lyewright.records.store;

import java.sql.SQLException;
import lyewright.records.RecordsTrouble;
import org.jspecify.annotations.Nullable;

/** Turns what a database threw into what a person can do something about; a fault of ours stays what it is. */
final class Troubles {

    private Troubles() {}

    static RuntimeException of(Dialect dialect, SQLException error) {
        RecordsTrouble trouble = dialect.trouble(error);
        return trouble != null
                ? trouble
                : new IllegalStateException("the database refused: " + error.getMessage(), error);
    }

    static RuntimeException of(Dialect dialect, RuntimeException error) {
        if (error instanceof RecordsTrouble) {
            return error;
        }
        SQLException said = cause(error);
        RecordsTrouble trouble = said == null ? null : dialect.trouble(said);
        return trouble != null ? trouble : error;
    }

    private static @Nullable SQLException cause(Throwable error) {
        for (Throwable at = error; at != null; at = at.getCause()) {
            if (at instanceof SQLException said) {
                return said;
            }
        }
        return null;
    }
}
