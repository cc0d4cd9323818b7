package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.LinearPropagation.Contribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of the guides. Their own texts were not opened: figures are those that third parties' tests of the same
 * examples assert, from memory where that is said, and worked out again where that is said (docs/sources.md).
 */
@Tag("validation")
class PublishedExamplesTest {

    /** So many draws leave about 0.004 of doubt in an end of an interval whose standard uncertainty is 2. */
    private static final long DRAWS = 2_000_000;

    private static final double SUM_OF_FOUR = 0.012;

    private static final Model SUM = x -> x[0] + x[1] + x[2] + x[3];

    private static List<Input> inputs(Distribution... distributions) {
        return Stream.of(distributions).map(d -> new Input("X", d)).toList();
    }

    private static Rectangular around(double middle, double standardUncertainty) {
        double half = Math.sqrt(3) * standardUncertainty;
        return new Rectangular(middle - half, middle + half);
    }

    /** JCGM 101:2008, 9.2.2 and its Table 2, as third parties assert it. */
    @Test
    void four_normal_inputs_add_up_to_a_normal_one() {
        List<Input> inputs = inputs(new Normal(0, 1), new Normal(0, 1), new Normal(0, 1), new Normal(0, 1));

        Drawn drawn = MonteCarlo.draw(inputs, SUM, DRAWS);

        assertThat(drawn.mean()).isEqualTo(0, within(SUM_OF_FOUR));
        assertThat(drawn.standardUncertainty()).isEqualTo(2, within(SUM_OF_FOUR));
        assertThat(drawn.interval(0.95).low()).isEqualTo(-3.92, within(SUM_OF_FOUR));
        assertThat(drawn.interval(0.95).high()).isEqualTo(3.92, within(SUM_OF_FOUR));
        Interval linear = LinearPropagation.of(inputs, SUM).interval(Distribution.NORMAL_95);
        assertThat(linear.low()).isEqualTo(-3.92, within(0.0005));
        assertThat(linear.high()).isEqualTo(3.92, within(0.0005));
    }

    /** JCGM 101:2008, 9.2.3: 3.88 as third parties assert it; the exact end, 3.879406741, worked out by convolution. */
    @Test
    void four_rectangular_inputs_reach_less_far_than_a_normal_one() {
        List<Input> inputs = inputs(around(0, 1), around(0, 1), around(0, 1), around(0, 1));

        Drawn drawn = MonteCarlo.draw(inputs, SUM, DRAWS);

        assertThat(drawn.standardUncertainty()).isEqualTo(2, within(SUM_OF_FOUR));
        assertThat(drawn.interval(0.95).low()).isEqualTo(-3.879406741, within(SUM_OF_FOUR));
        assertThat(drawn.interval(0.95).high()).isEqualTo(3.879406741, within(SUM_OF_FOUR));
        assertThat(LinearPropagation.of(inputs, SUM)
                        .interval(Distribution.NORMAL_95)
                        .high())
                .as("the linear answer")
                .isEqualTo(3.92, within(0.0005));
    }

    /** JCGM 101:2008, 9.2.4: u 10.1 and 17.0 from memory, recomputed as 10.1489 and 17.01 to 17.02; linear 19.8915. */
    @Test
    void where_one_rectangular_input_rules_a_linear_answer_reaches_too_far() {
        List<Input> inputs = inputs(around(0, 1), around(0, 1), around(0, 1), around(0, 10));

        Drawn drawn = MonteCarlo.draw(inputs, SUM, DRAWS);
        LinearPropagation linear = LinearPropagation.of(inputs, SUM);

        assertThat(drawn.standardUncertainty()).isEqualTo(Math.sqrt(103), within(0.01));
        assertThat(drawn.interval(0.95).low()).isEqualTo(-17.0, within(0.05));
        assertThat(drawn.interval(0.95).high()).isEqualTo(17.0, within(0.05));
        assertThat(linear.standardUncertainty()).isEqualTo(Math.sqrt(103), within(1e-6));
        assertThat(linear.interval(Distribution.NORMAL_95).high()).isEqualTo(19.8915, within(0.0005));
        assertThat(linear.contributions().get(3).percentOfVariance()).isEqualTo(10_000.0 / 103, within(1e-4));
    }

