package lyewright.measure;

import java.math.BigDecimal;
import java.util.function.Function;

/** Reads the number that every quantity begins with. Decimals, and fractions of the usual parts: what else was meant is never guessed. */
final class Numeral {

    private static final int MOST_DIGITS = 15;

    private Numeral() {}

    /** A number and the text after it, as in {@code 12.5 g}. */
    record WithUnit(BigDecimal value, String unit) {}

    /** Splits text into a decimal, never negative, and a unit, which may be empty. */
    static Outcome<WithUnit> read(String text) {
        return read(text, false);
    }

    /** As {@link #read(String)}, for the quantities that may lie under zero. */
    static Outcome<WithUnit> readSigned(String text) {
        return read(text, true);
    }

    private static Outcome<WithUnit> read(String text, boolean signed) {
        String trimmed = text.strip();
        int fraction = Fractions.end(trimmed);
        if (fraction > 0) {
            BigDecimal value = Fractions.value(trimmed.substring(0, fraction)).orElseThrow();
            return Outcome.ok(new WithUnit(
                    new BigDecimal(value.stripTrailingZeros().toPlainString()),
                    trimmed.substring(fraction).strip()));
        }
        int end = 0;
        while (end < trimmed.length() && belongsToNumber(trimmed.charAt(end), end == 0)) {
            end++;
        }
        String unit = trimmed.substring(end).strip();
        if (unit.matches("[eE][+-]?[0-9].*")) {
            return Outcome.refused(
                    "'" + trimmed + "' is written as a power of ten", "write the number out, as in 1000");
        }
        return decimal(trimmed.substring(0, end), trimmed, signed).then(d -> Outcome.ok(new WithUnit(d, unit)));
    }

    private static boolean belongsToNumber(char c, boolean first) {
        boolean sign = c == '-' || c == '+' || c == '\u2212';
        return (c >= '0' && c <= '9') || c == '.' || c == ',' || (first && sign);
    }

    private static Outcome<BigDecimal> decimal(String number, String whole, boolean signed) {
        boolean negative = number.startsWith("-") || number.startsWith("\u2212");
        String digits = negative ? number.substring(1) : number;
        if (digits.indexOf(',') >= 0) {
            return Outcome.refused("'" + whole + "' has a comma in its number", withoutComma(digits, whole));
        }
        if (!digits.matches("[0-9]+(\\.[0-9]+)?|\\.[0-9]+")) {
            return Outcome.refused(
                    "'" + whole + "' does not begin with a number", "write a plain decimal such as 12.5");
        }
        if (negative && !signed) {
            return Outcome.refused("'" + whole + "' is negative", "write a number of 0 or more");
        }
        if (digits.length() > MOST_DIGITS) {
            return Outcome.refused("'" + whole + "' has more than " + MOST_DIGITS + " digits", "write it with fewer");
        }
        BigDecimal value = new BigDecimal(digits);
        return Outcome.ok(negative ? value.negate() : value);
    }

    /** 12,5 can only be meant in one way; 1,000 is a thousand to some and one to others; 1.000,5 is for its writer to say. */
    private static String withoutComma(String digits, String whole) {
        if (digits.matches("[1-9][0-9]{0,2},[0-9]{3}")) {
            boolean one = digits.equals("1,000");
            String small = new BigDecimal(digits.replace(',', '.'))
                    .stripTrailingZeros()
                    .toPlainString();
            return "write " + whole.replace(",", "") + (one ? " for a thousand" : " for thousands") + ", or "
                    + whole.replace(digits, small) + (one ? " for one" : " if the comma is a decimal one");
        }
        return digits.matches("[0-9]*,[0-9]+")
                ? "write " + whole.replace(',', '.')
                : "write it with one point and nothing else, as in 1000.5";
    }

    /** Reads a quantity whose unit is one of an enum's symbols. */
    static <U extends Enum<U>, T> Outcome<T> inUnit(
            WithUnit read, U[] units, Function<U, String> symbol, Function<U, T> make, String example) {
        for (U unit : units) {
            if (symbol.apply(unit).equals(read.unit())) {
                return Outcome.ok(make.apply(unit));
            }
        }
        StringBuilder known = new StringBuilder();
        for (U unit : units) {
            known.append(known.isEmpty() ? "" : ", ").append(symbol.apply(unit));
        }
        String what = read.unit().isEmpty()
                ? "'" + read.value().toPlainString() + "' has no unit"
                : "'" + read.unit() + "' is not a unit used here";
        return Outcome.refused(what, "use one of " + known + ", as in " + example);
    }
}
