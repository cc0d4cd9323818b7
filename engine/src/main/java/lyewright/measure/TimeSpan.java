package lyewright.measure;

import java.math.BigDecimal;

/**
 * A span of time as somebody typed it, decimal and unit kept. Never negative.
 *
 * @param value the number as typed
 * @param unit its unit
 */
public record TimeSpan(BigDecimal value, TimeUnitWritten unit) {

    /** Refuses a negative span: that is a broken promise of the caller. */
    public TimeSpan {
        if (value.signum() < 0) {
            throw new IllegalArgumentException("time must not be negative: " + value + " " + unit.symbol());
        }
    }

    /**
     * Reads {@code 1 h}, {@code 20 min}, {@code 2 d}.
     *
     * @param text the text
     * @return the span, or why not
     */
    public static Outcome<TimeSpan> parse(String text) {
        return Numeral.read(text)
                .then(read -> Numeral.inUnit(
                        read,
                        TimeUnitWritten.values(),
                        TimeUnitWritten::symbol,
                        u -> new TimeSpan(read.value(), u),
                        "1 h"));
    }

    /**
     * As a figure to compute with.
     *
     * @return hours
     */
    public double hours() {
        return value.doubleValue() * unit.hours();
    }

    /** As it is written in a formula file, such as {@code 1 h}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}
