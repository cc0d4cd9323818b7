package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class HistogramTest {

    private static final double[] SHARES = {0, 0.001, 0.025, 0.05, 0.1, 0.25, 0.5, 0.9, 0.975, 0.999, 1};

    private static Histogram of(double low, double high, double... values) {
        Histogram histogram = new Histogram(low, high);
        histogram.count(values, values.length);
        return histogram;
    }

    private static double bin(double low, double high) {
        return (high - low) / Histogram.BINS;
    }

    private static double[] sample(SplittableRandom random, int size, double low, double high) {
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            // to the fourth power, so that they crowd at the low end
            values[i] = low + (high - low) * Math.pow(random.nextDouble(), 4);
        }
        return values;
    }

    @Test
    void a_quantile_is_within_a_bin_of_the_values_own() {
        SplittableRandom random = new SplittableRandom(1);
        for (int round = 0; round < 60; round++) {
            double low = -50 + 100 * random.nextDouble();
            double high = low + 0.001 + 20 * random.nextDouble();
            double[] values = sample(random, 1 + random.nextInt(3000), low, high);
            Histogram histogram = of(low, high, values);
            Arrays.sort(values);
            for (double share : SHARES) {
                int place = (int) Math.max(0, Math.ceil(share * values.length) - 1);
                assertThat(histogram.quantile(share))
                        .as("round %d: %s of %d values", round, share, values.length)
                        .isEqualTo(values[place], within(bin(low, high) * 1.000001));
            }
        }
    }

    @Test
    void the_share_below_a_value_is_within_a_bin_of_the_values_own() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 40; round++) {
            double low = -5 + 10 * random.nextDouble();
            double high = low + 0.001 + 20 * random.nextDouble();
            double[] values = sample(random, 1 + random.nextInt(3000), low, high);
            Histogram histogram = of(low, high, values);
            for (double at :
                    new double[] {low - 1, low, (low + high) / 2, low + 0.01 * (high - low), high, high + 1, 0}) {
                double near = bin(low, high) * 1.000001;
                assertThat(histogram.shareBelow(at))
                        .as("round %d at %s", round, at)
                        .isBetween(shareBelow(values, at - near), shareBelow(values, at + near));
            }
            assertThat(histogram.shareBelow(0)).isEqualTo(shareBelow(values, 0));
        }
    }

    private static double shareBelow(double[] values, double at) {
        return Arrays.stream(values).filter(value -> value < at).count() / (double) values.length;
    }

    @Test
    void quantiles_never_fall_as_their_share_rises() {
        SplittableRandom random = new SplittableRandom(2);
        Histogram histogram = of(0, 1, sample(random, 500, 0, 1));
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 1000; i++) {
            double quantile = histogram.quantile(i / 1000.0);
            assertThat(quantile).as("%d in 1000", i).isGreaterThanOrEqualTo(before);
            before = quantile;
        }
    }

    @Test
    void the_outermost_quantiles_are_the_least_and_the_greatest_value() {
        Histogram histogram = of(0, 10, 3.25, 7.125, 4);

        assertThat(histogram.quantile(0)).isEqualTo(3.25);
        assertThat(histogram.quantile(1)).isEqualTo(7.125);
    }

    @Test
    void what_lies_beyond_the_ends_is_counted_and_reached() {
        Histogram histogram = of(0, 10, -400, 2, 5, 8, 900);

        assertThat(histogram.total()).isEqualTo(5);
        assertThat(histogram.quantile(0)).isEqualTo(-400);
        assertThat(histogram.quantile(0.5)).isEqualTo(5, within(bin(0, 10)));
        assertThat(histogram.quantile(1)).isEqualTo(900);
    }

    @Test
    void the_share_below_zero_is_counted_to_the_last_value() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 200; round++) {
            double low = -10 * random.nextDouble();
            double high = 10 * random.nextDouble();
            double[] values = new double[1 + random.nextInt(400)];
            int below = 0;
            for (int i = 0; i < values.length; i++) {
                // some of them within a hair of zero
                values[i] = (random.nextBoolean() ? 1 : 1e-9) * (low + (high - low) * random.nextDouble());
                below += values[i] < 0 ? 1 : 0;
            }
            assertThat(of(low, high, values).shareBelowZero())
                    .as("round %d", round)
                    .isEqualTo((double) below / values.length);
        }
    }

    @Test
    void zero_itself_is_not_below_zero() {
        assertThat(of(-1, 1, 0.0, -0.0, 0.5).shareBelowZero()).isZero();
    }

    @Test
    void none_or_all_lie_below_zero_where_the_range_does_not_reach_it() {
        assertThat(of(5, 6, 5, 5.5, 6).shareBelowZero()).isZero();
        assertThat(of(-6, -5, -5, -5.5, -6).shareBelowZero()).isEqualTo(1);
        assertThat(of(1e9, 1e9 + 1, 1e9).shareBelowZero()).isZero();
        assertThat(of(-1e9 - 1, -1e9, -1e9).shareBelowZero()).isEqualTo(1);
    }

    @Test
    void a_value_beyond_the_ends_counts_on_its_own_side_of_zero() {
        assertThat(of(5, 6, -1, 5.5, 5.6, 5.7).shareBelowZero()).isEqualTo(0.25);
        assertThat(of(-6, -5, 1, -5.5, -5.6, -5.7).shareBelowZero()).isEqualTo(0.75);
    }

    @Test
    void a_single_value_is_every_quantile() {
        Histogram histogram = of(2, 4, 3.3, 3.3, 3.3);

        for (double share : SHARES) {
            assertThat(histogram.quantile(share)).isEqualTo(3.3);
        }
        assertThat(histogram.shortest(0.95)).isEqualTo(new Interval(3.3, 3.3));
    }

    @Test
    void two_heaps_added_are_one() {
        SplittableRandom random = new SplittableRandom(4);
        double[] ones = sample(random, 700, -1, 4);
        double[] others = sample(random, 300, 0, 5);
        double[] all = Arrays.copyOf(ones, 1000);
        System.arraycopy(others, 0, all, 700, 300);
        Histogram sum = of(-1, 5, ones);
        Histogram other = sum.empty();
        other.count(others, others.length);

        sum.add(other);

        Histogram together = of(-1, 5, all);
        assertThat(sum.total()).isEqualTo(1000);
        assertThat(sum.shareBelowZero()).isEqualTo(together.shareBelowZero());
        assertThat(sum.shortest(0.9)).isEqualTo(together.shortest(0.9));
        for (double share : SHARES) {
            assertThat(sum.quantile(share)).isEqualTo(together.quantile(share));
        }
    }

    @Test
    void the_shortest_interval_is_never_wider_than_the_symmetric_one() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 40; round++) {
            double[] values = new double[1 + random.nextInt(60)];
            for (int i = 0; i < values.length; i++) {
                // few of them and wide bins between, so that where a bin begins matters
                values[i] = random.nextInt(40) / 4.0 + 0.01 * random.nextDouble();
            }
            Histogram histogram = of(0, 2000, values);
            for (double coverage : new double[] {0.5, 0.9, 0.95}) {
                double outside = (1 - coverage) / 2;
                double symmetric = histogram.quantile(1 - outside) - histogram.quantile(outside);
                assertThat(histogram.shortest(coverage).width())
                        .as("round %d: %s of %d values", round, coverage, values.length)
                        .isLessThanOrEqualTo(symmetric * (1 + 1e-12));
            }
        }
    }

    @Test
    void the_shortest_interval_holds_what_it_says() {
        SplittableRandom random = new SplittableRandom(6);
        for (int round = 0; round < 40; round++) {
            double[] values = sample(random, 2000, 0, 1);
            Interval shortest = of(0, 1, values).shortest(0.95);
            double bin = bin(0, 1);
            long held = Arrays.stream(values)
                    .filter(v -> v >= shortest.low() - bin && v <= shortest.high() + bin)
                    .count();
            assertThat(held).as("round %d", round).isGreaterThanOrEqualTo(1900);
        }
    }

    @Test
    void the_shortest_interval_of_a_heap_at_one_end_begins_there() {
        // density falls from 0 on: the shortest 95 % begins at 0; of the power 4, (0.95)^4 below
        SplittableRandom random = new SplittableRandom(7);
        Interval shortest = of(0, 1, sample(random, 100_000, 0, 1)).shortest(0.95);

        assertThat(shortest.low()).isEqualTo(0, within(0.001));
        assertThat(shortest.high()).isEqualTo(Math.pow(0.95, 4), within(0.01));
    }
}
