package lyewright.measure;

import java.math.BigDecimal;

/**
 * The units a mass may be typed in. Ounces are avoirdupois weight, never fluid. Exact: the international pound is
 * 0.45359237 kg (International Yard and Pound agreement, 1959).
 */
public enum MassUnit {
    /** Milligram. */
    MILLIGRAM("mg", "0.001"),
    /** Gram. */
    GRAM("g", "1"),
    /** Kilogram. */
    KILOGRAM("kg", "1000"),
    /** Avoirdupois ounce, a weight. */
    OUNCE("oz", "28.349523125"),
    /** Avoirdupois pound. */
    POUND("lb", "453.59237");

    private final String symbol;
    private final BigDecimal grams;

    MassUnit(String symbol, String grams) {
        this.symbol = symbol;
        this.grams = new BigDecimal(grams);
    }

    /**
     * How it is written.
     *
     * @return mg, g, kg, oz or lb
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Its size.
     *
     * @return grams in one unit, exact
     */
    public BigDecimal grams() {
        return grams;
    }
}
