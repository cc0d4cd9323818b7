package lyewright.records.stock;

import java.util.List;
import lyewright.measure.Problem;

/**
 * What became, or would become, of a row of a file.
 *
 * @param row the row
 * @param fate what becomes of it
 * @param as what it is called in the cupboard: a name, or a lot's own code
 * @param problems what is wrong, by the paths of what is said; empty but where it is left out
 */
public record StockVerdict(StockRow row, Fate fate, String as, List<Problem> problems) {

    /** Copies its list. */
    public StockVerdict {
        problems = List.copyOf(problems);
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
