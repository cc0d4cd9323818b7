package lyewright.records;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which folder is the workshop's: the one named, else the one the environment names, else where this system keeps such things. */
public final class Home {

    /** The environment's name for it. */
    public static final String VARIABLE = "LYEWRIGHT_HOME";

    private Home() {}

    /**
     * The workshop's folder.
     *
     * @param named the folder that was named, if one was
     * @param folder the folder that relative names are in
     * @return its path, absolute
     */
    public static Path resolve(Optional<String> named, Path folder) {
        return resolve(
                named,
                folder,
                System.getenv(),
                System.getProperty("os.name", ""),
                System.getProperty("user.home", "."));
    }

    static Path resolve(
            Optional<String> named, Path folder, Map<String, String> environment, String system, String userHome) {
        return named.or(() -> given(environment, VARIABLE))
                .map(name -> folder.toAbsolutePath().resolve(name).normalize())
                .orElseGet(() -> usual(environment, system.toLowerCase(Locale.ROOT), Path.of(userHome))
                        .toAbsolutePath());
    }

    private static Path usual(Map<String, String> environment, String system, Path userHome) {
        if (system.startsWith("windows")) {
            return given(environment, "LOCALAPPDATA")
                    .map(Path::of)
                    .orElse(userHome.resolve("AppData").resolve("Local"))
                    .resolve("Lyewright");
        }
        if (system.startsWith("mac")) {
            return userHome.resolve("Library").resolve("Application Support").resolve("Lyewright");
        }
        // an XDG folder that is not absolute is to be ignored (XDG Base Directory Specification 0.8)
        return given(environment, "XDG_DATA_HOME")
                .map(Path::of)
                .filter(Path::isAbsolute)
                .orElse(userHome.resolve(".local").resolve("share"))
                .resolve("lyewright");
    }

    private static Optional<String> given(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name)).filter(value -> !value.isBlank());
    }
}
