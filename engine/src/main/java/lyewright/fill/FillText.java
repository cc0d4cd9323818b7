package lyewright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Length;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.Said;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;

/**
 * How much to make as it is typed, in several texts that are read together. Wherever it is typed, the same texts mean the same and
 * are refused alike; only what the texts are called differs.
 */
public final class FillText {

    /** What can be typed. */
    public enum Part {
        /** So much in the mould. */
        TOTAL,
        /** So much oil. */
        OILS,
        /** So many bars of a mass. */
        BARS,
        /** With any text: the bars' mass is that of cured ones. */
        CURED,
        /** A box's inside. */
        BOX,
        /** A tube's inside. */
        TUBE,
        /** So many cavities, and what one holds. */
        CAVITIES,
        /** What the mould holds of water. */
        WATER_FILL,
        /** What it usually takes, and of what. */
        USUAL,
        /** Share that does not reach the mould. */
        HOLD_BACK,
        /** Thickness of a bar, or a grid. */
        CUT,
        /** What each cut takes away. */
        BLADE,
        /** What is cut off each end. */
        ENDS,
        /** What is planed off the top. */
        TRIM
    }

    /** What was typed, and what its parts are called where they were. */
    public interface Typed {

        /**
         * The text of a part.
         *
         * @param part which
         * @return as typed; empty where nothing was
         */
        Optional<String> text(Part part);

        /**
         * What a part is called: the path of its problems, and its name in remedies.
         *
         * @param part which
         * @return a word or two
         */
        String called(Part part);
    }

    /** What no bench makes at once; keeps figures where whole milligrams are exact. */
    private static final double MOST_GRAMS = 1e7;

    private static final double MOST_MILLILITRES = 1e7;

    /** A gram: under it nothing is left after rounding to a balance. */
    private static final double LEAST_GRAMS = 1;

    /** Nearer to the whole, what is weighed for a gram in the mould has no bounds. */
    private static final double MOST_HELD_BACK = 0.9999;

    private final Typed typed;
    private final Mould known;
    private final Optional<CutPlan> planned;
    private final List<Problem> problems = new ArrayList<>();

    private FillText(Typed typed, Mould known, Optional<CutPlan> planned) {
        this.typed = typed;
        this.known = known;
        this.planned = planned;
    }

    /**
     * Reads it.
     *
     * @param typed what was typed
     * @param usual reads what a mould usually takes; a problem of its that has no place yet is one of that part
     * @return the fill, or everything that is wrong with it
     */
    public static Outcome<Fill> read(Typed typed, Function<String, Outcome<Mould.Usual>> usual) {
        return new FillText(typed, Mould.UNKNOWN, Optional.empty()).read(usual);
    }

    /**
     * Reads how much goes into a mould that is known already, and is cut in a way that is known unless one is typed.
     *
     * @param typed what was typed; what is typed of the mould is not asked for
     * @param known the mould
     * @param planned how it is cut unless another cut is typed
     * @return the fill, or everything that is wrong with it
     */
    public static Outcome<Fill> read(Typed typed, Mould known, Optional<CutPlan> planned) {
        return new FillText(typed, known, planned).read(text -> Outcome.refused("is known", "leave it out"));
    }

    /**
     * Reads a mould in one line: a box {@code 300x80x65mm}, a slab {@code slab 400x300x40mm}, a tube {@code 300x76mm}, cavities
     * {@code 12x95ml}, what it holds, {@code 1.2l}, or what fills it, {@code 1450g water}. Spaces, {@code by} for the sign and the
     * kind's name before it are understood. A mass alone may be one of batter, so it has to say that it is water.
     *
     * @param text the text
     * @return the mould, or why not
     */
    public static Outcome<Mould> mould(String text) {
        return MouldReader.read(text);
    }

