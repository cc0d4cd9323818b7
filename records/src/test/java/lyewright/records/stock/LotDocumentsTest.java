package lyewright.records.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import lyewright.chain.Entry;
import lyewright.measure.Outcome;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.RecordsTrouble;
import lyewright.records.Workbench;
import lyewright.records.file.DocumentFiles;
import lyewright.records.file.DocumentKind;
import lyewright.records.file.FileShelf;
import lyewright.records.file.SomeDocument;
import lyewright.records.ledger.EntryText;
import lyewright.records.people.Author;
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
        return records.people().desk();
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
    void photographs_and_letters_are_documents_and_the_newest_is_first() {
        added(oil, SomeDocument.jpeg());
        added(oil, SomeDocument.text("Dear maker, the lot is sound. – 石鹸"));

        assertThat(records.documents().of(oil))
                .extracting(LotDocument::kind)
                .containsExactly(DocumentKind.TEXT, DocumentKind.JPEG);
    }

    @Test
    void what_is_no_document_is_refused_and_nothing_of_it_stays() throws IOException {
        Outcome<LotDocuments.Added> program = add(oil, "certificate.pdf", new byte[] {'M', 'Z', 0, 0, 1, 2, 3});
        Outcome<LotDocuments.Added> half =
                add(oil, "certificate.pdf", Arrays.copyOf(CERTIFICATE, CERTIFICATE.length / 2));
        Outcome<LotDocuments.Added> nothing = add(oil, "certificate.pdf", new byte[0]);
        Outcome<LotDocuments.Added> nowhere = add("01a221b4-908b-73b2-ada9-c1ce46e5a425", "note", CERTIFICATE);

        assertThat(Stream.of(program, half, nothing, nowhere)
                        .map(outcome -> outcome.problems().get(0).sentence()))
                .satisfiesExactly(
                        says -> assertThat(says).contains("a program"),
                        says -> assertThat(says).contains("cut off"),
                        says -> assertThat(says).contains("empty"),
                        says -> assertThat(says).contains("no such lot"));
        assertThat(program.problems().get(0).path()).isEqualTo("document");
        assertThat(filesKept()).isEmpty();
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES);
    }

    @Test
    void a_name_that_nobody_can_see_is_refused_before_anything_is_written() throws IOException {
        assertThat(add(oil, "\u200B", CERTIFICATE).problems().get(0).path()).isEqualTo("name");
        assertThat(add(oil, "a\nb", CERTIFICATE).problems()).hasSize(1);
        assertThat(add(oil, "x".repeat(201), CERTIFICATE).problems()).hasSize(1);
        assertThat(filesKept()).isEmpty();
        assertThat(add(oil, "石".repeat(200), CERTIFICATE).orThrow().document().name())
                .hasSize(200);
    }

    /** A scan so large, never whole in memory. */
    private static InputStream scan(long bytes) {
        byte[] head = "%PDF-1.4\n".getBytes(StandardCharsets.ISO_8859_1);
        byte[] end = "\nstartxref\n9\n%%EOF\n".getBytes(StandardCharsets.ISO_8859_1);
        InputStream drawn = new InputStream() {
            private long left = bytes - head.length - end.length;

            @Override
            public int read() {
                return left-- > 0 ? (int) (left % 251) : -1;
            }

            @Override
            public int read(byte[] into, int start, int length) {
                int some = (int) Math.min(length, left);
                Arrays.fill(into, start, start + some, (byte) left);
                left -= some;
                return some == 0 ? -1 : some;
            }
        };
        return new SequenceInputStream(
                Collections.enumeration(List.of(new ByteArrayInputStream(head), drawn, new ByteArrayInputStream(end))));
    }

    @Test
    void forty_megabytes_are_kept_and_one_byte_more_is_not() throws IOException {
        Outcome<LotDocuments.Added> tooLarge =
                records.documents().add(maker(), oil, "scan", scan(DocumentFiles.LARGEST + 1));
        assertThat(tooLarge.problems().get(0).what()).contains("larger than 40 MB");
        assertThat(filesKept()).isEmpty();

        LotDocument document = records.documents()
                .add(maker(), oil, "scan", scan(DocumentFiles.LARGEST))
                .orThrow()
                .document();

        assertThat(document.bytes()).isEqualTo(DocumentFiles.LARGEST);
        assertThat(records.documents().file(document).orElseThrow()).hasSize(DocumentFiles.LARGEST);
    }

    @Test
    void a_disk_that_takes_nothing_is_a_trouble_and_no_row_says_otherwise() throws IOException {
        Files.createDirectories(place.files().getParent());
        Files.writeString(place.files(), "in the way");

        assertThatThrownBy(() -> add(oil, "note", CERTIFICATE))
                .isInstanceOf(RecordsTrouble.class)
                .hasMessageContaining("the document could not be written");

        Files.delete(place.files());
        assertThat(records.documents().of(oil)).isEmpty();
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES);
        added(oil, CERTIFICATE);
    }

    @Test
    void what_stops_on_its_way_in_leaves_nothing() throws IOException {
        InputStream stops = new SequenceInputStream(new ByteArrayInputStream(CERTIFICATE), new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the cable came out");
            }
        });

        assertThatThrownBy(() -> records.documents().add(maker(), oil, "note", stops))
                .isInstanceOf(RecordsTrouble.class);
        assertThat(filesKept()).isEmpty();
    }

    @Test
    void of_the_same_document_sent_by_several_at_once_one_is_new() throws Exception {
        int people = 6;
        CountDownLatch all = new CountDownLatch(people);
        ExecutorService threads = Executors.newFixedThreadPool(people);
        try {
            List<Future<LotDocuments.Added>> sent = new ArrayList<>();
            for (int i = 0; i < people; i++) {
                String lot = i % 2 == 0 ? oil : wrappers;
                sent.add(threads.submit(() -> {
                    all.countDown();
                    all.await();
                    return add(lot, "note", CERTIFICATE).orThrow();
                }));
            }
            int fresh = 0;
            for (Future<LotDocuments.Added> one : sent) {
                fresh += one.get().isNew() ? 1 : 0;
            }
            assertThat(fresh).isEqualTo(2);
        } finally {
            threads.shutdown();
        }
        assertThat(filesKept()).hasSize(1);
        assertThat(records.ledger().head().number()).isEqualTo(Stocked.ENTRIES + 2);
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

    @Test
    void sweeping_up_photographs_while_a_document_comes_in_takes_nothing_from_it() throws IOException {
        FileShelf shelf = new FileShelf(place.files());
        Path old = shelf.at(shelf.put(CERTIFICATE));
        Files.setLastModifiedTime(old, FileTime.from(START.minusSeconds(7200)));
        InputStream sweeping = new SequenceInputStream(new ByteArrayInputStream(CERTIFICATE), new InputStream() {
            @Override
            public int read() {
                records.photographs().sweep();
                return -1;
            }
        });

        records.documents().add(maker(), oil, "note", sweeping).orThrow();
        Files.setLastModifiedTime(old, FileTime.from(START.minusSeconds(7200)));
        restart();

        assertThat(old).hasBinaryContent(CERTIFICATE);
    }

    @Test
    void what_was_half_written_when_the_power_went_is_gone_after_a_later_start() throws IOException {
        assumeTrue(kind == Kind.SQLITE);
        Files.createDirectories(place.files());
        Path half = Files.writeString(place.files().resolve("being-written-1.tmp"), "%PDF-1.4");
        Path justNow = Files.writeString(place.files().resolve("being-written-2.tmp"), "%PDF-1.4");
        Files.setLastModifiedTime(half, FileTime.from(START.minusSeconds(7200)));
        Files.setLastModifiedTime(justNow, FileTime.from(START.plusSeconds(60)));

        restart();

        assertThat(half).doesNotExist();
        assertThat(justNow).exists();
    }
}
