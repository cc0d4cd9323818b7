package lyewright.records;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;

/**
 * Where the maker's own workshop and the demo workshop are kept: in the workshop's folder, or on the PostgreSQL server that
 * the environment names.
 *
 * @param mine the maker's own
 * @param demo the demo workshop, apart from it
 */
public record Places(Place mine, Place demo) {

    /** A server instead of the folder, such as {@code jdbc:postgresql://localhost/workshop}. */
    public static final String DATABASE = "LYEWRIGHT_DATABASE";

    /** Who asks it. */
    public static final String USER = "LYEWRIGHT_DATABASE_USER";

    /** How that is proved. */
    public static final String PASSWORD = "LYEWRIGHT_DATABASE_PASSWORD";

    /** The places that a folder and the environment come to. */
    public static Outcome<Places> of(Path home, Map<String, String> environment) {
        Optional<String> database =
                Optional.ofNullable(environment.get(DATABASE)).filter(url -> !url.isBlank());
        if (database.isEmpty()) {
            return Outcome.ok(new Places(new Place.Folder(home), new Place.Folder(home.resolve("demo"))));
        }
        if (!database.get().startsWith("jdbc:postgresql:")) {
            return Outcome.refused(
                    DATABASE + " does not name a PostgreSQL server",
                    "write it as jdbc:postgresql://SERVER/DATABASE, or leave it out to keep all in the folder");
        }
        return Outcome.ok(new Places(
                server(database.get(), "lyewright", home.resolve("files"), environment),
                server(database.get(), "lyewright_demo", home.resolve("demo").resolve("files"), environment)));
    }

    private static Place server(String url, String schema, Path files, Map<String, String> environment) {
        return new Place.Server(
                url, environment.getOrDefault(USER, ""), environment.getOrDefault(PASSWORD, ""), schema, files);
    }
}
