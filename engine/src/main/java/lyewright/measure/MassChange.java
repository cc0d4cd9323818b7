package lyewright.measure;

import java.math.BigDecimal;

/**
 * A difference between two masses, which may be under zero. Exact and immutable.
 *
 * @param milligrams whole milligrams, signed
 */
public record MassChange(long milligrams) {

    /**
     * As a figure to compute with.
     *
     * @return grams, signed
     */
    public double grams() {
        return milligrams / 1000.0;
    }

    /** Grams to the milligram with its sign, such as {@code +0.350 g}. */
    @Override
    public String toString() {
        return (milligrams > 0 ? "+" : "") + BigDecimal.valueOf(milligrams, 3) + " g";
    }
}
