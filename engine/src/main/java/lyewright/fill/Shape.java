package lyewright.fill;

import java.util.ArrayList;
import java.util.List;
import lyewright.measure.Decimal;
import lyewright.measure.Length;
import lyewright.measure.Outcome;
import lyewright.measure.Volume;

/** The inside of a mould, filled to the brim. All lengths in millimetres. */
public sealed interface Shape {

    /** Cubic millimetres in a millilitre. */
    double CUBIC_MILLIMETRES = 1000;

    /**
     * A loaf, cut across its length.
     *
     * @param length mm, the side that is cut along
     * @param width mm
     * @param height mm
     */
    record Loaf(double length, double width, double height) implements Shape {
        @Override
        public double millilitres() {
            return length * width * height / CUBIC_MILLIMETRES;
        }
    }

    /**
     * A slab, cut in a grid.
     *
     * @param length mm
     * @param width mm
     * @param height mm, which becomes the bars' thickness
     */
    record Slab(double length, double width, double height) implements Shape {
        @Override
        public double millilitres() {
            return length * width * height / CUBIC_MILLIMETRES;
        }
    }

    /**
     * A tube, cut across its length.
     *
     * @param length mm
     * @param diameter mm, inside
     */
    record Tube(double length, double diameter) implements Shape {
        @Override
        public double millilitres() {
            return length * Math.PI * diameter * diameter / 4 / CUBIC_MILLIMETRES;
        }
    }

    /**
     * Cavities that are bars already.
     *
     * @param count how many
     * @param each ml of one
     */
    record Cavities(int count, double each) implements Shape {
        @Override
        public double millilitres() {
            return count * each;
        }
    }

    /**
     * What it holds.
     *
     * @return millilitres, above 0
     */
    double millilitres();

    /**
     * Reads a loaf, {@code 300x80x65mm}: length, width, height.
     *
     * @param text the text
     * @return the loaf, or why not
     */
    static Outcome<Shape> parseLoaf(String text) {
        return sides(text, 3, "300x80x65mm").then(s -> Outcome.ok(new Loaf(s.get(0), s.get(1), s.get(2))));
    }

    /**
     * Reads a tube, {@code 300x76mm}: length, diameter.
     *
     * @param text the text
     * @return the tube, or why not
     */
    static Outcome<Shape> parseTube(String text) {
        return sides(text, 2, "300x76mm").then(s -> Outcome.ok(new Tube(s.get(0), s.get(1))));
    }

    /**
     * Reads cavities, {@code 12x95ml}.
     *
     * @param text the text
     * @return the cavities, or why not
     */
    static Outcome<Shape> parseCavities(String text) {
        int x = times(text);
        if (x < 0) {
            return Outcome.refused("'" + text + "' does not say how many cavities", "write it as 12x95ml");
        }
        return count(text.substring(0, x))
                .then(n -> Volume.parse(text.substring(x + 1))
                        .then(v -> v.millilitres() > 0
                                ? Outcome.ok(new Cavities(n, v.millilitres()))
                                : Outcome.refused(
                                        "a cavity of " + v + " holds nothing",
                                        "write what one cavity holds, as in 12x95ml")));
    }

    /**
     * Where the sign between a count and a size is.
     *
     * @param text such as {@code 12x95ml} or {@code 12×95ml}
     * @return its place, -1 if there is none
     */
    static int times(String text) {
        return Math.max(text.indexOf('x'), text.indexOf('×'));
    }

    /**
     * Reads a count of things, 1 to 10 000.
     *
     * @param text the text
     * @return the count, or why not
     */
    static Outcome<Integer> count(String text) {
        return Decimal.parse(text).then(n -> {
            double value = n.doubleValue();
            return value >= 1 && value <= 10_000 && value == Math.rint(value)
                    ? Outcome.ok((int) value)
                    : Outcome.refused("'" + text + "' is no count", "write a whole number from 1 to 10000");
        });
    }

    /**
     * Reads sides with one unit after the last, or one after each.
     *
     * @param text such as {@code 300x80x65mm}
     * @param howMany sides there must be
     * @param example for the remedy
     * @return millimetres, all above 0, or why not
     */
    static Outcome<List<Double>> sides(String text, int howMany, String example) {
        String[] parts = text.strip().split("\\s*[x×]\\s*", -1);
        if (parts.length != howMany) {
            return Outcome.refused(
                    "'" + text + "' has " + parts.length + " measures, not " + howMany, "write it as " + example);
        }
        Outcome<Decimal.Leading> last = Decimal.leading(parts[howMany - 1]);
        if (!(last instanceof Outcome.Ok<Decimal.Leading> ok)) {
            return new Outcome.Refused<>(last.problems());
        }
        List<Double> sides = new ArrayList<>();
        for (String part : parts) {
            String withUnit = endsInDigit(part) ? part + ok.value().rest() : part;
            Outcome<Length> length = Length.parse(withUnit);
            if (!(length instanceof Outcome.Ok<Length> read)) {
                return new Outcome.Refused<>(length.problems());
            }
            if (read.value().millimetres() <= 0) {
                return Outcome.refused("'" + text + "' has a side of no size", "write all sides above 0");
            }
            sides.add(read.value().millimetres());
        }
        return Outcome.ok(sides);
    }

    private static boolean endsInDigit(String part) {
        return !part.isEmpty() && Character.isDigit(part.charAt(part.length() - 1));
    }
}
