package lyewright.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One bundled table, read whole. A table that cannot be read is our fault, so it is an exception. */
final class CsvTable {

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private CsvTable() {}

    /** All rows of a table beside this class. */
    static List<Row> rows(String name) {
        try (InputStream in = CsvTable.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("bundled table " + name + " is missing");
            }
            List<Row> rows = new ArrayList<>();
            try (CSVParser parser = FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                for (CSVRecord record : parser) {
                    rows.add(new Row(name, record));
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException("bundled table " + name + " cannot be read", e);
        }
    }

    /** One row; its cells by column name. */
    record Row(String table, CSVRecord cells) {

        String text(String column) {
            return cells.get(column).strip();
        }

        boolean has(String column) {
            return !text(column).isEmpty();
        }

        double number(String column) {
            try {
                return Double.parseDouble(text(column));
            } catch (NumberFormatException e) {
                throw new IllegalStateException(
                        table + " row " + cells.getRecordNumber() + ", column " + column + ": '" + text(column)
                                + "' is no number",
                        e);
            }
        }

        double numberOr(String column, double otherwise) {
            return has(column) ? number(column) : otherwise;
        }

        int whole(String column) {
            return (int) number(column);
        }

        /** A range whose ends may be missing: a single end counts as both. */
        Optional<Figure> range(String low, String high, String source) {
            if (!has(low) && !has(high)) {
                return Optional.empty();
            }
            double a = numberOr(low, has(high) ? number(high) : 0);
            double b = numberOr(high, a);
            return Optional.of(Figure.range(a, b, text(source)));
        }
    }
}
