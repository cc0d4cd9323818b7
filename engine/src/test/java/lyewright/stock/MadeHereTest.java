package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lyewright.formula.OwnMaterial;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.stock.MixedFigures.Weighted;
import org.junit.jupiter.api.Test;

/** What is made here, held against a mass balance. */
class MadeHereTest {

    @Test
    void half_and_half_of_98_percent_soda_is_49_percent_lye() {
        OwnMaterial lye = MadeHere.lye(
                "stock-lye",
                Alkali.SODIUM,
                List.of(new Weighted(Figure.exact(98, ""), 500_000)),
                500_000,
                "lot 26-0001");
        assertThat(lye.strength().orElseThrow().pure().toString()).isEqualTo("49");
        assertThat(lye.strength().orElseThrow().alkali()).isEqualTo(Alkali.SODIUM);
    }

    @Test
    void how_unsure_the_purity_is_goes_on_by_its_share() {
        Figure purity = new Figure(98.2, 99.0, Figure.Spread.NORMAL, "");
        OwnMaterial lye =
                MadeHere.lye("stock-lye", Alkali.SODIUM, List.of(new Weighted(purity, 500_000)), 500_000, "lot");
        assertThat(lye.strength().orElseThrow().pure().toString()).isEqualTo("49.3 ± 0.2");
    }

    @Test
    void two_lots_of_soda_count_by_their_mass() {
        OwnMaterial lye = MadeHere.lye(
                "stock-lye",
                Alkali.SODIUM,
                List.of(new Weighted(Figure.exact(96, ""), 300_000), new Weighted(Figure.exact(99, ""), 100_000)),
                600_000,
                "lots");
        // 300 x 0.96 + 100 x 0.99 = 387 g pure in 1000 g
        assertThat(lye.strength().orElseThrow().pure().toString()).isEqualTo("38.7");
    }

    @Test
    void the_shares_of_a_premix_are_those_of_its_masses_and_make_a_whole() {
        OwnMaterial premix =
                MadeHere.premix("house-blend", new LinkedHashMap<>(Map.of("olive-virgin", 3_000_000L)), "lot");
        assertThat(premix.oils().get(0).share().percent()).isEqualByComparingTo("100");
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            Map<String, Long> oils = new LinkedHashMap<>();
            for (int n = 0; n < 2 + random.nextInt(6); n++) {
                oils.put("oil-" + n, 1_000L + random.nextInt(5_000_000));
            }
            BigDecimal sum = MadeHere.premix("blend", oils, "lots").oils().stream()
                    .map(part -> part.share().percent())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(sum).isEqualByComparingTo("100");
        }
    }
}
