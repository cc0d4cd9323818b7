package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.makingsheet.FadingPour.Layer;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.words.Figures;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class PouredPicturesTest {

    private final MakingSheet tideline = Cases.sheet("Tideline");

    @Test
    void each_layer_is_as_dark_as_its_share_of_the_coloured_batter() {
        Drawn drawn = Drawn.of(FadePicture.of(tideline).orElseThrow().drawing());
        List<Element> layers = drawn.with("rect", "f-full");
        List<Layer> engine = tideline.fade();

        assertThat(layers).hasSameSizeAs(engine).hasSize(7);
        double above = Double.POSITIVE_INFINITY;
        for (int i = 0; i < engine.size(); i++) {
            String tone = layers.get(i).getAttribute("fill-opacity");
            assertThat(tone.isEmpty() ? 1 : Double.parseDouble(tone))
                    .isCloseTo(engine.get(i).colourPercent() / 100, within(0.0006));
            assertThat(Drawn.number(layers.get(i), "y")).isLessThan(above);
            above = Drawn.number(layers.get(i), "y");
            assertThat(drawn.texts()).contains(Figures.percent(engine.get(i).colourPercent(), 0));
        }
    }

    @Test
    void each_portion_is_as_wide_as_its_share() {
        Drawn drawn = Drawn.of(PortionsPicture.of(tideline).orElseThrow().drawing());
        List<Element> bars = drawn.with("rect", "f-full");
        List<PortionSheet> engine = tideline.portions();

        assertThat(bars).hasSameSizeAs(engine);
        for (int i = 0; i < engine.size(); i++) {
            assertThat(Drawn.number(bars.get(i), "width") / 3.58)
                    .isCloseTo(engine.get(i).sharePercent(), within(0.05));
        }
    }

    @Test
    void a_single_batter_has_neither() {
        MakingSheet castile = Cases.sheet("Plain Castile");
        assertThat(PortionsPicture.of(castile)).isEmpty();
        assertThat(FadePicture.of(castile)).isEmpty();
    }

    @Test
    void portions_that_are_too_many_to_draw_are_all_in_the_table() {
        Picture picture = PortionsPicture.of(Cases.sheet("forty portions")).orElseThrow();
        assertThat(Drawn.of(picture.drawing()).texts()).contains("and 28 more in the table");
        assertThat(picture.table().rows()).hasSize(40);
    }
}