    private Outcome<Fill> read(Function<String, Outcome<Mould.Usual>> readUsual) {
        onlyOneOf(Part.TOTAL, Part.OILS, Part.BARS);
        onlyOneOf(Part.BOX, Part.TUBE, Part.CAVITIES);
        Optional<Fill.Target> target = target();
        Optional<CutPlan> cut = cut();
        Optional<Shape> shape = shape(cut);
        Optional<Double> water =
                read(Part.WATER_FILL, FillText::mass).map(WrittenMass::grams).or(known::waterFillGrams);
        Optional<Mould.Usual> usual = read(Part.USUAL, readUsual).or(known::usual);
        double holdBack = read(Part.HOLD_BACK, FillText::holdBack).orElse(Fill.USUAL_HOLD_BACK);
        checkCut(cut, shape, target);
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        Mould mould = new Mould(shape, water, usual);
        Fill.Target otherwise = mould.known() ? new Fill.FullMould() : new Fill.AsWritten();
        return Outcome.ok(new Fill(target.orElse(otherwise), mould, cut, holdBack));
    }

    private Optional<Fill.Target> target() {
        Optional<Fill.Target> total = read(Part.TOTAL, FillText::mass).map(m -> new Fill.MouldMass(m.grams()));
        Optional<Fill.Target> oils = read(Part.OILS, FillText::mass).map(m -> new Fill.OilMass(m.grams()));
        Optional<Fill.Target> bars =
                read(Part.BARS, text -> bars(text, has(Part.CURED))).map(b -> b);
        if (has(Part.CURED) && !has(Part.BARS)) {
            refuse(Part.CURED, "says what the bars' mass is, but there are no bars", give(Part.BARS));
        }
        return total.or(() -> oils).or(() -> bars);
    }

    /**
     * The size in a line as {@link #mould} takes one, so that other things can be said in the same way.
     *
     * @param text such as {@code My loaf: 300 by 80 by 65 mm}
     * @return {@code 300x80x65 mm}: no name of a kind before it, in small letters, one sign between its measures
     */
    public static String size(String text) {
        return MouldReader.said(text).size();
    }

    /**
     * Reads bars that a bench may make.
     *
     * @param text such as {@code 10x110g}
     * @param cured whether the mass is once cured
     * @return the bars, or why not
     */
    public static Outcome<Fill.Bars> bars(String text, boolean cured) {
        return Fill.parseBars(Said.counted(text), cured)
                .then(bars ->
                        within(bars, bars.count() * bars.grams(), LEAST_GRAMS, MOST_GRAMS, text, "1 g", "10000 kg"));
    }

    /**
     * Reads a mass that a bench may make.
     *
     * @param text such as {@code 1500g}
     * @return the mass, or why not
     */
    public static Outcome<WrittenMass> mass(String text) {
        return WrittenMass.parse(Said.measure(text))
                .then(mass -> within(mass, mass.grams(), LEAST_GRAMS, MOST_GRAMS, text, "1 g", "10000 kg"));
    }

    private static <T> Outcome<T> within(
            T value, double size, double least, double most, String text, String leastText, String mostText) {
        return size >= least && size <= most
                ? Outcome.ok(value)
                : Outcome.refused(
                        "'" + text.strip() + "' is too " + (size < least ? "small" : "large"),
                        "write something from " + leastText + " to " + mostText);
    }

    private Optional<Shape> shape(Optional<CutPlan> cut) {
        boolean grid = cut.isPresent() && cut.get().across().isPresent();
        Optional<Shape> box =
                read(Part.BOX, text -> Shape.parseLoaf(Said.measure(text)).then(s -> held(s, text)));
        Optional<Shape> tube =
                read(Part.TUBE, text -> Shape.parseTube(Said.measure(text)).then(s -> held(s, text)));
        Optional<Shape> cavities = read(
                Part.CAVITIES, text -> Shape.parseCavities(Said.counted(text)).then(s -> held(s, text)));
        return box.or(() -> tube).or(() -> cavities).or(known::shape).map(s -> grid ? slab(s) : s);
    }

