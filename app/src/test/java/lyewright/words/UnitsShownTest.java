package lyewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.Temperature;
import org.junit.jupiter.api.Test;

/** The avoirdupois ounce is 28.349523125 g by definition. */
class UnitsShownTest {

    private static final UnitsShown OUNCES = new UnitsShown(true, true);
    private static final Balance IN_GRAMS = Balance.parse("counter:5kg:1g").orThrow();
    private static final Balance FINE = Balance.parse("fine:200g:0.01g").orThrow();
    private static final Balance IN_OUNCES =
            Balance.parse("counter:10lb:0.05oz").orThrow();

    @Test
    void what_a_balance_shows_comes_first_and_the_readers_unit_beside_it() {
        // 350 ÷ 28.349523125 = 12.3459
        assertThat(OUNCES.on(IN_GRAMS, 350)).isEqualTo("350 g (12.35 oz)");
        // 2 ÷ 28.349523125 = 0.07055
        assertThat(OUNCES.on(FINE, 2)).isEqualTo("2.00 g (0.071 oz)");
        assertThat(OUNCES.on(IN_OUNCES, 21.262)).isEqualTo("0.75 oz (21.3 g)");
        assertThat(UnitsShown.METRIC.on(IN_OUNCES, 21.262)).isEqualTo("0.75 oz (21.3 g)");
        assertThat(UnitsShown.METRIC.on(IN_GRAMS, 350)).isEqualTo("350 g");
    }

    @Test
    void what_no_balance_shows_is_said_in_the_readers_unit_first() {
        assertThat(OUNCES.about(1500)).isEqualTo("52.91 oz (1500 g)");
        assertThat(OUNCES.tenths(1500)).isEqualTo("52.91 oz (1500.0 g)");
        assertThat(OUNCES.about(15_000)).isEqualTo("529.1 oz (15.000 kg)");
        assertThat(UnitsShown.METRIC.about(1500)).isEqualTo("1500 g");
    }

    @Test
    void a_temperature_is_said_in_the_readers_degrees_and_as_it_was_written() {
        assertThat(OUNCES.degrees(Temperature.parse("38 C").orThrow())).isEqualTo("100 °F (38 °C)");
        assertThat(OUNCES.degrees(Temperature.parse("100 F").orThrow())).isEqualTo("100 °F");
        assertThat(UnitsShown.METRIC.degrees(Temperature.parse("100 F").orThrow()))
                .isEqualTo("100 °F");
    }

    @Test
    void steps_say_every_mass_and_every_usual_temperature_in_the_readers_units() {
        MakingSheet plain = WordsSheets.of(WordsSheets.PLAIN, Equipment.USUAL);
        String steps = told(MakingSteps.of(plain, OUNCES));

        // 1000 ÷ 28.349523125 = 35.274; 35 to 45 °C is 95 to 113 °F
        assertThat(steps).contains("in their pot (35.27 oz, 1000 g)", "95 to 113 °F*");
        assertThat(steps.replaceAll("[0-9.]+ oz(, | \\()[0-9.]+ g", "").replaceAll("[0-9.]+ g \\([0-9.]+ oz\\)", ""))
                .doesNotContainPattern("[0-9] g\\b")
                .doesNotContain("°C");
    }

    @Test
    void what_is_poured_on_a_balance_in_grams_is_said_in_grams_first() {
        String steps = told(MakingSteps.of(WordsSheets.of(WordsSheets.FADE, Equipment.USUAL), OUNCES));

        assertThat(steps)
                .containsPattern("rows=\\[\\[1, [0-9]+ g \\([0-9.]+ oz\\), [0-9]+ g \\([0-9.]+ oz\\), 100.0 %");
        assertThat(steps).doesNotContainPattern("[0-9] oz \\([0-9.]+ g\\), 100.0 %");
    }

    @Test
    void an_oven_is_said_in_the_readers_degrees_too() {
        MakingSheet warm =
                WordsSheets.of(WordsSheets.PLAIN + "process: {make: oven, oven: 55 C then off}\n", Equipment.USUAL);

        assertThat(told(MakingSteps.of(warm, OUNCES))).contains("into the oven: 131 °F (55 °C), then off.");
        assertThat(told(MakingSteps.of(warm))).contains("into the oven: 55 °C, then off.");
    }

    private static String told(List<MakingStep> steps) {
        return steps.stream()
                .map(step ->
                        step.text() + " " + step.table().map(Object::toString).orElse(""))
                .collect(Collectors.joining(" "));
    }
}
