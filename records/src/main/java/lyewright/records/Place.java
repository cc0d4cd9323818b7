package lyewright.records;

import java.nio.file.Path;

/** Where a workshop's records are. */
public sealed interface Place {

    /** Where photographs and documents lie. */
    Path files();

    /**
     * A folder of this machine, with everything in it: for one application at a time.
     *
     * @param home the workshop's folder
     */
    record Folder(Path home) implements Place {

        /** The name of the database's file in the folder. */
        public static final String DATABASE = "lyewright.db";

        /** The database's file. */
        public Path database() {
            return home.resolve(DATABASE);
        }

        @Override
        public Path files() {
            return home.resolve("files");
        }
    }

    /**
     * A PostgreSQL server, for a team or for several applications at a time.
     *
     * @param jdbcUrl where the server is and which of its databases
     * @param user who asks
     * @param password how that is proved
     * @param schema the schema that holds the records; made where it is missing
     * @param files where photographs and documents lie
     */
    record Server(String jdbcUrl, String user, String password, String schema, Path files) implements Place {

        /** Without the password, which has no place in a log. */
        @Override
        public String toString() {
            return "Server[jdbcUrl=" + jdbcUrl + ", user=" + user + ", schema=" + schema + ", files=" + files + "]";
        }
    }
}
