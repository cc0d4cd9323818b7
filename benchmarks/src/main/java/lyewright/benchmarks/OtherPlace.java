package lyewright.benchmarks;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.records.Place;
import lyewright.records.Places;

/**
 * Where a workshop that is measured is kept: in its folder, or, where {@code LYEWRIGHT_BENCH_SERVER} names a PostgreSQL server as in
 * {@code jdbc:postgresql://localhost}, in the database there that is called as the folder is. It has to be there, and empty.
 */
final class OtherPlace {

    private OtherPlace() {}

    static Optional<String> server() {
        return Optional.ofNullable(System.getenv("LYEWRIGHT_BENCH_SERVER"));
    }

    /** The server's address with a folder's database. */
    static String url(Path folder) {
        return server().orElseThrow() + "/" + folder.getFileName();
    }

    static String user() {
        return Optional.ofNullable(System.getenv("LYEWRIGHT_BENCH_USER")).orElse("");
    }

    static String password() {
        return Optional.ofNullable(System.getenv("LYEWRIGHT_BENCH_PASSWORD")).orElse("");
    }

    /** What pages of a folder find in their environment. */
    static Map<String, String> environment(Path folder) {
        Map<String, String> environment = new TreeMap<>();
        if (server().isPresent()) {
            environment.put(Places.DATABASE, url(folder));
            environment.put(Places.USER, user());
            environment.put(Places.PASSWORD, password());
        }
        return environment;
    }

    static Place of(Path folder) {
        return Places.of(folder, environment(folder)).orThrow().mine();
    }
}