    /** A box that is cut in a grid is a slab; anything else stays what it is. */
    static Shape slab(Shape shape) {
        return shape instanceof Shape.Loaf loaf ? new Shape.Slab(loaf.length(), loaf.width(), loaf.height()) : shape;
    }

    static Outcome<Shape> held(Shape shape, String text) {
        return within(shape, shape.millilitres(), 1, MOST_MILLILITRES, text, "1 ml", "10000 l");
    }

    private Optional<CutPlan> cut() {
        Optional<CutPlan> plan = read(Part.CUT, text -> CutPlan.parse(Said.measure(text)));
        double blade = loss(Part.BLADE).or(() -> planned.map(CutPlan::blade)).orElse(0.0);
        double ends = loss(Part.ENDS).or(() -> planned.map(CutPlan::ends)).orElse(0.0);
        double trim = loss(Part.TRIM).or(() -> planned.map(CutPlan::trim)).orElse(0.0);
        return plan.or(() -> has(Part.CUT) ? Optional.empty() : planned).map(p -> p.losing(blade, ends, trim));
    }

    private Optional<Double> loss(Part part) {
        if (has(part) && !has(Part.CUT) && planned.isEmpty()) {
            refuse(part, "says what a cut loses, but nothing is cut", give(Part.CUT));
        }
        return read(part, text -> Length.parse(Said.measure(text))).map(Length::millimetres);
    }

    /** A cut that cannot be is the cut's problem, not the whole sheet's. */
    private void checkCut(Optional<CutPlan> cut, Optional<Shape> shape, Optional<Fill.Target> target) {
        if (cut.isEmpty()) {
            return;
        }
        if (shape.isEmpty()) {
            if (!has(Part.BOX) && !has(Part.TUBE) && !has(Part.CAVITIES)) {
                refuse(
                        Part.CUT,
                        "a cut needs the mould's measures",
                        "give " + typed.called(Part.BOX) + " or " + typed.called(Part.TUBE) + " too");
            }
            return;
        }
        if (cut.get().across().isPresent() && shape.get() instanceof Shape.Tube) {
            refuse(Part.CUT, "a tube is not cut in a grid", "write one thickness, as in 25mm");
            return;
        }
        Optional<CutPlan.Cut> bars = keep(Part.CUT, cut.get().of(shape.get()));
        if (bars.isPresent()
                && target.isPresent()
                && target.get() instanceof Fill.Bars asked
                && asked.count() != bars.get().bars()) {
            refuse(
                    Part.BARS,
                    "this mould and cut give " + bars.get().bars() + " bars, not " + asked.count(),
                    "ask for " + bars.get().bars() + ", or change the cut");
        }
    }

    private static Outcome<Double> holdBack(String text) {
        return Share.parse(text)
                .then(share -> share.fraction() <= MOST_HELD_BACK
                        ? Outcome.ok(share.fraction())
                        : Outcome.refused(
                                "holding back " + share + " leaves nothing for the mould", "write less than 100 %"));
    }

    private void onlyOneOf(Part... parts) {
        Optional<Part> first = Optional.empty();
        for (Part part : parts) {
            if (!has(part)) {
                continue;
            }
            if (first.isPresent()) {
                refuse(part, "cannot stand beside " + typed.called(first.get()), "keep one of the two");
            } else {
                first = Optional.of(part);
            }
        }
    }

    private boolean has(Part part) {
        return typed.text(part).isPresent();
    }

    private <T> Optional<T> read(Part part, Function<String, Outcome<T>> parser) {
        return typed.text(part).flatMap(text -> keep(part, parser.apply(text)));
    }

    private <T> Optional<T> keep(Part part, Outcome<T> outcome) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return Optional.of(ok.value());
        }
        for (Problem problem : outcome.problems()) {
            problems.add(problem.path().isEmpty() ? problem.within(typed.called(part)) : problem);
        }
        return Optional.empty();
    }

    private void refuse(Part part, String what, String remedy) {
        problems.add(new Problem(typed.called(part), what, remedy));
    }

    private String give(Part part) {
        return "give " + typed.called(part) + " too";
    }
}
