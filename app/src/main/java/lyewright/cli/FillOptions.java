package lyewright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLines;
import lyewright.fill.CutPlan;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.formula.Purities;
import lyewright.measure.Length;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import picocli.CommandLine.Model.CommandSpec;

/** Every way of saying how much, as options, and what they mean together. */
final class FillOptions {

    static final String TOTAL = "--total";
    static final String OILS = "--oils";
    static final String BARS = "--bars";
    static final String CURED = "--cured";
    static final String BOX = "--box";
    static final String TUBE = "--tube";
    static final String CAVITIES = "--cavities";
    static final String WATER_FILL = "--water-fill";
    static final String USUAL = "--usual";
    static final String HOLD_BACK = "--hold-back";
    static final String CUT = "--cut";
    static final String BLADE = "--blade";
    static final String ENDS = "--ends";
    static final String TRIM = "--trim";

    /** What no bench makes at once; keeps figures where whole milligrams are exact. */
    private static final double MOST_GRAMS = 1e7;

    private static final double MOST_MILLILITRES = 1e7;

    /** A gram: under it nothing is left after rounding to a balance. */
    private static final double LEAST_GRAMS = 1;

    /** Nearer to the whole, what is weighed for a gram in the mould has no bounds. */
    private static final double MOST_HELD_BACK = 0.9999;

    private final Options options;
    private final Path folder;

    FillOptions(Options options, Path folder) {
        this.options = options;
        this.folder = folder;
    }

    static void addTo(CommandSpec spec) {
        spec.addOption(Specs.value(TOTAL, "1500g", "So much in the mould, toppings included."));
        spec.addOption(Specs.value(OILS, "1kg", "So much oil."));
        spec.addOption(Specs.value(BARS, "10x110g", "So many bars of a mass, as cut."));
        spec.addOption(Specs.flag(CURED, "With --bars: the mass is that of a cured bar."));
        spec.addOption(Specs.value(BOX, "300x80x65mm", "A mould's inside: length, width, height."));
        spec.addOption(Specs.value(TUBE, "300x76mm", "A round mould's inside: length, diameter."));
        spec.addOption(Specs.value(CAVITIES, "12x95ml", "So many cavities, and what one holds."));
        spec.addOption(Specs.value(WATER_FILL, "1450g", "What the mould holds of water."));
        spec.addOption(Specs.value(USUAL, "1520g=FILE", "What it usually takes, and of which formula."));
        spec.addOption(Specs.value(HOLD_BACK, "2%", "Share of the batch that stays in jugs; 0 unless given."));
        spec.addOption(Specs.value(CUT, "25mm", "Thickness of a bar; or 60x80mm for a slab cut in a grid."));
        spec.addOption(Specs.value(BLADE, "1mm", "What each cut takes away."));
        spec.addOption(Specs.value(ENDS, "5mm", "What is cut off each end."));
        spec.addOption(Specs.value(TRIM, "3mm", "What is planed off the top."));
    }

    /**
     * Reads them; what is wrong is noted among the options.
     *
     * @param purities of the alkalis at hand, for the formula a usual mass was measured with
     * @return the fill; of no use once anything was noted
     */
    Fill read(Purities purities) {
        options.onlyOneOf(TOTAL, OILS, BARS);
        options.onlyOneOf(BOX, TUBE, CAVITIES);
        Optional<Fill.Target> target = target();
        Optional<CutPlan> cut = cut();
        Optional<Shape> shape = shape(cut);
        Optional<Double> water = options.read(WATER_FILL, FillOptions::mass).map(WrittenMass::grams);
        Optional<Mould.Usual> usual = usual(purities);
        double holdBack = options.read(HOLD_BACK, FillOptions::holdBack).orElse(0.0);
        checkCut(cut, shape, target);
        Mould mould = new Mould(shape, water, usual);
        Fill.Target otherwise = mould.known() ? new Fill.FullMould() : new Fill.AsWritten();
        return new Fill(target.orElse(otherwise), mould, cut, holdBack);
    }

    /** The option to name when the fill as a whole cannot be; empty where none was typed. */
    String ruling() {
        return List.of(TOTAL, OILS, BARS, USUAL, WATER_FILL, BOX, TUBE, CAVITIES).stream()
                .filter(options::has)
                .findFirst()
                .orElse("");
    }

