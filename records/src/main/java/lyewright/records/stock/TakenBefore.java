package lyewright.records.stock;

import java.util.Optional;

/**
 * What forms of one beginning took before.
 *
 * @param times how many took something
 * @param last the last move of the last one
 */
public record TakenBefore(int times, Optional<StockMove> last) {}
