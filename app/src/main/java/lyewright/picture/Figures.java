package lyewright.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures of pictures as people read them. */
final class Figures {

    private static final double LARGE = 100;
    private static final double LEAST = 0.005;

    private Figures() {}

    static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    static String upTo(double value, int decimals) {
        String text = fixed(value, decimals);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }

    static String percent(double value, int decimals) {
        return fixed(value, decimals) + " %";
    }

    /** A mass, with the decimals that a glance asks for. */
    static String grams(double grams) {
        if (grams > 0 && grams < LEAST) {
            return "<0.01 g";
        }
        return fixed(grams, grams >= LARGE ? 0 : grams >= 1 ? 1 : 2) + " g";
    }
}
