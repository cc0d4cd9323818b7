package lyewright.records.stock;

/**
 * A material that is stocked.
 *
 * @param id its id
 * @param said what is said of it
 */
public record StockItem(String id, ItemSaid said) {

    /** What it is called. */
    public String name() {
        return said.name();
    }
}
