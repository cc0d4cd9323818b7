package lyewright.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;

/** Both databases. Whatever is tested of the records is tested on each. */
public enum Kind {
    SQLITE {
        @Override
        public Place place(Path folder) {
            return new Place.Folder(folder.resolve("home-" + COUNT.incrementAndGet()));
        }

        @Override
        public Place prepared(Path folder) {
            Place.Folder place = (Place.Folder) place(folder);
            try {
                Files.createDirectories(place.home());
                Files.write(place.database(), Template.FILE);
                return place;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    },
    POSTGRESQL {
        @Override
        public Place place(Path folder) {
            return server("workshop_" + COUNT.incrementAndGet(), folder);
        }

        @Override
        public Place prepared(Path folder) {
            Place.Server place = server(Template.SCHEMA, folder);
            String tables = Tinkering.texts(
                            place,
                            "SELECT tablename FROM pg_tables WHERE schemaname = current_schema() AND tablename NOT LIKE 'flyway%'")
                    .stream()
                    .collect(Collectors.joining(", "));
            Tinkering.with(place, "TRUNCATE " + tables);
            return place;
        }
    };

    private static final AtomicInteger COUNT = new AtomicInteger();

    /** A place of this kind that nobody has used. */
    public abstract Place place(Path folder);

    /** The same, with empty tables made already: a copy of one that was opened as anybody would. */
    public abstract Place prepared(Path folder);

    private static Place.Server server(String schema, Path folder) {
        Path files = folder.resolve("files-" + COUNT.incrementAndGet());
        return new Place.Server(
                Server.RUNNING.getJdbcUrl("postgres", "postgres"), "postgres", "postgres", schema, files);
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

    private static final class Template {

        static final byte[] FILE = file();
        static final String SCHEMA = schema();

        private static byte[] file() {
            try {
                Path home = Files.createTempDirectory("template-");
                Place.Folder place = new Place.Folder(home);
                Records.open(place, Clock.systemUTC()).orThrow().close();
                byte[] file = Files.readAllBytes(place.database());
                Files.delete(place.database());
                Files.delete(home.resolve("lyewright.lock"));
                Files.delete(home);
                return file;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static String schema() {
            Records.open(server("prepared", Path.of("unused")), Clock.systemUTC())
                    .orThrow()
                    .close();
            return "prepared";
        }
    }
}
