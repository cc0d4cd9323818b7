package lyewright.why;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text: plain decimals, a point, no zeros at the end that say nothing. */
final class Digits {

    /** Decimals of a sheet's figures. */
    static final int DECIMALS = 6;

    private Digits() {}

    /** A number to so many significant digits. */
    static String significant(double value, int digits) {
        return plain(BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP)));
    }

    /** A number to the sheet's decimals. */
    static String figure(double value) {
        return plain(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
    }

    /** A number to the sheet's decimals, small ones to six digits. */
    static String step(double value) {
        return Math.abs(value) >= 1 || value == 0 ? figure(value) : significant(value, DECIMALS);
    }

    /** A number as it is. */
    static String exact(double value) {
        return plain(BigDecimal.valueOf(value));
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
