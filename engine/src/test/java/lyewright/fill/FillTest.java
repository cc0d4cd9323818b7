package lyewright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillTest {

    @Test
    void bars_are_read_as_a_count_and_a_mass() {
        assertThat(Fill.parseBars("10x110g", false).orThrow()).isEqualTo(new Fill.Bars(10, 110, false));
        assertThat(Fill.parseBars("10x110g", true).orThrow().cured()).isTrue();
    }

    @Test
    void bars_may_be_said_in_ounces() {
        // 4 oz are 4 × 28.349523125 g
        assertThat(Fill.parseBars(" 8 x 4 oz", false).orThrow().grams()).isEqualTo(113.3980925, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "110g | does not say how many bars",
                "10x | does not say what a bar weighs",
                "10x0g | weighs nothing",
                "0x110g | is no count",
                "2.5x110g | is no count",
                "10x110 | has no unit",
                "10x-110g | is negative",
                "10x1,1kg | has a comma in its number",
                "10x95ml | 'ml' is not a unit",
                "10x4 fl oz | 'fl oz' is a volume",
                "tenx110g | does not begin with a number"
            })
    void bars_of_no_mass_or_number_are_refused(String text, String reason) {
        Outcome<Fill.Bars> bars = Fill.parseBars(text, false);

        assertThat(bars.problems()).hasSize(1);
        assertThat(bars.problems().get(0).what()).contains(reason);
        assertThat(bars.problems().get(0).remedy()).isNotBlank();
    }

    @Test
    void nothing_is_held_back_unless_it_is_said() {
        assertThat(Fill.mouldMass(1500).holdBack()).isZero();
        assertThat(Fill.oilMass(1000).holdBack()).isZero();
        assertThat(Fill.AS_WRITTEN.holdBack()).isZero();
        assertThat(Fill.mouldMass(1500).holdingBack(0.02).holdBack()).isEqualTo(0.02);
    }

    @Test
    void a_mould_is_known_by_any_of_its_figures() {
        assertThat(Mould.UNKNOWN.known()).isFalse();
        assertThat(Moulds.box(300, 80, 65).known()).isTrue();
        assertThat(Moulds.waterFill(1450).known()).isTrue();
    }
}
