package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.fill.Fill;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.words.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SuperfatPictureTest {

    /** A tenth of a unit is the finest that is written; on these scales it is less than this, percent. */
    private static final double FINE = 0.06;

    @ParameterizedTest
    @ValueSource(
            strings = {"Plain Castile", "Harbour Shave", "Tideline", "Kitchen Notebook", "superfat far under zero"})
    void the_band_lies_on_its_scale_where_the_engine_puts_it(String name) {
        SuperfatBand band = Cases.sheet(name).band();
        Drawn drawn =
                Drawn.of(SuperfatPicture.of(band, java.util.Optional.empty()).drawing());
        Scale scale = Scale.of(drawn);

        Element outline = drawn.with("rect", "f-clear o").get(0);
        double left = Drawn.number(outline, "x");
        assertThat(scale.percent(left)).isCloseTo(band.lowPercent(), within(scale.fine()));
        assertThat(scale.percent(left + Drawn.number(outline, "width")))
                .isCloseTo(band.highPercent(), within(scale.fine()));
        List<Double> now = Drawn.points(drawn.with("path", "now").get(0).getAttribute("d"));
        assertThat(scale.percent(now.get(0))).isCloseTo(band.sheetPercent(), within(scale.fine()));
        List<Double> worst = Drawn.points(drawn.with("path", "worst").get(0).getAttribute("d"));
        assertThat(scale.percent((worst.get(0) + worst.get(2)) / 2))
                .isCloseTo(band.worstPercent(), within(scale.fine()));
        List<Double> zero = Drawn.points(drawn.with("path", "zero").get(0).getAttribute("d"));
        assertThat(scale.percent(zero.get(0))).isCloseTo(0, within(scale.fine()));
    }

    /** Read off the figures under the scale. */
    private record Scale(double unitsPerPercent, double zero) {

        static Scale of(Drawn drawn) {
            List<Element> ticks = drawn.all("text").stream()
                    .filter(t -> t.getAttribute("font-size").equals("12.2")
                            && t.getTextContent().matches("-?[0-9.]+"))
                    .toList();
            Element first = ticks.get(0);
            Element last = ticks.get(ticks.size() - 1);
            double from = Double.parseDouble(first.getTextContent());
            double to = Double.parseDouble(last.getTextContent());
            double units = (Drawn.number(last, "x") - Drawn.number(first, "x")) / (to - from);
            return new Scale(units, Drawn.number(first, "x") - from * units);
        }

        double percent(double x) {
            return (x - zero) / unitsPerPercent;
        }

        double fine() {
            return Math.max(FINE, 0.2 / unitsPerPercent);
        }
    }

    @Test
    void the_words_on_it_are_the_engines_figures() {
        MakingSheet sheet = Cases.sheet("Harbour Shave");
        List<String> texts = Drawn.of(SuperfatPicture.of(sheet).drawing()).texts();

        assertThat(texts)
                .contains(
                        Figures.percent(sheet.band().sheetPercent(), 1) + ", as asked",
                        Figures.fixed(sheet.band().lowPercent(), 1),
                        Figures.fixed(sheet.band().highPercent(), 1),
                        "worst " + Figures.fixed(sheet.band().worstPercent(), 1));
    }

    @Test
    void what_is_asked_is_told_apart_where_the_sheet_comes_to_something_else() {
        Drawn castile =
                Drawn.of(SuperfatPicture.of(Cases.sheet("Plain Castile")).drawing());
        assertThat(castile.texts()).contains("5.1 % by the sheet, 5 asked");
        assertThat(castile.with("path", "asked")).hasSize(1);

        Drawn notebook =
                Drawn.of(SuperfatPicture.of(Cases.sheet("Kitchen Notebook")).drawing());
        assertThat(notebook.with("path", "asked")).isEmpty();
    }

    @Test
    void what_lies_under_zero_is_drawn_as_alkali_left_over() {
        assertThat(Drawn.of(picture("superfat far under zero")).with("rect", "f-stop"))
                .hasSize(1);
        assertThat(Drawn.of(picture("Tideline")).with("rect", "f-stop")).isEmpty();
    }

    @Test
    void a_band_that_leaves_the_scale_goes_on_by_an_arrow_and_is_told_in_figures() {
        MakingSheet hopeless = Sheets.of(Cases.HOPELESS, Fill.AS_WRITTEN);
        Drawn drawn = Drawn.of(SuperfatPicture.of(hopeless).drawing());

        assertThat(hopeless.band().highPercent()).isLessThan(-100);
        assertThat(drawn.with("path", "now-head")).hasSize(1);
        assertThat(drawn.with("path", "now")).isEmpty();
        assertThat(drawn.texts())
                .contains(Figures.percent(hopeless.band().sheetPercent(), 1) + " by the sheet", "-100", "0");
    }

    @Test
    void the_sentence_is_the_engines_own() {
        MakingSheet sheet = Cases.sheet("Tideline");
        assertThat(SuperfatPicture.of(sheet).sentence()).isEqualTo(sheet.howSure());
        assertThat(SuperfatPicture.of(sheet.band(), sheet.askedSuperfatPercent())
                        .sentence())
                .isEqualTo(sheet.band().sentence());
    }

    private static Drawing picture(String name) {
        return SuperfatPicture.of(Cases.sheet(name)).drawing();
    }
}
