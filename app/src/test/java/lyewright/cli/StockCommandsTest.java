package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code import-stock} and {@code export-stock}, as they are typed. */
class StockCommandsTest {

    @TempDir
    Path folder;

    private Run run(String... args) {
        return Run.in(folder, args);
    }

    private static String example(String name) {
        return Path.of("../examples", name).toAbsolutePath().toString();
    }

    @Test
    void the_examples_go_in_once_and_come_out_again() throws IOException {
        Run dry = run("import-stock", example("stock-lots.csv"), "--home", "w", "--dry-run");
        assertThat(dry.err()).isEmpty();
        assertThat(dry.out())
                .contains("UTF-8, semicolon between cells, decimal comma.")
                .contains("8 new, 0 already there; nothing was kept.");
        assertThat(run("import-stock", example("stock-materials.csv"), "--home", "w")
                        .out())
                .contains("7 new, 0 already there.");
        assertThat(run("import-stock", example("stock-lots.csv"), "--home", "w").out())
                .contains("8 new, 0 already there.");
        assertThat(run("import-stock", example("stock-lots.csv"), "--home", "w").out())
                .contains("0 new, 8 already there.");

        assertThat(run("export-stock", "out", "--home", "w").out())
                .contains("lots.csv")
                .contains("data-dictionary.csv");
        assertThat(Files.readString(folder.resolve("out/lots.csv"))).contains("26-lavender");
        assertThat(run("import-stock", "out/lots.csv", "--home", "w").out()).contains("0 new, 8 already there.");
        assertThat(run("export-stock", "out.zip", "--mark", "--home", "w").exit())
                .isZero();
        assertThat(Files.readAllBytes(folder.resolve("out.zip"))).startsWith('P', 'K');
        assertThat(run("export-stock", "out.zip", "--home", "w").err()).contains("is there already");
    }

    @Test
    void rows_with_problems_are_told_and_written_beside() throws IOException {
        Files.writeString(
                folder.resolve("cupboard.csv"),
                "material,kind,amount,received\nNeem oil,oil,1 kg,03/04/2026\nOlive oil,oil,5 kg,2026-11-25\n");
        Run run = run("import-stock", "cupboard.csv", "--home", "w", "--left-out", "rest.csv");
        assertThat(run.out())
                .contains("Row 2, received: '03/04/2026' may be day and month")
                .contains("1 new, 0 already there, 1 with a problem.")
                .contains("The rows with problems are in");
        assertThat(run.exit()).isEqualTo(3);
        assertThat(Files.readString(folder.resolve("rest.csv"), StandardCharsets.UTF_8))
                .contains("Neem oil");
        Run rest = run("import-stock", "rest.csv", "--home", "w", "--days", "day");
        assertThat(rest.out()).contains("1 new, 0 already there.");
        assertThat(rest.exit()).isZero();
    }

    @Test
    void what_is_no_file_or_no_choice_is_refused() throws IOException {
        assertThat(run("import-stock", "none.csv", "--home", "w").err()).contains("there is no file");
        assertThat(Files.exists(folder.resolve("w"))).isFalse();
        Files.writeString(folder.resolve("a.csv"), "a,b\n1,2\n");
        assertThat(run("import-stock", "a.csv", "--home", "w").err())
                .contains("no column says what a material is called; name that column as the guide says");
        Files.writeString(folder.resolve("b.csv"), "name,kind\nOlive oil,oil\n");
        assertThat(run("import-stock", "b.csv", "--home", "w", "--days", "week").err())
                .contains("'week' is neither");
        assertThat(run("export-stock", "x.zip", "--home", "nowhere").exit()).isNotZero();
    }
}
