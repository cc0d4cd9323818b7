package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import lyewright.material.Figure;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Distribution.Triangular;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Means and standard uncertainties by the formulas of JCGM 100 and 101, on figures that a pocket calculator follows. */
class DistributionTest {

    private static final double ARITHMETIC = 1e-12;

    private static void assertLies(
            Distribution distribution, double mean, double standardUncertainty, double least, double most) {
        assertThat(distribution.mean()).isEqualTo(mean, within(ARITHMETIC));
        assertThat(distribution.standardUncertainty()).isEqualTo(standardUncertainty, within(ARITHMETIC));
        assertThat(distribution.least(2)).isEqualTo(least, within(ARITHMETIC));
        assertThat(distribution.most(2)).isEqualTo(most, within(ARITHMETIC));
    }

    @Test
    void what_is_known_does_not_vary() {
        assertLies(new Exact(98), 98, 0, 98, 98);
    }

    /** JCGM 101:2008, 6.4.2.3: (a + b) ÷ 2 and (b - a)² ÷ 12. */
    @Test
    void a_range_has_its_middle_and_a_little_over_half_its_half_width() {
        assertLies(new Rectangular(248, 265), 256.5, 17 / Math.sqrt(12), 248, 265);
    }

    /** JCGM 101:2008, 6.4.4: the variances of the two rectangular ones, w² ÷ 3 each, add up. */
    @Test
    void a_weighing_adds_the_balances_error_and_its_step() {
        assertLies(new Trapezoidal(135, 1, 0.5), 135, Math.sqrt(1 / 3.0 + 0.25 / 3), 133.5, 136.5);
    }

    @Test
    void a_trapezoid_of_one_width_is_a_range() {
        Distribution range = new Rectangular(9, 11);

        assertLies(new Trapezoidal(10, 1, 0), 10, range.standardUncertainty(), 9, 11);
        assertLies(new Trapezoidal(10, 0, 1), 10, range.standardUncertainty(), 9, 11);
    }

    /** JCGM 101:2008, 6.4.5: two equal widths make a triangle, (b - a)² ÷ 24. */
    @Test
    void a_trapezoid_of_two_equal_widths_is_a_triangle() {
        double u = 4 / Math.sqrt(24);

        assertLies(new Trapezoidal(10, 1, 1), 10, u, 8, 12);
        assertLies(new Triangular(8, 10, 12), 10, u, 8, 12);
    }

    @Test
    void a_triangle_may_lean() {
        // (a² + b² + c² - ab - ac - bc) ÷ 18 of 0, 1, 5: 21 ÷ 18
        assertLies(new Triangular(0, 1, 5), 2, Math.sqrt(21.0 / 18), 0, 5);
        assertLies(new Triangular(0, 0, 3), 1, Math.sqrt(9.0 / 18), 0, 3);
    }

    @Test
    void a_bell_reaches_as_far_as_it_is_asked() {
        assertLies(new Normal(189.5, 0.5), 189.5, 0.5, 188.5, 190.5);
    }

    /** JCGM 100:2008, 4.3.3 and its example: 1000.000325 g with 240 µg at three standard deviations is 80 µg. */
    @Test
    @Tag("validation")
    void a_certificates_expanded_uncertainty_is_divided_by_its_coverage_factor() {
        assertThat(Distribution.fromCertificate(1000.000325, 240e-6, 3).standardUncertainty())
                .isEqualTo(80e-6, within(1e-15));
        assertThat(Distribution.fromCertificate(10_000.005, 0.045, 2)).isEqualTo(new Normal(10_000.005, 0.0225));
        assertThat(Distribution.fromCertificate(1000, 0, 2).standardUncertainty())
                .isZero();
    }

    @Test
    void a_figure_of_the_tables_lies_anywhere_in_its_range() {
        assertThat(Distribution.of(Figure.range(248, 265, "the test"))).isEqualTo(new Rectangular(248, 265));
        assertThat(Distribution.of(Figure.range(188, 188, "the test"))).isEqualTo(new Exact(188));
        assertThat(Distribution.of(Figure.exact(98.5, "the test"))).isEqualTo(new Exact(98.5));
    }

    @Test
    void a_figure_with_plus_or_minus_has_its_ends_at_nineteen_of_twenty() {
        Distribution certificate = Distribution.of(new Figure(188.5, 190.5, Figure.Spread.NORMAL, "the test"));

        assertThat(certificate.mean()).isEqualTo(189.5);
        assertThat(certificate.standardUncertainty()).isEqualTo(1 / 1.96, within(2e-5));
        assertThat(certificate.least(Distribution.NORMAL_95)).isEqualTo(188.5, within(ARITHMETIC));
        assertThat(certificate.most(Distribution.NORMAL_95)).isEqualTo(190.5, within(ARITHMETIC));
    }

    @Test
    void ends_in_the_wrong_order_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rectangular(2, 1))
                .withMessage("2.0 is over 1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Triangular(0, -1, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new Triangular(0, 3, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new Trapezoidal(5, -0.1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Trapezoidal(5, 0.1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Normal(5, -0.1));
    }

    @Test
    void what_is_no_number_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Rectangular(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Rectangular(0, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Normal(0, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Triangular(0, Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Trapezoidal(0, Double.NaN, 1));
    }
}
