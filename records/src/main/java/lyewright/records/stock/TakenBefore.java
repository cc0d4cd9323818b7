package lyewright.records.stock;

import java.util.List;

/**
 * What forms of one beginning took before.
 *
 * @param times how many took something
 * @param last the last ones, the newest first
 */
public record TakenBefore(int times, List<TakenTogether> last) {

    /** Copies its list. */
    public TakenBefore {
        last = List.copyOf(last);
    }
}
