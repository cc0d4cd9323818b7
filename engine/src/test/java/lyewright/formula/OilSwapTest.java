package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;

class OilSwapTest {

    private static final String PERCENT = """
            recipe: Plain bar
            version: 1
            use: own
            oils:
              coconut: 30 %
              olive-virgin: 50 %  # from the tin
              castor: rest
            alkali: sodium
            superfat: 5 %
            water: 33 % lye
            additions:
              - of: green-clay
                amount: 10 g per kg oils
                stage: trace
                disperse: {in: olive-virgin, ratio: 2 to 1}
            """;

    private static final String MASSES = """
            recipe: Plain bar
            version: 1
            use: own
            oils:
              coconut: 300 g
              olive-virgin: 1 lb
              castor: 50 g
            alkali: sodium
            superfat: 5 %
            water: 33 % lye
            """;

    @Test
    void the_oil_that_comes_takes_the_place_and_share_of_the_one_that_goes() {
        Formula swapped = swap(PERCENT, "coconut", "babassu");

        assertThat(swapped.oils()).extracting(OilLine::key).containsExactly("babassu", "olive-virgin", "castor");
        assertThat(swapped.oils().get(0).amount())
                .isEqualTo(formula(PERCENT).oils().get(0).amount());
    }

    @Test
    void all_else_stays_as_written() {
        Formula before = formula(PERCENT);

        Formula swapped = swap(PERCENT, "coconut", "babassu");

        assertThat(swapped.additions()).isEqualTo(before.additions());
        assertThat(swapped.superfat()).isEqualTo(before.superfat());
        assertThat(swapped.water()).isEqualTo(before.water());
        assertThat(swapped.comments()).isEqualTo(before.comments());
        assertThat(before).isEqualTo(formula(PERCENT));
    }

    @Test
    void an_oil_that_is_there_already_gets_the_share_of_both() {
        Formula swapped = swap(PERCENT, "coconut", "olive-virgin");

        assertThat(FormulaFile.write(swapped))
                .contains("olive-virgin: 80 %", "castor: rest")
                .doesNotContain("coconut");
    }

    @Test
    void the_rest_stays_the_rest_whichever_of_the_two_it_was() {
        assertThat(FormulaFile.write(swap(PERCENT, "castor", "olive-virgin")))
                .contains("coconut: 30 %", "olive-virgin: rest");
        assertThat(FormulaFile.write(swap(PERCENT, "olive-virgin", "castor")))
                .contains("coconut: 30 %", "castor: rest");
    }

    @Test
    void masses_are_added_in_their_unit_or_in_grams() {
        assertThat(FormulaFile.write(swap(MASSES, "castor", "coconut"))).contains("coconut: 350 g");
        // a pound is 453.59237 g
        assertThat(FormulaFile.write(swap(MASSES, "coconut", "olive-virgin"))).contains("olive-virgin: 753.59237 g");
    }

    @Test
    void what_was_wetted_out_with_the_oil_that_goes_takes_the_one_that_comes() {
        Formula swapped = swap(PERCENT, "olive-virgin", "sunflower");

        assertThat(swapped.additions().get(0).disperse())
                .get()
                .extracting(Disperse::in)
                .isEqualTo("sunflower");
    }

    @Test
    void a_swapped_formula_is_written_and_read_back_the_same() {
        Formula swapped = swap(PERCENT, "olive-virgin", "sunflower");

        assertThat(FormulaFile.read(FormulaFile.write(swapped))
                        .formula()
                        .orElseThrow()
                        .oils())
                .isEqualTo(swapped.oils());
    }

    @Test
    void a_material_of_the_makers_own_comes_along_once() {
        Formula withOwn = formula(PERCENT + "materials:\n  shea-lot:\n    kind: oil\n"
                + "    saponification value: 180 mg KOH/g\n    density: 0.91 g/ml\n");
        OwnMaterial own = withOwn.materials().get(0);

        Formula swapped = OilSwap.of(formula(PERCENT), "coconut", "shea-lot", List.of(own))
                .orThrow();

        assertThat(swapped.materials()).containsExactly(own);
        assertThat(ResolvedFormula.of(swapped, Tables.bundled(), Purities.ASSUMED)
                        .problems())
                .isEmpty();
        assertThat(OilSwap.of(withOwn, "coconut", "shea-lot", List.of(own))
                        .orThrow()
                        .materials())
                .containsExactly(own);
    }

    @Test
    void an_oil_that_is_not_in_the_recipe_cannot_go() {
        assertRefused("babassu", "olive-virgin", OilSwap.OUT, "is not one of the oils");
    }

    @Test
    void an_oil_does_not_take_its_own_place() {
        assertRefused("olive-virgin", "olive-virgin", OilSwap.IN, "it is the oil that goes");
    }

    private static void assertRefused(String out, String in, String path, String what) {
        Outcome<Formula> refused = OilSwap.of(formula(PERCENT), out, in, List.of());
        assertThat(refused.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo(path);
            assertThat(problem.what()).contains(what);
        });
    }

    private static Formula swap(String text, String out, String in) {
        return OilSwap.of(formula(text), out, in, List.of()).orThrow();
    }

    private static Formula formula(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        assertThat(read.problems()).extracting(Problem::sentence).isEmpty();
        return read.formula().orElseThrow();
    }
}
