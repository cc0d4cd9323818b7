package lyewright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShapeTest {

    @Test
    void a_loaf_is_read_with_one_unit_after_the_last_side() {
        Shape loaf = Shape.parseLoaf("300x80x65mm").orThrow();

        assertThat(loaf).isEqualTo(new Shape.Loaf(300, 80, 65));
        // 300 × 80 × 65 = 1 560 000 mm³
        assertThat(loaf.millilitres()).isEqualTo(1560);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"30x8x6.5cm", "300mm x 80mm x 65mm", "30cm x 80mm x 6.5 cm", "300×80×65 mm", " 300x80x65 mm "})
    void the_same_loaf_may_be_written_in_several_ways(String text) {
        Shape.Loaf loaf = (Shape.Loaf) Shape.parseLoaf(text).orThrow();

        assertThat(loaf.length()).isEqualTo(300, within(1e-9));
        assertThat(loaf.width()).isEqualTo(80, within(1e-9));
        assertThat(loaf.height()).isEqualTo(65, within(1e-9));
    }

    @Test
    void inches_are_25_point_4_millimetres() {
        // 12 × 3 × 2.5 in = 90 in³, and an inch cubed is 16.387064 ml
        assertThat(Shape.parseLoaf("12x3x2.5in").orThrow().millilitres()).isEqualTo(90 * 16.387064, within(1e-9));
    }

    @Test
    void a_tube_holds_its_length_times_its_round() {
        Shape tube = Shape.parseTube("300x76mm").orThrow();

        assertThat(tube).isEqualTo(new Shape.Tube(300, 76));
        // 300 × π × 38² / 1000 = 1360.94 ml
        assertThat(tube.millilitres()).isEqualTo(1360.94, within(0.005));
    }

    @Test
    void a_slab_holds_as_much_as_a_loaf_of_its_sides() {
        assertThat(new Shape.Slab(400, 300, 25).millilitres()).isEqualTo(3000);
    }

    @Test
    void cavities_hold_their_count_times_one() {
        Shape cavities = Shape.parseCavities("12x95ml").orThrow();

        assertThat(cavities).isEqualTo(new Shape.Cavities(12, 95));
        assertThat(cavities.millilitres()).isEqualTo(1140);
    }

    @Test
    void cavities_may_be_said_in_litres_and_with_blanks() {
        assertThat(Shape.parseCavities(" 4 x 0.25 l ").orThrow()).isEqualTo(new Shape.Cavities(4, 250));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "300x80mm | has 2 measures, not 3",
                "300x80x65x10mm | has 4 measures, not 3",
                "300 | has 1 measures, not 3",
                "300x80x65 | has no unit",
                "300x80x65ml | 'ml' is not a unit",
                "300x80x0mm | has a side of no size",
                "0x80x65mm | has a side of no size",
                "-300x80x65mm | is negative",
                "300x80x-65mm | is negative",
                "300,5x80x65mm | has a comma in its number",
                "300x80x6,5cm | has a comma in its number",
                "longx80x65mm | does not begin with a number",
                "300x80xtall | does not begin with a number",
                "300xx65mm | does not begin with a number"
            })
    void a_loaf_of_no_size_or_form_is_refused(String text, String reason) {
        assertRefused(Shape.parseLoaf(text), reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"300mm | has 1 measures, not 2", "300x0mm | has a side of no size", "300x76 | has no unit"})
    void a_tube_of_no_size_or_form_is_refused(String text, String reason) {
        assertRefused(Shape.parseTube(text), reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "95ml | does not say how many cavities",
                "12x0ml | holds nothing",
                "0x95ml | is no count",
                "1.5x95ml | is no count",
                "10001x95ml | is no count",
                "-2x95ml | is negative",
                "12x95 | has no unit",
                "12x95g | 'g' is not a unit",
                "12x9,5ml | has a comma in its number",
                "manyx95ml | does not begin with a number",
                "12 gx95ml | is not a plain number"
            })
    void cavities_of_no_size_or_number_are_refused(String text, String reason) {
        assertRefused(Shape.parseCavities(text), reason);
    }

    private static void assertRefused(Outcome<Shape> outcome, String reason) {
        List<Problem> problems = outcome.problems();
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).what()).contains(reason);
        assertThat(problems.get(0).remedy()).isNotBlank();
    }
}
