package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BandScaleTest {

    private static String[] drawn(double worst, double low, double high, double sheet) {
        return BandScale.of(worst, low, high, sheet).orElseThrow().lines().toArray(String[]::new);
    }

    @Test
    void a_band_over_zero_has_its_ends_its_sheet_and_its_worst_in_place() {
        assertThat(drawn(1, 2, 8, 5)).containsExactly("""
                0       1       2       3       4       5       6       7       8 %
                |       x       [=======================#=======================]""".split("\n"));
    }

    /** Where alkali begins to be left over is what the drawing is for. */
    @Test
    void a_band_that_crosses_zero_shows_where_zero_is() {
        assertThat(drawn(-7, -4, 2, -1)).containsExactly("""
                -8           -6           -4           -2           0            2 %
                .      x     .            [===================#=====|============]""".split("\n"));
    }

    @Test
    void a_band_without_width_is_one_mark() {
        assertThat(drawn(3, 3, 3, 3)[1].replaceAll("[|. ]", "")).isEqualTo("#");
        assertThat(drawn(0, 0, 0, 0)[1]).startsWith("#");
    }

    @Test
    void the_sheet_stands_before_an_end_of_the_band() {
        assertThat(drawn(1, 2, 8, 2)[1]).contains("#====").doesNotContain("[");
        assertThat(drawn(1, 2, 8, 8)[1]).endsWith("====#").doesNotContain("]");
        assertThat(drawn(1, 2, 8, 1.5)[1]).contains("x   #   [");
    }

    /** With more than twice the alkali there is nothing to look at. */
    @Test
    void a_band_far_below_zero_is_not_drawn() {
        assertThat(BandScale.of(-90_000, -89_000, -88_000, -88_500)).isEmpty();
        assertThat(BandScale.of(-101, 1, 5, 3)).isEmpty();
        assertThat(BandScale.of(-100, -90, -80, -85)).isPresent();
    }

    @Test
    void whatever_is_drawn_is_never_wide_and_never_empty() {
        Random random = new Random(131);
        for (int i = 0; i < 20_000; i++) {
            double reach = Math.pow(10, 3 * random.nextDouble() - 1);
            double low = Math.min(100, reach * (random.nextDouble() - 0.5));
            double high = Math.min(100, low + reach * random.nextDouble());
            double worst = low - reach * random.nextDouble();
            double sheet = Math.min(100, low + reach * (random.nextDouble() - 0.3));
            if (worst < -100 || sheet < -100) {
                assertThat(BandScale.of(worst, low, high, sheet))
                        .as("case %d", i)
                        .isEmpty();
                continue;
            }
            String[] lines = drawn(worst, low, high, sheet);
            assertThat(lines).as("case %d", i).allMatch(line -> line.length() <= 76);
            assertThat(lines[1]).as("case %d", i).matches("[^#]*#[^#]*").doesNotEndWith(" ");
            assertThat(lines[1].matches(".*[|#x\\[\\]].*")).as("case %d", i).isTrue();
        }
    }
}
