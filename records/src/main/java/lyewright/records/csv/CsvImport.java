package lyewright.records.csv;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import lyewright.formula.MaterialNames;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.material.KeptMaterial;
import lyewright.records.stock.NamedMaterials;
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
     * @param notes what is worth a look in new rows, by row
     */
    public record Result(List<StockVerdict> verdicts, List<CellTrouble> troubles, List<CellTrouble> notes) {

        /** Copies its lists. */
        public Result {
            verdicts = List.copyOf(verdicts);
            troubles = List.copyOf(troubles);
            notes = List.copyOf(notes);
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

        /** New materials whose name the tables know: what recipes call each, by its name here. */
        public Map<String, String> found() {
            Map<String, String> found = new LinkedHashMap<>();
            for (StockVerdict verdict : verdicts) {
                verdict.material()
                        .filter(StockVerdict.Material::found)
                        .ifPresent(it -> it.recipeName().ifPresent(key -> found.put(it.name(), key)));
            }
            return found;
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
        return judged(file, choice, currency, rows -> records.stockImport().look(rows, names(records)));
    }

    /** Keeps what is new, in one transaction. */
    public static Result take(Records records, Author author, CsvFile file, CsvChoice choice, String currency) {
        return judged(file, choice, currency, rows -> records.stockImport().take(author, rows, names(records)));
    }

    private static NamedMaterials names(Records records) {
        return new NamedMaterials(MaterialNames.of(Tables.bundled())
                .with(records.materials().list().stream()
                        .map(KeptMaterial::material)
                        .toList()));
    }

    private static Result judged(
            CsvFile file, CsvChoice choice, String currency, Function<List<StockRow>, List<StockVerdict>> judge) {
        CsvFile.Rows rows = file.rows(choice, currency);
        List<StockVerdict> verdicts = judge.apply(rows.read());
        List<CellTrouble> troubles = new ArrayList<>(rows.troubles());
        List<CellTrouble> notes = new ArrayList<>(rows.notes());
        CellTroubles at = new CellTroubles(file.table(), choice);
        for (StockVerdict verdict : verdicts) {
            for (Problem problem : verdict.problems()) {
                troubles.add(at.of(verdict.row().number(), problem));
            }
            for (Problem problem : verdict.notes()) {
                notes.add(at.of(verdict.row().number(), problem));
            }
        }
        Set<Integer> fresh = verdicts.stream()
                .filter(verdict -> verdict.fate() == Fate.NEW)
                .map(verdict -> verdict.row().number())
                .collect(Collectors.toSet());
        troubles.sort(Comparator.comparingInt(CellTrouble::row));
        notes.sort(Comparator.comparingInt(CellTrouble::row));
        // what is said of a name is said once, however many rows have it
        Set<Problem> ofNames = new HashSet<>();
        notes.removeIf(note -> !fresh.contains(note.row())
                || (note.problem().path().equals(Meaning.NAME.path()) && !ofNames.add(note.problem())));
        return new Result(verdicts, troubles, notes);
    }

    /** The rows that were left out as a file of their own, each with what is wrong in a last column. */
    public static byte[] leftOut(CsvFile file, Result result) {
        return LeftOutFile.write(file.table(), result);
    }
}
