package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** Whatever a formula file may say makes a sheet or a refusal, never an exception. A case is its seed. */
class MakeableFormulasTest {

    private static final int CASES = 2000;

    @Test
    void every_formula_that_keeps_the_rules_makes_a_sheet_or_is_refused_in_words() {
        int sheets = 0;
        for (long seed = 0; seed < CASES; seed++) {
            Formula formula = RandomFormulas.of(seed);
            for (Equipment equipment : new Equipment[] {Equipment.USUAL, Sheets.LABORATORY}) {
                Outcome<MakingSheet> sheet = ResolvedFormula.of(formula, Tables.bundled(), Purities.ASSUMED)
                        .then(resolved -> MakingSheet.of(resolved, Fill.mouldMass(1500), equipment));
                if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
                    sheets++;
                    assertThatCode(() -> ok.value().cautions().forEach(Caution::text))
                            .as("case %d", seed)
                            .doesNotThrowAnyException();
                    assertWhole(seed, ok.value());
                } else {
                    assertThat(sheet.problems())
                            .as("case %d", seed)
                            .isNotEmpty()
                            .allSatisfy(problem -> {
                                assertThat(problem.what()).isNotBlank().doesNotContain("NaN");
                                assertThat(problem.remedy()).isNotBlank();
                            });
                }
            }
        }
        assertThat(sheets).isGreaterThan(CASES * 7 / 10);
    }

    private static void assertWhole(long seed, MakingSheet sheet) {
        String as = "case " + seed;
        if (sheet.askedSuperfatPercent().isPresent()) {
            assertThat(sheet.sheetSuperfatPercent())
                    .as(as)
                    .isGreaterThanOrEqualTo(sheet.askedSuperfatPercent().get() - 1e-9);
        }
        assertThat(sheet.sheetSuperfatPercent()).as(as).isFinite();
        assertThat(sheet.lye().concentrationPercent()).as(as).isBetween(0.0, 100 + 1e-9);
        assertThat(sheet.batterDensity()).as(as).isPositive().isFinite();
        double weighed = Sheets.weighings(sheet).stream()
                .mapToDouble(w -> w.weigh().grams())
                .sum();
        assertThat(Math.abs(weighed - sheet.totals().batch())).as(as).isLessThan(1e-6);
        for (Caution caution : sheet.cautions()) {
            assertThat(caution.text()).as(as).endsWith(".").doesNotContain("NaN");
        }
    }
}
