package lyewright.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import lyewright.measure.Problem;

/** The command line's one door. */
public final class Cli {

    private static final int MOST_PROBLEMS = 20;

    private Cli() {}

    /**
     * Runs one command.
     *
     * @param args the command and its options
     * @param out where the answer goes, as UTF-8; nothing goes there when the command is refused
     * @param err where refusals go, a line for each problem
     * @param folder the folder that relative file names are in
     * @param pages what shows the workshop in a browser, when no command is named
     * @return the exit code: 0 fine, 1 our own fault, 2 refused, 3 printed but a caution says stop
     */
    public static int run(String[] args, PrintStream out, PrintStream err, Path folder, Pages pages) {
        return Fault.guard(args, err, () -> show(new CommandTree(pages).answer(args, folder), out, err));
    }

    private static int show(Answer answer, PrintStream out, PrintStream err) {
        if (answer instanceof Answer.Printed printed) {
            // in one piece; a reader who has gone away is noted by the stream and is no fault
            byte[] bytes = printed.text().getBytes(StandardCharsets.UTF_8);
            out.write(bytes, 0, bytes.length);
            out.flush();
            return printed.exit();
        }
        if (answer instanceof Answer.Running running) {
            out.print(running.text());
            out.flush();
            running.untilStopped().run();
            return Answer.FINE;
        }
        List<Problem> problems = ((Answer.Refused) answer).problems();
        StringBuilder text = new StringBuilder();
        problems.stream().limit(MOST_PROBLEMS).forEach(problem -> text.append(line(problem)));
        if (problems.size() > MOST_PROBLEMS) {
            text.append("and ").append(problems.size() - MOST_PROBLEMS).append(" more\n");
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        err.write(bytes, 0, bytes.length);
        err.flush();
        return Answer.REFUSED;
    }

    /** A problem on a line of its own, whatever was typed. */
    private static String line(Problem problem) {
        StringBuilder line = new StringBuilder();
        (problem.path() + ": " + problem.sentence())
                .codePoints()
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .forEach(line::appendCodePoint);
        return line.append('\n').toString();
    }
}
