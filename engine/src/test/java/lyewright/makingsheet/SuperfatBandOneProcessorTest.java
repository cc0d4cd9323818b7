package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import lyewright.uncertainty.OtherMachine;
import org.junit.jupiter.api.Test;

/** A maker's old laptop and the workshop's new machine print the same sheet. */
class SuperfatBandOneProcessorTest {

    private static final String PARALLELISM = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=";

    @Test
    void one_processor_and_four_say_the_same_of_a_superfat_to_the_last_bit() throws IOException, InterruptedException {
        String here = DigitsOfBands.all();
        List<String> one = OtherMachine.lines(DigitsOfBands.class, "-XX:ActiveProcessorCount=1", PARALLELISM + 1);
        List<String> four = OtherMachine.lines(DigitsOfBands.class, "-XX:ActiveProcessorCount=4", PARALLELISM + 4);

        assertThat(one.get(0)).isEqualTo("1");
        assertThat(four.get(0)).isEqualTo("4");
        assertThat(one.get(1)).isEqualTo(here).contains("0x1.").contains("The superfat is");
        assertThat(four.get(1)).isEqualTo(here);
    }
}
