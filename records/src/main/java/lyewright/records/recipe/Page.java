package lyewright.records.recipe;

import java.util.List;

/**
 * One page of a list.
 *
 * @param <T> what is listed
 * @param items what stands on it, in order; none beyond the last page
 * @param number which page it is, from 1
 * @param size how many stand on a full one
 * @param total how many there are on all pages
 */
public record Page<T>(List<T> items, int number, int size, long total) {

    /** Copies its list. */
    public Page {
        items = List.copyOf(items);
    }

    /** How many pages there are, at least 1. */
    public int pages() {
        return (int) Math.max(1, (total + size - 1) / size);
    }
}
