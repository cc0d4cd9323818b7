package lyewright.records.csv;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;

/** Rows as CSV text: UTF-8, lines ended by CR and LF, texts between quotation marks and guarded, numbers bare. */
final class CsvText {

    private CsvText() {}

    /** Texts are guarded here and nowhere else, so that none is forgotten. */
    static byte[] bytes(List<List<Object>> rows, char separator, boolean mark) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setQuoteMode(QuoteMode.NON_NUMERIC)
                .get();
        try (Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            if (mark) {
                writer.write('\uFEFF');
            }
            for (List<Object> row : rows) {
                format.printRecord(
                        writer,
                        row.stream()
                                .map(cell -> cell instanceof String text ? FormulaGuard.guarded(text) : cell)
                                .toArray());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
