package lyewright.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;

/** Both databases. Whatever is tested of the records is tested on each. */
public enum Kind {
    SQLITE {
        @Override
        public Place place(Path folder) {
            return new Place.Folder(folder.resolve("home-" + COUNT.incrementAndGet()));
        }
    },
    POSTGRESQL {
        @Override
        public Place place(Path folder) {
            int number = COUNT.incrementAndGet();
            return new Place.Server(
                    url(), "postgres", "postgres", "workshop_" + number, folder.resolve("files-" + number));
        }
    };

    private static final AtomicInteger COUNT = new AtomicInteger();

    /** A place of this kind that nobody has used. */
    public abstract Place place(Path folder);

    /** Where the tests' own server is; it starts when it is first wanted and ends with the tests. */
    public static String url() {
        return Server.RUNNING.getJdbcUrl("postgres", "postgres");
    }

    private static final class Server {

        static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder().start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
