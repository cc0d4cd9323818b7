package lyewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every quantity reads what a person types, prints it as typed, and reads its own print back. */
class QuantityTextTest {

    private static void reads(Outcome<?> outcome, String print) {
        assertThat(outcome.problems()).isEmpty();
        assertThat(outcome.orThrow()).hasToString(print);
    }

    private static Problem refused(Outcome<?> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        assertThat(outcome.problems()).hasSize(1);
        return outcome.problems().get(0);
    }

    @ParameterizedTest
    @CsvSource({"12.5 g,12.5 g", "1kg,1 kg", " 0.70 oz ,0.70 oz", ".5 lb,0.5 lb", "010 mg,10 mg", "0 g,0 g"})
    void a_mass_reads_and_prints_as_typed(String text, String print) {
        reads(WrittenMass.parse(text), print);
        assertThat(WrittenMass.parse(print)).isEqualTo(WrittenMass.parse(text));
    }

    @ParameterizedTest
    @CsvSource({"18 %,18 %", "2.50%,2.50 %", "0 %,0 %", "150 %,150 %"})
    void a_share_reads_and_prints_as_typed(String text, String print) {
        reads(Share.parse(text), print);
    }

    @ParameterizedTest
    @CsvSource({"95 ml,95 ml", "1.2l,1.2 l"})
    void a_volume_reads_and_prints_as_typed(String text, String print) {
        reads(Volume.parse(text), print);
    }

    @ParameterizedTest
    @CsvSource({"25mm,25 mm", "3.5 in,3.5 in", "8 cm,8 cm"})
    void a_length_reads_and_prints_as_typed(String text, String print) {
        reads(Length.parse(text), print);
    }

    @ParameterizedTest
    @CsvSource({"38 C,38 C", "100F,100 F", "-18 C,-18 C", "38 °C,38 C", "\u221218 C,-18 C"})
    void a_temperature_reads_and_prints_as_typed(String text, String print) {
        reads(Temperature.parse(text), print);
    }

    @ParameterizedTest
    @CsvSource({"1 h,1 h", "20min,20 min", "2 d,2 d"})
    void a_time_reads_and_prints_as_typed(String text, String print) {
        reads(TimeSpan.parse(text), print);
    }

    @Test
    void a_density_reads_and_prints_as_typed() {
        reads(Density.parse("0.915 g/ml"), "0.915 g/ml");
        assertThat(refused(Density.parse("0.915")).remedy()).contains("0.915 g/ml");
        assertThat(refused(Density.parse("0.05 g/ml")).remedy()).contains("between 0.1 and 20");
        assertThat(refused(Density.parse("21 g/ml")).what()).contains("21 g/ml");
        assertThat(refused(Density.parse("0,9 g/ml")).remedy()).isEqualTo("write 0.9 g/ml");
    }

    @Test
    void a_plain_number_reads() {
        assertThat(Decimal.parse("7").orThrow()).isEqualTo(BigDecimal.valueOf(7));
        assertThat(refused(Decimal.parse("7 g")).remedy()).isEqualTo("write 7");
        assertThat(Decimal.leading("7.5 to 9").orThrow()).isEqualTo(new Decimal.Leading(new BigDecimal("7.5"), "to 9"));
        assertThat(refused(Decimal.leading("x")).what()).contains("'x'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "g", ".", "..5 g", "1.2.3 g", "1. g", ".inf", "-.inf", ".nan", "+5 g", "--5 g", "five g"
            })
    void what_is_no_plain_decimal_is_refused_with_an_example(String text) {
        Problem problem = refused(WrittenMass.parse(text));
        assertThat(problem.what()).contains("does not begin with a number");
        assertThat(problem.remedy()).contains("12.5");
    }

