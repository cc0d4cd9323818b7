package lyewright.cli;

import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParseResult;

/** Puts command specifications together; built by hand, since reading annotations costs time at every start. */
final class Specs {

    private static final int WIDTH = 100;

    private Specs() {}

    /** A command with its help option. */
    static CommandSpec command(String name, String... description) {
        CommandSpec spec = CommandSpec.create()
                .name(name)
                .addOption(OptionSpec.builder("-h", "--help")
                        .usageHelp(true)
                        .description("Show this help.")
                        .build());
        UsageMessageSpec usage = spec.usageMessage();
        usage.width(WIDTH).sortOptions(false).description(plain(description)).abbreviateSynopsis(true);
        return spec;
    }

    /** Ends a command's help with lines as they stand. */
    static void footer(CommandSpec spec, String... lines) {
        spec.usageMessage().footer(plain(lines));
    }

    /** Help texts are formats, in which a percent sign must be doubled. */
    private static String[] plain(String... lines) {
        return Arrays.stream(lines).map(line -> line.replace("%", "%%")).toArray(String[]::new);
    }

    /** The formula file that most commands take. */
    static PositionalParamSpec file() {
        return PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .required(true)
                .paramLabel("FILE")
                .type(String.class)
                .description("The formula file.")
                .build();
    }

    /** The name of a material, which may be several words. */
    static PositionalParamSpec name() {
        return PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .paramLabel("NAME")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("A key, or part of a key or name.")
                .build();
    }

    /** That name as it was typed, its words put together again; empty if there is none. */
    static String nameOf(ParseResult typed) {
        List<String> words = typed.matchedPositionalValue(0, List.of());
        return String.join(" ", words).strip();
    }

    /** An option with a value. */
    static OptionSpec value(String name, String label, String... description) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .arity("1")
                .type(String.class)
                .description(plain(description))
                .build();
    }

    /** An option without a value. */
    static OptionSpec flag(String name, String... description) {
        return OptionSpec.builder(name)
                .arity("0")
                .type(boolean.class)
                .description(plain(description))
                .build();
    }
}
