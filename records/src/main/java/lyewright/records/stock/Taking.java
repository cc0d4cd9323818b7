package lyewright.records.stock;

/**
 * So much to be taken from a lot.
 *
 * @param lotId which lot
 * @param amount milligrams or pieces, above 0
 * @param words how much in the maker's own words, or empty
 * @param why what is to be told of this lot alone; empty where what is told of all is enough
 */
public record Taking(String lotId, long amount, String words, String why) {

    /** Of which nothing is told alone. */
    public Taking(String lotId, long amount, String words) {
        this(lotId, amount, words, "");
    }
}
