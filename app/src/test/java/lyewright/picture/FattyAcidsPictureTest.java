package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class FattyAcidsPictureTest {

    /** A tenth of a unit is the finest that is written; of the widest scale that is under this, percent. */
    private static final double FINE = 0.1;

    @ParameterizedTest
    @ValueSource(strings = {"Plain Castile", "Lamp Room", "Tideline", "beeswax and citric acid"})
    void bars_and_ranges_are_as_long_as_the_engine_says(String name) {
        OilPhaseAcids acids = acids(name);
        Drawn drawn = Drawn.of(FattyAcidsPicture.of(acids).drawing());
        List<Share> large =
                acids.acids().stream().filter(share -> share.percent() >= 0.5).toList();
        List<Element> ranges = drawn.with("path", "range");
        double start = drawn.xOf("0");
        String end = drawn.texts().stream()
                .filter(t -> t.matches("[0-9]+ %"))
                .findFirst()
                .orElseThrow();
        double unit = (drawn.xOf(end) - start) / Double.parseDouble(end.replace(" %", ""));
        List<Element> bars = drawn.with("rect", "f-clear o").stream()
                .filter(bar -> Drawn.number(bar, "height") == 10)
                .toList();

        assertThat(ranges).hasSameSizeAs(large);
        assertThat(bars).hasSameSizeAs(large);
        for (int i = 0; i < large.size(); i++) {
            Share share = large.get(i);
            List<Double> range = Drawn.points(ranges.get(i).getAttribute("d"));
            assertThat(Drawn.number(bars.get(i), "width") / unit).isCloseTo(share.percent(), within(FINE));
            assertThat((range.get(0) - start) / unit).isCloseTo(share.lowPercent(), within(FINE));
            assertThat((range.get(2) - start) / unit).isCloseTo(share.highPercent(), within(FINE));
            assertThat(drawn.texts()).contains(Figures.fixed(share.percent(), 1));
        }
    }

    @Test
    void what_is_not_known_is_drawn_as_not_known() {
        OilPhaseAcids acids = acids("Tideline");
        Drawn drawn = Drawn.of(FattyAcidsPicture.of(acids).drawing());

        assertThat(acids.unknownPercent()).isCloseTo(12, within(1e-9));
        assertThat(drawn.texts()).contains("Acids not known of 12.0 % of the oils");
        Element unknown = drawn.with("rect", "o-dash").get(0);
        assertThat(Drawn.number(unknown, "width")).isCloseTo(0.12 * 358, within(FINE));
    }

    @Test
    void oils_of_which_nothing_is_known_give_no_bar_of_nothing() {
        Picture picture = FattyAcidsPicture.of(acids("acids of nothing known"));
        Drawn drawn = Drawn.of(picture.drawing());

        assertThat(drawn.with("path", "range")).isEmpty();
        assertThat(drawn.texts()).containsExactly("Acids not known of 100.0 % of the oils");
        assertThat(picture.notes()).containsExactly("Not known: mystery 100.0 %. They count in none of this.");
    }

    @Test
    void the_table_has_small_acids_too() {
        OilPhaseAcids acids = acids("Lamp Room");
        Picture picture = FattyAcidsPicture.of(acids);
        long told =
                acids.acids().stream().filter(share -> share.highPercent() > 0).count();

        assertThat(picture.table().rows()).hasSize((int) told);
        assertThat(told)
                .isGreaterThan(Drawn.of(picture.drawing()).with("path", "range").size());
    }

    @Test
    void the_parts_by_double_bonds_are_all_of_it() {
        Drawn drawn = Drawn.of(FattyAcidsPicture.of(acids("Lamp Room")).drawing());
        double wide = drawn.with("rect", "f-clear o").stream()
                .filter(bar -> Drawn.number(bar, "height") == 18)
                .mapToDouble(bar -> Drawn.number(bar, "width"))
                .sum();
        assertThat(wide).isCloseTo(358, within(0.2));
    }

    private static OilPhaseAcids acids(String name) {
        MakingSheet sheet = Cases.sheet(name);
        return OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams());
    }
}
