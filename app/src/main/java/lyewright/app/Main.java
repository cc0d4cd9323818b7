package lyewright.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import lyewright.cli.Cli;

/** Starts Lyewright. */
public final class Main {

    private Main() {}

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param args the command and its options
     */
    public static void main(String[] args) {
        // always UTF-8, whatever the platform's own: names come in any script
        StandardOutput stdout = new StandardOutput(new FileOutputStream(FileDescriptor.out));
        PrintStream out = new PrintStream(stdout, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int exit = Cli.run(args, out, err, Path.of(""), new OwnPages());
        out.flush();
        if (stdout.lost()) {
            err.print("lyewright: the answer could not be written; check that there is room where it goes\n");
            exit = Math.max(exit, 1);
        }
        System.exit(exit);
    }
}
