package lyewright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchLines;
import lyewright.fill.Fill;
import lyewright.fill.FillText;
import lyewright.fill.Mould;
import lyewright.formula.Purities;
import lyewright.measure.Outcome;
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
        spec.addOption(Specs.value(HOLD_BACK, "2%", "Share of the batch that stays in jugs; 1 percent unless given."));
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
        Outcome<Fill> fill = FillText.read(typed(), text -> usual(text, purities));
        return options.keep(fill).orElse(Fill.AS_WRITTEN);
    }

    private FillText.Typed typed() {
        return new FillText.Typed() {
            @Override
            public Optional<String> text(FillText.Part part) {
                return options.has(called(part)) ? Optional.of(options.text(called(part))) : Optional.empty();
            }

            @Override
            public String called(FillText.Part part) {
                return option(part);
            }
        };
    }

    private static String option(FillText.Part part) {
        return switch (part) {
            case TOTAL -> TOTAL;
            case OILS -> OILS;
            case BARS -> BARS;
            case CURED -> CURED;
            case BOX -> BOX;
            case TUBE -> TUBE;
            case CAVITIES -> CAVITIES;
            case WATER_FILL -> WATER_FILL;
            case USUAL -> USUAL;
            case HOLD_BACK -> HOLD_BACK;
            case CUT -> CUT;
            case BLADE -> BLADE;
            case ENDS -> ENDS;
            case TRIM -> TRIM;
        };
    }

    /** The option to name when the fill as a whole cannot be; empty where none was typed. */
    String ruling() {
        return List.of(TOTAL, OILS, BARS, USUAL, WATER_FILL, BOX, TUBE, CAVITIES).stream()
                .filter(options::has)
                .findFirst()
                .orElse("");
    }

    private Outcome<Mould.Usual> usual(String text, Purities purities) {
        return usualParts(text)
                .then(parts -> FormulaSource.read(parts.file(), folder)
                        .then(source -> lines(source, purities))
                        .then(lines -> Outcome.ok(new Mould.Usual(parts.mass().grams(), lines))));
    }

    /** What {@code --usual} says. */
    private record UsualParts(WrittenMass mass, String file) {}

    private static Outcome<UsualParts> usualParts(String text) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            return Outcome.refused(
                    "'" + text + "' does not say which formula that was", "write it as 1520g=OTHER.yaml");
        }
        return FillText.mass(text.substring(0, equals))
                .then(m -> Outcome.ok(new UsualParts(m, text.substring(equals + 1))));
    }

    private static Outcome<BatchLines> lines(FormulaSource source, Purities purities) {
        return source.resolve(purities).then(resolved -> {
            Outcome<BatchLines> lines = BatchLines.of(resolved);
            return lines instanceof Outcome.Ok ? lines : new Outcome.Refused<>(source.located(lines.problems()));
        });
    }
}
