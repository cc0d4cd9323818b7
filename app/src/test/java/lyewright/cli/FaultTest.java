package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class FaultTest {

    @Test
    void our_own_fault_is_one_sentence_with_a_log_to_send() throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Fault.guard(
                new String[] {"sheet", "x.yaml"}, new PrintStream(err, true, StandardCharsets.UTF_8), () -> {
                    throw new IllegalStateException("the moon is full");
                });

        String said = err.toString(StandardCharsets.UTF_8);
        Matcher log = Pattern.compile("look through (\\S+\\.log) and send it").matcher(said);
        assertThat(exit).isEqualTo(1);
        assertThat(said).hasLineCount(1).contains("IllegalStateException").doesNotContain("\tat ");
        assertThat(log.find()).isTrue();
        Path file = Path.of(log.group(1));
        assertThat(Files.readString(file)).contains("the moon is full", "sheet x.yaml", "\tat ", "lyewright");
        Files.delete(file);
    }

    @Test
    void an_error_of_the_platform_is_told_the_same_way() throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Fault.guard(new String[0], new PrintStream(err, true, StandardCharsets.UTF_8), () -> {
            throw new NoClassDefFoundError("lyewright/Missing");
        });

        String said = err.toString(StandardCharsets.UTF_8);
        Matcher log = Pattern.compile("look through (\\S+\\.log) and send it").matcher(said);
        assertThat(exit).isEqualTo(1);
        assertThat(said).hasLineCount(1);
        assertThat(log.find()).isTrue();
        Files.delete(Path.of(log.group(1)));
    }

    @Test
    void a_reader_that_has_gone_away_is_no_fault() {
        PrintStream closedPipe = new PrintStream(
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException("Broken pipe");
                    }
                },
                false,
                StandardCharsets.UTF_8);
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = Cli.run(
                new String[] {"oils"},
                closedPipe,
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Path.of(""),
                Run.NO_PAGES);

        assertThat(exit).isZero();
        assertThat(err.size()).isZero();
        assertThat(closedPipe.checkError()).isTrue();
    }
}
