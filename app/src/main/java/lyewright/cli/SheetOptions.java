package lyewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lyewright.chemistry.BatchLines;
import lyewright.fill.Fill;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.material.NearestKey;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** What a sheet is made from: a formula file, how much, balances, vessels, purity. Shared by all commands that make one. */
final class SheetOptions {

    private static final String BALANCES = "--balances";
    private static final String VESSELS = "--vessels";
    private static final String PURITY = "--purity";

    private SheetOptions() {}

    static void addTo(CommandSpec spec) {
        FillOptions.addTo(spec);
        spec.addOption(Specs.value(
                BALANCES,
                "LIST",
                "Balances as name:capacity:step, with the accuracy class after it where it is known. Without:"
                        + " \"kitchen:5kg:1g,fine:500g:0.1g\"."));
        spec.addOption(Specs.value(
                VESSELS,
                "LIST",
                "Empty weights of vessels that are not tared, as \"lye jug:312g,oil pot:1480g,jug kelp:210g\"."));
        spec.addOption(Specs.value(PURITY, "LIST", "How pure the alkali is: naoh=98.5,koh=90."));
    }

    /**
     * Makes the sheet.
     *
     * @param typed what was typed, its first word the file, its command that of the remedies
     * @param folder the folder that relative file names are in
     * @return the sheet, or every problem with its place as it is printed
     */
    static Outcome<MakingSheet> sheet(ParseResult typed, Path folder) {
        Options options = new Options(typed);
        FillOptions fills = new FillOptions(options, folder);
        Purities purities = options.read(PURITY, Purities::parse).orElse(Purities.ASSUMED);
        Fill fill = fills.read(purities);
        Equipment tared = options.read(BALANCES, Equipment::parseBalances).orElse(Equipment.USUAL);
        Equipment equipment = options.read(VESSELS, tared::withVessels).orElse(tared);
        String file = typed.matchedPositionalValue(0, "");
        Optional<FormulaSource> source = options.keep(FormulaSource.read(file, folder));
        Optional<ResolvedFormula> formula = source.flatMap(s -> options.keep(s.resolve(purities)));
        formula.ifPresent(f -> checkVessels(options, equipment, f));
        if (source.isEmpty() || formula.isEmpty() || !options.problems().isEmpty()) {
            return new Outcome.Refused<>(options.problems());
        }
        if (fill.target() instanceof Fill.AsWritten
                && formula.get().writtenOilsGrams().isEmpty()) {
            return Outcome.refused(new Problem(
                    file + ":1:1",
                    "the formula is in percent, so it does not say how much to make",
                    "add --total 1500g, or another way of 'lyewright sheet --help'"));
        }
        return sheet(source.get(), formula.get(), fill, equipment, fills.ruling());
    }

    private static Outcome<MakingSheet> sheet(
            FormulaSource source, ResolvedFormula formula, Fill fill, Equipment equipment, String ruling) {
        Outcome<BatchLines> lines = BatchLines.of(formula);
        if (!lines.problems().isEmpty()) {
            return new Outcome.Refused<>(source.located(lines.problems()));
        }
        Outcome<MakingSheet> made = MakingSheet.of(formula, fill, equipment);
        return made instanceof Outcome.Ok ? made : new Outcome.Refused<>(placed(made.problems(), source, ruling));
    }

    /** A problem without a path is one of how much was asked; all others stand in the file. */
    private static List<Problem> placed(List<Problem> problems, FormulaSource source, String ruling) {
        List<Problem> placed = new ArrayList<>();
        for (Problem problem : problems) {
            placed.addAll(
                    problem.path().isEmpty() && !ruling.isEmpty()
                            ? List.of(problem.within(ruling))
                            : source.located(List.of(problem)));
        }
        return placed;
    }

    /** A weight for a vessel that the sheet has no use for is a slip of the pen, and its readings would be wrong. */
    private static void checkVessels(Options options, Equipment equipment, ResolvedFormula formula) {
        Set<String> known = new TreeSet<>();
        known.add(Vessel.Kind.LYE_JUG.word());
        known.add(Vessel.Kind.OIL_POT.word());
        formula.portions().forEach(portion -> known.add("jug " + portion.name()));
        for (String name : new TreeSet<>(equipment.vesselGrams().keySet())) {
            if (!known.contains(name)) {
                List<String> near = NearestKey.among(name, known);
                options.refuse(
                        VESSELS,
                        "the sheet has no vessel '" + name + "'",
                        near.isEmpty()
                                ? "it has " + String.join(", ", known)
                                : "did you mean " + String.join(" or ", near) + "?");
            }
        }
    }
}
