package lyewright.records.stock;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * What was paid for a lot.
 *
 * @param minor in the smallest unit of the currency, such as pence; 0 or more
 * @param currency its ISO 4217 code
 */
public record Price(long minor, String currency) {

    /** Of a currency that this Java does not know. */
    private static final int USUAL_DIGITS = 2;

    /** As it is written, without the currency: {@code 42.50}. */
    public String decimal() {
        return BigDecimal.valueOf(minor, digits(currency)).toPlainString();
    }

    /** How many decimals a currency has. */
    public static int digits(String currency) {
        try {
            return Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
        } catch (IllegalArgumentException e) {
            return USUAL_DIGITS;
        }
    }
}
