package lyewright.records.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
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
import lyewright.chain.PrintedHead;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.Records;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.file.FileShelf;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotDocument;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Stocked;
import lyewright.records.stock.Taking;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The ledger and documents in a backup, and a restore that would lose some of it. */
@OnBoth
class LedgerInBackupTest extends Workbench {

    private Path backup() throws IOException {
        Path file = folder.resolve("workshop.lyewright");
        try (OutputStream out = Files.newOutputStream(file)) {
            records.backups().write(out);
        }
        return file;
    }

    private String document(String content) throws IOException {
        byte[] bytes = content.getBytes(StandardCharsets.UTF_8);
        String name = new FileShelf(place.files()).put(bytes);
        Tinkering.with(
                place,
                "INSERT INTO document (sha256, media_type, size_bytes, kept_epoch_ms) VALUES ('" + name
                        + "', 'text/plain', " + bytes.length + ", 0)");
        return name;
    }

    /** The same through the door, on a lot of a filled workshop. */
    private LotDocument onALot(String content) {
        return records.documents()
                .add(
                        records.author(),
                        records.lots().findCode("26-0001").orElseThrow().id(),
                        "Certificate",
                        new ByteArrayInputStream(content.getBytes(StandardCharsets.UTF_8)))
                .orThrow()
                .document();
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

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_lots_documents_go_with_a_backup_into_a_workshop_of_either_kind(Kind other) throws IOException {
        Filled.fill(records);
        LotDocument document = onALot("Certificate of analysis, invented");
        Path backup = backup();

        try (Records restored = Records.open(other.place(folder), clock).orThrow()) {
            restored.backups().restore(backup).orThrow();

            assertThat(restored.documents().of(document.lotId())).containsExactly(document);
            assertThat(restored.documents().file(document).orElseThrow())
                    .hasContent("Certificate of analysis, invented");
            assertThat(restored.ledger().verify(Optional.empty()).isWhole()).isTrue();
        }
    }

    @Test
    void a_lots_document_whose_file_has_gone_does_not_prevent_a_backup_and_verifying_says_so_after_it()
            throws IOException {
        Filled.fill(records);
        LotDocument document = onALot("Certificate of analysis, invented");
        Files.delete(at(document.sha256()));
        Path backup = backup();
        assertThat(Backups.check(backup).orThrow().missingFiles()).isEqualTo(1);

        records.backups().restore(backup).orThrow();

        assertThat(records.documents().of(document.lotId())).containsExactly(document);
        assertThat(records.documents().file(document)).isEmpty();
        assertThat(records.ledger().verify(Optional.empty()).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.what()).contains("the file of the document"));
    }

    @Test
    void a_restore_mends_a_file_that_was_harmed_since() throws IOException {
        Filled.fill(records);
        LotDocument document = onALot("Certificate of analysis, invented");
        Path backup = backup();
        Files.writeString(at(document.sha256()), "Certificate of analysis, INVENTED");

        records.backups().restore(backup).orThrow();

        assertThat(at(document.sha256())).hasContent("Certificate of analysis, invented");
    }

    @Test
    void a_long_document_that_could_be_packed_very_tightly_comes_back_all_the_same() throws IOException {
        Filled.fill(records);
        LotDocument document = onALot("-".repeat(6 << 20));
        Path backup = backup();
        Files.delete(at(document.sha256()));

        records.backups().restore(backup).orThrow();

        assertThat(at(document.sha256())).hasSize(6 << 20);
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
                        records.author(),
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
        // one more than the backup has: it tells what was lost
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES + 1);
        assertThat(records.ledger().entries(Stocked.ENTRIES + 1, 1).get(0).text())
                .contains("\"lost from\":10")
                .contains("\"lost to\":10")
                .contains("26-0002");
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();
    }

    /** The jar of the lot that the backup does not know has its code still. */
    @Test
    void a_code_of_a_lot_that_a_restore_lost_is_not_given_again() throws IOException {
        Filled.fill(records);
        Path backup = backup();
        KeptLot wrappers = records.lots().findCode("26-0002").orElseThrow();
        String lost = another(wrappers);

        records.backups().restoreOverNewer(backup).orThrow();
        records.backups().restoreOverNewer(backup).orThrow();

        assertThat(records.lots().findCode(lost)).isEmpty();
        assertThat(another(wrappers)).isGreaterThan(lost);
    }

    private String another(KeptLot like) {
        Arrival arrival = new Arrival(like.itemId(), like.said().withCode(""), 10);
        return records.lots()
                .receive(records.author(), "", List.of(arrival))
                .orThrow()
                .get(0)
                .said()
                .ownCode();
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