    @Test
    void what_else_was_meant_is_said_and_never_guessed() {
        assertThat(refused(WrittenMass.parse("12,5 g")).remedy()).isEqualTo("write 12.5 g");
        assertThat(refused(WrittenMass.parse("-5 g")).what()).contains("negative");
        assertThat(refused(WrittenMass.parse("\u22125 g")).what()).contains("negative");
        assertThat(refused(WrittenMass.parse("12")).what()).isEqualTo("'12' has no unit");
        assertThat(refused(WrittenMass.parse("12")).remedy()).contains("mg, g, kg, oz, lb");
        assertThat(refused(WrittenMass.parse("12 gr")).what()).contains("'gr'");
        assertThat(refused(WrittenMass.parse("1e3 g")).what()).contains("power of ten");
        assertThat(refused(WrittenMass.parse("1234567890123456 g")).what()).contains("15 digits");
        assertThat(refused(WrittenMass.parse("8 fl oz")).what()).contains("volume");
        assertThat(refused(WrittenMass.parse("8 fl. oz")).what()).contains("volume");
        assertThat(refused(Share.parse("18")).remedy()).isEqualTo("write it as 18 %");
        assertThat(refused(Volume.parse("8 fl oz")).remedy()).contains("ml, l");
        assertThat(refused(Length.parse("3 ft")).remedy()).contains("mm, cm, in");
        assertThat(refused(TimeSpan.parse("2 weeks")).remedy()).contains("min, h, d");
        assertThat(refused(Temperature.parse("38")).remedy()).contains("C, F");
        assertThat(refused(Temperature.parse("-31 C")).remedy()).contains("-30 C");
        assertThat(refused(Temperature.parse("500 F")).what()).contains("500 F");
    }

    /** The international pound, 0.45359237 kg exactly, and the inch, 25.4 mm exactly: agreement of 1959. */
    @Test
    @Tag("validation")
    void the_old_units_are_those_of_the_agreement_of_1959() {
        assertThat(WrittenMass.parse("1 lb").orThrow().grams()).isEqualTo(453.59237);
        assertThat(WrittenMass.parse("16 oz").orThrow().grams()).isEqualTo(453.59237);
        assertThat(Length.parse("1 in").orThrow().millimetres()).isEqualTo(25.4);
    }

    @Test
    void quantities_compute_in_one_unit_each() {
        assertThat(WrittenMass.ofGrams("12.5").grams()).isEqualTo(12.5);
        assertThat(WrittenMass.parse("250 mg").orThrow().grams()).isEqualTo(0.25);
        assertThat(WrittenMass.parse("1.5 kg").orThrow().grams()).isEqualTo(1500);
        assertThat(Volume.parse("1.2 l").orThrow().millilitres()).isEqualTo(1200);
        assertThat(Length.parse("8 cm").orThrow().millimetres()).isEqualTo(80);
        assertThat(TimeSpan.parse("90 min").orThrow().hours()).isCloseTo(1.5, within(1e-12));
        assertThat(TimeSpan.parse("2 d").orThrow().hours()).isEqualTo(48);
        assertThat(Share.ofPercent("2.5").fraction()).isEqualTo(0.025);
        assertThat(Temperature.parse("100 C").orThrow().celsius()).isEqualTo(100);
        assertThat(Temperature.parse("212 F").orThrow().celsius()).isCloseTo(100, within(1e-9));
        assertThat(Temperature.parse("-4 F").orThrow().celsius()).isCloseTo(-20, within(1e-9));
    }

    @Test
    void shares_add_up_exactly() {
        assertThat(Share.sum(List.of(Share.ofPercent("33.3"), Share.ofPercent("33.3"), Share.ofPercent("33.4"))))
                .isEqualByComparingTo(Share.WHOLE.percent());
        assertThat(Share.sum(List.of())).isZero();
    }

