package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FigureTest {

    @Test
    void a_range_is_rectangular_and_its_middle_is_halfway() {
        Figure range = Figure.range(248, 265, "CXS 210");
        assertThat(range.spread()).isEqualTo(Figure.Spread.RECTANGULAR);
        assertThat(range.middle()).isEqualTo(256.5);
    }

    @Test
    void a_range_of_one_value_is_exact() {
        assertThat(Figure.range(92.2, 92.2, "Merck Index")).isEqualTo(Figure.exact(92.2, "Merck Index"));
    }

    @Test
    void a_range_of_exactly_a_tenth_of_its_middle_is_not_wide() {
        assertThat(Figure.range(190, 210, "a table").wide()).isFalse();
        assertThat(Figure.range(189.9, 210, "a table").wide()).isTrue();
    }

    @Test
    void a_figure_whose_source_says_memory_is_remembered() {
        assertThat(Figure.exact(190, "memory of CXS 33-1981").remembered()).isTrue();
        assertThat(Figure.exact(190, "CXS 210-1999 Table 2").remembered()).isFalse();
    }

    @Test
    void ends_in_the_wrong_order_are_refused() {
        assertThatThrownBy(() -> Figure.range(200, 190, "a table"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("200")
                .hasMessageContaining("190");
    }

    @Test
    void an_end_that_is_no_number_is_refused() {
        assertThatThrownBy(() -> Figure.exact(Double.NaN, "a table")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_liquid_grows_lighter_in_a_straight_line() {
        LiquidDensity density = new LiquidDensity(0.915, 20, -0.00064, "the test");
        assertThat(density.at(20)).isEqualTo(0.915);
        assertThat(density.at(40)).isCloseTo(0.9022, within(1e-12));
        assertThat(density.at(10)).isCloseTo(0.9214, within(1e-12));
    }
}
