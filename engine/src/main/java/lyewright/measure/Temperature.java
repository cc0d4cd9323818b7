package lyewright.measure;

import java.math.BigDecimal;

/**
 * A temperature as somebody typed it, in degrees Celsius or Fahrenheit, from -30 to 250 degrees Celsius: what a soap
 * bench meets.
 *
 * @param value the number as typed, signed
 * @param scale its scale
 */
public record Temperature(BigDecimal value, Scale scale) {

    private static final double COLDEST = -30;
    private static final double HOTTEST = 250;

    /** The two scales in use. */
    public enum Scale {
        /** Degrees Celsius. */
        C,
        /** Degrees Fahrenheit. */
        F
    }

    /**
     * Reads {@code 38 C} or {@code 100 F}.
     *
     * @param text the text
     * @return the temperature, or why not
     */
    public static Outcome<Temperature> parse(String text) {
        return Numeral.readSigned(text)
                .then(read -> Numeral.inUnit(
                        new Numeral.WithUnit(read.value(), read.unit().replace("°", "")),
                        Scale.values(),
                        Scale::name,
                        s -> new Temperature(read.value(), s),
                        "38 C"))
                .then(Temperature::onABench);
    }

    private static Outcome<Temperature> onABench(Temperature t) {
        if (t.celsius() < COLDEST || t.celsius() > HOTTEST) {
            return Outcome.refused("'" + t + "' is no temperature for soap", "write one between -30 C and 250 C");
        }
        return Outcome.ok(t);
    }

    /**
     * As a figure to compute with.
     *
     * @return degrees Celsius
     */
    public double celsius() {
        double v = value.doubleValue();
        return scale == Scale.C ? v : (v - 32) / 1.8;
    }

    /** As it is written in a formula file, such as {@code 38 C}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + scale;
    }
}
