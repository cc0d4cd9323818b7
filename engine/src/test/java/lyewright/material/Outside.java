package lyewright.material;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Published figures kept beside the tests, apart from the bundled tables: truth from outside, each row with its source. */
public final class Outside {

    private Outside() {}

    /**
     * All rows of a file of published figures.
     *
     * @param name its name in the folder outside
     * @return its rows
     */
    public static List<CSVRecord> rows(String name) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream in = Outside.class.getResourceAsStream("/outside/" + name)) {
            if (in == null) {
                throw new IllegalStateException("outside/" + name + " is missing");
            }
            try (CSVParser parser = format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                return parser.getRecords();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("outside/" + name + " cannot be read", e);
        }
    }

    /**
     * A number of a row.
     *
     * @param row the row
     * @param column its column
     * @return the number
     */
    public static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column).strip());
    }
}
