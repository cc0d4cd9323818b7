package lyewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.why.Reason;
import lyewright.why.Why;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code why}: a figure's formula, what was put in, where that comes from and how sure it is. */
final class WhyCommand implements Command {

    private static final String JSON = "--json";

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                "why",
                "Say why figures of a sheet are what they are: formula, what is put in, where that comes from, how sure.",
                "",
                "A figure is named as in 'lyewright sheet --json'; a part of the sheet, such as alkali or vessels, lists its"
                        + " figures; nothing lists what there is. How much is said as for 'lyewright sheet'.");
        spec.addPositional(Specs.file());
        spec.addPositional(PositionalParamSpec.builder()
                .index("1..*")
                .arity("0..*")
                .paramLabel("FIGURE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("Such as alkali.naohGrams.")
                .build());
        SheetOptions.addTo(spec);
        spec.addOption(Specs.flag(JSON, "Print it as JSON (docs/why.schema.json)."));
        Specs.footer(
                spec,
                "",
                "The formulas' notation is told in docs/guide/why.md.",
                "",
                "Examples:",
                "  lyewright why examples/tideline.yaml alkali.naohGrams --total 1500g",
                "  lyewright why examples/tideline.yaml --total 1500g",
                "",
                "Exit code: 0 fine, 2 refused, 3 the sheet is not to be made as it stands, 1 our own fault.");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<MakingSheet> made = SheetOptions.sheet(typed, folder);
        if (!(made instanceof Outcome.Ok<MakingSheet> ok)) {
            return new Answer.Refused(made.problems());
        }
        List<String> figures = typed.matchedPositionalValue(1, List.of());
        return answer(ok.value(), figures, typed.hasMatchedOption(JSON));
    }

    private static Answer answer(MakingSheet sheet, List<String> figures, boolean json) {
        Why why = Why.of(sheet);
        if (figures.isEmpty()) {
            return printed(sheet, json ? WhyJson.of(why.all()) : WhyText.overview(sheet, why.all()));
        }
        List<Reason> reasons = new ArrayList<>();
        List<Reason> listed = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (String figure : new LinkedHashSet<>(figures)) {
            List<Reason> inside = inside(why, figure);
            listed.addAll(inside);
            if (inside.isEmpty()) {
                Outcome<Reason> reason = why.reason(figure);
                reason.problems().forEach(problem -> problems.add(withList(problem)));
                if (reason instanceof Outcome.Ok<Reason> known) {
                    reasons.add(known.value());
                }
            }
        }
        if (!problems.isEmpty()) {
            return new Answer.Refused(problems);
        }
        if (json) {
            listed.addAll(reasons);
            return printed(sheet, WhyJson.of(listed));
        }
        return printed(
                sheet,
                (listed.isEmpty() ? "" : WhyText.list(sheet, listed))
                        + (reasons.isEmpty() ? "" : WhyText.of(sheet, reasons)));
    }

    private static Answer printed(MakingSheet sheet, String text) {
        return new Answer.Printed(text, sheet.stopped() ? Answer.STOPPED : Answer.FINE);
    }

    /** All figures of a part of the sheet, such as alkali or fade[3]; none where it is no part. */
    private static List<Reason> inside(Why why, String part) {
        List<String> paths = part.isBlank()
                ? List.of()
                : why.paths().stream()
                        .filter(path -> path.startsWith(part + ".") || path.startsWith(part + "["))
                        .toList();
        return paths.stream().map(path -> why.reason(path).orThrow()).toList();
    }

    /** Whoever does not know a figure's name is told where all names are. */
    private static Problem withList(Problem problem) {
        String remedy = problem.remedy();
        return new Problem(
                "why",
                problem.what(),
                remedy + (remedy.endsWith("?") ? " " : "; ") + "'lyewright why' with the file alone lists all figures");
    }
}