    @Test
    void what_is_weighed_is_whole_milligrams() {
        assertThat(Mass.ofGrams(142.29)).hasToString("142.290 g").isEqualTo(new Mass(142_290));
        assertThat(Mass.ofGrams(0.0005).milligrams()).isEqualTo(1);
        assertThat(new Mass(1500).grams()).isEqualTo(1.5);
        assertThat(new Mass(1500).plus(new Mass(2))).isEqualTo(new Mass(1502));
        assertThat(new Mass(1500).minus(new Mass(2000))).hasToString("-0.500 g");
        assertThat(new Mass(2000).minus(new Mass(1650))).hasToString("+0.350 g");
        assertThat(new Mass(5).minus(new Mass(5))).hasToString("0.000 g");
        assertThat(new MassChange(-500).grams()).isEqualTo(-0.5);
        assertThat(new Mass(2)).isGreaterThan(Mass.ZERO);
    }

    @Test
    void less_than_nothing_is_a_broken_promise() {
        BigDecimal less = BigDecimal.ONE.negate();
        assertThatThrownBy(() -> new Mass(-1)).hasMessageContaining("-1 mg");
        assertThatThrownBy(() -> new Share(less)).hasMessageContaining("-1 %");
        assertThatThrownBy(() -> new WrittenMass(less, MassUnit.GRAM)).hasMessageContaining("-1 g");
        assertThatThrownBy(() -> new Volume(less, VolumeUnit.LITRE)).hasMessageContaining("-1 l");
        assertThatThrownBy(() -> new Length(less, LengthUnit.INCH)).hasMessageContaining("-1 in");
    }

    @Test
    void an_outcome_is_a_value_or_its_reasons() {
        Outcome<Integer> good = Outcome.ok(2);
        Outcome<Integer> bad = Outcome.refused("it is 3", "write 2");
        assertThat(good.then(n -> Outcome.ok(n * 2)).orThrow()).isEqualTo(4);
        assertThat(bad.then(n -> Outcome.ok(n * 2))).isEqualTo(bad);
        assertThatThrownBy(bad::orThrow).hasMessage("it is 3; write 2");
        assertThat(good.problems()).isEmpty();
        assertThatThrownBy(() -> new Outcome.Refused<>(List.of())).isInstanceOf(IllegalArgumentException.class);
        Problem problem = new Problem("amount", "it is 3", "write 2");
        assertThat(Outcome.<Integer>refused(problem).problems()).containsExactly(problem);
        assertThat(problem.within("additions.2").path()).isEqualTo("additions.2.amount");
        assertThat(problem.within("").path()).isEqualTo("amount");
        assertThat(new Problem("", "a", "b").within("oils").path()).isEqualTo("oils");
    }

    @Test
    void ten_thousand_quantities_read_their_own_print() {
        Random random = new Random(1959L);
        List<Function<BigDecimal, Object>> makers = List.of(
                value -> new WrittenMass(value, pick(random, MassUnit.values())),
                Share::new,
                value -> new Volume(value, pick(random, VolumeUnit.values())),
                value -> new Length(value, pick(random, LengthUnit.values())),
                value -> new TimeSpan(value, pick(random, TimeUnitWritten.values())));
        List<Function<String, Outcome<?>>> readers =
                List.of(WrittenMass::parse, Share::parse, Volume::parse, Length::parse, TimeSpan::parse);
        for (int i = 0; i < 10_000; i++) {
            BigDecimal value = BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(5));
            int kind = random.nextInt(makers.size());
            Object quantity = makers.get(kind).apply(value);
            assertThat(readers.get(kind).apply(quantity.toString()))
                    .as("case %d", i)
                    .isEqualTo(Outcome.ok(quantity));
        }
    }

    private static <T> T pick(Random random, T[] values) {
        return List.of(values).get(random.nextInt(values.length));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12,5 g | write 12.5 g",
                "0,500 g | write 0.500 g",
                "1,000 g | write 1000 g for a thousand, or 1 g for one",
                "2,500 kg | write 2500 kg for thousands, or 2.5 kg if the comma is a decimal one",
                "1.000,5 g | write it with one point and nothing else, as in 1000.5",
                "1,000,000 g | write it with one point and nothing else, as in 1000.5"
            })
    void a_comma_is_never_guessed_at(String text, String remedy) {
        assertThat(refused(WrittenMass.parse(text)).remedy()).isEqualTo(remedy);
    }
}
