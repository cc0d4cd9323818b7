package lyewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import lyewright.material.NearestKey;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** All commands, and the way from what was typed to the one that answers. */
final class CommandTree {

    private final Map<CommandSpec, Command> commands = new HashMap<>();
    private final CommandLine root;
    private final PagesCommand pages;

    CommandTree(Pages pages) {
        this.pages = new PagesCommand(pages);
        CommandSpec top = Specs.command(
                "lyewright",
                "The workshop of a soap maker: from a recipe and a mould to a making sheet.",
                "It computes; it does not assess. Selling soap needs qualified people and what local law asks for.");
        top.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Say which Lyewright this is.")
                .build());
        PagesCommand.addTo(top);
        top.usageMessage()
                .synopsisHeading("%n")
                .synopsisSubcommandLabel("[COMMAND]")
                .descriptionHeading("%n")
                .optionListHeading("%n")
                .commandListHeading("%nCommands:%n");
        Specs.footer(
                top,
                "",
                "Alone it shows the workshop in a browser: recipes, making sheets, equipment.",
                "",
                "On the command line begin with",
                "  lyewright sheet examples/tideline.yaml --total 1500g",
                "and see 'lyewright help sheet' for every way of saying how much.");
        add(top, new SheetCommand());
        add(top, new WhyCommand());
        add(top, new CompareCommand());
        CommandSpec formula = Specs.command("formula", "Look at a formula file, or make one of a notebook.");
        add(formula, new ReadCommand());
        add(formula, new CheckCommand());
        add(formula, new ShowCommand());
        add(formula, new SuperfatCommand());
        top.addSubcommand("formula", formula);
        add(top, new OilsCommand());
        add(top, new AdditivesCommand());
        add(top, new BackupCommand());
        add(top, new RestoreCommand());
        add(top, new VerifyCommand());
        add(top, new PasswordCommand(PasswordCommand::typed));
        add(top, new ImportStockCommand());
        add(top, new ExportStockCommand());
        add(top, new VersionCommand());
        top.addSubcommand("help", help());
        root = new CommandLine(top)
                .setExpandAtFiles(false)
                .setInterpolateVariables(false)
                .setPosixClusteredShortOptionsAllowed(false);
    }

    private void add(CommandSpec parent, Command command) {
        CommandSpec spec = command.spec();
        commands.put(spec, command);
        parent.addSubcommand(spec.name(), spec);
    }

    private static CommandSpec help() {
        CommandSpec spec = Specs.command("help", "Show how a command is typed, with examples.");
        spec.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .paramLabel("COMMAND")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("Such as sheet, or formula check.")
                .build());
        return spec;
    }

    /** Parses what was typed and lets its command answer. */
    Answer answer(String[] args, Path folder) {
        ParseResult typed;
        try {
            typed = root.parseArgs(args);
        } catch (ParameterException e) {
            return refuse(e);
        }
        while (typed.hasSubcommand()) {
            typed = typed.subcommand();
        }
        CommandSpec spec = typed.commandSpec();
        if (typed.isUsageHelpRequested()) {
            return usage(spec);
        }
        if (typed.isVersionHelpRequested()) {
            return Answer.print(VersionCommand.line() + "\n");
        }
        if (spec.name().equals("help")) {
            return help(typed);
        }
        if (spec.parent() == null) {
            return pages.answer(typed, folder);
        }
        Command command = commands.get(spec);
        return command == null ? usage(spec) : command.answer(typed, folder);
    }

    private static Answer usage(CommandSpec spec) {
        return Answer.print(spec.commandLine().getUsageMessage(Ansi.OFF));
    }

    private Answer help(ParseResult typed) {
        List<String> words = typed.matchedPositionalValue(0, List.of());
        CommandLine at = root;
        for (String word : words) {
            CommandLine next = at.getSubcommands().get(word);
            if (next == null) {
                return Answer.refuse("help", "there is no command '" + word + "'", didYouMean(word, at));
            }
            at = next;
        }
        return usage(at.getCommandSpec());
    }

    private static Answer refuse(ParameterException e) {
        CommandLine at = e.getCommandLine();
        String name = at.getCommandSpec().qualifiedName();
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched.getUnmatched().get(0), at);
        }
        if (e instanceof OverwrittenOptionException twice) {
            return Answer.refuse(place(twice.getOverwritten()), "is given twice", "give it once");
        }
        if (e instanceof MissingParameterException missing) {
            return missing(missing.getMissing(), e, at);
        }
        if (e instanceof MaxValuesExceededException) {
            return Answer.refuse(name, "more is given than it takes", seeHelp(at));
        }
        return Answer.refuse(name, lowerFirst(String.valueOf(e.getMessage())), seeHelp(at));
    }

    private static Answer unmatched(String word, CommandLine at) {
        String name = at.getCommandSpec().qualifiedName();
        if (word.startsWith("-") && word.length() > 1) {
            String bare = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
            return Answer.refuse(bare, "is not an option of '" + name + "'", didYouMean(bare, at));
        }
        if (at.getSubcommands().isEmpty()) {
            return Answer.refuse(name, "'" + word + "' is one word too many", seeHelp(at));
        }
        return Answer.refuse(name, "there is no command '" + word + "'", didYouMean(word, at));
    }

    private static Answer missing(List<ArgSpec> missing, ParameterException e, CommandLine at) {
        ArgSpec first = missing.isEmpty() ? e.getArgSpec() : missing.get(0);
        if (first instanceof OptionSpec option) {
            return Answer.refuse(
                    option.longestName(),
                    "needs a value",
                    "write it as " + option.longestName() + " " + option.paramLabel());
        }
        String label = first == null ? "something" : first.paramLabel();
        return Answer.refuse(
                at.getCommandSpec().qualifiedName(),
                "the " + label + " is missing",
                "write it as " + at.getCommandSpec().qualifiedName() + " " + positions(at, label));
    }

    private static String positions(CommandLine at, String otherwise) {
        List<String> labels = at.getCommandSpec().positionalParameters().stream()
                .map(ArgSpec::paramLabel)
                .toList();
        return labels.isEmpty() ? otherwise : String.join(" ", labels);
    }

    private static String place(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String didYouMean(String word, CommandLine at) {
        TreeSet<String> known = new TreeSet<>();
        if (word.startsWith("-")) {
            known.addAll(at.getCommandSpec().optionsMap().keySet());
        } else {
            known.addAll(at.getSubcommands().keySet());
        }
        List<String> near = new ArrayList<>(NearestKey.among(word, known));
        return near.isEmpty() ? seeHelp(at) : "did you mean " + String.join(" or ", near) + "?";
    }

    private static String seeHelp(CommandLine at) {
        return "see '" + at.getCommandSpec().qualifiedName() + " --help'";
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
