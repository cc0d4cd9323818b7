package lyewright.web.why;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import lyewright.why.Reason;
import lyewright.why.Spread;

/**
 * How many digits of a reason's numbers mean something. What is put in is told to the second digit of what it may be off by; what
 * follows from it to as many digits as the least sure of it has and one more, and to no fewer decimals than the pages that lead here.
 */
final class WhyDigits {

    private static final int LEAST = 3;
    private static final int LEAST_OF_STEPS = 4;
    private static final int MOST = 6;

    /** Decimals that pages show of a unit; two of any other. */
    private static final Map<String, Integer> DECIMALS = Map.of("", 3, "g/ml", 3, "l", 3);

    private static final int USUAL = 2;

    private final boolean sure;
    private final int digits;

    WhyDigits(Reason reason) {
        double widest = reason.inputs().stream()
                .filter(input -> input.spread().isPresent() && input.value() != 0)
                .mapToDouble(input -> half(input.spread().get()) / Math.abs(input.value()))
                .max()
                .orElse(0);
        sure = widest <= 0;
        digits = sure ? MOST : Math.max(LEAST, Math.min(MOST, 1 + (int) Math.ceil(-Math.log10(widest))));
    }

    private static double half(Spread spread) {
        return (spread.high() - spread.low()) / 2;
    }

    /** The figure itself, or another one of the sheet. */
    String figure(double value, String unit) {
        int own = decimals(value, digits);
        int shown = DECIMALS.getOrDefault(unit, USUAL);
        return text(value, Math.min(MOST, Math.max(own, shown)), sure ? 0 : Math.min(own, shown));
    }

    /** A step on the way. */
    String step(double value) {
        return text(value, decimals(value, Math.max(digits, LEAST_OF_STEPS)), 0);
    }

    /** A number put in. */
    String input(Reason.Input input) {
        if (input.spread().isPresent()) {
            return within(input.value(), input.spread().get());
        }
        return input.figure().isPresent() ? figure(input.value(), input.unit()) : given(input.value());
    }

    /** Taken as exact, however it was written. */
    private static String given(double value) {
        return text(value, decimals(value, MOST), 0);
    }

    /** A number to the second digit of what it may be off by. */
    static String within(double value, Spread spread) {
        double half = half(spread);
        return half > 0 ? text(value, Math.max(0, 1 - order(half)), 0) : given(value);
    }

    private static int order(double value) {
        return (int) Math.floor(Math.log10(Math.abs(value)));
    }

    private static int decimals(double value, int significant) {
        return value == 0 ? 0 : Math.max(0, significant - 1 - order(value));
    }

    /** Rounded, without zeros at the end that say nothing beyond so many decimals. */
    private static String text(double value, int decimals, int least) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        BigDecimal stripped = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        return (stripped.scale() < least ? stripped.setScale(least) : stripped).toPlainString();
    }
}
