package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Stream;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Distribution.Triangular;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonteCarloTest {

    private static final Model FIRST = x -> x[0];

    private static List<Input> inputs(Distribution... distributions) {
        return Stream.of(distributions).map(d -> new Input("X", d)).toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 9_999, 10_000, 10_001, 40_000, 40_001, 123_457})
    void as_many_are_drawn_as_asked_whether_or_not_they_fill_their_blocks(long draws) {
        LongAdder asked = new LongAdder();
        Model counting = x -> {
            asked.increment();
            return x[0];
        };
        MonteCarlo.draw(inputs(new Rectangular(0, 1)), counting, 10_000);
        long beside = asked.sumThenReset() - 10_000;

        Drawn drawn = MonteCarlo.draw(inputs(new Rectangular(0, 1)), counting, draws);

        assertThat(drawn.draws()).isEqualTo(draws);
        assertThat(asked.sum() - beside)
                .as("beside the pilot, which is as long for all")
                .isEqualTo(draws);
    }

    @Test
    void a_single_draw_says_nothing_of_the_spread() {
        Drawn drawn = MonteCarlo.draw(inputs(new Rectangular(0, 1)), FIRST, 1);

        assertThat(drawn.standardUncertainty()).isZero();
        assertThat(drawn.mean()).isBetween(0.0, 1.0);
        assertThat(drawn.interval(0.95)).isEqualTo(new Interval(drawn.quantile(0.5), drawn.quantile(0.5)));
    }

    @Test
    void the_same_run_twice_is_the_same_to_the_last_digit() {
        List<Input> inputs = inputs(new Normal(5, 1), new Rectangular(1, 2), new Triangular(0, 1, 4));
        Model model = x -> x[0] * x[1] - x[2];

        Drawn one = MonteCarlo.draw(inputs, model, 50_000);
        Drawn other = MonteCarlo.draw(inputs, model, 50_000);

        assertThat(other.interval(0.95)).isEqualTo(one.interval(0.95));
        assertThat(other.shortest(0.95)).isEqualTo(one.shortest(0.95));
        assertThat(other.mean()).isEqualTo(one.mean());
        assertThat(other.standardUncertainty()).isEqualTo(one.standardUncertainty());
        assertThat(other.chanceBelowZero()).isEqualTo(one.chanceBelowZero());
    }

    @Test
    void a_block_is_not_drawn_twice() {
        // the same 10,000 values again and again would leave the mean where the first block has it
        List<Input> inputs = inputs(new Rectangular(-1, 1));
        double first = MonteCarlo.draw(inputs, FIRST, 10_000).mean();
        double many = MonteCarlo.draw(inputs, FIRST, 1_000_000).mean();

        assertThat(many).isNotEqualTo(first).isEqualTo(0, within(4 / Math.sqrt(3 * 1e6)));
    }

    @Test
    void drawing_until_the_ends_have_settled_leaves_them_within_the_tolerance() {
        Random random = new Random(21);
        for (int round = 0; round < 20; round++) {
            double middle = 20 * random.nextDouble() - 10;
            double u = 0.1 + 3 * random.nextDouble();
            double tolerance = u * (0.01 + 0.05 * random.nextDouble());
            Drawn drawn = MonteCarlo.drawUntil(inputs(new Normal(middle, u)), FIRST, tolerance, 10_000_000);

            // twice a standard deviation is under the tolerance: 19 ends of 20 lie within it, none twice as far
            assertThat(drawn.interval(0.95).low())
                    .as("round %d", round)
                    .isEqualTo(middle - Distribution.NORMAL_95 * u, within(2 * tolerance));
            assertThat(drawn.interval(0.95).high())
                    .as("round %d", round)
                    .isEqualTo(middle + Distribution.NORMAL_95 * u, within(2 * tolerance));
        }
    }

    @Test
    void a_finer_tolerance_draws_more() {
        List<Input> inputs = inputs(new Normal(0, 1));
        long coarse = MonteCarlo.drawUntil(inputs, FIRST, 0.05, 10_000_000).draws();
        long fine = MonteCarlo.drawUntil(inputs, FIRST, 0.005, 10_000_000).draws();

        assertThat(coarse).isGreaterThanOrEqualTo(MonteCarlo.BLOCK);
        // the square of ten, give or take what the blocks themselves say of their spread
        assertThat(fine).isBetween(20 * coarse, 500 * coarse);
    }

    @Test
    void a_wide_output_may_be_left_less_settled() {
        List<Input> narrow = inputs(new Normal(0, 1));
        List<Input> wide = inputs(new Normal(0, 100));
        long same = MonteCarlo.drawUntil(narrow, FIRST, 0.02, 10_000_000).draws();

        assertThat(MonteCarlo.drawUntil(narrow, FIRST, 0.02, 0.01, 10_000_000).draws())
                .as("a hundredth of 1 is less than 0.02")
                .isEqualTo(same);
        Drawn drawn = MonteCarlo.drawUntil(wide, FIRST, 0.02, 0.01, 10_000_000);
        assertThat(drawn.draws()).isLessThan(1_000_000);
        assertThat(drawn.interval(0.95).high()).isEqualTo(100 * Distribution.NORMAL_95, within(2.0));
    }

    @Test
    void drawing_stops_at_the_most_even_where_nothing_settles() {
        long most = 100_000;
        Drawn drawn = MonteCarlo.drawUntil(inputs(new Normal(0, 1)), FIRST, 1e-9, most);

        assertThat(drawn.draws()).isBetween(most, most + (long) MonteCarlo.WAVE * MonteCarlo.BLOCK);
    }

    @Test
    void what_is_known_comes_out_as_it_is() {
        Drawn drawn = MonteCarlo.draw(inputs(new Exact(3), new Exact(4)), x -> Math.hypot(x[0], x[1]), 10_000);

        assertThat(drawn.mean()).isEqualTo(5);
        assertThat(drawn.standardUncertainty()).isZero();
        assertThat(drawn.interval(0.95)).isEqualTo(new Interval(5, 5));
        assertThat(drawn.shortest(0.95)).isEqualTo(new Interval(5, 5));
        assertThat(drawn.chanceBelowZero()).isZero();
    }

    @Test
    void what_is_known_to_be_zero_or_below_is_that() {
        assertThat(MonteCarlo.draw(inputs(new Exact(0)), FIRST, 100).chanceBelowZero())
                .isZero();
        assertThat(MonteCarlo.draw(inputs(new Exact(-1e-12)), FIRST, 100).chanceBelowZero())
                .isEqualTo(1);
        assertThat(MonteCarlo.draw(inputs(new Exact(0)), FIRST, 100).interval(0.95))
                .isEqualTo(new Interval(0, 0));
    }

    @Test
    void an_output_with_a_ceiling_heaps_up_there() {
        // what is over 100 stays at 100: half of the draws
        Drawn drawn = MonteCarlo.draw(inputs(new Rectangular(90, 110)), x -> Math.min(100, x[0]), 200_000);

        // to a bin of the histogram: a few thousandths of the spread
        assertThat(drawn.quantile(0.6)).isEqualTo(100, within(0.02));
        assertThat(drawn.interval(0.95).low()).isEqualTo(90.5, within(0.1));
        assertThat(drawn.interval(0.95).high()).isEqualTo(100, within(0.02));
        assertThat(drawn.quantile(1)).isEqualTo(100);
    }

    @Test
    void an_output_that_hardly_ever_leaves_its_place_is_still_counted() {
        // 1 in 10,000 is -1000, which the pilot may well not have seen
        Drawn drawn = MonteCarlo.draw(inputs(new Rectangular(0, 1)), x -> x[0] < 1e-4 ? -1000 : 7, 1_000_000);

        assertThat(drawn.chanceBelowZero()).isEqualTo(1e-4, within(5e-5));
        assertThat(drawn.interval(0.95).low()).isEqualTo(7, within(1e-9));
        assertThat(drawn.interval(0.95).high()).isEqualTo(7, within(1e-9));
        assertThat(drawn.quantile(0)).isEqualTo(-1000);
    }

    @Test
    void intervals_nest_as_certificates_narrow() {
        Interval wider = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        for (double expanded : new double[] {4, 2, 1, 0.5, 0.25}) {
            List<Input> inputs = inputs(
                    Distribution.fromCertificate(256.5, expanded, 2),
                    new Rectangular(97, 99),
                    new Trapezoidal(1000, 2, 0.5));
            Interval here = MonteCarlo.drawUntil(
                            inputs, x -> 100 * (1 - 2486.26 * x[1] / x[0] / x[2]), 0.005, 10_000_000)
                    .interval(0.95);

            assertThat(here.low()).as("± %s", expanded).isGreaterThan(wider.low());
            assertThat(here.high()).as("± %s", expanded).isLessThan(wider.high());
            wider = here;
        }
    }

    @Test
    void both_ways_agree_where_the_model_is_a_straight_line_through_normal_inputs() {
        Random random = new Random(22);
        for (int round = 0; round < 6; round++) {
            List<Input> inputs = new ArrayList<>();
            double[] slopes = new double[2 + random.nextInt(8)];
            for (int i = 0; i < slopes.length; i++) {
                slopes[i] = 4 * random.nextDouble() - 2;
                inputs.add(new Input("X" + i, new Normal(100 * random.nextDouble(), 3 * random.nextDouble())));
            }
            Model line = x -> {
                double sum = 7;
                for (int i = 0; i < slopes.length; i++) {
                    sum += slopes[i] * x[i];
                }
                return sum;
            };

            LinearPropagation linear = LinearPropagation.of(inputs, line);
            Drawn drawn = MonteCarlo.draw(inputs, line, 400_000);

            double u = linear.standardUncertainty();
            Interval straight = linear.interval(Distribution.NORMAL_95);
            assertThat(drawn.mean()).as("round %d", round).isEqualTo(linear.value(), within(0.006 * u));
            assertThat(drawn.standardUncertainty()).as("round %d", round).isEqualTo(u, within(0.005 * u));
            // a 2.5 % quantile of so many draws is sure to 0.0042 u
            assertThat(drawn.interval(0.95).low()).as("round %d", round).isEqualTo(straight.low(), within(0.015 * u));
            assertThat(drawn.interval(0.95).high()).as("round %d", round).isEqualTo(straight.high(), within(0.015 * u));
        }
    }

    @Test
    void both_intervals_hold_what_they_say_of_a_bent_output() {
        // of a square of a rectangular input from 0 to 1 a share p lies below p²: shortest 95 % from 0 to 0.9025
        Drawn drawn = MonteCarlo.draw(inputs(new Rectangular(0, 1)), x -> x[0] * x[0], 1_000_000);

        assertThat(drawn.interval(0.95).low()).isEqualTo(0.025 * 0.025, within(0.0005));
        assertThat(drawn.interval(0.95).high()).isEqualTo(0.975 * 0.975, within(0.001));
        assertThat(drawn.shortest(0.95).low()).isEqualTo(0, within(0.0005));
        assertThat(drawn.shortest(0.95).high()).isEqualTo(0.95 * 0.95, within(0.002));
        assertThat(drawn.shortest(0.95).width()).isLessThan(drawn.interval(0.95).width());
    }
}
