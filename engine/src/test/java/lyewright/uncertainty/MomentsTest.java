package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class MomentsTest {

    private static Moments of(double about, double... values) {
        Moments moments = new Moments(about);
        for (double value : values) {
            moments.add(value);
        }
        return moments;
    }

    /** 1001 values: the first, then 0.1 under and 0.1 over it by turns; the mean is the first, the deviation 0.1. */
    private static double[] alternating(String first, String under, String over) {
        double[] values = new double[1001];
        values[0] = Double.parseDouble(first);
        for (int i = 1; i < values.length; i++) {
            values[i] = Double.parseDouble(i % 2 == 1 ? under : over);
        }
        return values;
    }

    /** NIST StRD, NumAcc1: mean 10000002, standard deviation 1; data from memory. */
    @Test
    @Tag("validation")
    void three_large_numbers_keep_all_their_digits() {
        Moments moments = of(10_000_001, 10_000_001, 10_000_003, 10_000_002);

        assertThat(moments.mean()).isEqualTo(10_000_002);
        assertThat(moments.deviation()).isEqualTo(1);
    }

    /** NIST StRD, NumAcc2: mean 1.2, standard deviation 0.1; data from memory. */
    @Test
    @Tag("validation")
    void a_thousand_small_numbers_keep_fourteen_digits() {
        Moments moments = of(1.0, alternating("1.2", "1.1", "1.3"));

        assertThat(moments.mean()).isEqualTo(1.2, within(1e-14));
        assertThat(moments.deviation()).isEqualTo(0.1, within(1e-14));
    }

    /**
     * NIST StRD, NumAcc3: mean 1000000.2, standard deviation 0.1; data from memory. A double next to a million is 1e-10 away
     * from its neighbour, so ten digits of 0.1 are all there are.
     */
    @Test
    @Tag("validation")
    void a_thousand_large_numbers_keep_the_digits_that_doubles_have() {
        Moments moments = of(1_000_000.0, alternating("1000000.2", "1000000.1", "1000000.3"));

        assertThat(moments.mean()).isEqualTo(1_000_000.2, within(1e-9));
        assertThat(moments.deviation()).isEqualTo(0.1, within(1e-10));
    }

    /** NIST StRD, NumAcc4: mean 10000000.2, standard deviation 0.1; data from memory. */
    @Test
    @Tag("validation")
    void a_thousand_larger_numbers_keep_the_digits_that_doubles_have() {
        double[] values = alternating("10000000.2", "10000000.1", "10000000.3");
        Moments moments = of(10_000_001, values);

        assertThat(moments.mean()).isEqualTo(10_000_000.2, within(1e-8));
        assertThat(moments.deviation()).isEqualTo(0.1, within(1e-9));
        assertThat(of(0, values).deviation())
                .as("around zero, as sums of squares are mostly taken, they would be lost")
                .isNotCloseTo(0.1, within(1e-4));
    }

    @Test
    void of_two_heaps_put_together_they_are_those_of_all() {
        SplittableRandom random = new SplittableRandom(11);
        Moments all = new Moments(5);
        Moments one = new Moments(5);
        Moments other = new Moments(5);
        for (int i = 0; i < 1000; i++) {
            double value = 4 + 2 * random.nextDouble();
            all.add(value);
            (i % 3 == 0 ? one : other).add(value);
        }

        one.add(other);

        assertThat(one.mean()).isEqualTo(all.mean(), within(1e-12));
        assertThat(one.deviation()).isEqualTo(all.deviation(), within(1e-12));
    }

    @Test
    void a_single_value_has_no_deviation() {
        assertThat(of(3, 4).mean()).isEqualTo(4);
        assertThat(of(3, 4).deviation()).isZero();
    }

    @Test
    void equal_values_have_no_deviation_however_they_were_added_up() {
        assertThat(of(0.3, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1).deviation()).isZero();
    }

    @Test
    void the_mean_of_four_is_twice_as_sure_as_one() {
        // 1, 3, 1, 3: deviation √(4/3), of the mean √(1/3)
        Moments moments = of(2, 1, 3, 1, 3);

        assertThat(moments.deviation()).isEqualTo(Math.sqrt(4.0 / 3), within(1e-15));
        assertThat(moments.deviationOfMean()).isEqualTo(Math.sqrt(1.0 / 3), within(1e-15));
    }
}
