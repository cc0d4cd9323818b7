package lyewright.records.stock;

import lyewright.stock.Variants;

/**
 * A material that is stocked.
 *
 * @param id its id
 * @param said what is said of it
 */
public record StockItem(String id, ItemSaid said) {

    /** As it is kept apart from what is easily taken for it. */
    public Variants.Thing thing() {
        Identity identity = said.identity();
        return new Variants.Thing(identity.materialKey(), name(), identity.species(), identity.part());
    }

    /** What it is called. */
    public String name() {
        return said.name();
    }
}
