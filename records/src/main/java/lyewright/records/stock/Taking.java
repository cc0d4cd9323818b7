package lyewright.records.stock;

/**
 * So much to be taken from a lot.
 *
 * @param lotId which lot
 * @param amount milligrams or pieces, above 0
 * @param words how much in the maker's own words, or empty
 */
public record Taking(String lotId, long amount, String words) {}
