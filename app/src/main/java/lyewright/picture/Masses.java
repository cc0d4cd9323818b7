package lyewright.picture;

import lyewright.measure.MassUnit;
import lyewright.words.Figures;

/**
 * Masses as a glance at a picture asks for them.
 *
 * @param unit grams, or ounces where the workshop weighs in those
 */
record Masses(MassUnit unit) {

    static final Masses GRAMS = new Masses(MassUnit.GRAM);

    private static final double KILOGRAMS_FROM = 10_000;
    private static final double KILOGRAM = 1000;
    private static final double LARGE = 100;
    private static final double LEAST = 0.005;

    String say(double grams) {
        if (unit == MassUnit.GRAM && grams >= KILOGRAMS_FROM) {
            double kilograms = grams / KILOGRAM;
            return Figures.fixed(kilograms, kilograms >= LARGE ? 1 : 2) + " kg";
        }
        double value = grams / unit.grams().doubleValue();
        if (value > 0 && value < LEAST) {
            return "<0.01 " + unit.symbol();
        }
        return Figures.fixed(value, decimals(value)) + " " + unit.symbol();
    }

    /** An ounce is so heavy that a tenth of it is three grams. */
    private int decimals(double value) {
        int decimals = value >= LARGE ? 0 : value >= 1 ? 1 : 2;
        return unit == MassUnit.GRAM ? decimals : Math.max(1, decimals);
    }
}
