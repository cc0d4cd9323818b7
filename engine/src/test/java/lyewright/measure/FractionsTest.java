package lyewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lyewright.fill.FillText;
import lyewright.fill.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fractions are read alike wherever a measure is typed. */
class FractionsTest {

    private static final Map<String, String> SIGNS = Map.of(
            "1/2", "½", "1/4", "¼", "3/4", "¾", "1/8", "⅛", "3/8", "⅜", "5/8", "⅝", "7/8", "⅞", "1/3", "⅓", "2/3", "⅔");

    private static final List<Integer> PARTS = List.of(2, 3, 4, 8, 16, 32);

    private static final List<String> JOINTS = List.of(" ", "  ", "-", " and ", " & ", "\u00a0");

    @ParameterizedTest
    @CsvSource({
        "1/2, 0.5",
        "2 1/2, 2.5",
        "2-1/2, 2.5",
        "2½, 2.5",
        "2 ½, 2.5",
        "2 and 1/2, 2.5",
        "3⁄4, 0.75",
        "⅓, 0.33333",
        "1 2/3, 1.66667",
        "5/16, 0.3125",
        "31/32, 0.96875"
    })
    void are_read_as_they_are_written(String typed, String decimal) {
        assertThat(Fractions.decimal(typed)).contains(decimal);
        assertThat(Length.parse(typed + " in").orThrow()).hasToString(decimal + " in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "2.5", "1/5", "1/0", "25/11/2026", "1/2/4", "a", "", "/2", "1/", "1.5/2"})
    void anything_else_is_none(String typed) {
        assertThat(Fractions.decimal(typed)).isEmpty();
        assertThat(Fractions.decimals(typed)).isEqualTo(typed);
    }

    /** A thousand spellings, each read by the quantities, by the mould in one line and by the reader of typed measures. */
    @Test
    void a_thousand_spellings_mean_what_they_say_wherever_they_are_typed() {
        Random random = new Random(20261128);
        for (int i = 0; i < 1000; i++) {
            int whole = random.nextInt(20);
            int of = PARTS.get(random.nextInt(PARTS.size()));
            int part = 1 + random.nextInt(of - 1);
            String typed = spelling(random, whole, part, of);
            double value = whole + (double) part / of;

            assertThat(Length.parse(typed + " in").orThrow().value().doubleValue())
                    .as(typed)
                    .isCloseTo(value, within(1e-5));
            assertThat(WrittenMass.parse(typed + "oz").orThrow().value().doubleValue())
                    .as(typed)
                    .isCloseTo(value, within(1e-5));
            String plain = Said.measure(typed + " inches");
            assertThat(new BigDecimal(plain.substring(0, plain.indexOf(' '))).doubleValue())
                    .as(plain)
                    .isCloseTo(value, within(1e-5));
            String box = "10 x " + typed + " x 8" + (i % 2 == 0 ? " in" : "\"");
            Shape.Loaf loaf = (Shape.Loaf) FillText.mould(box).orThrow().shape().orElseThrow();
            assertThat(loaf.width()).as(box).isCloseTo(25.4 * value, within(1e-3));
            assertThat(loaf.length()).as(box).isEqualTo(254);
            assertThat(loaf.height()).as(box).isCloseTo(203.2, within(1e-9));
        }
    }

    private static String spelling(Random random, int whole, int part, int of) {
        String fraction = part + "/" + of;
        String sign = SIGNS.getOrDefault(fraction, "");
        boolean asSign = !sign.isEmpty() && random.nextBoolean();
        String written = asSign ? sign : random.nextInt(4) == 0 ? part + " / " + of : fraction;
        if (whole == 0) {
            return written;
        }
        String joint = JOINTS.get(random.nextInt(JOINTS.size()));
        return whole + (asSign && random.nextBoolean() ? "" : joint) + written;
    }

    /** What was typed with a fraction is kept, and printed, as the decimal that it is. */
    @Test
    void print_and_read_back_as_decimals() {
        WrittenMass mass = WrittenMass.parse("2 1/4 lb").orThrow();
        assertThat(mass).hasToString("2.25 lb");
        assertThat(WrittenMass.parse(mass.toString()).orThrow()).isEqualTo(mass);
        assertThat(Share.parse("2 1/2 %").orThrow()).hasToString("2.5 %");
    }
}
