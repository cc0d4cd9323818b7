package lyewright.records.stock;

import java.util.Optional;

/**
 * A lot that comes.
 *
 * @param itemId what it is a lot of; empty where that is not in the cupboard yet
 * @param fresh what it is then, to be added with it; where the cupboard has that already, its own is taken
 * @param said what is said of it; with an empty code it is given the next one
 * @param amount how much came, milligrams or pieces, above 0
 * @param words how much in the maker's own words, such as {@code 30 ml}; or empty
 */
public record Arrival(String itemId, Optional<ItemSaid> fresh, LotSaid said, long amount, String words) {

    /** Of which nobody said how much in other words. */
    public Arrival(String itemId, Optional<ItemSaid> fresh, LotSaid said, long amount) {
        this(itemId, fresh, said, amount, "");
    }

    /** A lot of what the cupboard has already. */
    public Arrival(String itemId, LotSaid said, long amount) {
        this(itemId, Optional.empty(), said, amount);
    }

    /** A lot of something new. */
    public static Arrival of(ItemSaid fresh, LotSaid said, long amount) {
        return new Arrival("", Optional.of(fresh), said, amount);
    }
}
