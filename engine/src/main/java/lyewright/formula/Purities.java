package lyewright.formula;

import java.util.Optional;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.measure.Outcome;

/**
 * How pure the alkalis at hand are. What is not given is assumed, and the sheet says so.
 *
 * @param sodium percent NaOH of the product, if given
 * @param potassium percent KOH of the product, if given
 */
public record Purities(Optional<Figure> sodium, Optional<Figure> potassium) {

    /** Under this a product is a solution or a slip of the pen, percent; this project's own rule. */
    public static final double LEAST_SOLD = 50;

    /** Neither given. */
    public static final Purities ASSUMED = new Purities(Optional.empty(), Optional.empty());

    /**
     * Reads {@code naoh=98.5,koh=90}; either may be left out, each may carry {@code ±} or a range.
     *
     * @param text the text
     * @return the purities, or why not
     */
    public static Outcome<Purities> parse(String text) {
        Purities read = ASSUMED;
        for (String part : text.split(",", -1)) {
            Outcome<Purities> next = read.with(part.strip());
            if (!(next instanceof Outcome.Ok<Purities> ok)) {
                return next;
            }
            read = ok.value();
        }
        return Outcome.ok(read);
    }

    private Outcome<Purities> with(String part) {
        int equals = part.indexOf('=');
        String key = equals < 0 ? part : part.substring(0, equals).strip();
        for (Alkali alkali : Alkali.values()) {
            if (alkali.key().equals(key) && equals > 0) {
                return WrittenFigure.parse(part.substring(equals + 1)).then(read -> with(alkali, read, part));
            }
        }
        return Outcome.refused("'" + part + "' is not a purity", "write it as naoh=98.5 or koh=90");
    }

    private Outcome<Purities> with(Alkali alkali, WrittenFigure.WithUnit read, String part) {
        if (!read.unit().isEmpty() && !read.unit().equals("%")) {
            return Outcome.refused("'" + part + "' has something after its number", "write it as naoh=98.5");
        }
        Figure figure = read.figure().figure("given");
        if (figure.low() <= 0 || figure.high() > 100) {
            return Outcome.refused(
                    "a purity of " + read.figure() + " % is not possible", "write one above 0 and up to 100");
        }
        if (figure.middle() < LEAST_SOLD) {
            return Outcome.refused(
                    "a purity of " + read.figure() + " % is no alkali that is sold as such",
                    figure.high() <= 1
                            ? "write it in percent, as in 98.5"
                            : "read it off the tub; a solution is written as a stock lye");
        }
        if (!assumed(alkali)) {
            return Outcome.refused("the purity of " + alkali.key() + " is given twice", "give it once");
        }
        return Outcome.ok(
                alkali == Alkali.SODIUM
                        ? new Purities(Optional.of(figure), potassium)
                        : new Purities(sodium, Optional.of(figure)));
    }

    /**
     * Whether an alkali's purity is only assumed.
     *
     * @param alkali which
     * @return true if it was not given
     */
    public boolean assumed(Alkali alkali) {
        return (alkali == Alkali.SODIUM ? sodium : potassium).isEmpty();
    }

    /**
     * What is known of an alkali's purity: the figure given, else the range assumed.
     *
     * @param alkali which
     * @return percent
     */
    public Figure figure(Alkali alkali) {
        return (alkali == Alkali.SODIUM ? sodium : potassium).orElseGet(alkali::assumedPurity);
    }

    /**
     * The purity to compute with.
     *
     * @param alkali which
     * @return fraction of the product that is pure, above 0 and up to 1
     */
    public double fraction(Alkali alkali) {
        Optional<Figure> given = alkali == Alkali.SODIUM ? sodium : potassium;
        return (given.isPresent() ? given.get().middle() : alkali.assumedPercent()) / 100;
    }
}
