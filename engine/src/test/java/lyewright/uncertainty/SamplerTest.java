package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Distribution.Triangular;
import org.apache.commons.rng.RestorableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.RandomProviderDefaultState;
import org.junit.jupiter.api.Test;

/** What is drawn lies as its distribution function says, worked out here for each kind. */
class SamplerTest {

    private static final int DRAWS = 200_000;

    /** Farthest that so many draws may be from their distribution function, 1 in 1000 (Kolmogorov 1933: 1.95 ÷ √n). */
    private static final double FARTHEST = 1.95 / Math.sqrt(DRAWS);

    private static double[][] drawn(long block, int draws, Distribution... distributions) {
        List<Input> inputs =
                Stream.of(distributions).map(d -> new Input("X", d)).toList();
        Sampler sampler = new Sampler(inputs, draws);
        sampler.draw(MonteCarlo.random(block), draws);
        return sampler.columns();
    }

    /** The greatest distance between the share of draws below a value and the share that should lie there. */
    private static double distance(double[] values, DoubleUnaryOperator below) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double distance = 0;
        for (int i = 0; i < sorted.length; i++) {
            double should = below.applyAsDouble(sorted[i]);
            distance = Math.max(distance, should - (double) i / sorted.length);
            distance = Math.max(distance, (double) (i + 1) / sorted.length - should);
        }
        return distance;
    }

    private static void assertDrawn(Distribution distribution, DoubleUnaryOperator below) {
        double[] values = drawn(0, DRAWS, distribution)[0];

        assertThat(distance(values, below)).as("%s", distribution).isLessThan(FARTHEST);
        double u = distribution.standardUncertainty();
        assertThat(Arrays.stream(values).average().orElseThrow())
                .as("mean of %s", distribution)
                .isEqualTo(distribution.mean(), within(3.3 * u / Math.sqrt(DRAWS)));
        double squares = Arrays.stream(values)
                .map(v -> (v - distribution.mean()) * (v - distribution.mean()))
                .average()
                .orElseThrow();
        assertThat(Math.sqrt(squares)).as("u of %s", distribution).isEqualTo(u, within(0.01 * u));
        assertThat(Arrays.stream(values).min().orElseThrow()).isGreaterThanOrEqualTo(distribution.least(6));
        assertThat(Arrays.stream(values).max().orElseThrow()).isLessThanOrEqualTo(distribution.most(6));
    }

    @Test
    void rectangular_inputs_lie_evenly() {
        assertDrawn(new Rectangular(248, 265), x -> (x - 248) / 17);
    }

    @Test
    void trapezoidal_inputs_are_flat_and_fall_to_both_ends() {
        assertDrawn(new Trapezoidal(135, 1, 0.5), x -> trapezoid(x - 135, 1, 0.5));
        assertDrawn(new Trapezoidal(0, 0.02, 0.5), x -> trapezoid(x, 0.5, 0.02));
    }

    /** The wider half width first: a rise over {@code 2 × narrow}, a flat top, a fall. */
    private static double trapezoid(double x, double wide, double narrow) {
        double height = 1 / (2 * wide);
        double outer = wide + narrow;
        double inner = wide - narrow;
        if (x > 0) {
            return 1 - trapezoid(-x, wide, narrow);
        }
        double slope = height / (2 * narrow);
        return x < -inner
                ? slope * (x + outer) * (x + outer) / 2
                : slope * (2 * narrow) * (2 * narrow) / 2 + height * (x + inner);
    }

    @Test
    void triangular_inputs_rise_to_their_mode_and_fall_from_it() {
        assertDrawn(new Triangular(0, 1, 5), x -> triangle(x, 0, 1, 5));
        assertDrawn(new Triangular(-3, 3, 3), x -> triangle(x, -3, 3, 3));
        assertDrawn(new Triangular(2, 2, 4), x -> triangle(x, 2, 2, 4));
    }

    private static double triangle(double x, double low, double mode, double high) {
        return x < mode
                ? (x - low) * (x - low) / ((high - low) * (mode - low))
                : 1 - (high - x) * (high - x) / ((high - low) * (high - mode));
    }

    @Test
    void normal_inputs_lie_as_the_bell_does() {
        assertDrawn(new Normal(189.5, 0.5), x -> bell((x - 189.5) / 0.5));
    }

    /** The normal distribution function by its series about zero (Abramowitz and Stegun, 26.2.11). */
    private static double bell(double z) {
        if (Math.abs(z) > 6) {
            return z < 0 ? 0 : 1;
        }
        double term = z;
        double sum = z;
        for (int k = 1; k < 200; k++) {
            term *= z * z / (2 * k + 1);
            sum += term;
        }
        return 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    @Test
    void the_test_itself_would_notice_a_distribution_a_hundredth_too_wide() {
        double[] values = drawn(0, DRAWS, new Rectangular(0, 1.01))[0];

        assertThat(distance(values, x -> Math.min(1, x))).isGreaterThan(FARTHEST);
    }

    @Test
    void inputs_of_every_kind_come_out_in_their_own_places() {
        double[][] values = drawn(
                3,
                1000,
                new Normal(1000, 1),
                new Exact(2),
                new Rectangular(30, 31),
                new Triangular(40, 40.5, 41),
                new Trapezoidal(50.5, 0.25, 0.25),
                new Exact(6),
                new Rectangular(70, 71),
                new Normal(8000, 1));

        assertBetween(994.0, 1006.0, values[0]);
        assertThat(values[1]).containsOnly(2);
        assertBetween(30.0, 31.0, values[2]);
        assertBetween(40.0, 41.0, values[3]);
        assertBetween(50.0, 51.0, values[4]);
        assertThat(values[5]).containsOnly(6);
        assertBetween(70.0, 71.0, values[6]);
        assertBetween(7994.0, 8006.0, values[7]);
    }

    private static void assertBetween(double low, double high, double[] values) {
        assertThat(Arrays.stream(values).min().orElseThrow()).isGreaterThanOrEqualTo(low);
        assertThat(Arrays.stream(values).max().orElseThrow()).isLessThanOrEqualTo(high);
    }

    @Test
    void inputs_have_nothing_to_do_with_each_other_whatever_their_kind() {
        Distribution[] kinds = {
            new Normal(0, 1),
            new Normal(0, 1),
            new Rectangular(-1, 1),
            new Rectangular(-1, 1),
            new Trapezoidal(0, 1, 1),
            new Trapezoidal(0, 1, 0.1),
            new Triangular(-1, 0, 1)
        };
        double[][] values = drawn(5, DRAWS, kinds);
        for (int i = 0; i < kinds.length; i++) {
            for (int j = 0; j < i; j++) {
                assertThat(correlation(values[i], values[j]))
                        .as("inputs %d and %d", i, j)
                        .isEqualTo(0, within(4 / Math.sqrt(DRAWS)));
            }
        }
    }

    private static double correlation(double[] one, double[] other) {
        double together = 0;
        double ones = 0;
        double others = 0;
        for (int i = 0; i < one.length; i++) {
            together += one[i] * other[i];
            ones += one[i] * one[i];
            others += other[i] * other[i];
        }
        return together / Math.sqrt(ones * others);
    }

    @Test
    void no_two_blocks_draw_the_same_numbers() {
        Set<Long> firsts = new HashSet<>();
        int blocks = 5000;
        for (long block = -1; block < blocks - 1; block++) {
            UniformRandomProvider random = MonteCarlo.random(block);
            for (int i = 0; i < 4; i++) {
                firsts.add(random.nextLong());
            }
        }

        assertThat(firsts).hasSize(4 * blocks);
    }

    @Test
    void no_two_blocks_start_from_a_common_word() {
        // a generator's state is four words; next to each other blocks would else begin in states that overlap
        int blocks = 5000;
        Set<Long> words = new HashSet<>();
        for (long block = -1; block < blocks - 1; block++) {
            for (long word : words(MonteCarlo.random(block))) {
                words.add(word);
            }
        }

        assertThat(words).hasSize(4 * blocks);
    }

    /** The four words of its state, which are the first thing that it saves of itself. */
    private static long[] words(UniformRandomProvider random) {
        RandomProviderDefaultState state =
                (RandomProviderDefaultState) ((RestorableUniformRandomProvider) random).saveState();
        LongBuffer saved =
                ByteBuffer.wrap(state.getState()).order(ByteOrder.LITTLE_ENDIAN).asLongBuffer();
        return new long[] {saved.get(0), saved.get(1), saved.get(2), saved.get(3)};
    }

    @Test
    void the_first_draws_of_the_blocks_lie_evenly_too() {
        int blocks = 20_000;
        double[] firsts = new double[blocks];
        for (int block = 0; block < blocks; block++) {
            firsts[block] = MonteCarlo.random(block).nextDouble();
        }

        assertThat(distance(firsts, x -> x)).isLessThan(1.95 / Math.sqrt(blocks));
        List<Double> products = new ArrayList<>();
        for (int block = 1; block < blocks; block++) {
            products.add(12 * (firsts[block] - 0.5) * (firsts[block - 1] - 0.5));
        }
        assertThat(products.stream().mapToDouble(p -> p).average().orElseThrow())
                .as("one block's against the next one's")
                .isEqualTo(0, within(4 / Math.sqrt(blocks)));
    }
}
