package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs a program of the tests in a Java of its own, as if on a machine of another size. */
public final class OtherMachine {

    private OtherMachine() {}

    /**
     * What a program prints there.
     *
     * @param program its class, with a main method
     * @param options such as {@code -Xmx20m}
     * @return its lines
     */
    public static List<String> lines(Class<?> program, String... options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        // for so short a run the better compiler only costs time
        command.add("-XX:TieredStopAtLevel=1");
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
        Process java = new ProcessBuilder(command).redirectErrorStream(true).start();
        try {
            String printed = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(java.waitFor(60, TimeUnit.SECONDS)).as(printed).isTrue();
            assertThat(java.exitValue()).as(printed).isZero();
            return printed.lines().toList();
        } finally {
            java.destroyForcibly();
        }
    }
}
