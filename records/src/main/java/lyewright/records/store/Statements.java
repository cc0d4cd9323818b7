package lyewright.records.store;

import java.util.logging.Level;
import java.util.logging.Logger;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.StatementContext;

/** Tells every statement to the log {@value #LOG} at the level FINER, for whoever listens there. */
final class Statements implements SqlLogger {

    static final String LOG = "lyewright.records.statements";

    private static final Logger LISTENERS = Logger.getLogger(LOG);

    private Statements() {}

    static Jdbi told(Jdbi jdbi) {
        return jdbi.setSqlLogger(new Statements());
    }

    @Override
    public void logBeforeExecution(StatementContext context) {
        LISTENERS.log(Level.FINER, context::getRawSql);
    }
}
