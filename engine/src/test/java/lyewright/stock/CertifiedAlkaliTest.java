package lyewright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Figure;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is weighed of alkali whose lot has a certificate, for the grades that are sold: sodium hydroxide of 97 to 99 % (INRS, Fiche
 * toxicologique 20), potassium hydroxide of 88 to 92 % or less (a handbook of 1908; 85 to 90 % today from memory).
 */
class CertifiedAlkaliTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);

    private static final Purities PURE =
            new Purities(Optional.of(Figure.exact(100, "the test")), Optional.of(Figure.exact(100, "the test")));

    private static Formula formula(String alkali, String materials) {
        return FormulaFile.read("""
                        recipe: T
                        oils: {olive-virgin: 100 %%}
                        alkali: %s
                        superfat: 5 %%
                        water: 1200 g fixed
                        """.formatted(alkali) + materials).formula().orElseThrow();
    }

    /** The purities with a certificate on the only lot of an alkali. */
    private static Purities certified(String key, String says) {
        OwnMaterial certificate = formula(
                        says.replaceAll(".* ", ""),
                        "materials:\n  " + key + ":\n    kind: lye\n    strength: " + says
                                + "\n    source: certificate\n")
                .materials()
                .get(0);
        Lot lot = new Lot("id", "26-0001", Optional.empty(), DAY, LotStatus.USABLE, 1_000_000, true);
        Cupboard cupboard =
                Cupboard.look(List.of(new Cupboard.Need(key, key, 200_000, true)), Map.of(key, List.of(lot)), DAY);
        return LotFigures.of(cupboard, Map.of("id", certificate)).purities(Purities.ASSUMED);
    }

    private static double weighed(String alkali, Purities purities) {
        LyeSheet lye = ResolvedFormula.of(formula(alkali, ""), Tables.bundled(), purities)
                .then(resolved -> MakingSheet.of(resolved, Fill.oilMass(4000), Equipment.USUAL))
                .orThrow()
                .lye();
        return lye.naohGrams() + lye.kohGrams();
    }

    /** 100 g pure is 103.093 g at 97 %, 102.041 at 98, 101.010 at 99, 111.111 at 90, 117.647 at 85; weighed to a gram. */
    @ParameterizedTest(name = "{0} of {1} %: {2} g for 100 g pure")
    @CsvSource({
        "sodium, naoh, 97, 103.093",
        "sodium, naoh, 98, 102.041",
        "sodium, naoh, 99, 101.010",
        "potassium, koh, 90, 111.111",
        "potassium, koh, 88, 113.636",
        "potassium, koh, 85, 117.647"
    })
    void a_certificate_of_a_grade_that_is_sold_is_weighed_by(String alkali, String key, String percent, double grams) {
        double pure = weighed(alkali, PURE);

        assertThat(weighed(alkali, certified(key, percent + " % " + alkali)))
                .isCloseTo(pure * grams / 100, within(1.5));
    }

    /** Only the assay is unsure, so that the alkali is as unsure as it: 97 ± 1 anywhere between is 0.6 % (1 ÷ √3 ÷ 97). */
    @Test
    void a_grade_that_is_a_range_is_as_unsure_as_its_range() {
        Figure purity = certified("naoh", "96 to 98 % sodium").sodium().orElseThrow();

        assertThat(purity.spread()).isEqualTo(Figure.Spread.RECTANGULAR);
        assertThat((purity.high() - purity.low()) / 2 / Math.sqrt(3) / purity.middle())
                .isCloseTo(0.006, within(0.0001));
    }
}
