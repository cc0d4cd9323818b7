package lyewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers with a fraction, as people write them: {@code 1/2}, {@code 2 1/2}, {@code 2-1/2}, {@code 2½}, {@code 2 and 1/2}. Only
 * the parts that an inch, an ounce or a pound is cut into: halves to thirty-seconds, and thirds.
 */
public final class Fractions {

    /** A regular expression, without groups, of a number that has a fraction. Such a number stops before more figures. */
    public static final String WRITTEN =
            "(?:[0-9]{1,4}(?:[\\s\u00a0\u202f]{1,4}(?:(?:and|&)[\\s\u00a0\u202f]{1,4})?|-))?[0-9]{1,2}[\\s\u00a0\u202f]?[/\u2044][\\s\u00a0\u202f]?(?:32|16|2|3|4|8)(?![0-9/.,\u2044])"
                    + "|(?:[0-9]{1,4}(?:[\\s\u00a0\u202f]{1,4}(?:(?:and|&)[\\s\u00a0\u202f]{1,4})?|-)?)?[\u00bd\u00bc\u00be\u215b\u215c\u215d\u215e\u2153\u2154]";

    private static final Pattern ANYWHERE = Pattern.compile("(?<![\\p{L}\\p{N}.,/\u2044])(?:" + WRITTEN + ")");

    private static final Pattern WHOLLY = Pattern.compile(WRITTEN);

    private static final Pattern PARTS = Pattern.compile(
            "(?:([0-9]{1,4})[^0-9]{1,12})?([0-9]{1,2})[\\s\u00a0\u202f]?[/\u2044][\\s\u00a0\u202f]?([0-9]{1,2})");

    private static final Map<Character, String> SIGNS = Map.of(
            '\u00bd', "1/2",
            '\u00bc', "1/4",
            '\u00be', "3/4",
            '\u215b', "1/8",
            '\u215c', "3/8",
            '\u215d', "5/8",
            '\u215e', "7/8",
            '\u2153', "1/3",
            '\u2154', "2/3");

    /** Only thirds have more. */
    private static final int DECIMALS = 5;

    private Fractions() {}

    /**
     * A number with a fraction as a decimal, thirds to five decimals.
     *
     * @param number such as {@code 2 1/2}
     * @return {@code 2.5}; empty where the number has no fraction
     */
    public static Optional<String> decimal(String number) {
        return value(number).map(value -> value.stripTrailingZeros().toPlainString());
    }

    /**
     * All numbers with a fraction as decimals; whatever else there is stays as it was typed.
     *
     * @param text such as {@code 10 x 3 1/2 x 2¾ in}
     * @return {@code 10 x 3.5 x 2.75 in}
     */
    public static String decimals(String text) {
        return ANYWHERE.matcher(text).replaceAll(found -> decimal(found.group()).orElse(found.group()));
    }

    static Optional<BigDecimal> value(String number) {
        Matcher parts = PARTS.matcher(spelledOut(number.strip()));
        if (!WHOLLY.matcher(number.strip()).matches() || !parts.matches()) {
            return Optional.empty();
        }
        BigDecimal whole = parts.group(1) == null ? BigDecimal.ZERO : new BigDecimal(parts.group(1));
        BigDecimal part =
                new BigDecimal(parts.group(2)).divide(new BigDecimal(parts.group(3)), DECIMALS, RoundingMode.HALF_UP);
        return Optional.of(whole.add(part));
    }

    /** The end of the number with a fraction that text begins with; 0 where it begins with none. */
    static int end(String text) {
        Matcher begins = ANYWHERE.matcher(text);
        return begins.lookingAt() ? begins.end() : 0;
    }

    private static String spelledOut(String number) {
        int last = number.length() - 1;
        String sign = last < 0 ? null : SIGNS.get(number.charAt(last));
        return sign == null ? number : (number.substring(0, last) + " " + sign).strip();
    }
}
