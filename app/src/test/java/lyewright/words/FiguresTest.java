package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.formula.WrittenFigure;
import lyewright.makingsheet.Balance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

    @Test
    void from_ten_kilograms_on_a_mass_is_in_kilograms_with_as_many_digits() {
        assertThat(Figures.grams(9999.9, 1)).isEqualTo("9999.9 g");
        assertThat(Figures.grams(10_000, 1)).isEqualTo("10.0000 kg");
        assertThat(Figures.about(10_100_000)).isEqualTo("10100.000 kg");
        assertThat(Figures.about(9999)).isEqualTo("9999 g");
        assertThat(Figures.on(Balance.parse("floor:60kg:1g").orThrow(), 12_345)).isEqualTo("12.345 kg");
        assertThat(Figures.on(Balance.parse("kitchen:5kg:1g").orThrow(), 345)).isEqualTo("345 g");
    }

    @ParameterizedTest
    @CsvSource({
        "13441, 13.441 kg",
        "13441.04, 13.441 kg",
        "1000, 1 kg",
        "487.4, 487.4 g",
        "487.43, 487 g",
        "350, 350 g",
        "100.04, 100 g",
        "27.451, 27.5 g",
        "2.104, 2.1 g",
        "0, 0 g",
        "-487.43, -487 g",
    })
    void a_mass_on_a_shelf_has_no_digits_that_nobody_means(double grams, String said) {
        assertThat(Figures.stocked(grams)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "81.666667, 81.67",
        "35.673602 ± 0.15, 35.67 ± 0.15",
        "35.673602 ± 0.0021, 35.67 ± 0.002",
        "98.600000, 98.6",
        "189.5 ± 1.0, 189.5 ± 1.0",
        "20 to 22.125, 20 to 22.13",
    })
    void a_reckoned_figure_is_told_with_two_decimals_at_most(String figure, String said) {
        assertThat(Figures.shown(WrittenFigure.parse(figure).orThrow().figure()))
                .isEqualTo(said);
    }

    @Test
    void temperatures_get_their_sign() {
        assertThat(Figures.degrees("55 C then off")).isEqualTo("55 °C, then off");
        assertThat(Figures.degrees("100 F")).isEqualTo("100 °F");
        assertThat(Figures.degrees("55 C for 3 h")).isEqualTo("55 °C for 3 h");
    }
}
