package lyewright.records.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SchemaTest {

    @Test
    void the_newest_version_is_that_of_the_newest_migration_and_both_databases_have_the_same_ones()
            throws IOException, URISyntaxException {
        NavigableSet<Integer> sqlite = versions("common", "sqlite");

        assertThat(sqlite).isEqualTo(versions("common", "postgresql"));
        assertThat(sqlite.last()).isEqualTo(Schema.NEWEST);
    }

    private static NavigableSet<Integer> versions(String... folders) throws IOException, URISyntaxException {
        NavigableSet<Integer> versions = new TreeSet<>();
        for (String folder : folders) {
            URL at = Objects.requireNonNull(Schema.class.getResource("/db/migration/" + folder));
            try (Stream<Path> files = Files.list(Path.of(at.toURI()))) {
                files.map(file -> file.getFileName().toString())
                        .map(name -> Integer.valueOf(name.substring(1, name.indexOf("__"))))
                        .forEach(versions::add);
            }
        }
        return versions;
    }
}
