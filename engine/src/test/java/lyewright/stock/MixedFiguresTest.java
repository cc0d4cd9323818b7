package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.material.Figure;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Lots that go in together, held against a mass balance. */
class MixedFiguresTest {

    private static final Offset<Double> TINY = Offset.offset(1e-9);

    private static OwnMaterial certified(String figures) {
        return FormulaFile.read(
                        "recipe: x\noils: {olive-virgin: 100 %}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n"
                                + "materials:\n  olive-virgin:\n    source: certificate\n" + figures.indent(4))
                .formula()
                .orElseThrow()
                .materials()
                .get(0);
    }

    @Test
    void the_mixture_takes_the_alkali_that_its_parts_take() {
        OwnMaterial one = certified("saponification value: 188 mg KOH/g");
        OwnMaterial other = certified("saponification value: 194 mg KOH/g");
        MixedFigures mixed = MixedFigures.of(
                List.of(new MixedFigures.Part(one, 750_000), new MixedFigures.Part(other, 250_000)), "two lots");
        // 750 g take 750 x 188 mg of potassium hydroxide, 250 g take 250 x 194 mg: together 189 500 mg for 1000 g
        assertThat(mixed.material().saponificationValue().orElseThrow().toString())
                .isEqualTo("189.5");
        assertThat(mixed.material().source()).isEqualTo("two lots");
    }

    @Test
    void what_is_unsure_of_lots_adds_in_squares() {
        Figure one = new Figure(187, 189, Figure.Spread.NORMAL, "");
        Figure other = new Figure(187, 189, Figure.Spread.NORMAL, "");
        Figure mean =
                MixedFigures.mean(List.of(new MixedFigures.Weighted(one, 1), new MixedFigures.Weighted(other, 1)), "");
        assertThat(mean.middle()).isCloseTo(188, TINY);
        assertThat((mean.high() - mean.low()) / 2).isCloseTo(1 / Math.sqrt(2), TINY);
    }

    @Test
    void a_figure_that_one_lot_lacks_is_left_to_the_tables() {
        OwnMaterial one = certified("saponification value: 188 ± 1 mg KOH/g\niodine value: 82");
        OwnMaterial other = certified("saponification value: 190 ± 1 mg KOH/g");
        MixedFigures mixed =
                MixedFigures.of(List.of(new MixedFigures.Part(one, 1), new MixedFigures.Part(other, 1)), "two lots");
        assertThat(mixed.missing()).containsExactly("iodine value");
        assertThat(mixed.material().iodineValue()).isEmpty();
        assertThat(mixed.material().saponificationValue().orElseThrow().toString())
                .isEqualTo("189 ± 0.71");
    }

    @Test
    void one_lot_keeps_what_its_certificate_says() {
        OwnMaterial only = certified("saponification value: 184 to 196 mg KOH/g");
        MixedFigures mixed = MixedFigures.of(List.of(new MixedFigures.Part(only, 5)), "one lot");
        assertThat(mixed.material()).isEqualTo(only);
    }

    @Test
    void two_lots_of_a_premix_are_mixed_oil_by_oil() {
        OwnMaterial one = MadeHere.premix(
                "blend",
                List.of(
                        new MadeHere.Oil("olive-virgin", 600, Optional.of(Figure.exact(189, ""))),
                        new MadeHere.Oil("coconut", 400, Optional.of(Figure.exact(256, "")))),
                "a");
        OwnMaterial other = MadeHere.premix(
                "blend",
                List.of(
                        new MadeHere.Oil("olive-virgin", 200, Optional.of(Figure.exact(193, ""))),
                        new MadeHere.Oil("coconut", 800, Optional.empty())),
                "b");
        OwnMaterial mixed = MixedFigures.of(
                        List.of(new MixedFigures.Part(one, 500_000), new MixedFigures.Part(other, 500_000)), "a and b")
                .material();
        // olive: 300 g of 189 and 100 g of 193 in 1000 g, so 40 % of (300 x 189 + 100 x 193) / 400 = 190
        assertThat(mixed.oils())
                .extracting(part -> part.key() + " " + part.amount())
                .containsExactly("olive-virgin 40 % of 190 mg KOH/g", "coconut 60 %");
    }
}
