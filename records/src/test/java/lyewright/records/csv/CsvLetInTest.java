package lyewright.records.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import lyewright.records.OnBoth;
import lyewright.records.Place;
import lyewright.records.Records;
import lyewright.records.Workbench;
import lyewright.stock.LotStatus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the pages let in goes out as a file and comes in again, and files of others are read as they are meant. */
@OnBoth
class CsvLetInTest extends Workbench {

    private CsvImport.Result take(String text) {
        CsvFile file = CsvFile.read(text.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        return CsvImport.take(records, records.author(), file, file.guess(), "GBP");
    }

    private CsvImport.Result look(byte[] bytes) {
        CsvFile file = CsvFile.read(bytes, Optional.empty()).orThrow();
        return CsvImport.look(records, file, file.guess(), "GBP");
    }

    @Test
    void what_was_past_its_day_when_it_came_goes_in_with_a_note_and_comes_back() throws IOException {
        CsvImport.Result result = take("""
                material,kind,received,best before,amount,status
                Coconut oil,oil,2026-11-25,2026-11-24,5 kg,quarantine
                Kokosmilch,fragrance,2026-11-25,,5 kg,
                Kokosöl,oil,2026-11-25,,5 kg,
                """);
        assertThat(result.told()).isEqualTo("3 new, 0 already there");
        assertThat(result.notes())
                .extracting(note -> note.row() + " " + note.problem().what())
                .containsExactly(
                        "2 it was past its day when it came", "4 no recipe will find 'Kokosöl': no table knows it");
        assertThat(records.lots().findCode("26-0001").orElseThrow().said().status())
                .isEqualTo(LotStatus.QUARANTINE);
        assertThat(look(new StockFiles(records.stockBook(), false)
                                .file("lots.csv")
                                .orElseThrow())
                        .told())
                .isEqualTo("0 new, 3 already there");
    }

    @Test
    void what_is_written_out_goes_whole_into_an_empty_workshop(@TempDir Path empty) throws IOException {
        take("""
                material,kind,received,best before,amount,status
                Coconut oil,oil,2026-11-25,2026-11-24,5 kg,quarantine
                """);
        byte[] lots =
                new StockFiles(records.stockBook(), false).file("lots.csv").orElseThrow();
        try (Records other =
                Records.open(new Place.Folder(empty), Clock.systemUTC()).orThrow()) {
            CsvFile file = CsvFile.read(lots, Optional.empty()).orThrow();
            assertThat(CsvImport.take(other, other.author(), file, file.guess(), "GBP")
                            .told())
                    .isEqualTo("1 new, 0 already there");
            assertThat(CsvImport.look(other, file, file.guess(), "GBP").told()).isEqualTo("0 new, 1 already there");
        }
    }

    @Test
    void the_decimal_sign_follows_what_the_columns_say() {
        String unknown = "Rohstoff;Menge;MHD;Preis\nKokos;2,5 kg;25.11.2027;32,50\n";
        CsvFile file = CsvFile.read(unknown.getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        assertThat(file.guess().decimal()).isEqualTo(DecimalSign.COMMA);
        CsvFile points = CsvFile.read(unknown.replace("2,5", "2.5").getBytes(StandardCharsets.UTF_8), Optional.empty())
                .orThrow();
        assertThat(points.guess().decimal()).isEqualTo(DecimalSign.POINT);
        CsvFile thousands = CsvFile.read(
                        "Rohstoff;Menge;Preis\nKokos;2,500 kg;32,50\n".getBytes(StandardCharsets.UTF_8),
                        Optional.empty())
                .orThrow();
        assertThat(thousands.guess().decimal()).isEqualTo(DecimalSign.POINT);
        assertThat(thousands.decimal(List.of(Meaning.NAME, Meaning.AMOUNT, Meaning.PRICE)))
                .as("once the columns are named")
                .isEqualTo(DecimalSign.COMMA);
    }
}
