package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;

/** A remark about a name that was typed goes with the line it was typed for; a maker's own remarks stay. */
class TypedRemarksTest {

    private static final Formula NOTEBOOK = FormulaFile.read("""
                    recipe: From a notebook
                    oils:
                      coconut: 500 g  # from the new tub
                      shea-butter: 100 g  # typed: shea butter (unrefined)
                    alkali: sodium
                    superfat: 5 %
                    water: 33 % lye
                    additions:
                      - of: honey  # typed: runny honey
                        amount: 10 g
                        stage: trace
                    """).formula().orElseThrow();

    private static String written(UnaryOperator<FormulaForm> change) {
        return FormulaFile.write(change.apply(FormulaForm.of(NOTEBOOK))
                .read(MaterialNames.of(Tables.bundled()))
                .formula()
                .orElseThrow());
    }

    private static FormulaForm withOil(FormulaForm form, String second) {
        return form.withOils(List.of(form.oils().get(0), new OilRow(second, "100 g")));
    }

    private static FormulaForm withAddition(FormulaForm form, String name) {
        AdditionRow row = form.additions().get(0);
        return form.withAdditions(List.of(new AdditionRow(
                name, row.amount(), row.stage(), row.in(), row.ratio(), row.ahead(), row.replaces(), row.was())));
    }

    @Test
    void an_oil_that_is_swapped_takes_its_remark_along() {
        assertThat(written(form -> withOil(form, "sunflower")))
                .contains("# from the new tub")
                .contains("# typed: runny honey")
                .doesNotContain("shea");
    }

    @Test
    void an_addition_that_is_swapped_or_gone_takes_its_remark_along() {
        assertThat(written(form -> withAddition(form, "kaolin")))
                .contains("typed: shea butter")
                .doesNotContain("honey");
        assertThat(written(form -> form.withAdditions(List.of()))).doesNotContain("honey");
    }

    @Test
    void what_stays_keeps_it() {
        assertThat(written(form -> form)).isEqualTo(FormulaFile.write(NOTEBOOK));
        assertThat(written(form -> withOil(form, "Shea butter (unrefined)")))
                .contains("typed: shea butter (unrefined)");
    }
}
