package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is drawn does not hang on the machine that draws it, and drawing more takes no more room. */
class OneProcessorAndManyTest {

    private static final String SMALL = "-Xmx20m";
    private static final String PARALLELISM = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=";

    @Test
    void one_processor_and_four_print_the_same_bits_in_little_room() throws IOException, InterruptedException {
        String here = DigitsOfDraws.all();
        List<String> one = OtherMachine.lines(
                DigitsOfDraws.class, SMALL, "-XX:+UseSerialGC", "-XX:ActiveProcessorCount=1", PARALLELISM + 1);
        List<String> four = OtherMachine.lines(
                DigitsOfDraws.class, SMALL, "-XX:+UseSerialGC", "-XX:ActiveProcessorCount=4", PARALLELISM + 4);

        assertThat(one.get(0)).isEqualTo("1");
        assertThat(four.get(0)).isEqualTo("4");
        assertThat(Long.parseLong(one.get(1)))
                .as("room for %d draws of 8 bytes is more than there is", DigitsOfDraws.MANY)
                .isLessThan(8 * DigitsOfDraws.MANY);
        assertThat(one.get(2)).isEqualTo(here).startsWith(DigitsOfDraws.MANY + " ");
        assertThat(four.get(2)).isEqualTo(here);
    }
}
