package lyewright.measure;

import java.math.BigDecimal;

/**
 * A mass as somebody typed it, decimal and unit kept: {@code 0.7 oz} stays 0.7 oz. Never negative. What goes on a
 * balance is a {@link Mass}.
 *
 * @param value the number as typed
 * @param unit its unit
 */
public record WrittenMass(BigDecimal value, MassUnit unit) {

    /** Refuses a negative mass: that is a broken promise of the caller. */
    public WrittenMass {
        if (value.signum() < 0) {
            throw new IllegalArgumentException("mass must not be negative: " + value + " " + unit.symbol());
        }
    }

    /**
     * A mass in grams.
     *
     * @param grams the number, 0 or more
     * @return the mass
     */
    public static WrittenMass ofGrams(String grams) {
        return new WrittenMass(new BigDecimal(grams), MassUnit.GRAM);
    }

    /**
     * Reads {@code 12.5 g}, {@code 1kg}, {@code 0.7 oz}.
     *
     * @param text the text
     * @return the mass, or why not
     */
    public static Outcome<WrittenMass> parse(String text) {
        return Numeral.read(text).then(WrittenMass::inMassUnit);
    }

    private static Outcome<WrittenMass> inMassUnit(Numeral.WithUnit read) {
        if (read.unit().matches("fl\\.? ?oz")) {
            return Outcome.refused("'fl oz' is a volume", "weigh it and write oz or g, or write ml");
        }
        return Numeral.inUnit(
                read, MassUnit.values(), MassUnit::symbol, u -> new WrittenMass(read.value(), u), "250 g");
    }

    /**
     * In grams.
     *
     * @return grams as the nearest double
     */
    public double grams() {
        return unit == MassUnit.GRAM ? value.doubleValue() : exactGrams().doubleValue();
    }

    /**
     * In grams, not rounded.
     *
     * @return grams, every digit of them
     */
    public BigDecimal exactGrams() {
        return value.multiply(unit.grams());
    }

    /** As it is written in a formula file, such as {@code 0.7 oz}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}
