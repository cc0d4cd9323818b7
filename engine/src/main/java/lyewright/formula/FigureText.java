package lyewright.formula;

import lyewright.measure.Outcome;
import org.jspecify.annotations.Nullable;

/** Reads the figures of a material, which may be uncertain, and knows the ways of writing numbers that are not taken. */
final class FigureText {

    private FigureText() {}

    /** Whether the text begins with a number such as {@code 1e3}. */
    static boolean hasPowerOfTen(String text) {
        int at = pastNumber(text);
        if (at == 0 || at + 1 >= text.length() || (text.charAt(at) != 'e' && text.charAt(at) != 'E')) {
            return false;
        }
        int exponent = text.charAt(at + 1) == '-' || text.charAt(at + 1) == '+' ? at + 2 : at + 1;
        return exponent < text.length() && isDigit(text.charAt(exponent));
    }

    /** Reads {@code 189.5 ± 1.0 mg KOH/g} and its like; whether the unit may be left out is the caller's say. */
    static Outcome<WrittenFigure> parse(String text, String unit, boolean unitNeeded) {
        String range = rangeByDash(text);
        if (range != null) {
            return Outcome.refused(
                    Wording.quote(text) + " has a dash in it", "write a range as " + Wording.clip(range));
        }
        return WrittenFigure.parse(text).then(read -> {
            if (read.unit().equals(unit) || (read.unit().isEmpty() && !unitNeeded)) {
                return Outcome.ok(read.figure());
            }
            return Outcome.refused(
                    read.unit().isEmpty()
                            ? Wording.quote(text) + " has no unit"
                            : Wording.quote(read.unit()) + " is not the unit used here",
                    "write " + read.figure() + " " + unit);
        });
    }

    /** {@code 184-196} or {@code 184 – 196} with the word in place of the dash; null where there is no such dash. */
    private static @Nullable String rangeByDash(String text) {
        int number = pastNumber(text);
        int dash = number < text.length() && text.charAt(number) == ' ' ? number + 1 : number;
        if (number == 0 || dash >= text.length() || "-\u2013\u2014".indexOf(text.charAt(dash)) < 0) {
            return null;
        }
        String high = text.substring(dash + 1).strip();
        return !high.isEmpty() && isDigit(high.charAt(0)) ? text.substring(0, number) + " to " + high : null;
    }

    private static int pastNumber(String text) {
        int at = 0;
        while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return at;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
