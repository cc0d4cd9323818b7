package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import lyewright.fill.Fill;
import lyewright.formula.AcidRule;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import org.junit.jupiter.api.Test;

/** What no sheet is made of: one sentence, its place and a remedy. */
class RefusalsTest {

    private static AFormula house() {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %");
    }

    private static Problem refusal(AFormula formula, Fill fill) {
        return refusal(formula, fill, Equipment.USUAL);
    }

    private static Problem refusal(AFormula formula, Fill fill, Equipment equipment) {
        Outcome<MakingSheet> sheet = formula.trySheet(fill, equipment);
        assertThat(sheet.problems()).hasSize(1);
        Problem problem = sheet.problems().get(0);
        assertThat(problem.what()).isNotBlank();
        assertThat(problem.remedy()).isNotBlank();
        return problem;
    }

    @Test
    void a_liquid_that_replaces_more_water_than_there_is() {
        AFormula formula = house().water("30 % of oils")
                .add("goat-milk", "35 % of oils", "lye")
                .replacingWater();

        Problem problem = refusal(formula, Fill.oilMass(1000));
        assertThat(problem.path()).isEqualTo("water");
        assertThat(problem.what()).contains("50.0 g more water than the recipe has in all");
    }

    @Test
    void dispersions_that_take_more_water_than_there_is() {
        AFormula formula = house().water("30 % of oils")
                .add("bentonite", "50 g per kg oils", "trace")
                .dispersed("water", "7 to 1");

        // 350 g of 300 g
        Problem problem = refusal(formula, Fill.oilMass(1000));
        assertThat(problem.path()).isEqualTo("water");
        assertThat(problem.what()).contains("50.0 g more");
    }

    @Test
    void dispersions_that_take_more_oil_than_there_is() {
        AFormula formula = AFormula.ofOils("house-oil", "97 %", "castor", "3 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %")
                .add("activated-charcoal", "10 g per kg oils", "trace")
                .dispersed("castor", "4 to 1");

        // 40 g of 30 g
        Problem problem = refusal(formula, Fill.oilMass(1000));
        assertThat(problem.path()).isEqualTo("oils.castor");
        assertThat(problem.what()).isEqualTo("dispersions take 10.0 g more castor than the formula has");
    }

    @Test
    void fixed_additions_heavier_than_the_batch() {
        Problem problem = refusal(house().add("kaolin", "600 g", "trace"), Fill.mouldMass(500));

        assertThat(problem.path()).isEqualTo("additions");
        assertThat(problem.what()).contains("600.0 g");
    }

    @Test
    void additions_that_make_up_all_of_the_batch() {
        Problem problem = refusal(
                house().add("sea-salt", "60 % of batch", "trace").add("kaolin", "40 % of batch", "trace"),
                Fill.mouldMass(1000));

        assertThat(problem.what()).contains("% of batch");
    }

    @Test
    void ten_tenths_of_the_batch_are_all_of_it_whatever_binary_says() {
        AFormula formula = house();
        for (int i = 0; i < 10; i++) {
            formula.add("sea-salt", "10 % of batch", "trace");
        }

        assertThat(refusal(formula, Fill.oilMass(1000)).what()).contains("% of batch");
    }

    @Test
    void a_formula_in_percent_with_nothing_said_of_how_much() {
        Problem problem = refusal(house(), Fill.AS_WRITTEN);

        assertThat(problem.what()).contains("in percent");
        assertThat(problem.remedy()).contains("say how much");
    }

    @Test
    void waxes_alone() {
        AFormula formula = AFormula.ofOils("jojoba", "100 %").superfat("5 %").water("30 % of oils");

        Problem problem = refusal(formula, Fill.oilMass(1000));
        assertThat(problem.path()).isEqualTo("oils");
        assertThat(problem.what()).contains("takes alkali for sure");
    }

    @Test
    void a_batch_that_the_balances_cannot_see() {
        Problem problem = refusal(
                house().water("30 % of oils"),
                Fill.oilMass(0.2),
                Equipment.parseBalances("kitchen:5kg:1g").orThrow());

        assertThat(problem.what()).isEqualTo("the balances are too coarse for so small a batch");
    }

    @Test
    void a_stock_lye_that_brings_more_water_than_the_rule_asks() {
        AFormula formula = house().own(HouseMaterials.stockLye("weak", "25 %", Alkali.SODIUM))
                .stockLye("weak")
                .water("33 % lye");

        assertThat(refusal(formula, Fill.oilMass(1000)).path()).isEqualTo("water");
    }

    @Test
    void alkali_and_superfat_at_odds_because_of_what_acid_takes() {
        // 5 mol of oil, 4.75 mol of alkali, 0.3123 mol of it taken by 20 g of citric acid: 11.2 %, not 5 %
        AFormula formula = AFormula.ofOils("house-oil", "1000 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %")
                .naohPure("189.98575 g")
                .water("300 g")
                .acids(AcidRule.AS_WRITTEN)
                .add("citric-acid-anhydrous", "20 g", "lye");

        Problem problem = refusal(formula, Fill.AS_WRITTEN);
        assertThat(problem.path()).isEqualTo("superfat");
        assertThat(problem.what()).contains("11.25 %");
    }

    @Test
    void a_batch_beyond_all_measure_is_refused_and_not_our_fault() {
        assertThatCode(() -> house().trySheet(Fill.mouldMass(9e17), Equipment.USUAL))
                .doesNotThrowAnyException();
        assertThat(house().trySheet(Fill.mouldMass(9e17), Equipment.USUAL).problems())
                .as("no balance carries it, and milligrams of it cannot be counted")
                .isNotEmpty();
    }

    @Test
    void oils_that_all_round_to_nothing_beside_milk_whose_fat_does_not() {
        // 0.4 g of oil on 1 g is none, while 40 g of coconut milk bring 8.5 g of fat
        AFormula formula = house().add("coconut-milk", "100 g per g oils", "oils");

        Outcome<MakingSheet> sheet = formula.trySheet(
                Fill.oilMass(0.4), Equipment.parseBalances("kitchen:5kg:1g").orThrow());
        assertThatCode(() -> sheet.then(s -> {
                    s.cautions().forEach(Caution::text);
                    return Outcome.ok(s);
                }))
                .doesNotThrowAnyException();
        assertThat(sheet.problems()).hasSize(1);
        assertThat(sheet.problems().get(0).what()).isEqualTo("the balances are too coarse for so small a batch");
    }
}
