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
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import lyewright.measure.Outcome;
import lyewright.records.Kind;
import lyewright.records.OnBoth;
import lyewright.records.RecordsTrouble;
import lyewright.records.Workbench;
import lyewright.records.file.DocumentFiles;
import lyewright.records.file.FileShelf;
import lyewright.records.file.SomeDocument;
import lyewright.records.people.Person;
import lyewright.records.people.Role;
import lyewright.records.store.Author;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Documents on their way in: refused, too large, stopped, several at once, and while the shelf is swept. */
@OnBoth
class DocumentsComingInTest extends Workbench {

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
    void a_helper_puts_no_document_to_a_lot_and_takes_none_off() throws IOException {
        Person wenna = records.people().add("Wenna", Role.HELPER).orThrow();
        Author helper = new Author(wenna.id(), Optional.empty());

        assertThat(records.documents()
                        .add(helper, oil, "Note", new ByteArrayInputStream(CERTIFICATE))
                        .problems())
                .hasSize(1);
        assertThat(filesKept()).isEmpty();
        LotDocument document = add(oil, "Certificate", CERTIFICATE).orThrow().document();
        assertThat(records.documents()
                        .takeOff(helper, oil, document.sha256(), "wrong")
                        .problems())
                .hasSize(1);
        assertThat(records.documents().of(oil)).containsExactly(document);
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

            @Override
            public int read(byte[] into, int start, int length) throws IOException {
                return read();
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

            @Override
            public int read(byte[] into, int start, int length) {
                return read();
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
