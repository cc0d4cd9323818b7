package lyewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HomeTest {

    private static final Path HERE = Path.of("/bench");

    private static Path home(Optional<String> named, Map<String, String> environment, String system) {
        return Home.resolve(named, HERE, environment, system, "/home/maker");
    }

    @Test
    void the_folder_that_was_named_comes_first() {
        Map<String, String> environment = Map.of("LYEWRIGHT_HOME", "/elsewhere");

        assertThat(home(Optional.of("shop"), environment, "Linux")).isEqualTo(Path.of("/bench/shop"));
        assertThat(home(Optional.of("/srv/shop"), environment, "Linux")).isEqualTo(Path.of("/srv/shop"));
        assertThat(home(Optional.empty(), environment, "Linux")).isEqualTo(Path.of("/elsewhere"));
    }

    @Test
    void without_a_name_it_is_where_the_system_keeps_such_things() {
        assertThat(home(Optional.empty(), Map.of(), "Linux")).isEqualTo(Path.of("/home/maker/.local/share/lyewright"));
        assertThat(home(Optional.empty(), Map.of("XDG_DATA_HOME", "/data"), "Linux"))
                .isEqualTo(Path.of("/data/lyewright"));
        assertThat(home(Optional.empty(), Map.of("XDG_DATA_HOME", "not/absolute"), "Linux"))
                .isEqualTo(Path.of("/home/maker/.local/share/lyewright"));
        assertThat(home(Optional.empty(), Map.of(), "Mac OS X"))
                .isEqualTo(Path.of("/home/maker/Library/Application Support/Lyewright"));
        assertThat(home(Optional.empty(), Map.of("LOCALAPPDATA", "/local"), "Windows 11"))
                .isEqualTo(Path.of("/local/Lyewright"));
        assertThat(home(Optional.empty(), Map.of("LYEWRIGHT_HOME", " "), "Windows 11"))
                .isEqualTo(Path.of("/home/maker/AppData/Local/Lyewright"));
    }
}
