package lyewright.records.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file as rows of cells; the first row names the columns.
 *
 * @param separator what stands between the cells
 * @param header the names of the columns, stripped
 * @param rows the rows beneath that have anything in them
 */
record CsvTable(Separator separator, List<String> header, List<Row> rows) {

    static final int MOST_ROWS = 20_000;
    static final int MOST_COLUMNS = 100;
    private static final int TRIED = 50;

    /** Copies its lists. */
    CsvTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param number which, as a spreadsheet counts, the header being 1
     * @param cells as they stand, as many as were written
     */
    record Row(int number, List<String> cells) {

        /** A cell; one that was left away is empty. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    static Outcome<CsvTable> read(String text, Optional<Separator> chosen) {
        Optional<Separator> told = told(text);
        String rest = told.isPresent() ? text.substring(endOfLine(text)) : text;
        Separator separator = chosen.or(() -> told).orElseGet(() -> guessed(rest));
        return rows(rest, separator, told.isPresent() ? 1 : 0).then(rows -> table(separator, rows));
    }

    /** Some spreadsheets say it in a first line, {@code sep=;}. */
    private static Optional<Separator> told(String text) {
        return text.length() > 4 && text.substring(0, 4).equalsIgnoreCase("sep=") && endOfLine(text) <= 7
                ? Separator.ofSign(text.charAt(4))
                : Optional.empty();
    }

    private static int endOfLine(String text) {
        int end = text.indexOf('\n');
        return end < 0 ? text.length() : end + 1;
    }

    /** The separator that gives the most names that are known, then the most columns; of two alike the first. */
    private static Separator guessed(String text) {
        String head = text.substring(0, Math.min(text.length(), 20_000));
        return Arrays.stream(Separator.values())
                .max(Comparator.<Separator>comparingLong(it -> known(head, it))
                        .thenComparingLong(it -> first(head, it).size()))
                .orElse(Separator.COMMA);
    }

    private static long known(String head, Separator separator) {
        return first(head, separator).stream()
                .filter(name -> Meaning.ofHeader(name).isPresent())
                .count();
    }

    private static List<String> first(String head, Separator separator) {
        try (CSVParser parser = parser(head, separator)) {
            for (CSVRecord found : parser) {
                List<String> cells = found.toList();
                if (cells.stream().anyMatch(cell -> !cell.isBlank()) || parser.getRecordNumber() > TRIED) {
                    return cells;
                }
            }
            return List.of();
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return List.of();
        }
    }

    private static CSVParser parser(String text, Separator separator) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator.sign())
                .setIgnoreEmptyLines(false)
                .get()
                .parse(new StringReader(text));
    }

    private static Outcome<List<Row>> rows(String text, Separator separator, int before) {
        List<Row> rows = new ArrayList<>();
        long line = 1;
        try (CSVParser parser = parser(text, separator)) {
            for (CSVRecord found : parser) {
                line = parser.getCurrentLineNumber() + 1;
                if (found.size() > 10 * MOST_COLUMNS) {
                    return refused(
                            "row " + found.getRecordNumber() + " has " + found.size() + " cells",
                            "send a file of " + MOST_COLUMNS + " columns at most");
                }
                if (found.stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(new Row((int) found.getRecordNumber() + before, found.toList()));
                }
                if (rows.size() > MOST_ROWS + 1) {
                    return refused(
                            "the file has more than 20,000 rows", "split it, and send the parts one after the other");
                }
            }
            return Outcome.ok(rows);
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            return refused(
                    "from line " + (line + before) + " on a quotation mark is opened and not closed as it should be",
                    "put the whole cell between two of them, and write each one inside the cell twice");
        }
    }

    private static Outcome<CsvTable> table(Separator separator, List<Row> rows) {
        if (rows.isEmpty()) {
            return refused("the file is empty", "choose a CSV file with a row of column names and rows beneath");
        }
        List<String> header =
                new ArrayList<>(rows.get(0).cells().stream().map(String::strip).toList());
        while (header.get(header.size() - 1).isEmpty()) {
            header.remove(header.size() - 1);
        }
        if (header.size() > MOST_COLUMNS) {
            return refused(
                    "the file has " + header.size() + " columns",
                    "send a file of " + MOST_COLUMNS + " columns at most");
        }
        if (rows.size() == 1) {
            return refused(
                    "there is one row only, and it is taken for the names of the columns",
                    "write the names of the columns in the first row and a thing in each row beneath");
        }
        return Outcome.ok(new CsvTable(separator, header, rows.subList(1, rows.size())));
    }

    private static <T> Outcome<T> refused(String what, String remedy) {
        return Outcome.refused(new Problem("", what, remedy));
    }
}
