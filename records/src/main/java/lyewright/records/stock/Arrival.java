package lyewright.records.stock;

/**
 * A lot that comes.
 *
 * @param itemId what it is a lot of
 * @param said what is said of it; with an empty code it is given the next one
 * @param amount how much came, milligrams or pieces, above 0
 */
public record Arrival(String itemId, LotSaid said, long amount) {}
