package lyewright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** No command at all: the workshop in a browser. */
final class PagesCommand {

    static final String PORT = "--port";
    static final String HOME = "--home";
    static final String BIND = "--bind";
    static final String NO_BROWSER = "--no-browser";

    /** For the launcher only, so no help names it. */
    static final String PRACTISE = "--practise";

    private static final int USUAL_PORT = 4310;
    private static final int HIGHEST_PORT = 65_535;

    private final Pages pages;

    PagesCommand(Pages pages) {
        this.pages = pages;
    }

    static void addTo(CommandSpec top) {
        top.addOption(Specs.value(PORT, "4310", "Where the pages are shown: http://localhost:4310 unless said."));
        top.addOption(Specs.value(HOME, "FOLDER", "The workshop's folder, where everything is kept."));
        top.addOption(Specs.value(BIND, "127.0.0.1", "The address to listen at; this computer's own only, for now."));
        top.addOption(Specs.flag(NO_BROWSER, "Do not open a browser."));
        top.addOption(OptionSpec.builder(PRACTISE)
                .arity("0")
                .type(boolean.class)
                .hidden(true)
                .build());
    }

    Answer answer(ParseResult typed, Path folder) {
        Optional<Integer> port = port(typed.matchedOptionValue(PORT, String.valueOf(USUAL_PORT)));
        if (port.isEmpty()) {
            return Answer.refuse(PORT, "is no port", "write a number from 1 to " + HIGHEST_PORT);
        }
        Optional<String> home = Optional.ofNullable(typed.matchedOptionValue(HOME, null));
        Pages.Order order = new Pages.Order(
                typed.matchedOptionValue(BIND, "127.0.0.1"),
                port.get(),
                home,
                folder,
                !typed.hasMatchedOption(NO_BROWSER),
                typed.hasMatchedOption(PRACTISE));
        Outcome<Pages.Shown> shown = pages.show(order);
        if (shown instanceof Outcome.Ok<Pages.Shown> ok) {
            return new Answer.Running(ok.value().told(), ok.value()::untilStopped);
        }
        List<Problem> problems =
                shown.problems().stream().map(p -> p.within("lyewright")).toList();
        return new Answer.Refused(problems);
    }

    private static Optional<Integer> port(String text) {
        try {
            int port = Integer.parseInt(text.strip());
            return port >= 0 && port <= HIGHEST_PORT ? Optional.of(port) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
