package lyewright.records.csv;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.stock.StockRow;
import lyewright.records.stock.StockVerdict;
import lyewright.records.stock.StockVerdict.Fate;
import lyewright.records.store.Author;

/** A file held against the cupboard: looked at first, taken in afterwards. */
public final class CsvImport {

    private CsvImport() {}

    /**
     * What becomes of a file.
     *
     * @param verdicts what becomes of each row that could be read
     * @param troubles all that is wrong, by row
     */
    public record Result(List<StockVerdict> verdicts, List<CellTrouble> troubles) {

        /** Copies its lists. */
        public Result {
            verdicts = List.copyOf(verdicts);
            troubles = List.copyOf(troubles);
        }

        /** How many are new. */
        public int fresh() {
            return count(Fate.NEW);
        }

        /** How many the cupboard has already. */
        public int there() {
            return count(Fate.THERE);
        }

        /** How many are left out. */
        public int wrong() {
            return wrongRows().size();
        }

        /** Which rows are left out. */
        Set<Integer> wrongRows() {
            return troubles.stream().map(CellTrouble::row).collect(Collectors.toCollection(TreeSet::new));
        }

        private int count(Fate fate) {
            return (int) verdicts.stream().filter(it -> it.fate() == fate).count();
        }

        /** As a sentence: {@code 12 new, 3 already there, 2 with problems}. */
        public String told() {
            return fresh() + " new, " + there() + " already there"
                    + (wrong() == 0 ? "" : ", " + wrong() + (wrong() == 1 ? " with a problem" : " with problems"));
        }
    }

    /** What would become of a file; nothing is written. */
    public static Result look(Records records, CsvFile file, CsvChoice choice, String currency) {
        return judged(file, choice, currency, rows -> records.stockImport().look(rows));
    }

    /** Keeps what is new, in one transaction. */
    public static Result take(Records records, Author author, CsvFile file, CsvChoice choice, String currency) {
        return judged(file, choice, currency, rows -> records.stockImport().take(author, rows));
    }

    private static Result judged(
            CsvFile file, CsvChoice choice, String currency, Function<List<StockRow>, List<StockVerdict>> judge) {
        CsvFile.Rows rows = file.rows(choice, currency);
        List<StockVerdict> verdicts = judge.apply(rows.read());
        List<CellTrouble> troubles = new ArrayList<>(rows.troubles());
        CellTroubles at = new CellTroubles(file.table(), choice);
        for (StockVerdict verdict : verdicts) {
            for (Problem problem : verdict.problems()) {
                troubles.add(at.of(verdict.row().number(), problem));
            }
        }
        troubles.sort(Comparator.comparingInt(CellTrouble::row));
        return new Result(verdicts, troubles);
    }

    /** The rows that were left out as a file of their own, each with what is wrong in a last column. */
    public static byte[] leftOut(CsvFile file, Result result) {
        return LeftOutFile.write(file.table(), result);
    }
}
