package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SaidAmountTest {

    private static final SaidAmount.Known KAOLIN =
            new SaidAmount.Known(Optional.of(0.92), Map.of("teaspoon", 2_100L, "blue scoop", 31_000L));

    @Test
    void more_than_a_hundred_tonnes_is_asked_about() {
        assertThat(SaidAmount.mass("100000 kg", KAOLIN).orThrow().amount()).isEqualTo(100_000_000_000L);
        assertThat(SaidAmount.mass("100000.001 kg", KAOLIN).problems().get(0).what())
                .contains("more than anybody has");
    }

    @ParameterizedTest
    @CsvSource({
        "2.5 kg, 2500000",
        "500g, 500000",
        "1 lb 4 oz, 566990",
        "0.001 g, 1",
        "30 ml, 27600",
        "2 teaspoons, 4200",
        "2 tsp, 4200",
        "1 tsps, 2100",
        "1 1/2 teaspoon, 3150",
        "½ teaspoon, 1050",
        "3 level teaspoons, 6300",
        "1 blue scoop, 31000",
    })
    void a_mass_a_volume_or_spoons(String typed, long milligrams) {
        assertThat(SaidAmount.mass(typed, KAOLIN).orThrow().amount()).isEqualTo(milligrams);
    }

    @Test
    void what_was_no_mass_is_kept_as_it_was_said() {
        assertThat(SaidAmount.mass("2 teaspoons", KAOLIN).orThrow().words()).isEqualTo("2 teaspoons");
        assertThat(SaidAmount.mass("30 ml", KAOLIN).orThrow().words()).isEqualTo("30 ml");
        assertThat(SaidAmount.mass("1 lb 4 oz", KAOLIN).orThrow().words()).isEqualTo("1 lb 4 oz");
        assertThat(SaidAmount.mass("5lb", KAOLIN).orThrow().words()).isEqualTo("5lb");
        assertThat(SaidAmount.mass("30 g", KAOLIN).orThrow().words()).isEmpty();
        assertThat(SaidAmount.mass("2.5kg", KAOLIN).orThrow().words()).isEmpty();
        assertThat(SaidAmount.mass("1/2 kg", KAOLIN).orThrow().words()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "g",
                "12",
                "-5 g",
                "two kilos",
                "2 cups",
                "1 tablespoon",
                "5 fl oz",
                "9999999999999999 kg",
                "1e5 g"
            })
    void what_says_no_mass_is_asked_about(String typed) {
        Outcome<SaidAmount> read = SaidAmount.mass(typed, KAOLIN);
        assertThat(read).as(typed).isInstanceOf(Outcome.Refused.class);
        assertThat(read.problems().get(0).what()).as(typed).isNotBlank();
        assertThat(read.problems().get(0).remedy()).as(typed).isNotBlank();
    }

    @Test
    void a_volume_of_unknown_density_and_a_spoon_nobody_weighed_say_what_to_do() {
        assertThat(SaidAmount.mass("30 ml", SaidAmount.Known.NOTHING)
                        .problems()
                        .get(0)
                        .remedy())
                .contains("density");
        assertThat(SaidAmount.mass("1 teaspoon", SaidAmount.Known.NOTHING)
                        .problems()
                        .get(0)
                        .remedy())
                .contains("weigh one");
    }

    @Test
    void pieces_are_counted() {
        assertThat(SaidAmount.pieces("50").orThrow().amount()).isEqualTo(50);
        assertThat(SaidAmount.pieces("1 piece").orThrow().amount()).isEqualTo(1);
        assertThat(SaidAmount.pieces("1.5").problems()).isNotEmpty();
        assertThat(SaidAmount.pieces("50 g").problems()).isNotEmpty();
    }

    @Test
    void a_spoon_that_nobody_has_is_worth_asking_about() {
        assertThat(SaidAmount.isTooMuch("teaspoon", 30_001)).isTrue();
        assertThat(SaidAmount.isTooMuch("tsp", 30_000)).isFalse();
        assertThat(SaidAmount.isTooMuch("Tablespoons", 60_001)).isTrue();
        assertThat(SaidAmount.isTooMuch("tbsp", 31_000)).isFalse();
        assertThat(SaidAmount.isTooMuch("blue scoop", 400_000)).isFalse();
    }
}
