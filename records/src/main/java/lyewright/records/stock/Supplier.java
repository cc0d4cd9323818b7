package lyewright.records.stock;

/**
 * Who sells materials.
 *
 * @param id its id
 * @param name what they are called
 * @param contact how they are reached, as typed
 * @param notes the maker's own
 */
public record Supplier(String id, String name, String contact, String notes) {}
