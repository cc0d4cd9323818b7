package lyewright.benchmarks;

import java.nio.file.Path;
import java.util.Optional;
import lyewright.records.Place;

/** A PostgreSQL server to measure instead of a folder, as the environment names it: {@code LYEWRIGHT_BENCH_SERVER=jdbc:postgresql://…}. */
final class OtherPlace {

    private OtherPlace() {}

    /** It, in a schema that nobody else uses; empty where a folder is meant. */
    static Optional<Place> said() {
        return schema("bench_" + System.nanoTime());
    }

    static Optional<Place> schema(String schema) {
        return url().map(url -> new Place.Server(
                url,
                of("LYEWRIGHT_BENCH_USER"),
                of("LYEWRIGHT_BENCH_PASSWORD"),
                schema,
                Path.of(System.getProperty("java.io.tmpdir"), schema)));
    }

    static Optional<String> url() {
        return Optional.ofNullable(System.getenv("LYEWRIGHT_BENCH_SERVER"));
    }

    static String of(String name) {
        return Optional.ofNullable(System.getenv(name)).orElse("");
    }
}
