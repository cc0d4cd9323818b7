package lyewright.cli;

import java.nio.file.Path;
import lyewright.formula.FormulaFile;
import lyewright.measure.Outcome;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code formula show}: the normal form, the same formula as Lyewright itself writes it. */
final class ShowCommand implements Command {

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command("show", "Print a formula in its normal form, as Lyewright writes it.");
        spec.addPositional(Specs.file());
        Specs.footer(spec, "", "Example:", "  lyewright formula show examples/tideline.yaml");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        Outcome<FormulaSource> read = FormulaSource.read(typed.matchedPositionalValue(0, ""), folder);
        return read instanceof Outcome.Ok<FormulaSource> source
                ? Answer.print(FormulaFile.write(source.value().formula()))
                : new Answer.Refused(read.problems());
    }
}
