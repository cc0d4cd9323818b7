package lyewright.formula;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.material.Figure;
import lyewright.measure.Decimal;
import lyewright.measure.Outcome;

/**
 * A figure as somebody typed it, perhaps uncertain: {@code 189.5}, {@code 189.5 ± 1.0} (normal, the half width of the 95 %
 * interval; also typed {@code +-} or {@code +/-}), {@code 184 to 196} (anywhere between).
 *
 * @param first the value, or the low end
 * @param form how it was typed
 * @param second the half width or the high end; equal to {@code first} when exact
 */
public record WrittenFigure(BigDecimal first, Form form, BigDecimal second) {

    /** ±, and what stands for it where no key has it. */
    private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+/?[-\u2212]");

    /** How a figure was typed. */
    public enum Form {
        /** A single number. */
        EXACT,
        /** {@code a ± b}. */
        PLUS_MINUS,
        /** {@code a to b}. */
        TO
    }

    /**
     * A figure and the text after it, which is its unit.
     *
     * @param figure the figure
     * @param unit the rest, stripped
     */
    public record WithUnit(WrittenFigure figure, String unit) {}

    /**
     * Reads a figure and leaves its unit.
     *
     * @param text such as {@code 184 to 196 mg KOH/g}
     * @return figure and unit, or why not
     */
    public static Outcome<WithUnit> parse(String text) {
        return Decimal.leading(text).then(lead -> {
            String rest = lead.rest();
            Matcher plusMinus = PLUS_MINUS.matcher(rest);
            if (plusMinus.lookingAt()) {
                return second(lead.value(), Form.PLUS_MINUS, rest.substring(plusMinus.end()));
            }
            // "184-196" and "184 to 196 %" alike need the word, so that a minus is never read as a range
            if (rest.startsWith("to ")) {
                return second(lead.value(), Form.TO, rest.substring(3));
            }
            return Outcome.ok(new WithUnit(new WrittenFigure(lead.value(), Form.EXACT, lead.value()), rest));
        });
    }

    private static Outcome<WithUnit> second(BigDecimal first, Form form, String text) {
        return Decimal.leading(text).then(lead -> {
            if (form == Form.TO && lead.value().compareTo(first) < 0) {
                return Outcome.refused(
                        "'" + first.toPlainString() + " to " + lead.value().toPlainString() + "' runs backwards",
                        "write the low end first");
            }
            if (form == Form.PLUS_MINUS && lead.value().compareTo(first) > 0) {
                return Outcome.refused(
                        "'± " + lead.value().toPlainString() + "' is more than the figure itself",
                        "write a half width of at most " + first.toPlainString());
            }
            return Outcome.ok(new WithUnit(new WrittenFigure(first, form, lead.value()), lead.rest()));
        });
    }

    /**
     * As a figure to compute with.
     *
     * @param source where it comes from
     * @return exact, normal or rectangular
     */
    public Figure figure(String source) {
        double a = first.doubleValue();
        double b = second.doubleValue();
        return switch (form) {
            case EXACT -> Figure.exact(a, source);
            case TO -> Figure.range(a, b, source);
            case PLUS_MINUS ->
                b == 0 ? Figure.exact(a, source) : new Figure(a - b, a + b, Figure.Spread.NORMAL, source);
        };
    }

    /**
     * The figure itself, or the middle of a range, every digit of it.
     *
     * @return in the unit it was typed in
     */
    public BigDecimal central() {
        return form == Form.TO ? first.add(second).multiply(new BigDecimal("0.5")) : first;
    }

    /** As written, without its unit. */
    @Override
    public String toString() {
        return switch (form) {
            case EXACT -> first.toPlainString();
            case PLUS_MINUS -> first.toPlainString() + " ± " + second.toPlainString();
            case TO -> first.toPlainString() + " to " + second.toPlainString();
        };
    }
}
