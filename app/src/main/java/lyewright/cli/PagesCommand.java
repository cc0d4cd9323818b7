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
    static final String DEVICES = "--devices";
    static final String DEVICES_PORT = "--devices-port";
    static final String SIGN_IN = "--sign-in";
    static final String ADDRESS = "--address";
    static final String CERTIFICATE = "--certificate";

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
        top.addOption(Specs.flag(NO_BROWSER, "Do not open a browser."));
        top.addOption(Specs.flag(
                DEVICES,
                "Open the door for other devices of your network, as Settings, People and devices does. Only",
                "devices that you let in with a code come through."));
        top.addOption(Specs.value(DEVICES_PORT, "4311", "Where that door is; the port after --port unless said."));
        top.addOption(Specs.value(
                CERTIFICATE,
                "FILE",
                "Your own certificate and its key, a PKCS #12 file, for whichever door leads to the network; its",
                "password in LYEWRIGHT_CERTIFICATE_PASSWORD."));
        top.addOption(
                Specs.flag(SIGN_IN, "For a server: everybody signs in with name and password, at this computer too."));
        top.addOption(Specs.value(
                ADDRESS, "URL", "What others type to get here, as in https://soap.example, where it is another name."));
        top.addOption(Specs.value(
                BIND, "127.0.0.1", "The address to listen at; another than this computer's own with --sign-in only."));
        top.addOption(OptionSpec.builder(PRACTISE)
                .arity("0")
                .type(boolean.class)
                .hidden(true)
                .build());
    }

    Answer answer(ParseResult typed, Path folder) {
        Optional<Integer> port = port(typed.matchedOptionValue(PORT, String.valueOf(USUAL_PORT)));
        Optional<String> devices = said(typed, DEVICES_PORT);
        Optional<Integer> devicesPort = devices.flatMap(PagesCommand::port);
        if (port.isEmpty() || devices.isPresent() != devicesPort.isPresent()) {
            String which = port.isEmpty() ? PORT : DEVICES_PORT;
            return Answer.refuse(which, "is no port", "write a number from 1 to " + HIGHEST_PORT);
        }
        Pages.Others others = new Pages.Others(
                typed.hasMatchedOption(DEVICES),
                devicesPort,
                typed.hasMatchedOption(SIGN_IN),
                said(typed, ADDRESS),
                said(typed, CERTIFICATE));
        Pages.Order order = new Pages.Order(
                typed.matchedOptionValue(BIND, "127.0.0.1"),
                port.get(),
                others,
                said(typed, HOME),
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

    private static Optional<String> said(ParseResult typed, String option) {
        return Optional.ofNullable(typed.matchedOptionValue(option, null));
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
