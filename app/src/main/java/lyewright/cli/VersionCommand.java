package lyewright.cli;

import java.nio.file.Path;
import lyewright.material.Tables;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code version}. */
final class VersionCommand implements Command {

    @Override
    public CommandSpec spec() {
        return Specs.command("version", "Say which Lyewright, which tables and which Java this is.");
    }

    @Override
    public Answer answer(ParseResult typed, Path folder) {
        return Answer.print(line() + "\ntables " + Tables.bundled().edition() + "\n");
    }

    /** Which program on which Java. */
    static String line() {
        String version = VersionCommand.class.getPackage().getImplementationVersion();
        return "lyewright " + (version == null ? "(not packaged)" : version) + ", Java "
                + System.getProperty("java.version");
    }
}
