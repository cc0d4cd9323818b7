package lyewright.records.stock;

import java.util.List;
import java.util.Optional;
import lyewright.measure.Problem;

/**
 * What became, or would become, of a row of a file.
 *
 * @param row the row
 * @param fate what becomes of it
 * @param as what it is called in the cupboard: a name, or a lot's own code
 * @param material what it is, or is a lot of, as the cupboard has or will have it; empty for a supplier and for what is left out
 * @param problems what is wrong, by the paths of what is said; empty but where it is left out
 * @param notes what is worth a look though the row goes in, likewise
 */
public record StockVerdict(
        StockRow row, Fate fate, String as, Optional<Material> material, List<Problem> problems, List<Problem> notes) {

    /** Copies its lists. */
    public StockVerdict {
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    /**
     * A material as the cupboard has or will have it.
     *
     * @param name what it is called there
     * @param recipeName what recipes call it
     * @param found whether that was found by its name, and did not stand in the row
     */
    public record Material(String name, Optional<String> recipeName, boolean found) {

        static Material of(StockItem item, boolean found) {
            return new Material(item.name(), item.said().identity().materialKey(), found);
        }
    }

    static StockVerdict leftOut(StockRow row, String as, List<Problem> problems) {
        return new StockVerdict(row, Fate.LEFT_OUT, as, Optional.empty(), problems, List.of());
    }

    static StockVerdict there(StockRow row, String as) {
        return new StockVerdict(row, Fate.THERE, as, Optional.empty(), List.of(), List.of());
    }

    /** What becomes of a row. */
    public enum Fate {
        /** It is kept. */
        NEW,
        /** The cupboard has it; what is there stays as it is. */
        THERE,
        /** Something is wrong with it, and nothing of it is kept. */
        LEFT_OUT
    }
}
