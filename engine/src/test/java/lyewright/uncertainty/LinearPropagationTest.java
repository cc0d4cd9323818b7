package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.LinearPropagation.Contribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class LinearPropagationTest {

    private static final Input LENGTH = new Input("length", new Normal(3, 0.3));
    private static final Input WIDTH = new Input("width", new Normal(4, 0.4));

    @Test
    void a_product_changes_by_its_other_factor() {
        LinearPropagation area = LinearPropagation.of(List.of(LENGTH, WIDTH), x -> x[0] * x[1]);

        assertThat(area.value()).isEqualTo(12);
        assertThat(area.contributions().get(0).sensitivity()).isEqualTo(4, within(1e-9));
        assertThat(area.contributions().get(1).sensitivity()).isEqualTo(3, within(1e-9));
        assertThat(area.contributions().get(0).uncertainty()).isEqualTo(1.2, within(1e-9));
        assertThat(area.contributions().get(0).percentOfVariance()).isEqualTo(50, within(1e-6));
        assertThat(area.standardUncertainty()).isEqualTo(1.2 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void contributions_keep_the_order_and_names_of_the_inputs() {
        LinearPropagation area = LinearPropagation.of(List.of(LENGTH, WIDTH), x -> x[0] * x[1]);

        assertThat(area.contributions()).extracting(c -> c.input().name()).containsExactly("length", "width");
    }

    @Test
    void a_falling_output_has_a_negative_slope_and_the_same_uncertainty() {
        LinearPropagation falling = LinearPropagation.of(List.of(LENGTH), x -> -2 * x[0]);

        assertThat(falling.contributions().get(0).sensitivity()).isEqualTo(-2, within(1e-9));
        assertThat(falling.contributions().get(0).uncertainty()).isEqualTo(0.6, within(1e-9));
        assertThat(falling.standardUncertainty()).isEqualTo(0.6, within(1e-9));
    }

    @Test
    void what_is_known_contributes_nothing() {
        Input known = new Input("known", new Exact(5));
        LinearPropagation sum = LinearPropagation.of(List.of(known, LENGTH), x -> x[0] * x[1]);

        assertThat(sum.contributions().get(0).percentOfVariance()).isZero();
        assertThat(sum.contributions().get(1).percentOfVariance()).isEqualTo(100, within(1e-9));
        assertThat(sum.standardUncertainty()).isEqualTo(1.5, within(1e-9));
    }

    @Test
    void where_nothing_varies_there_are_no_shares_and_no_end_of_degrees_of_freedom() {
        Input known = new Input("known", new Exact(5));
        LinearPropagation none = LinearPropagation.of(List.of(known), x -> x[0]);

        assertThat(none.standardUncertainty()).isZero();
        assertThat(none.contributions().get(0).percentOfVariance()).isZero();
        assertThat(none.interval(2)).isEqualTo(new Interval(5, 5));
        assertThat(none.effectiveDegreesOfFreedom()).isInfinite();
    }

    @Test
    void inputs_known_by_their_distribution_have_no_end_of_degrees_of_freedom() {
        assertThat(LinearPropagation.of(List.of(LENGTH, WIDTH), x -> x[0] + x[1])
                        .effectiveDegreesOfFreedom())
                .isInfinite();
    }

    /** JCGM 100:2008, 5.2.2, note 1: ten resistors compared with one standard add up linearly, 10 × 100 mΩ, not √10 × 100. */
    @Test
    @Tag("validation")
    void ten_resistors_calibrated_with_one_standard_err_together() {
        Input resistor = new Input("resistor", new Normal(1000, 0.1));
        double[][] one = new double[10][10];
        for (double[] row : one) {
            Arrays.fill(row, 1);
        }
        Model series = x -> Arrays.stream(x).sum();
        List<Input> ten = Collections.nCopies(10, resistor);

        assertThat(LinearPropagation.of(ten, series, one).standardUncertainty()).isEqualTo(1, within(1e-6));
        assertThat(LinearPropagation.of(ten, series).standardUncertainty()).isEqualTo(0.316, within(0.0005));
    }

    @Test
    void errors_that_undo_each_other_leave_nothing() {
        double[][] together = {{1, 1}, {1, 1}};
        Input one = new Input("gross", new Normal(500, 0.5));
        Input other = new Input("tare", new Normal(300, 0.5));

        LinearPropagation net = LinearPropagation.of(List.of(one, other), x -> x[0] - x[1], together);

        assertThat(net.standardUncertainty()).isEqualTo(0, within(1e-5));
    }

    @Test
    void shares_add_up_to_a_hundred_whatever_the_model() {
        List<Input> inputs = List.of(
                LENGTH, WIDTH, new Input("height", new Rectangular(1, 2)), new Input("air", new Rectangular(0.1, 0.3)));

        double sum =
                LinearPropagation.of(inputs, x -> Math.exp(x[3]) * x[0] / x[1] + Math.sin(x[2]))
                        .contributions()
                        .stream()
                        .mapToDouble(Contribution::percentOfVariance)
                        .sum();

        assertThat(sum).isEqualTo(100, within(1e-9));
    }
}
