package lyewright.measure;

import java.math.BigDecimal;

/** Plain numbers without a unit, and the number part of text whose unit only the caller knows. */
public final class Decimal {

    private Decimal() {}

    /**
     * A number and what stands after it.
     *
     * @param value the number, 0 or more
     * @param rest the text after it, stripped, perhaps empty
     */
    public record Leading(BigDecimal value, String rest) {}

    /**
     * Reads a plain decimal, 0 or more, with nothing after it.
     *
     * @param text the text
     * @return the number, or why not
     */
    public static Outcome<BigDecimal> parse(String text) {
        return Numeral.read(text)
                .then(read -> read.unit().isEmpty()
                        ? Outcome.ok(read.value())
                        : Outcome.refused(
                                "'" + text.strip() + "' is not a plain number",
                                "write " + read.value().toPlainString()));
    }

    /**
     * Reads the number that text begins with.
     *
     * @param text the text
     * @return the number and the rest, or why not
     */
    public static Outcome<Leading> leading(String text) {
        return Numeral.read(text).then(read -> Outcome.ok(new Leading(read.value(), read.unit())));
    }
}
