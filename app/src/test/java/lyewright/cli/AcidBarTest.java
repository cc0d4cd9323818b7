package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.material.FattyAcid;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AcidBarTest {

    private static final FattyAcid OLEIC = Tables.bundled().fattyAcids().stream()
            .filter(acid -> acid.code().equals("C18:1"))
            .findFirst()
            .orElseThrow();

    private static String bar(double low, double percent, double high) {
        return AcidBar.of(new Share(OLEIC, low, percent, high), 100, 20);
    }

    @ParameterizedTest(name = "{0} to {2}, middle {1}")
    @CsvSource({
        "50, 60, 75, '==========<=--->    '",
        "0, 10, 20, '<=-->               '",
        "40, 40, 40, '========>           '",
        "0, 0, 0, '>                   '",
        // a scaled middle over its own high, and one under its own low
        "20, 60, 40, '====<===>===        '",
        "60, 40, 80, '========    <--->   '",
        "90, 100, 100, '==================<>'",
        "100, 100, 100, '===================>'"
    })
    void a_bar_shows_middle_low_and_high(double low, double percent, double high, String shown) {
        assertThat(bar(low, percent, high)).isEqualTo(shown);
    }

    @Test
    void every_bar_is_as_wide_as_asked_and_marks_its_high_end() {
        Random random = new Random(18);
        for (int i = 0; i < 1000; i++) {
            double high = random.nextDouble() * 100;
            double low = random.nextDouble() * high;
            String bar = bar(low, random.nextDouble() * 100, high);
            assertThat(bar).as("case %d", i).hasSize(20);
            assertThat(bar.chars().filter(c -> c == '>').count())
                    .as("case %d", i)
                    .isEqualTo(1);
            assertThat(bar.chars().filter(c -> c == '<').count())
                    .as("case %d", i)
                    .isLessThanOrEqualTo(1);
        }
    }
}
