package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.makingsheet.Balance;
import org.junit.jupiter.api.Test;

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

    @Test
    void temperatures_get_their_sign() {
        assertThat(Figures.degrees("55 C then off")).isEqualTo("55 °C, then off");
        assertThat(Figures.degrees("100 F")).isEqualTo("100 °F");
        assertThat(Figures.degrees("55 C for 3 h")).isEqualTo("55 °C for 3 h");
    }
}
