package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.fill.Fill;
import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.SuperfatShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SuperfatDrawnPictureTest {

    /** What rounding to tenths of a unit takes off a column at most. */
    private static final double FINE = 0.11;

    @ParameterizedTest
    @ValueSource(strings = {"Plain Castile", "Tideline", "Kitchen Notebook"})
    void a_column_is_as_high_as_it_was_drawn_often(String name) {
        SuperfatBand band = Cases.sheet(name).band();
        SuperfatShape shape = band.shape();
        Drawn drawn = drawn(band);
        List<Element> columns = drawn.with("rect", "f-soft o");
        List<Double> shares = shape.shares().stream().filter(share -> share > 0).toList();
        double most = shares.stream().mapToDouble(share -> share).max().orElseThrow();
        double highest = columns.stream()
                .mapToDouble(column -> Drawn.number(column, "height"))
                .max()
                .orElseThrow();

        assertThat(shape.belowZero()).isZero();
        assertThat(columns).hasSize(shares.size());
        for (int i = 0; i < columns.size(); i++) {
            assertThat(Drawn.number(columns.get(i), "height") / highest)
                    .isCloseTo(shares.get(i) / most, within(FINE / highest));
        }
    }

    @Test
    void what_lies_left_of_zero_is_drawn_and_told_as_alkali_left_over() {
        SuperfatBand band = Sheets.of(THIN, Fill.oilMass(1000)).band();
        Picture picture = SuperfatDrawnPicture.of(band, false);
        Drawn drawn = Drawn.of(picture.drawing());

        assertThat(band.freeAlkaliProbability()).isBetween(0.01, 0.5);
        double zero = Drawn.points(drawn.with("path", "zero").get(0).getAttribute("d"))
                .get(0);
        assertThat(drawn.with("rect", "f-stop"))
                .isNotEmpty()
                .allSatisfy(column -> assertThat(Drawn.number(column, "x") + Drawn.number(column, "width"))
                        .isLessThanOrEqualTo(zero + FINE));
        assertThat(drawn.with("rect", "f-soft o"))
                .isNotEmpty()
                .allSatisfy(column -> assertThat(Drawn.number(column, "x")).isGreaterThanOrEqualTo(zero - FINE));
        assertThat(picture.sentence())
                .isEqualTo("Left of 0 lie " + SuperfatPicture.chance(band.freeAlkaliProbability())
                        + " of the draws: there alkali is left over.");
        assertThat(picture.drawing().description()).contains(picture.sentence());
    }

    @Test
    void where_none_was_drawn_left_of_zero_that_is_said() {
        Picture picture = SuperfatDrawnPicture.of(Cases.sheet("Tideline").band(), false);

        assertThat(picture.sentence()).isEqualTo("Left of 0 lies none of the draws: in none is alkali left over.");
        assertThat(drawn(Cases.sheet("Tideline").band()).with("rect", "f-stop")).isEmpty();
    }

    @Test
    void of_a_wax_it_is_said_what_is_drawn() {
        SuperfatBand band = Cases.sheet("Plain Castile").band();

        assertThat(SuperfatDrawnPicture.of(band, true).notes()).anyMatch(note -> note.startsWith("Of a wax"));
        assertThat(SuperfatDrawnPicture.of(band, false).notes()).noneMatch(note -> note.startsWith("Of a wax"));
    }

    /** Coconut's range is wide: at so low a superfat some bars keep alkali. */
    private static final String THIN = """
            recipe: Thin
            oils: {coconut: 100 %}
            alkali: sodium
            superfat: 2 %
            water: 33 % lye
            """;

    private static Drawn drawn(SuperfatBand band) {
        return Drawn.of(SuperfatDrawnPicture.of(band, false).drawing());
    }
}
