package lyewright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.IntSupplier;

/** Our own faults: one sentence for the person, the rest in a log that can be sent. */
final class Fault {

    private Fault() {}

    /**
     * Runs something that should not fail.
     *
     * @param args what was typed, for the log
     * @param err where the sentence goes
     * @param command what to run
     * @return its exit code, or that of a fault
     */
    static int guard(String[] args, PrintStream err, IntSupplier command) {
        try {
            return command.getAsInt();
        } catch (RuntimeException | Error e) {
            byte[] line = sentence(e, args).getBytes(StandardCharsets.UTF_8);
            err.write(line, 0, line.length);
            err.flush();
            return Answer.OUR_FAULT;
        }
    }

    private static String sentence(Throwable fault, String[] args) {
        String start = "lyewright: something broke that should not have ("
                + fault.getClass().getSimpleName() + "); ";
        try {
            Path log = Files.createTempFile("lyewright-", ".log");
            Files.writeString(log, log(fault, args));
            return start + "look through " + log + " and send it to the makers\n";
        } catch (IOException e) {
            return start + "no log could be written to the folder for temporary files\n";
        }
    }

    private static String log(Throwable fault, String[] args) {
        StringWriter text = new StringWriter();
        PrintWriter log = new PrintWriter(text);
        log.println(VersionCommand.line());
        log.println(System.getProperty("os.name") + " " + System.getProperty("os.arch"));
        log.println("typed: " + String.join(" ", args));
        fault.printStackTrace(log);
        log.flush();
        return text.toString();
    }
}
