package lyewright.material;

/**
 * Lye made ahead: alkali already dissolved.
 *
 * @param key its key in formulas
 * @param name what it is called
 * @param alkali which alkali
 * @param strength pure alkali as percent of the lye's mass; the rest is water
 * @param source where the strength comes from
 */
public record StockLye(String key, String name, Alkali alkali, Figure strength, String source) {}
