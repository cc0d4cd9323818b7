package lyewright.web.people;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What to call a device until somebody calls it something else: by what its browser says of itself. */
final class BrowserName {

    private static final List<Map.Entry<String, String>> MACHINES = List.of(
            Map.entry("iPhone", "iPhone"),
            Map.entry("iPad", "iPad"),
            Map.entry("Android", "Android device"),
            Map.entry("Windows", "Windows computer"),
            Map.entry("Macintosh", "Mac"),
            Map.entry("CrOS", "Chromebook"),
            Map.entry("Linux", "Linux computer"));

    private BrowserName() {}

    static String of(@Nullable String userAgent) {
        String said = Optional.ofNullable(userAgent).orElse("");
        return MACHINES.stream()
                .filter(machine -> said.contains(machine.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("A device");
    }
}
