package lyewright.records.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import lyewright.chain.PrintedHead;
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
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Stocked;
import lyewright.records.stock.Taking;
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
    void every_table_is_in_a_backup() {
        String tables = kind == Kind.SQLITE
                ? "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'flyway%'"
                : "SELECT tablename FROM pg_tables WHERE schemaname = current_schema() AND tablename NOT LIKE 'flyway%'";

        assertThat(TableOrder.TABLES).containsExactlyInAnyOrderElementsOf(Tinkering.texts(place, tables));
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
        assertThat(records.backups().restore(kept).orThrow().before()).isEmpty();
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

    // The ledger and documents

    private String document(String content) throws IOException {
        byte[] bytes = content.getBytes(StandardCharsets.UTF_8);
        String name = new FileShelf(place.files()).put(bytes);
        Tinkering.with(
                place,
                "INSERT INTO document (sha256, media_type, size_bytes, kept_epoch_ms) VALUES ('" + name
                        + "', 'text/plain', " + bytes.length + ", 0)");
        return name;
    }

    private Path at(String name) {
        return new FileShelf(place.files()).at(name);
    }

    @Test
    void documents_are_in_a_backup_and_come_back_with_it() throws IOException {
        Filled.fill(records);
        String name = document("Certificate of analysis, invented");
        Path backup = backup();
        assertThat(Backups.check(backup).orThrow().documents()).isEqualTo(1);
        Files.delete(at(name));

        records.backups().restore(backup).orThrow();

        assertThat(at(name)).hasContent("Certificate of analysis, invented");
    }

    @Test
    void a_document_whose_file_was_harmed_is_said_to_be_missing() throws IOException {
        String name = document("Certificate of analysis, invented");
        Files.writeString(at(name), "Certificate of analysis, INVENTED");

        assertThat(Backups.check(backup()).orThrow().missingFiles()).isEqualTo(1);
    }

    @Test
    void a_documents_file_is_never_swept_up_with_photographs_that_nobody_has() throws IOException {
        String name = document("Certificate of analysis, invented");
        String nobodys = new FileShelf(place.files()).put("nobody's".getBytes(StandardCharsets.UTF_8));
        for (String file : List.of(name, nobodys)) {
            Files.setLastModifiedTime(at(file), FileTime.from(START.minusSeconds(7200)));
        }

        restart();

        assertThat(at(name)).exists();
        if (kind == Kind.SQLITE) {
            assertThat(at(nobodys)).doesNotExist();
        }
    }

    @Test
    void a_backup_that_a_later_ledger_goes_on_from_is_not_put_back_without_a_word() throws IOException {
        Filled.fill(records);
        Path backup = backup();
        assertThat(records.backups().overtaken(backup).orThrow().lost()).isZero();
        KeptLot wrappers = records.lots().findCode("26-0002").orElseThrow();
        records.lots()
                .take(
                        records.people().desk(),
                        "",
                        List.of(new Taking(wrappers.id(), 3, "")),
                        StockMove.Told.of(MoveKind.LOSS, 0).withWhy("torn"))
                .orThrow();
        Map<String, String> before = Filled.everything(place);

        Overtaken overtaken = records.backups().overtaken(backup).orThrow();

        assertThat(overtaken.common()).isEqualTo(Stocked.ENTRIES);
        assertThat(overtaken.lost()).isEqualTo(1);
        assertThat(overtaken.differs()).isFalse();
        assertThat(records.backups().restore(backup).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.what()).contains("entry 10 of the ledger"));
        assertThat(Filled.everything(place)).isEqualTo(before);
        records.backups().restoreOverNewer(backup).orThrow();
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES);
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
    }

    @Test
    void a_backup_of_another_workshop_shares_no_entry_and_says_that_it_differs() throws IOException {
        Filled.fill(records);
        Path backup = folder.resolve("other.lyewright");
        try (Records other = Records.open(kind.place(folder), Clock.systemUTC()).orThrow()) {
            Stocked.fill(other);
            other.backups().write(backup).orThrow();
        }

        Overtaken overtaken = records.backups().overtaken(backup).orThrow();

        assertThat(overtaken.common()).isZero();
        assertThat(overtaken.lost()).isEqualTo(Stocked.ENTRIES);
        assertThat(overtaken.differs()).isTrue();
        assertThat(overtaken.entries()).isEqualTo("entries 1 to 9 of the ledger");
    }

    @Test
    void a_restored_ledger_is_whole_and_has_the_head_that_was_printed_before() throws IOException {
        Filled.fill(records);
        PrintedHead printed =
                PrintedHead.parse(records.ledger().head().printed()).orThrow();

        records.backups().restore(backup()).orThrow();

        assertThat(records.ledger().verify(Optional.of(printed)).isWhole()).isTrue();
        assertThatThrownBy(() -> Tinkering.with(place, "DELETE FROM ledger_entry"))
                .hasMessageContaining("not shortened");
    }
}
