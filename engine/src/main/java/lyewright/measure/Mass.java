package lyewright.measure;

import java.math.BigDecimal;

/**
 * A mass that a person weighs, in whole milligrams, never negative. Exact and immutable. Not for molar quantities or
 * anything under a milligram; a difference is a {@link MassChange}.
 *
 * @param milligrams whole milligrams, 0 or more
 */
public record Mass(long milligrams) implements Comparable<Mass> {

    /** No mass. */
    public static final Mass ZERO = new Mass(0);

    /** Refuses a negative mass: that is a broken promise of the caller. */
    public Mass {
        if (milligrams < 0) {
            throw new IllegalArgumentException("mass must not be negative: " + milligrams + " mg");
        }
    }

    /**
     * The mass nearest to a computed figure.
     *
     * @param grams 0 or more
     * @return whole milligrams, halves up
     */
    public static Mass ofGrams(double grams) {
        return new Mass(Math.round(grams * 1000));
    }

    /**
     * As a figure to compute with.
     *
     * @return grams
     */
    public double grams() {
        return milligrams / 1000.0;
    }

    /**
     * Both together.
     *
     * @param other another mass
     * @return the sum, exact
     */
    public Mass plus(Mass other) {
        return new Mass(Math.addExact(milligrams, other.milligrams));
    }

    /**
     * How far this is from another.
     *
     * @param other what to take off
     * @return the signed difference, exact
     */
    public MassChange minus(Mass other) {
        return new MassChange(Math.subtractExact(milligrams, other.milligrams));
    }

    @Override
    public int compareTo(Mass other) {
        return Long.compare(milligrams, other.milligrams);
    }

    /** Grams to the milligram, such as {@code 142.290 g}. */
    @Override
    public String toString() {
        return BigDecimal.valueOf(milligrams, 3) + " g";
    }
}
