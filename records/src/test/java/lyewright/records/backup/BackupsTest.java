package lyewright.records.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import lyewright.records.Formulas;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.file.FileShelf;
import lyewright.records.recipe.RecipeSummary;
import lyewright.records.recipe.Search;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@OnBoth
class BackupsTest extends Workbench {

    private Path backup() throws IOException {
        Path file = folder.resolve("workshop.lyewright");
        try (OutputStream out = Files.newOutputStream(file)) {
            records.backups().write(out);
        }
        return file;
    }

    private static List<Path> filesBelow(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void a_backup_says_what_is_in_it() throws IOException {
        Filled.fill(records);

        BackupContents contents = Backups.check(backup()).orThrow();

        assertThat(contents.workshop()).contains("Gannet Stair Soap");
        assertThat(contents.recipes()).isEqualTo(2);
        assertThat(contents.versions()).isEqualTo(3);
        assertThat(contents.photographs()).isEqualTo(1);
        assertThat(contents.missingFiles()).isZero();
        assertThat(contents.lots()).isEqualTo(2);
        assertThat(contents.moves()).isEqualTo(5);
        assertThat(contents.documents()).isZero();
        assertThat(contents.ledger()).contains(records.ledger().head());
        assertThat(contents.madeAt()).isAfter(START);
    }

    @Test
    void every_table_is_in_a_backup_but_what_belongs_to_one_computer() {
        String tables = kind == Kind.SQLITE
                ? "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'flyway%'"
                : "SELECT tablename FROM pg_tables WHERE schemaname = current_schema() AND tablename NOT LIKE 'flyway%'";

        List<String> known = new ArrayList<>(TableOrder.TABLES);
        known.addAll(List.of("device_session", "network_door"));
        assertThat(known).containsExactlyInAnyOrderElementsOf(Tinkering.texts(place, tables));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_backup_goes_into_an_empty_workshop_of_either_kind_and_nothing_is_lost(Kind other) throws IOException {
        Filled.fill(records);
        Path backup = backup();
        Map<String, String> before = Filled.everything(place);
        Place there = other.place(folder);

        try (Records restored = Records.open(there, clock).orThrow()) {
            restored.backups().restore(backup).orThrow();

            assertThat(Filled.everything(there)).isEqualTo(before);
            RecipeSummary tideline =
                    restored.recipes().list(Search.all(1, 9)).items().get(0);
            String picture = tideline.photograph().orElseThrow();
            assertThat(restored.photographs().open(picture).orElseThrow())
                    .isEqualTo(records.photographs().open(picture).orElseThrow());
        }
    }

    @Test
    void a_restore_takes_the_place_of_everything_made_from_or_not() throws IOException {
        Filled.fill(records);
        Path backup = backup();
        Map<String, String> before = Filled.everything(place);
        String id = records.recipes().list(Search.all(1, 9)).items().get(0).id();
        records.recipes().markMade(id, 2).orThrow();
        records.recipes().add(Formulas.named("Added later")).orThrow();
        records.recipes().delete(id).orThrow();

        Restored restored = records.backups().restore(backup).orThrow();

        assertThat(restored.contents().recipes()).isEqualTo(2);
        assertThat(Filled.everything(place)).isEqualTo(before);
        restart();
        assertThat(Filled.everything(place)).isEqualTo(before);
        assertThat(filesBelow(place.files()).stream()
                        .map(file -> file.getFileName().toString())
                        .filter(FileShelf::isName))
                .hasSize(1);
    }

    @Test
    void what_a_restore_took_the_place_of_is_in_a_backup_of_its_own() throws IOException {
        Path empty = backup();
        Filled.fill(records);
        Map<String, String> before = Filled.everything(place);

        Path kept = records.backups().restoreOverNewer(empty).orThrow().before().orElseThrow();

        assertThat(records.recipes().list(Search.all(1, 9)).total()).isZero();
        // the entry that tells of the restore is nothing that anybody would miss
        records.backups().restore(kept).orThrow();
        assertThat(Filled.everything(place)).isEqualTo(before);
    }

    @Test
    void what_was_made_from_is_guarded_after_a_restore_as_before() throws IOException {
        Filled.fill(records);
        records.backups().restore(backup()).orThrow();

        assertThatThrownBy(() -> Tinkering.with(place, "DELETE FROM recipe_version"))
                .hasMessageContaining("was made from");
    }

    @Test
    void an_empty_workshop_can_be_backed_up_and_restored() throws IOException {
        Path backup = backup();
        Filled.fill(records);

        records.backups().restoreOverNewer(backup).orThrow();

        assertThat(records.settings().workshop()).isEmpty();
        assertThat(records.recipes().list(Search.all(1, 9)).total()).isZero();
        assertThat(Backups.check(backup).orThrow().workshop()).isEmpty();
    }

    @Test
    void a_backup_made_while_recipes_are_saved_is_of_one_moment() throws Exception {
        records.recipes().add(Formulas.named("The first")).orThrow();
        AtomicBoolean enough = new AtomicBoolean();
        Thread saving = new Thread(() -> {
            while (!enough.get()) {
                records.recipes().add(Formulas.named("Another")).orThrow();
            }
        });
        saving.start();
        try {
            for (int i = 0; i < 5; i++) {
                BackupContents contents = Backups.check(backup()).orThrow();
                assertThat(contents.versions()).isEqualTo(contents.recipes());
            }
        } finally {
            enough.set(true);
            saving.join();
        }
        Path last = backup();
        long total = records.recipes().list(Search.all(1, 1)).total();
        assertThat(Backups.check(last).orThrow().recipes()).isEqualTo(total);
        assertThat(records.backups().restore(last).orThrow().contents().versions())
                .isEqualTo(total);
    }

    @Test
    void a_photograph_whose_file_has_gone_does_not_prevent_a_backup_and_is_said() throws IOException {
        Filled.fill(records);
        for (Path file : filesBelow(place.files())) {
            Files.delete(file);
        }

        Path backup = backup();

        assertThat(Backups.check(backup).orThrow().missingFiles()).isEqualTo(1);
        records.backups().restore(backup).orThrow();
        assertThat(records.recipes().list(Search.all(1, 9)).total()).isEqualTo(1);
    }

    @Test
    void a_backup_that_cannot_be_written_where_it_should_go_says_so() {
        Filled.fill(records);
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("no space left");
            }
        };

        assertThatThrownBy(() -> records.backups().write(full))
                .isInstanceOf(IOException.class)
                .hasMessage("no space left");
        assertThat(records.recipes().list(Search.all(1, 9)).total()).isEqualTo(1);
    }

    @Test
    void records_opened_only_to_read_can_be_backed_up() throws IOException {
        Filled.fill(records);
        try (Records reading = Records.openToRead(place, Clock.systemUTC()).orThrow()) {
            Path file = folder.resolve("beside.lyewright");
            try (OutputStream out = Files.newOutputStream(file)) {
                reading.backups().write(out);
            }
            assertThat(Backups.check(file).orThrow().recipes()).isEqualTo(2);
        }
    }
}
