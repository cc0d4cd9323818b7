package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;

/** What a maker says of a material of their own is counted, or refused; never silently left out. */
class OwnMaterialsTest {

    private static List<Problem> resolving(String oils, String additions, String materials) {
        Formula formula = FormulaFile.read("recipe: Own\noils: " + oils
                        + "\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n" + additions + "materials:\n" + materials)
                .formula()
                .orElseThrow();
        return ResolvedFormula.of(formula, Tables.bundled(), Purities.ASSUMED).problems();
    }

    @Test
    void a_wax_of_the_tables_is_not_made_an_oil_by_saying_so() {
        assertThat(resolving("{coconut: 80 %, jojoba: rest}", "", "  jojoba: {kind: oil, supplier: Fell & Fen}\n"))
                .extracting(Problem::path)
                .containsExactly("materials.jojoba.kind");
        assertThat(resolving("{coconut: 80 %, jojoba: rest}", "", "  jojoba: {kind: wax, supplier: Fell & Fen}\n"))
                .isEmpty();
        assertThat(resolving("{coconut: 80 %, jojoba: rest}", "", "  jojoba: {supplier: Fell & Fen}\n"))
                .isEmpty();
    }

    @Test
    void a_material_alone_is_a_sound_formula_that_reads_back_with_it() {
        OwnMaterial wax =
                FormulaFile.read("""
                        recipe: Own
                        oils: {coconut: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        materials:
                          jojoba: {kind: wax, saponification value: 92 to 95}
                        """).formula().orElseThrow().materials().get(0);

        FormulaFile.Read read = FormulaFile.read(FormulaFile.write(wax.alone()));

        assertThat(read.problems()).isEmpty();
        assertThat(read.formula().orElseThrow().materials()).containsExactly(wax);
    }

    @Test
    void fat_of_a_milk_that_could_not_be_counted_is_refused() {
        String milk = "additions: [{of: ewe, amount: 10 % of oils, stage: trace}]\n";

        assertThat(resolving("{coconut: 100 %}", milk, "  ewe: {kind: milk, water: 81 %, fat: 7 %}\n"))
                .extracting(Problem::path)
                .containsExactly("materials.ewe.fat");
        assertThat(resolving(
                        "{coconut: 100 %}",
                        milk, "  ewe: {kind: milk, water: 81 %, fat: 7 %, fat saponification value: 230}\n"))
                .isEmpty();
        assertThat(resolving("{coconut: 100 %}", milk, "  ewe: {kind: exfoliant, fat: 7 %}\n"))
                .as("fat locked in a seed")
                .isEmpty();
    }

    @Test
    void an_acid_of_unknown_strength_is_refused() {
        String acid = "additions: [{of: souring, amount: 1 % of oils, stage: lye}]\n";

        assertThat(resolving("{coconut: 100 %}", acid, "  souring: {kind: acid}\n"))
                .extracting(Problem::path)
                .containsExactly("materials.souring");
        assertThat(resolving("{coconut: 100 %}", acid, "  souring: {kind: acid, acid: 80 % lactic acid}\n"))
                .isEmpty();
        assertThat(resolving("{coconut: 100 %}", acid, "  souring: {kind: acid, acid: 80 % moonic acid}\n"))
                .extracting(Problem::path)
                .containsExactly("materials.souring.acid");
    }
}
