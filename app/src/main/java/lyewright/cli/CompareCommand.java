package lyewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lyewright.fill.Fill;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code compare}: what changes from one formula to another. */
final class CompareCommand implements Command {

    /** What a formula in percent is made with when nothing is said, grams of oils. */
    private static final double USUAL_OILS = 1000;

    private static final String BALANCES = "--balances";
    private static final String PURITY = "--purity";
    private static final String JSON = "--json";

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                "compare",
                "Say what changes from formula A to formula B: oils, alkali, water, acids, keeping, cautions.",
                "",
                "Without a way of saying how much, each is as written, in percent for 1000 g of oils.");
        spec.addPositional(file(0, "A.yaml", "The formula file it is from."));
        spec.addPositional(file(1, "B.yaml", "The formula file it is to."));
        FillOptions.addTo(spec);
        spec.addOption(Specs.value(BALANCES, "LIST", "Balances as name:capacity:step, as for a sheet."));
        spec.addOption(Specs.value(PURITY, "LIST", "How pure the alkali is, of both: naoh=98.5,koh=90."));
        spec.addOption(Specs.flag(JSON, "Print every figure compared as JSON (docs/compare.schema.json)."));
        Specs.footer(
                spec,
                "",
                "Examples:",
                "  lyewright compare examples/plain-castile.yaml examples/kitchen-notebook.yaml",
                "  lyewright compare old.yaml new.yaml --bars 10x110g --cured",
                "",
                "Exit code: 0 fine, 2 refused, 3 printed but one is not to be made as it stands, 1 our own fault.");
        return spec;
    }

    private static PositionalParamSpec file(int index, String label, String description) {
        return PositionalParamSpec.builder()
                .index(String.valueOf(index))
                .arity("1")
                .required(true)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Options options = new Options(typed);
        FillOptions fills = new FillOptions(options, folder);
        Purities purities = options.read(PURITY, Purities::parse).orElse(Purities.ASSUMED);
        Fill asked = fills.read(purities);
        boolean said = !(asked.target() instanceof Fill.AsWritten);
        Fill inPercent =
                said ? asked : new Fill(new Fill.OilMass(USUAL_OILS), asked.mould(), asked.cut(), asked.holdBack());
        Equipment equipment = options.read(BALANCES, Equipment::parseBalances).orElse(Equipment.USUAL);
        List<Compared> both = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            options.keep(FormulaSource.read(typed.matchedPositionalValue(i, ""), folder))
                    .flatMap(source ->
                            options.keep(source.resolve(purities)).map(formula -> new Compared(source, formula)))
                    .ifPresent(both::add);
        }
        if (!options.problems().isEmpty()) {
            return new Answer.Refused(options.problems());
        }
        List<MakingSheet> sheets = new ArrayList<>();
        both.forEach(one -> options.keep(one.sheet(one.inMasses() ? asked : inPercent, equipment, fills.ruling()))
                .ifPresent(sheets::add));
        if (!options.problems().isEmpty()) {
            return new Answer.Refused(options.problems());
        }
        return print(Comparison.of(sheets.get(0), sheets.get(1)), both, said, options.has(JSON));
    }

    private static Answer print(Comparison comparison, List<Compared> both, boolean said, boolean json) {
        boolean stopped = comparison.a().stopped() || comparison.b().stopped();
        String text = json
                ? CompareJson.of(comparison)
                : CompareText.of(
                        comparison,
                        both.get(0).source().typed(),
                        both.get(1).source().typed(),
                        said);
        return new Answer.Printed(text, stopped ? Answer.STOPPED : Answer.FINE);
    }

    /** One of the two formulas. */
    private record Compared(FormulaSource source, ResolvedFormula formula) {

        boolean inMasses() {
            return formula.formula().inMasses();
        }

        Outcome<MakingSheet> sheet(Fill fill, Equipment equipment, String ruling) {
            Outcome<MakingSheet> made = MakingSheet.of(formula, fill, equipment);
            return made instanceof Outcome.Ok
                    ? made
                    : new Outcome.Refused<>(made.problems().stream()
                            .map(problem -> placed(problem, ruling))
                            .toList());
        }

        /** A problem without a path is one of how much was asked, but only for this formula; others stand in its file. */
        private Problem placed(Problem problem, String ruling) {
            return problem.path().isEmpty() && !ruling.isEmpty()
                    ? new Problem(ruling, source.typed() + ": " + problem.what(), problem.remedy())
                    : source.located(List.of(problem)).get(0);
        }
    }
}