    /**
     * JCGM 101:2008, 9.3, calibration of a mass: δm in mg. From memory: by first order u 0.0539 (published 0.0540), drawn u
     * 0.0754 and shortest interval [1.0834, 1.3825]; recomputed with 20 million draws 0.0755 and [1.0840, 1.3832].
     */
    @Test
    void the_first_order_of_a_mass_calibration_is_over_a_quarter_too_small() {
        List<Input> inputs = inputs(
                new Normal(100_000.000, 0.050),
                new Normal(1.234, 0.020),
                new Rectangular(1.10, 1.30),
                new Rectangular(7000, 9000),
                new Rectangular(7950, 8050));
        Model model = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;

        LinearPropagation linear = LinearPropagation.of(inputs, model);
        Drawn drawn = MonteCarlo.draw(inputs, model, DRAWS);

        assertThat(linear.value()).isEqualTo(1.2340, within(1e-9));
        assertThat(linear.standardUncertainty()).isEqualTo(0.0539, within(0.00005));
        assertThat(linear.interval(Distribution.NORMAL_95).low()).isEqualTo(1.1285, within(0.0001));
        assertThat(linear.interval(Distribution.NORMAL_95).high()).isEqualTo(1.3395, within(0.0001));
        assertThat(drawn.mean()).isEqualTo(1.234, within(0.0005));
        assertThat(drawn.standardUncertainty()).isEqualTo(0.07545, within(0.0001));
        // either end of a shortest interval is far less settled than its length
        Interval shortest = drawn.shortest(0.95);
        assertThat(shortest.low()).isEqualTo(1.0834, within(0.002));
        assertThat(shortest.high()).isEqualTo(1.3825, within(0.002));
        assertThat(shortest.width()).isEqualTo(1.3832 - 1.0840, within(0.001));
    }

    /**
     * NPL report DEM-ES-011, 9.2, ln x of a rectangular x, as third parties assert it and recomputed; the exact shortest
     * interval follows from a density that only rises: from ln 0.15 to ln 1.1.
     */
    @Test
    void the_logarithm_of_a_wide_rectangular_input_is_nothing_like_its_first_order() {
        List<Input> inputs = inputs(new Rectangular(0.1, 1.1));
        Model model = x -> Math.log(x[0]);

        LinearPropagation linear = LinearPropagation.of(inputs, model);
        Drawn drawn = MonteCarlo.draw(inputs, model, DRAWS);

        assertThat(linear.value()).isEqualTo(-0.511, within(0.0005));
        assertThat(linear.standardUncertainty()).isEqualTo(0.481, within(0.0005));
        assertThat(linear.interval(Distribution.NORMAL_95).high()).isEqualTo(0.432, within(0.0005));
        assertThat(drawn.mean()).isEqualTo(-0.66490, within(0.001));
        assertThat(drawn.standardUncertainty()).isEqualTo(0.60623, within(0.001));
        assertThat(drawn.shortest(0.95).low())
                .isEqualTo(-1.895, within(0.005))
                .isEqualTo(Math.log(0.15), within(0.003));
        assertThat(drawn.shortest(0.95).high()).isEqualTo(0.095, within(0.0005)).isLessThanOrEqualTo(Math.log(1.1));
    }

    /**
     * EA-4/02, S2, a weight of 10 kg in grams, from a public example page (metrodata.de) that takes u(δm) as 14.2 mg; EA-4/02
     * itself is remembered to take 14.4 mg, which gives u 29.3 mg.
     */
    @Test
    void a_ten_kilogram_weight_has_its_published_budget() {
        List<Input> inputs = inputs(
                Distribution.fromCertificate(10_000.005, 0.045, 2),
                new Rectangular(-0.015, 0.015),
                new Normal(0.0200, 0.0142),
                new Rectangular(-0.010, 0.010),
                new Rectangular(-0.010, 0.010));
        Model model = x -> x[0] + x[1] + x[2] + x[3] + x[4];

        LinearPropagation linear = LinearPropagation.of(inputs, model);

        assertThat(linear.value()).isEqualTo(10_000.025, within(1e-9));
        assertThat(linear.standardUncertainty()).isEqualTo(0.0291465, within(0.000001));
        assertThat(2 * linear.standardUncertainty()).isEqualTo(0.058, within(0.0005));
        double[] published = {59.6, 8.8, 23.7, 3.9, 3.9};
        for (int i = 0; i < published.length; i++) {
            assertThat(linear.contributions().get(i).percentOfVariance())
                    .as("share %d", i)
                    .isEqualTo(published[i], within(0.05));
        }
        assertThat(linear.contributions().stream()
                        .mapToDouble(Contribution::percentOfVariance)
                        .sum())
                .isEqualTo(100, within(1e-9));
    }

    /** JCGM 100:2008, G.4.1, with the figures that a third party's test gives: 0.57 of 9 and 0.25 known, 12.8 together. */
    @Test
    void effective_degrees_of_freedom_follow_welch_and_satterthwaite() {
        List<Input> inputs = List.of(new Input("a", new Normal(0, 0.57), 9), new Input("b", new Normal(0, 0.25)));

        LinearPropagation sum = LinearPropagation.of(inputs, x -> x[0] + x[1]);

        assertThat(sum.effectiveDegreesOfFreedom()).isEqualTo(12.8, within(0.05));
    }
}