    private Optional<Fill.Target> target() {
        Optional<Fill.Target> total = options.read(TOTAL, FillOptions::mass).map(m -> new Fill.MouldMass(m.grams()));
        Optional<Fill.Target> oils = options.read(OILS, FillOptions::mass).map(m -> new Fill.OilMass(m.grams()));
        Optional<Fill.Target> bars = options.read(BARS, this::bars).map(b -> b);
        if (options.has(CURED) && !options.has(BARS)) {
            options.refuse(CURED, "says what the bars' mass is, but there are no bars", "give --bars too");
        }
        return total.or(() -> oils).or(() -> bars);
    }

    private Outcome<Fill.Bars> bars(String text) {
        return Fill.parseBars(text, options.has(CURED))
                .then(bars ->
                        within(bars, bars.count() * bars.grams(), LEAST_GRAMS, MOST_GRAMS, text, "1 g", "10000 kg"));
    }

    private static Outcome<WrittenMass> mass(String text) {
        return WrittenMass.parse(text)
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
                options.read(BOX, text -> Shape.parseLoaf(text).then(s -> held(grid ? slab(s) : s, text)));
        Optional<Shape> tube = options.read(TUBE, text -> Shape.parseTube(text).then(s -> held(s, text)));
        Optional<Shape> cavities =
                options.read(CAVITIES, text -> Shape.parseCavities(text).then(s -> held(s, text)));
        return box.or(() -> tube).or(() -> cavities);
    }

    private static Shape slab(Shape box) {
        Shape.Loaf loaf = (Shape.Loaf) box;
        return new Shape.Slab(loaf.length(), loaf.width(), loaf.height());
    }

    private static Outcome<Shape> held(Shape shape, String text) {
        return within(shape, shape.millilitres(), 1, MOST_MILLILITRES, text, "1 ml", "10000 l");
    }

    private Optional<CutPlan> cut() {
        Optional<CutPlan> plan = options.read(CUT, CutPlan::parse);
        double blade = loss(BLADE);
        double ends = loss(ENDS);
        double trim = loss(TRIM);
        return plan.map(p -> p.losing(blade, ends, trim));
    }

    private double loss(String option) {
        if (options.has(option) && !options.has(CUT)) {
            options.refuse(option, "says what a cut loses, but nothing is cut", "give --cut too");
        }
        return options.read(option, Length::parse).map(Length::millimetres).orElse(0.0);
    }

    /** A cut that cannot be is the cut's problem, not the whole sheet's. */
    private void checkCut(Optional<CutPlan> cut, Optional<Shape> shape, Optional<Fill.Target> target) {
        if (cut.isEmpty()) {
            return;
        }
        if (shape.isEmpty()) {
            if (!options.has(BOX) && !options.has(TUBE) && !options.has(CAVITIES)) {
                options.refuse(CUT, "a cut needs the mould's measures", "give --box or --tube too");
            }
            return;
        }
        if (cut.get().across().isPresent() && shape.get() instanceof Shape.Tube) {
            options.refuse(CUT, "a tube is not cut in a grid", "write one thickness, as in 25mm");
            return;
        }
        Optional<CutPlan.Cut> bars = options.keep(CUT, cut.get().of(shape.get()));
        if (bars.isPresent()
                && target.isPresent()
                && target.get() instanceof Fill.Bars asked
                && asked.count() != bars.get().bars()) {
            options.refuse(
                    BARS,
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

    private Optional<Mould.Usual> usual(Purities purities) {
        return options.read(USUAL, FillOptions::usualParts)
                .flatMap(parts -> options.keep(FormulaSource.read(parts.file(), folder))
                        .flatMap(source -> options.keep(lines(source, purities)))
                        .map(lines -> new Mould.Usual(parts.mass().grams(), lines)));
    }

    /** What {@code --usual} says. */
    private record UsualParts(WrittenMass mass, String file) {}

    private static Outcome<UsualParts> usualParts(String text) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            return Outcome.refused(
                    "'" + text + "' does not say which formula that was", "write it as 1520g=OTHER.yaml");
        }
        return mass(text.substring(0, equals)).then(m -> Outcome.ok(new UsualParts(m, text.substring(equals + 1))));
    }

    private static Outcome<BatchLines> lines(FormulaSource source, Purities purities) {
        return source.resolve(purities).then(resolved -> {
            Outcome<BatchLines> lines = BatchLines.of(resolved);
            return lines instanceof Outcome.Ok ? lines : new Outcome.Refused<>(source.located(lines.problems()));
        });
    }
}
