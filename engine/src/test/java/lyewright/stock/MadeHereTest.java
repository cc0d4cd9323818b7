package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Alkali;
import lyewright.material.Figure;
import lyewright.material.Tables;
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
        OwnMaterial premix = MadeHere.premix("house-blend", List.of(oil("olive-virgin", 3_000_000)), "lot");
        assertThat(premix.oils().get(0).share().percent()).isEqualByComparingTo("100");
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            List<MadeHere.Oil> oils = new ArrayList<>();
            for (int n = 0; n < 2 + random.nextInt(6); n++) {
                oils.add(oil("oil-" + random.nextInt(4), 1_000L + random.nextInt(5_000_000)));
            }
            BigDecimal sum = MadeHere.premix("blend", oils, "lots").oils().stream()
                    .map(part -> part.share().percent())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(sum).isEqualByComparingTo("100");
        }
    }

    private static MadeHere.Oil oil(String key, long amount) {
        return new MadeHere.Oil(key, amount, Optional.empty());
    }

    private static MadeHere.Oil certified(String key, long amount, double low, double high) {
        return new MadeHere.Oil(key, amount, Optional.of(new Figure(low, high, Figure.Spread.NORMAL, "certificate")));
    }

    private static Figure mixed(MadeHere.Oil... oils) {
        return MadeHere.saponificationValue(MadeHere.premix("blend", List.of(oils), "lots"), Tables.bundled())
                .orElseThrow();
    }

    @Test
    void the_saponification_value_of_a_premix_is_that_of_its_parts_by_mass() {
        // 3 kg of 189.6 and 1 kg of 256.0: (3 x 189.6 + 256.0) / 4 = 206.2
        // and the doubts by JCGM 100:2008, 5.1.2: sqrt((0.75 x 0.8)^2 + (0.25 x 1.0)^2) = 0.65
        Figure mixed =
                mixed(certified("olive-virgin", 3_000_000, 188.8, 190.4), certified("coconut", 1_000_000, 255, 257));
        assertThat(mixed.middle()).isCloseTo(206.2, within(1e-9));
        assertThat(mixed.high() - mixed.middle()).isCloseTo(0.65, within(1e-9));
    }

    @Test
    void two_lots_of_one_oil_in_a_premix_are_mixed_before() {
        OwnMaterial premix = MadeHere.premix(
                "blend",
                List.of(
                        certified("olive-virgin", 500_000, 189, 189),
                        certified("coconut", 1_000_000, 256, 256),
                        certified("olive-virgin", 1_500_000, 191, 191)),
                "lots");
        // (0.5 x 189 + 1.5 x 191) / 2 = 190.5, two thirds of all
        assertThat(premix.oils())
                .extracting(part -> part.key() + " " + part.amount())
                .containsExactly("olive-virgin 66.6667 % of 190.5 mg KOH/g", "coconut 33.3333 % of 256 mg KOH/g");
    }

    @Test
    void what_has_no_certificate_stays_with_the_tables() {
        OwnMaterial half = MadeHere.premix(
                "blend",
                List.of(
                        certified("olive-virgin", 1_000_000, 188, 192),
                        oil("olive-virgin", 1_000_000),
                        oil("coconut", 1)),
                "lots");
        assertThat(half.oils())
                .allSatisfy(part -> assertThat(part.saponificationValue()).isEmpty());
        // the tables' 184 to 196 and 250 to 263 or so: half of each
        Tables tables = Tables.bundled();
        double olive = tables.oil("olive-virgin").orElseThrow().reckoned().milligramsKohPerGram();
        double coconut = tables.oil("coconut").orElseThrow().reckoned().milligramsKohPerGram();
        assertThat(mixed(oil("olive-virgin", 1_000_000), oil("coconut", 1_000_000))
                        .middle())
                .isCloseTo((olive + coconut) / 2, within(1e-9));
        Figure one = mixed(certified("olive-virgin", 1_000_000, 189.5, 190.5), oil("coconut", 1_000_000));
        assertThat(one.middle()).isCloseTo((190 + coconut) / 2, within(1e-9));
    }

    @Test
    void a_sheet_of_a_certified_premix_asks_for_the_alkali_of_its_oils_by_hand() {
        OwnMaterial premix = MadeHere.premix(
                "blend",
                List.of(certified("olive-virgin", 3_000_000, 188.8, 190.4), certified("coconut", 1_000_000, 255, 257)),
                "lots");
        MakingSheet sheet = sheet("blend: 1000 g", premix);
        // 1000 g x 206.2 mg KOH/g / 56.1056 mg/mmol x 39.9971 mg/mmol x 0.95 / purity of 100 % is 139.65 g
        assertThat(soda(sheet)).isCloseTo(139.65, within(0.06));
        // 0.65 of 206.2 is 0.315 %; of what reacts that is 0.3 points of superfat to each side, the rest is weighing
        assertThat((sheet.band().highPercent() - sheet.band().lowPercent()) / 2).isBetween(0.28, 0.45);
        MakingSheet plain = sheet("blend: 1000 g", premix.bySharesAlone());
        assertThat((plain.band().highPercent() - plain.band().lowPercent()) / 2).isGreaterThan(1);
    }

    @Test
    void an_oil_beside_a_premix_that_has_it_too_keeps_its_own_value() {
        OwnMaterial premix = MadeHere.premix("blend", List.of(certified("olive-virgin", 1_000_000, 192, 192)), "lots");
        MakingSheet both = sheet("blend: 500 g, olive-virgin: 500 g", premix);
        MakingSheet plain = sheet("olive-virgin: 1000 g", premix);
        double olive =
                Tables.bundled().oil("olive-virgin").orElseThrow().reckoned().milligramsKohPerGram();
        assertThat(soda(both) / soda(plain)).isCloseTo((192 + olive) / 2 / olive, within(0.001));
    }

    @Test
    void a_premix_with_certificates_is_written_and_read_as_it_is() {
        OwnMaterial premix = MadeHere.premix(
                "blend",
                List.of(certified("olive-virgin", 2_000_000, 188.8, 190.4), oil("coconut", 1_000_000)),
                "made here of lots 26-0001, 26-0002");
        Formula formula = premix.alone();
        assertThat(FormulaFile.read(FormulaFile.write(formula))
                        .formula()
                        .orElseThrow()
                        .materials())
                .containsExactly(premix);
    }

    private static double soda(MakingSheet sheet) {
        return sheet.vessels().stream()
                .flatMap(vessel -> vessel.weighings().stream())
                .filter(weighing -> weighing.line().key().equals("naoh"))
                .mapToDouble(weighing -> weighing.weigh().grams())
                .sum();
    }

    private static MakingSheet sheet(String oils, OwnMaterial premix) {
        Formula formula = FormulaFile.read(
                        "recipe: x\noils: {" + oils + "}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\nmaterials:\n"
                                + "  blend: {kind: oils, oils: {castor: 100 %}}\n")
                .formula()
                .orElseThrow()
                .withMaterials(List.of(premix));
        Purities pure = new Purities(Optional.of(Figure.exact(100, "")), Optional.empty());
        return ResolvedFormula.of(formula, Tables.bundled(), pure)
                .then(resolved -> MakingSheet.of(resolved, Fill.AS_WRITTEN, Equipment.USUAL))
                .orThrow();
    }
}
