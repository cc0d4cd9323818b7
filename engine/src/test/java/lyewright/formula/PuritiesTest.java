package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.material.Alkali;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PuritiesTest {

    @Test
    void purities_are_read_in_percent_and_may_be_uncertain() {
        Purities purities = Purities.parse("naoh=98.5, koh=89 to 91 %").orThrow();

        assertThat(purities.fraction(Alkali.SODIUM)).isEqualTo(0.985, within(1e-12));
        assertThat(purities.fraction(Alkali.POTASSIUM)).isEqualTo(0.9, within(1e-12));
        assertThat(purities.assumed(Alkali.SODIUM)).isFalse();
    }

    @Test
    void what_is_not_given_is_assumed() {
        assertThat(Purities.ASSUMED.fraction(Alkali.SODIUM)).isEqualTo(0.98);
        assertThat(Purities.ASSUMED.fraction(Alkali.POTASSIUM)).isEqualTo(0.90);
        assertThat(Purities.parse("koh=88").orThrow().assumed(Alkali.SODIUM)).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "naoh=0 | not possible",
                "naoh=110 | not possible",
                "naoh=0.985 | no alkali that is sold",
                "naoh=49.9 | no alkali that is sold",
                "naoh=98 g | something after its number",
                "naoh=98.5,naoh=97 | given twice",
                "soda=98 | not a purity",
                "=98 | not a purity",
                "98 | not a purity",
                "naoh=98;5 | something after its number",
                "koh=-90 | negative",
            })
    void what_is_no_purity_is_refused(String text, String what) {
        assertThat(Purities.parse(text).problems().get(0).what()).contains(what);
    }

    @Test
    void a_fraction_is_answered_with_percent() {
        assertThat(Purities.parse("naoh=0.985").problems().get(0).remedy()).contains("98.5");
    }
}
