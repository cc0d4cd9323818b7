package lyewright.records.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/** The cells of one row by what they say, and what is wrong with them. */
final class CellReader {

    static final int LONGEST = 2_000;
    static final int LONGEST_NOTES = 10_000;
    private static final int SHOWN = 60;

    private final CsvTable.Row row;
    private final List<Meaning> meanings;
    private final List<String> header;
    private final List<CellTrouble> troubles = new ArrayList<>();
    private final List<CellTrouble> notes = new ArrayList<>();

    CellReader(CsvTable.Row row, List<Meaning> meanings, List<String> header) {
        this.row = row;
        this.meanings = meanings;
        this.header = header;
        tooMany();
        tooLong();
    }

    List<CellTrouble> troubles() {
        return troubles;
    }

    /** What is worth a look, though the row can be read. */
    List<CellTrouble> notes() {
        return notes;
    }

    private void tooMany() {
        for (int i = header.size(); i < row.cells().size(); i++) {
            if (!row.cell(i).isBlank()) {
                troubles.add(new CellTrouble(
                        row.number(),
                        "",
                        shown(row.cell(i)),
                        new Problem(
                                "",
                                "there are " + row.cells().size() + " cells in this row and " + header.size()
                                        + " columns have names",
                                "a cell with the separator in it stands between quotation marks")));
                return;
            }
        }
    }

    private void tooLong() {
        for (int i = 0; i < meanings.size(); i++) {
            int most = meanings.get(i) == Meaning.NOTES || meanings.get(i) == Meaning.CERTIFICATE
                    ? LONGEST_NOTES
                    : LONGEST;
            if (row.cell(i).length() > most) {
                add(
                        meanings.get(i),
                        new Problem("", "the cell is longer than " + most + " characters", "write it shorter"));
            }
        }
    }

    /** What stands in the column of a meaning, without spaces around it; empty where there is no such column. */
    String text(Meaning meaning) {
        int at = meanings.indexOf(meaning);
        return at < 0 ? "" : FormulaGuard.bare(row.cell(at)).strip();
    }

    /** A text of one line that people must be able to see whole. */
    String line(Meaning meaning) {
        String text = text(meaning);
        if (!text.isEmpty() && text.length() <= NameRules.LONGEST) {
            NameRules.check("", "this cell", text).ifPresent(problem -> add(meaning, problem));
        }
        return text;
    }

    /** Reads a cell where there is something in it. */
    <T> Optional<T> read(Meaning meaning, Function<String, Outcome<T>> reading) {
        String text = text(meaning);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Outcome<T> read = reading.apply(text);
        read.problems().forEach(problem -> add(meaning, problem));
        return read instanceof Outcome.Ok<T> ok ? Optional.of(ok.value()) : Optional.empty();
    }

    void add(Meaning meaning, Problem problem) {
        troubles.add(at(meaning, problem));
    }

    void note(Meaning meaning, Problem problem) {
        notes.add(at(meaning, problem));
    }

    private CellTrouble at(Meaning meaning, Problem problem) {
        int at = meanings.indexOf(meaning);
        return new CellTrouble(row.number(), at < 0 ? "" : header.get(at), at < 0 ? "" : shown(row.cell(at)), problem);
    }

    /** A cell as it is told of: on one line, and not long. */
    static String shown(String cell) {
        StringBuilder shown = new StringBuilder();
        cell.strip()
                .codePoints()
                .limit(SHOWN)
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? ' ' : c)
                .forEach(shown::appendCodePoint);
        return cell.strip().codePointCount(0, cell.strip().length()) > SHOWN ? shown + "…" : shown.toString();
    }
}
