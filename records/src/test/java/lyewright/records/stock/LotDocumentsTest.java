package lyewright.records.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lyewright.chain.Entry;
import lyewright.measure.Outcome;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.file.DocumentKind;
import lyewright.records.file.FileShelf;
import lyewright.records.file.SomeDocument;
import lyewright.records.ledger.EntryText;
import lyewright.records.store.Author;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Certificates and delivery notes, put to lots and taken off them. */
@OnBoth
class LotDocumentsTest extends Workbench {

    private static final byte[] CERTIFICATE = SomeDocument.pdf("Certificate of analysis, invented");

    private String oil = "";
    private String wrappers = "";

    @BeforeEach
    void a_cupboard() {
        Stocked.fill(records);
        oil = records.lots().findCode("26-0001").orElseThrow().id();
        wrappers = records.lots().findCode("26-0002").orElseThrow().id();
    }

    private Author maker() {
        return records.author();
    }

    private Outcome<LotDocuments.Added> add(String lot, String name, byte[] content) {
        return records.documents().add(maker(), lot, name, new ByteArrayInputStream(content));
    }

    private LotDocument added(String lot, byte[] content) {
        return add(lot, "Certificate NQ-118", content).orThrow().document();
    }

    private List<Path> filesKept() throws IOException {
        if (!Files.isDirectory(place.files())) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(place.files())) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().endsWith(".txt"))
                    .toList();
        }
    }

    private Entry newest() {
        return records.ledger().entries(Long.MAX_VALUE, 1).get(0);
    }

    @Test
    void a_certificate_is_kept_with_its_lot_byte_for_byte_and_sealed_by_its_digest() {
        LotDocument document = added(oil, CERTIFICATE);

        restart();
        assertThat(records.documents().of(oil)).containsExactly(document);
        assertThat(document.kind()).isEqualTo(DocumentKind.PDF);
        assertThat(document.bytes()).isEqualTo(CERTIFICATE.length);
        assertThat(document.sha256()).isEqualTo(FileShelf.nameOf(CERTIFICATE));
        assertThat(document.takenOff()).isEmpty();
        assertThat(records.documents().file(document).orElseThrow()).hasBinaryContent(CERTIFICATE);
        assertThat(newest().number()).isEqualTo(Stocked.ENTRIES + 1).isEqualTo(document.number());
        assertThat(newest().kind()).isEqualTo("lot document");
        assertThat(newest().person()).isEqualTo(maker().person());
        assertThat(EntryText.facts(newest().text()))
                .isEqualTo(Map.of(
                        "lot",
                        oil,
                        "sha256",
                        document.sha256(),
                        "type",
                        "application/pdf",
                        "bytes",
                        Integer.toString(CERTIFICATE.length),
                        "name",
                        "Certificate NQ-118"));
        assertThat(records.documents().of(wrappers)).isEmpty();
    }

    @Test
    void the_same_document_again_on_its_lot_adds_nothing_whatever_it_is_called() {
        LotDocument document = added(oil, CERTIFICATE);

        LotDocuments.Added again = add(oil, "the same, scanned", CERTIFICATE).orThrow();

        assertThat(again).isEqualTo(new LotDocuments.Added(document, false));
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES + 1);
    }

    @Test
    void two_lots_of_one_delivery_share_a_file() throws IOException {
        added(oil, CERTIFICATE);
        added(wrappers, CERTIFICATE);

        assertThat(filesKept()).hasSize(1);
        assertThat(records.documents().of(oil)).hasSize(1);
        assertThat(records.documents().of(wrappers)).hasSize(1);
    }

    @Test
    void a_delivery_note_goes_to_all_lots_that_came_with_it_or_to_none() {
        Delivery delivery = new Delivery(
                "Northquay Oils",
                records.items().list().stream()
                        .map(item -> Arrival.of(
                                item.said(), delivered("26-1" + item.name().length()), 1_000))
                        .toList());
        List<String> lots = records.lots().receive(maker(), "", delivery).orThrow().stream()
                .map(KeptLot::id)
                .toList();
        assertThat(lots).hasSize(2);
        assertThat(records.lots().cameWith(lots.get(0))).extracting(KeptLot::id).containsExactly(lots.get(1));
        assertThat(records.lots().cameWith(oil)).as("nobody brought it").isEmpty();

        assertThat(records.documents()
                        .add(maker(), List.of(lots.get(0), "nowhere"), "Note", new ByteArrayInputStream(CERTIFICATE))
                        .problems())
                .hasSize(1);
        assertThat(records.documents().of(lots.get(0))).isEmpty();
        added(lots.get(1), CERTIFICATE);
        List<LotDocuments.Added> all = records.documents()
                .add(maker(), lots, "Note", new ByteArrayInputStream(CERTIFICATE))
                .orThrow();

        assertThat(all).extracting(LotDocuments.Added::isNew).containsExactly(true, false);
        assertThat(records.documents().of(lots.get(0))).hasSize(1);
        assertThat(records.documents().of(lots.get(1))).hasSize(1);
        assertThat(records.ledger().verify(Optional.empty()).isWhole()).isTrue();

        long came = records.lots().moves(lots.get(1)).get(0).number();
        records.lots().correct(maker(), came, "never came").orThrow();
        assertThat(records.lots().cameWith(lots.get(0))).as("taken back").isEmpty();
    }

    private static LotSaid delivered(String code) {
        return LotSaid.of(LocalDate.of(2026, 11, 20)).withCode(code);
    }

    @Test
    void photographs_and_letters_are_documents_and_the_newest_is_first() {
        added(oil, SomeDocument.jpeg());
        added(oil, SomeDocument.text("Dear maker, the lot is sound. – 石鹸"));

        assertThat(records.documents().of(oil))
                .extracting(LotDocument::kind)
                .containsExactly(DocumentKind.TEXT, DocumentKind.JPEG);
    }

    @Test
    void a_document_put_to_the_wrong_lot_is_taken_off_and_can_still_be_opened() {
        LotDocument document = added(oil, CERTIFICATE);

        LotDocument off = records.documents()
                .takeOff(maker(), oil, document.sha256(), " is of lot 26-0002 ")
                .orThrow();

        assertThat(off.takenOff()).contains("is of lot 26-0002");
        assertThat(off.number()).isEqualTo(document.number() + 1).isEqualTo(newest().number());
        assertThat(records.documents().of(oil)).containsExactly(off);
        assertThat(records.documents().file(off)).isPresent();
        assertThat(records.documents()
                        .takeOff(maker(), oil, document.sha256(), "again")
                        .problems()
                        .get(0)
                        .what())
                .contains("taken off before");
        LotDocuments.Added back =
                add(oil, "Certificate, after all", CERTIFICATE).orThrow();
        assertThat(back.isNew()).isTrue();
        assertThat(back.document().takenOff()).isEmpty();
        assertThat(back.document().name()).isEqualTo("Certificate, after all");
    }

    @Test
    void taking_off_asks_why_and_for_a_document_that_is_there() {
        LotDocument document = added(oil, CERTIFICATE);

        assertThat(records.documents()
                        .takeOff(maker(), oil, document.sha256(), " ")
                        .problems()
                        .get(0)
                        .path())
                .isEqualTo("why");
        assertThat(records.documents()
                        .takeOff(maker(), wrappers, document.sha256(), "wrong")
                        .problems())
                .hasSize(1);
        assertThat(newest().number()).isEqualTo(document.number());
    }

    @Test
    void a_file_that_went_away_comes_back_with_the_same_document() throws IOException {
        LotDocument document = added(oil, CERTIFICATE);
        Path file = records.documents().file(document).orElseThrow();
        Files.delete(file);
        assertThat(records.documents().file(document)).isEmpty();

        assertThat(add(oil, "note", CERTIFICATE).orThrow().isNew()).isFalse();
        assertThat(file).hasBinaryContent(CERTIFICATE);

        Files.write(file, new byte[CERTIFICATE.length]);
        add(oil, "note", CERTIFICATE).orThrow();
        assertThat(file).hasBinaryContent(CERTIFICATE);
    }
}
