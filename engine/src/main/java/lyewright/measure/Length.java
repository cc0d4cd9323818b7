package lyewright.measure;

import java.math.BigDecimal;

/**
 * A length as somebody typed it, decimal and unit kept. Never negative.
 *
 * @param value the number as typed
 * @param unit its unit
 */
public record Length(BigDecimal value, LengthUnit unit) {

    /** Refuses a negative length: that is a broken promise of the caller. */
    public Length {
        if (value.signum() < 0) {
            throw new IllegalArgumentException("length must not be negative: " + value + " " + unit.symbol());
        }
    }

    /**
     * Reads {@code 25mm}, {@code 3.5 in}.
     *
     * @param text the text
     * @return the length, or why not
     */
    public static Outcome<Length> parse(String text) {
        return Numeral.read(text)
                .then(read -> Numeral.inUnit(
                        read, LengthUnit.values(), LengthUnit::symbol, u -> new Length(read.value(), u), "25 mm"));
    }

    /**
     * As a figure to compute with.
     *
     * @return millimetres
     */
    public double millimetres() {
        return value.doubleValue() * unit.millimetres();
    }

    /** As typed, such as {@code 25 mm}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}
