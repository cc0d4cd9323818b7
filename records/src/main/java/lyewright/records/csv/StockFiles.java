package lyewright.records.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lyewright.records.stock.StockBook;

/** Everything in the cupboard as CSV files, and a dictionary of their columns made from the columns themselves. */
public final class StockFiles {

    private final boolean mark;
    private final List<Sheet<?>> sheets;

    /**
     * The files of a cupboard.
     *
     * @param book the cupboard
     * @param mark whether each file begins with a byte order mark, by which some spreadsheets know UTF-8
     */
    public StockFiles(StockBook book, boolean mark) {
        this.mark = mark;
        this.sheets = List.of(
                MaterialSheets.materials(book),
                MaterialSheets.suppliers(book),
                LotSheets.lots(book),
                LotSheets.moves(book));
    }

    /** The names of the files, the dictionary last. */
    public List<String> names() {
        List<String> names = new ArrayList<>(sheets.stream().map(Sheet::name).toList());
        names.add("data-dictionary.csv");
        return names;
    }

    /** The bytes of a file; empty where there is none of the name. */
    public Optional<byte[]> file(String name) {
        if (name.equals("data-dictionary.csv")) {
            return Optional.of(CsvText.bytes(dictionary(), ',', mark));
        }
        return sheets.stream()
                .filter(sheet -> sheet.name().equals(name))
                .findFirst()
                .map(sheet -> CsvText.bytes(sheet.rows(), ',', mark));
    }

    /** Writes all of them into one zip; leaves the stream open. */
    public void zip(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        for (String name : names()) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(file(name).orElseThrow());
            zip.closeEntry();
        }
        zip.finish();
    }

    private List<List<Object>> dictionary() {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of("file", "column", "meaning", "unit", "example"));
        for (Sheet<?> sheet : sheets) {
            for (Sheet.Column<?> column : sheet.columns()) {
                rows.add(List.of(sheet.name(), column.name(), column.meaning(), column.unit(), column.example()));
            }
        }
        return rows;
    }
}
