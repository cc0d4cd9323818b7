package lyewright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Shares lines out to columns, in their order, so that the longest column is as short as can be. */
final class Columns {

    /** Letters of small print in half of the page's width. */
    private static final int LETTERS = 62;

    private Columns() {}

    static <T> List<List<T>> of(List<T> items, int count, ToIntFunction<T> letters) {
        for (int most = 1; ; most++) {
            List<List<T>> columns = filled(items, most, letters);
            if (columns.size() <= count) {
                return columns;
            }
        }
    }

    private static <T> List<List<T>> filled(List<T> items, int most, ToIntFunction<T> letters) {
        List<List<T>> columns = new ArrayList<>();
        int lines = most;
        for (T item : items) {
            int more = 1 + letters.applyAsInt(item) / LETTERS;
            if (columns.isEmpty() || lines + more > most) {
                columns.add(new ArrayList<>());
                lines = 0;
            }
            columns.get(columns.size() - 1).add(item);
            lines += more;
        }
        return columns;
    }
}
