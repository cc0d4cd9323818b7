package lyewright.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import lyewright.measure.Outcome;

/** One command run in this process, with what it printed. */
record Run(int exit, String out, String err) {

    /** Tests of commands show no pages; those of the pages start the server themselves. */
    static final Pages NO_PAGES = order -> Outcome.refused("there are no pages here", "name a command");

    static Run in(Path folder, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Cli.run(
                args,
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                folder,
                NO_PAGES);
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Where there is no file to name. */
    static Run of(String... args) {
        return in(Path.of(""), args);
    }

    List<String> lines() {
        return out.lines().toList();
    }

    List<String> problems() {
        return err.lines().toList();
    }
}
