package lyewright.records.stock;

import java.math.BigDecimal;
import java.util.Currency;
import lyewright.measure.Outcome;

/**
 * What was paid for a lot.
 *
 * @param minor in the smallest unit of the currency, such as pence; 0 or more
 * @param currency its ISO 4217 code
 */
public record Price(long minor, String currency) {

    /** Of a currency that this Java does not know. */
    private static final int USUAL_DIGITS = 2;

    /** Ten thousand million of the usual currencies; our own choice. */
    private static final BigDecimal MOST = BigDecimal.TEN.pow(12);

    /**
     * A price as it is kept.
     *
     * @param value as written, 0 or more
     * @param currency its ISO 4217 code
     * @return the price, or why it is none
     */
    public static Outcome<Price> of(BigDecimal value, String currency) {
        int digits = digits(currency);
        BigDecimal minor = value.movePointRight(digits).stripTrailingZeros();
        if (minor.scale() > 0) {
            return Outcome.refused(
                    "'" + value.toPlainString() + "' has more decimals than " + currency + " has",
                    digits == 0 ? "write it without decimals" : "write it with " + digits);
        }
        return minor.compareTo(MOST) > 0
                ? Outcome.refused(
                        "'" + value.toPlainString() + "' is more than anybody paid", "look at the number again")
                : Outcome.ok(new Price(minor.longValueExact(), currency));
    }

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
