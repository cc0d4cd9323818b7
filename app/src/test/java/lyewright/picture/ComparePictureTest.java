package lyewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.Figures;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ComparePictureTest {

    private final MakingSheet castile = Cases.sheet("Plain Castile");
    private final MakingSheet tideline = Cases.sheet("Tideline");

    @Test
    void both_bands_lie_on_one_scale() {
        Drawn drawn =
                Drawn.of(ComparePicture.superfats(castile, "a", tideline, "b").drawing());
        List<Element> bands = drawn.with("rect", "f-clear o");
        double zero = drawn.xOf("0");
        double unit = (drawn.xOf("20") - zero) / 20;

        assertThat(bands).hasSize(2);
        assertThat((Drawn.number(bands.get(0), "x") - zero) / unit)
                .isCloseTo(castile.band().lowPercent(), within(0.02));
        assertThat((Drawn.number(bands.get(1), "x") - zero) / unit)
                .isCloseTo(tideline.band().lowPercent(), within(0.02));
        assertThat((Drawn.number(bands.get(1), "x") + Drawn.number(bands.get(1), "width") - zero) / unit)
                .isCloseTo(tideline.band().highPercent(), within(0.02));
    }

    @Test
    void an_acid_that_only_one_has_is_nothing_in_the_other() {
        Picture picture = ComparePicture.fattyAcids(castile, "a", tideline, "b");
        String lauric = Figures.fixed(
                OilPhaseAcids.of(tideline.batch(), tideline.filled().oilsGrams())
                        .percent("C12:0"),
                1);
        assertThat(picture.table().rows()).contains(List.of("lauric C12:0", "0.0", lauric));
    }

    @Test
    void a_profile_that_is_not_known_is_no_row_of_noughts() {
        MakingSheet unknown = Cases.sheet("acids of nothing known");
        Picture picture = ComparePicture.fattyAcids(castile, "a", unknown, "b");

        assertThat(picture.table().rows())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get(2)).isEqualTo("?"));
        assertThat(picture.notes()).contains("b: acids not known of any oil.");
        assertThat(Drawn.of(ComparePicture.fattyAcids(unknown, "a", unknown, "b")
                                .drawing())
                        .texts())
                .containsExactly("a", "b", "Not known of either.");
    }
}
