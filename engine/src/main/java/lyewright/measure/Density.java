package lyewright.measure;

import java.math.BigDecimal;

/**
 * A density as somebody typed it, in grams per millilitre, between 0.1 and 20.
 *
 * @param gramsPerMillilitre the number as typed
 */
public record Density(BigDecimal gramsPerMillilitre) {

    private static final BigDecimal LEAST = new BigDecimal("0.1");
    private static final BigDecimal MOST = new BigDecimal("20");

    /**
     * Reads {@code 0.915 g/ml}.
     *
     * @param text the text
     * @return the density, or why not
     */
    public static Outcome<Density> parse(String text) {
        return Numeral.read(text).then(Density::inGramsPerMillilitre);
    }

    private static Outcome<Density> inGramsPerMillilitre(Numeral.WithUnit read) {
        String number = read.value().toPlainString();
        if (!read.unit().equals("g/ml")) {
            return Outcome.refused("'" + number + " " + read.unit() + "' is not a density in g/ml", "write 0.915 g/ml");
        }
        if (read.value().compareTo(LEAST) < 0 || read.value().compareTo(MOST) > 0) {
            return Outcome.refused("a density of " + number + " g/ml is not possible", "write one between 0.1 and 20");
        }
        return Outcome.ok(new Density(read.value()));
    }

    /** As it is written in a formula file, such as {@code 0.915 g/ml}. */
    @Override
    public String toString() {
        return gramsPerMillilitre.toPlainString() + " g/ml";
    }
}
