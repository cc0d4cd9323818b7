package lyewright.records.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import lyewright.chain.Finding;
import lyewright.records.OnBoth;
import lyewright.records.Tinkering;
import lyewright.records.Workbench;
import lyewright.records.file.DocumentFiles;
import lyewright.records.file.SomeDocument;
import lyewright.records.ledger.Ledger;
import lyewright.records.ledger.Verified;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Documents that were edited, deleted or exchanged underneath: verifying names the entry. */
@OnBoth
class DocumentCheckTest extends Workbench {

    private String oil = "";
    private LotDocument certificate;
    private LotDocument letter;

    /** Entry 10 puts a certificate to the oil, 11 a letter, 12 takes the letter off. */
    @BeforeEach
    void two_documents() {
        Stocked.fill(records);
        oil = records.lots().findCode("26-0001").orElseThrow().id();
        certificate = added("Certificate", SomeDocument.pdf("Certificate of analysis, invented"));
        letter = added("Letter", SomeDocument.text("Dear maker"));
        letter = records.documents()
                .takeOff(records.author(), oil, letter.sha256(), "of another lot")
                .orThrow();
        assertThat(letter.number()).isEqualTo(12);
    }

    private LotDocument added(String name, byte[] content) {
        return records.documents()
                .add(records.author(), oil, name, new ByteArrayInputStream(content))
                .orThrow()
                .document();
    }

    private Verified verified() {
        return records.ledger().verify(Optional.empty());
    }

    private List<Long> found() {
        return verified().findings().stream().map(Finding::number).distinct().toList();
    }

    @Test
    void what_nobody_touched_is_whole_and_says_what_was_looked_at() {
        assertThat(verified().findings()).isEmpty();
        assertThat(verified().looked())
                .containsExactly("The files of 2 documents were read through and compared with the ledger.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10 | UPDATE lot_document SET name = 'Another' WHERE name = 'Certificate'",
                "10 | DELETE FROM lot_document WHERE name = 'Certificate'",
                "12 | DELETE FROM lot_document WHERE name = 'Letter'",
                // as if it had never been taken off
                "12 | UPDATE lot_document SET entry_number = 11 WHERE name = 'Letter'",
                // as if another entry told of it
                "9  | UPDATE lot_document SET entry_number = 9 WHERE name = 'Certificate'",
                "10 | UPDATE document SET size_bytes = 12 WHERE media_type = 'application/pdf'",
                "10 | UPDATE document SET media_type = 'image/jpeg' WHERE media_type = 'application/pdf'",
                "10 | DELETE FROM document WHERE media_type = 'application/pdf'",
                "12 | UPDATE ledger_entry SET entry_text = replace(entry_text, 'another', 'no other') WHERE number = 12",
            })
    void an_edit_underneath_is_named_by_its_entry(long number, String change) {
        Tinkering.underneath(place, change);

        assertThat(found()).contains(number);
    }

    @Test
    void a_link_that_no_entry_tells_of_is_named() {
        String other = records.lots().findCode("26-0002").orElseThrow().id();
        Tinkering.underneath(
                place,
                "INSERT INTO lot_document (lot_id, sha256, name, entry_number) VALUES ('" + other + "', '"
                        + certificate.sha256() + "', 'Certificate', 10)");

        assertThat(verified().findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.what())
                        .contains("Entry 10")
                        .contains("\"Certificate\" now says something else than the ledger"));
    }

    @Test
    void a_file_that_has_gone_or_has_other_bytes_is_named_though_it_is_taken_off() throws IOException {
        Path file = records.documents().file(certificate).orElseThrow();
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        Files.delete(records.documents().file(letter).orElseThrow());

        assertThat(verified().findings())
                .extracting(Finding::what)
                .containsExactly(
                        "Entry 12: the file of the document \"Letter\" has gone.",
                        "Entry 10: the file of the document \"Certificate\" is not what was put there: its bytes were"
                                + " changed.");
    }

    private Ledger.Checked within(long bytes) throws SQLException {
        DocumentFiles files = new DocumentFiles(place.files(), false);
        try (Handle handle = Jdbi.create(Tinkering.connect(place)).open()) {
            return new DocumentCheck(files, bytes).check(handle);
        }
    }

    @Test
    void of_more_than_can_be_read_through_the_older_are_looked_at_by_length_and_that_is_said() throws Exception {
        Path file = records.documents().file(certificate).orElseThrow();
        Files.write(file, new byte[(int) certificate.bytes()]);

        assertThat(within(letter.bytes()).findings()).isEmpty();
        assertThat(within(letter.bytes()).looked().orElseThrow())
                .isEqualTo("One document's file was read through, the newest; of 1 older only whether it is there and"
                        + " how long it is.");
        assertThat(within(letter.bytes() + certificate.bytes()).findings()).hasSize(1);
        Files.write(file, new byte[7]);
        assertThat(within(letter.bytes()).findings()).hasSize(1);
    }
}
