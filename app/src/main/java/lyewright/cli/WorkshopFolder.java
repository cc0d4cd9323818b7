package lyewright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.Home;
import lyewright.records.Place;
import lyewright.records.Places;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** What the commands that keep a whole workshop have in common: which workshop, and which file. */
final class WorkshopFolder {

    /** What a database's pool has to say is of no use on a terminal; held here, since a logger that nobody holds forgets it. */
    private static final Logger POOL = Logger.getLogger("com.zaxxer.hikari");

    private WorkshopFolder() {}

    static void addTo(CommandSpec spec, String file) {
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .required(true)
                .paramLabel("FILE")
                .type(String.class)
                .description(file)
                .build());
        addTo(spec);
    }

    static void addTo(CommandSpec spec) {
        spec.addOption(Specs.value(PagesCommand.HOME, "FOLDER", "The workshop's folder, where everything is kept."));
    }

    /** The file that was named. */
    static Path file(ParseResult typed, Path folder) {
        return folder.resolve(typed.matchedPositionalValue(0, ""));
    }

    /** The workshop: of the folder that was named, before the command or after it. */
    static Outcome<Place> place(ParseResult typed, Path folder) {
        POOL.setLevel(Level.WARNING);
        ParseResult before = typed.commandSpec().parent().commandLine().getParseResult();
        Optional<String> named = Optional.ofNullable(typed.<String>matchedOptionValue(PagesCommand.HOME, null))
                .or(() -> Optional.ofNullable(before.<String>matchedOptionValue(PagesCommand.HOME, null)));
        return Places.of(Home.resolve(named, folder), System.getenv()).then(places -> Outcome.ok(places.mine()));
    }

    /** A refusal of a workshop or of a file, named. */
    static Answer refused(String place, List<Problem> problems) {
        return new Answer.Refused(problems.stream()
                .map(problem -> new Problem(place, problem.what(), problem.remedy()))
                .toList());
    }
}
