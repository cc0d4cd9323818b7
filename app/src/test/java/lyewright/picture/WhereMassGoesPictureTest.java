package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.makingsheet.MakingSheet;
import lyewright.measure.MassUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class WhereMassGoesPictureTest {

    static Stream<Arguments> sheets() {
        return Cases.sheets().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void what_is_poured_is_all_that_is_weighed(String name, MakingSheet sheet) {
        double all = Weighed.of(sheet).stream().mapToDouble(MassPart::grams).sum();
        assertThat(all)
                .isCloseTo(sheet.totals().batch(), within(1e-6 * sheet.totals().batch()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void what_is_cured_and_what_dries_off_is_all_that_is_poured(String name, MakingSheet sheet) {
        Composition cured = sheet.composition().at(Moment.CURED);
        double all = Becomes.of(cured).stream().mapToDouble(MassPart::grams).sum();
        assertThat(all).isCloseTo(cured.totalGrams(), within(1e-6 * all));
        assertThat(all + cured.water().lostGrams())
                .isCloseTo(sheet.totals().batch(), within(1e-6 * sheet.totals().batch()));
    }

    @Test
    void each_part_is_as_high_as_its_mass() {
        MakingSheet sheet = Cases.sheet("Tideline");
        Composition cured = sheet.composition().at(Moment.CURED);
        Drawn drawn = Drawn.of(WhereMassGoesPicture.of(sheet).drawing());
        Element oils = drawn.with("rect", "f-full").get(0);
        Element soap = drawn.with("rect", "f-full").get(1);
        Element dries = drawn.with("rect", "o-dash").get(0);
        double unit = 250 / sheet.totals().batch();

        assertThat(Drawn.number(oils, "height")).isCloseTo(sheet.totals().oils() * unit, within(0.06));
        assertThat(Drawn.number(soap, "height")).isCloseTo(cured.grams(Kind.SOAP) * unit, within(0.06));
        assertThat(Drawn.number(dries, "height")).isCloseTo(cured.water().lostGrams() * unit, within(0.06));
        assertThat(drawn.texts())
                .contains(
                        "Oils " + Math.round(sheet.totals().oils()) + " g",
                        "Soap " + Math.round(cured.grams(Kind.SOAP)) + " g",
                        "Cured " + Math.round(cured.totalGrams()) + " g");
    }

    @Test
    void alkali_that_is_left_over_is_marked() {
        assertThat(Drawn.of(WhereMassGoesPicture.of(Cases.sheet("superfat far under zero"))
                                .drawing())
                        .with("text", "t-stop"))
                .hasSize(1);
        assertThat(Drawn.of(WhereMassGoesPicture.of(Cases.sheet("Tideline")).drawing())
                        .with("text", "t-stop"))
                .isEmpty();
    }

    @Test
    void wax_that_does_not_react_is_no_oil_left() {
        Composition cured = Cases.sheet("beeswax and citric acid").composition().at(Moment.CURED);
        List<MassPart> parts = Becomes.of(cured);
        double wax = part(parts, "Wax left");

        assertThat(wax).isPositive();
        assertThat(wax + part(parts, "Oil left")).isCloseTo(cured.grams(Kind.OIL_LEFT), within(1e-9));
    }

    private static double part(List<MassPart> parts, String words) {
        return parts.stream()
                .filter(p -> p.words().equals(words))
                .mapToDouble(MassPart::grams)
                .sum();
    }

    @Test
    void masses_may_be_told_in_ounces() {
        MakingSheet sheet = Cases.sheet("Plain Castile");
        double ounces = sheet.totals().batch() / 28.349523125;
        Drawn drawn = Drawn.of(WhereMassGoesPicture.of(sheet, sheet.composition(), MassUnit.OUNCE)
                .drawing());
        assertThat(drawn.texts()).contains(String.format(java.util.Locale.ROOT, "Poured %.1f oz", ounces));
    }
}
