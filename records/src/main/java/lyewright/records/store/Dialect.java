package lyewright.records.store;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import lyewright.records.RecordsTrouble;
import org.jspecify.annotations.Nullable;

/** What one kind of database does in its own way: how it is reached, how a transaction begins, what its errors mean. */
interface Dialect {

    /** Connections that only read. */
    DataSource readers();

    /** A connection that writes. */
    Connection openWriter() throws SQLException;

    /** A migration's connections. */
    DataSource migrating();

    /** Begins to read one moment. */
    void beginRead(Connection connection) throws SQLException;

    /** Begins to write, when nobody else does. */
    void beginWrite(Connection connection) throws SQLException;

    /** Keeps what was written, or ends a reading. */
    void commit(Connection connection) throws SQLException;

    /** Undoes what was written. */
    void rollback(Connection connection) throws SQLException;

    /** What an error means to a person; null where it is no trouble of the outside but a fault of ours. */
    @Nullable
    RecordsTrouble trouble(SQLException error);

    /** The folder of the migrations that are its own. */
    String migrations();

    /** The schema that holds the tables; empty where there are none. */
    String schema();

    /** Takes its tables' own guards off, within a transaction, so that a backup can be put in their place. */
    Guards unguard(Connection connection) throws SQLException;

    /** Guards taken off. */
    interface Guards {
        /** Puts them back. */
        void restore() throws SQLException;
    }
}
