package lyewright.records.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

@OnBoth
class PhotographsTest extends Workbench {

    private static final byte[] PICTURE = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, 1, 2, 3};

    private List<Path> filesKept() throws IOException {
        try (Stream<Path> files = Files.walk(place.files())) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void a_photograph_is_found_by_the_digest_of_its_bytes() {
        String name = records.photographs().keep(PICTURE);

        // echo -ne '\xff\xd8\xff\xe0\x01\x02\x03' | sha256sum
        assertThat(name).isEqualTo("474ebe266cd7f9ed28807fa3fdfe0c04cdb3cef9313cdda5c08b15910fcc8184");
        restart();
        assertThat(records.photographs().open(name).orElseThrow()).isEqualTo(PICTURE);
        assertThat(records.photographs().file(name).orElseThrow()).hasBinaryContent(PICTURE);
    }

    @Test
    void the_same_picture_is_kept_once_and_nothing_is_left_beside_it() throws IOException {
        records.photographs().keep(PICTURE);
        records.photographs().keep(PICTURE);

        assertThat(filesKept()).hasSize(1);
    }

    @Test
    void a_file_that_was_cut_short_is_written_again() throws IOException {
        String name = records.photographs().keep(PICTURE);
        Files.write(filesKept().get(0), new byte[] {1});

        records.photographs().keep(PICTURE);

        assertThat(records.photographs().open(name).orElseThrow()).isEqualTo(PICTURE);
    }

    @Test
    void no_other_name_reaches_any_file() throws IOException {
        Files.createDirectories(place.files());
        Files.writeString(place.files().resolveSibling("secret"), "secret");

        for (String name :
                List.of("../secret", "secret", "", "/etc/passwd", "a".repeat(63), "A".repeat(64), "0".repeat(64))) {
            assertThat(records.photographs().open(name)).isEmpty();
            assertThat(records.photographs().file(name)).isEmpty();
        }
    }

    @Test
    void what_is_no_photograph_of_ours_is_not_kept() {
        for (byte[] other : List.of(
                new byte[0],
                "<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8),
                new byte[Photographs.LARGEST + 1])) {
            assertThatThrownBy(() -> records.photographs().keep(other)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
