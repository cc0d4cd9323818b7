package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;

class CsvTableTest {

    private static CsvTable.Row row(String low, String high) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        String text = "low,high,source\r\n" + low + "," + high + ",\" a book, 1908 \"\r\n";
        try (CSVParser parser = format.parse(new StringReader(text))) {
            return new CsvTable.Row("oils.csv", parser.getRecords().get(0));
        }
    }

    @Test
    void a_table_that_was_not_bundled_is_named() {
        assertThatThrownBy(() -> CsvTable.rows("moons.csv"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("moons.csv");
    }

    @Test
    void a_cell_that_is_no_number_is_named_with_table_row_and_column() throws IOException {
        CsvTable.Row row = row("many", "2");
        assertThatThrownBy(() -> row.number("low"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("oils.csv")
                .hasMessageContaining("row 1")
                .hasMessageContaining("low")
                .hasMessageContaining("many");
    }

    @Test
    void blanks_around_a_cell_do_not_count() throws IOException {
        CsvTable.Row row = row("  7 ", "  ");
        assertThat(row.text("source")).isEqualTo("a book, 1908");
        assertThat(row.whole("low")).isEqualTo(7);
        assertThat(row.has("high")).isFalse();
        assertThat(row.numberOr("high", 9)).isEqualTo(9);
    }

    @Test
    void a_range_with_one_end_is_that_end() throws IOException {
        assertThat(row("56", "").range("low", "high", "source")).contains(Figure.exact(56, "a book, 1908"));
        assertThat(row("", "48").range("low", "high", "source")).contains(Figure.exact(48, "a book, 1908"));
    }

    @Test
    void a_range_with_both_ends_keeps_both() throws IOException {
        assertThat(row("188", "194").range("low", "high", "source")).contains(Figure.range(188, 194, "a book, 1908"));
    }

    @Test
    void a_range_without_ends_is_no_range() throws IOException {
        assertThat(row("", "").range("low", "high", "source")).isEmpty();
    }
}
