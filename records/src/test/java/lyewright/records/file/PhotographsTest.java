package lyewright.records.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.records.Formulas;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import org.junit.jupiter.api.Test;

@OnBoth
class PhotographsTest extends Workbench {

    private static final byte[] PICTURE = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, 1, 2, 3};

    private List<Path> filesKept() throws IOException {
        try (Stream<Path> files = Files.walk(place.files())) {
            return files.filter(file -> FileShelf.isName(file.getFileName().toString()))
                    .toList();
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

    private static byte[] picture(int number) {
        return new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, (byte) number};
    }

    /** A photograph as it lies there after two hours. */
    private String old(int number) throws IOException {
        String name = records.photographs().keep(picture(number));
        ago(name);
        return name;
    }

    private void ago(String name) throws IOException {
        Tinkering.with(place, "UPDATE photograph SET kept_epoch_ms = kept_epoch_ms - 7200000");
        FileTime twoHours = FileTime.from(START.minusSeconds(7200));
        Files.setLastModifiedTime(place.files().resolve(name.substring(0, 2)).resolve(name), twoHours);
    }

    private String recipeWith(String photograph) {
        String id = records.recipes().add(Formulas.named("Bar")).orThrow().recipeId();
        records.recipes().setPhotograph(id, Optional.of(photograph)).orThrow();
        return id;
    }

    @Test
    void what_no_recipe_has_any_more_is_gone_after_a_start_and_nothing_else() throws IOException {
        String had = old(1);
        String replaced = old(2);
        String ofADeleted = old(3);
        String id = recipeWith(replaced);
        records.recipes().setPhotograph(id, Optional.of(had)).orThrow();
        records.recipes().delete(recipeWith(ofADeleted)).orThrow();
        String justNow = records.photographs().keep(picture(4));

        restart();

        boolean sweeps = kind == Kind.SQLITE;
        assertThat(records.photographs().open(replaced).isPresent()).isEqualTo(!sweeps);
        for (String name : List.of(had, ofADeleted, justNow)) {
            assertThat(records.photographs().open(name)).as(name).isPresent();
        }
        records.recipes()
                .undelete(records.recipes().deleted(1, 1).items().get(0).id())
                .orThrow();
    }

    @Test
    void an_end_between_the_row_and_the_file_does_no_harm() throws IOException {
        assumeTrue(kind == Kind.SQLITE);
        String rowGone = old(1);
        String fileGone = old(2);
        Tinkering.with(place, "DELETE FROM photograph WHERE sha256 = '" + rowGone + "'");
        Files.delete(records.photographs().file(fileGone).orElseThrow());

        restart();

        assertThat(filesKept()).isEmpty();
        assertThat(Tinkering.texts(place, "SELECT sha256 FROM photograph")).isEmpty();
        assertThat(records.photographs().open(records.photographs().keep(picture(1))))
                .isPresent();
    }

    @Test
    void where_a_server_keeps_photographs_too_none_is_taken_away() throws IOException {
        assumeTrue(kind == Kind.SQLITE);
        String old = old(1);
        new FileShelf(place.files()).share();

        restart();

        assertThat(records.photographs().open(old)).isPresent();
    }

    @Test
    void one_that_is_chosen_again_stays() throws IOException {
        String name = old(1);
        records.photographs().keep(picture(1));

        restart();

        assertThat(records.photographs().open(name)).isPresent();
        recipeWith(name);
    }
}
