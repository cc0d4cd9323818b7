package lyewright.cli;

import java.nio.file.Path;
import java.util.List;
import lyewright.formula.FormulaFile;
import lyewright.formula.NotebookText;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code formula read}: a recipe typed as it stands in a notebook, printed as the formula file it comes to. */
final class ReadCommand implements Command {

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Specs.command(
                "read",
                "Make a formula file of a recipe typed as it stands in a notebook: its name, then one thing on a line.");
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .required(true)
                .paramLabel("NOTEBOOK")
                .type(String.class)
                .description("The text: coconut oil 350 g, soda 71 g or superfat 5 %, water 155 g and so on.")
                .build());
        Specs.footer(
                spec,
                "",
                "Examples:",
                "  lyewright formula read examples/notebook.txt",
                "  lyewright formula read notebook.txt > recipe.yaml");
        return spec;
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        String file = typed.matchedPositionalValue(0, "");
        Outcome<byte[]> bytes = FormulaSource.bytes(file, folder);
        if (!(bytes instanceof Outcome.Ok<byte[]> ok)) {
            return new Answer.Refused(bytes.problems());
        }
        NotebookText.Read read = NotebookText.read(ok.value(), Tables.bundled());
        return read.formula().isPresent()
                ? Answer.print(FormulaFile.write(read.formula().get()))
                : new Answer.Refused(located(file, read.troubles()));
    }

    private static List<Problem> located(String file, List<NotebookText.Trouble> troubles) {
        return troubles.stream()
                .map(trouble -> new Problem(
                        file + ":" + trouble.place().line() + ":"
                                + trouble.place().column(),
                        trouble.problem().what(),
                        trouble.problem().remedy()))
                .toList();
    }
}
