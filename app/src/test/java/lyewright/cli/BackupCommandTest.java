package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import lyewright.formula.FormulaFile;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code backup} and {@code restore}, as they are typed. */
class BackupCommandTest {

    @TempDir
    Path folder;

    private Records open(String home) {
        return Records.open(new Place.Folder(folder.resolve(home)), Clock.systemUTC())
                .orThrow();
    }

    private static void add(Records records, String name) {
        records.recipes()
                .add(FormulaFile.read("recipe: " + name
                                + "\noils: {coconut: 100 %}\nalkali: sodium\nsuperfat: 18 %\nwater: 34 % lye\n")
                        .formula()
                        .orElseThrow())
                .orThrow();
    }

    private void keep(String home, String... names) {
        try (Records records = open(home)) {
            Arrays.stream(names).forEach(name -> add(records, name));
        }
    }

    private List<String> kept(String home) {
        try (Records records = open(home)) {
            return records.recipes().list(Search.all(1, 50)).items().stream()
                    .map(RecipeSummary::name)
                    .toList();
        }
    }

    private List<String> below(String home) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(home))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_workshop_goes_into_a_file_and_comes_out_of_it_elsewhere() {
        keep("shop", "Tideline", "Harbour Shave");

        Run backup = Run.in(folder, "backup", "all.lyewright", "--home", "shop");
        Run restore = Run.in(folder, "restore", "all.lyewright", "--home", "elsewhere");

        assertThat(backup)
                .isEqualTo(new Run(
                        0,
                        "2 recipes, 2 versions, 0 photographs backed up to " + folder.resolve("all.lyewright") + ".\n",
                        ""));
        assertThat(restore).isEqualTo(new Run(0, "2 recipes, 2 versions, 0 photographs restored.\n", ""));
        assertThat(kept("elsewhere")).containsExactly("Harbour Shave", "Tideline");
    }

    @Test
    void the_folder_may_be_named_before_the_command() {
        keep("shop", "Tideline");

        assertThat(Run.in(folder, "--home", "shop", "backup", "all.lyewright").exit())
                .isZero();
        assertThat(Run.in(folder, "--home", "nowhere", "backup", "other.lyewright")
                        .problems())
                .containsExactly("backup: there is no workshop in "
                        + folder.resolve("nowhere").toAbsolutePath() + "; name the workshop's folder");
    }

    @Test
    void a_backup_can_be_made_while_the_workshop_is_in_use() {
        try (Records records = open("shop")) {
            add(records, "Tideline");

            assertThat(Run.in(folder, "backup", "all.lyewright", "--home", "shop")
                            .out())
                    .startsWith("1 recipe, 1 version, 0 photographs backed up");
        }
    }

    @Test
    void a_restore_while_the_workshop_is_in_use_is_refused_and_points_to_the_pages() throws IOException {
        keep("shop", "Tideline");
        Run.in(folder, "backup", "all.lyewright", "--home", "shop");
        try (Records records = open("shop")) {
            add(records, "Harbour Shave");

            Run run = Run.in(folder, "restore", "all.lyewright", "--home", "shop");

            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.problems())
                    .singleElement()
                    .asString()
                    .startsWith("restore: another Lyewright is using the workshop in ")
                    .contains("use the pages of the one that runs");
        }
        assertThat(kept("shop")).containsExactly("Harbour Shave", "Tideline");
    }

    @Test
    void a_file_that_is_there_already_is_not_written_over() throws IOException {
        keep("shop", "Tideline");
        Files.writeString(folder.resolve("diary.txt"), "today the lye was cloudy");

        Run run = Run.in(folder, "backup", "diary.txt", "--home", "shop");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.problems())
                .singleElement()
                .asString()
                .contains("already")
                .contains("diary.txt");
        assertThat(folder.resolve("diary.txt")).hasContent("today the lye was cloudy");
    }

    @Test
    void a_backup_into_a_folder_that_is_not_there_is_refused() {
        keep("shop", "Tideline");

        Run run = Run.in(folder, "backup", "no/such/folder/all.lyewright", "--home", "shop");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.problems()).singleElement().asString().contains("cannot be written");
    }

    @Test
    void a_file_that_is_no_backup_changes_nothing_and_makes_no_workshop() throws IOException {
        keep("shop", "Tideline");
        Run.in(folder, "backup", "all.lyewright", "--home", "shop");
        byte[] whole = Files.readAllBytes(folder.resolve("all.lyewright"));
        Files.write(folder.resolve("short.lyewright"), Arrays.copyOf(whole, whole.length / 2));
        byte[] before = Files.readAllBytes(folder.resolve("shop/lyewright.db"));

        for (String file : List.of("short.lyewright", "gone.lyewright", "shop")) {
            Run run = Run.in(folder, "restore", file, "--home", "shop");
            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.problems()).hasSize(1);
            assertThat(Run.in(folder, "restore", file, "--home", "new").exit()).isEqualTo(2);
        }

        assertThat(Files.readAllBytes(folder.resolve("shop/lyewright.db"))).isEqualTo(before);
        assertThat(folder.resolve("new")).doesNotExist();
    }

    @Test
    void what_a_restore_took_the_place_of_can_be_restored_again() throws IOException {
        keep("shop", "Tideline");
        Run.in(folder, "backup", "all.lyewright", "--home", "shop");
        keep("shop", "Harbour Shave");

        Run restore = Run.in(folder, "restore", "all.lyewright", "--home", "shop");

        assertThat(kept("shop")).containsExactly("Tideline");
        assertThat(restore.lines()).hasSize(2);
        String before = below("shop").stream()
                .filter(name -> name.startsWith("before-restore-"))
                .findFirst()
                .orElseThrow();
        assertThat(restore.lines().get(1)).endsWith(before + ".");
        assertThat(Run.in(folder, "restore", "shop/" + before, "--home", "shop").exit())
                .isZero();
        assertThat(kept("shop")).containsExactly("Harbour Shave", "Tideline");
    }

    @Test
    void neither_goes_without_a_file() {
        assertThat(Run.of("backup").problems())
                .containsExactly("lyewright backup: the FILE is missing; write it as lyewright backup FILE");
        assertThat(Run.of("restore", "a", "b").exit()).isEqualTo(2);
    }
}
