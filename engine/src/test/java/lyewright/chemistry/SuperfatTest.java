package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.chemistry.Bench.Made;
import lyewright.formula.AcidRule;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Stage;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Superfat is 100 × (1 − alkali that reaches the oil phase ÷ all equivalents of the oil phase). */
class SuperfatTest {

    private static final double TOLERANCE_SUPERFAT = 1e-9; // percent; nothing is rounded here
    private static final double TOLERANCE_MOLES = 1e-9; // mol
    private static final double TOLERANCE_GRAMS = 1e-6; // g

    private static final Stage OILS = Stage.of(Stage.Kind.OILS);
    private static final Stage LYE = Stage.of(Stage.Kind.LYE);

    /** Alkali that 1000 g of a fat of saponification value 190 can take, mol. */
    private static final double ALL_OF_190 = 190_000 / 56_105.0;

    private static Bench plain() {
        return aFormula().own(Own.oil("fat", "190").material()).oil("fat", "100");
    }

    @ParameterizedTest(name = "{0} %")
    @ValueSource(strings = {"0", "1", "5", "8", "18", "20", "50", "99"})
    void what_is_asked_is_what_is_made(String asked) {
        Made made = plain().superfat(asked).made(1000);
        assertThat(made.superfat()).isCloseTo(Double.parseDouble(asked), within(TOLERANCE_SUPERFAT));
        assertThat(made.reaction().alkali())
                .isCloseTo(ALL_OF_190 * (1 - Double.parseDouble(asked) / 100), within(TOLERANCE_MOLES));
    }

    @Test
    void alkali_beyond_what_the_oils_take_is_a_superfat_under_nothing() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .naoh("150", AlkaliChoice.As.PURE)
                .made(1000);
        double expected = 100 * (1 - 150 / 39.997 / ALL_OF_190);
        assertThat(expected).isNegative();
        assertThat(made.superfat()).isCloseTo(expected, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void an_acid_that_is_compensated_brings_its_own_alkali_and_the_superfat_stays() {
        Made without = plain().superfat("5").made(1000);
        Made with = plain().superfat("5")
                .add("citric-acid-monohydrate", "1", LYE)
                .acids(AcidRule.COMPENSATE)
                .made(1000);
        // 10 g citric acid monohydrate takes 10 / 210.138 × 3 mol
        double taken = 10 / 210.138 * 3;
        assertThat(with.reaction().taken()).isCloseTo(taken, within(1e-6));
        assertThat(with.reaction().alkali() - without.reaction().alkali()).isCloseTo(taken, within(1e-6));
        assertThat(with.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void an_acid_as_written_leaves_the_alkali_and_the_superfat_rises_by_what_it_takes() {
        Made without = plain().superfat("5").made(1000);
        Made with = plain().superfat("5")
                .add("citric-acid-monohydrate", "1", LYE)
                .acids(AcidRule.AS_WRITTEN)
                .made(1000);
        assertThat(with.grams("naoh")).isCloseTo(without.grams("naoh"), within(TOLERANCE_GRAMS));
        double taken = 10 / 210.138 * 3;
        assertThat(with.superfat()).isCloseTo(5 + 100 * taken / ALL_OF_190, within(1e-4));
    }

    @Test
    void own_use_compensates_and_sale_stays_as_written_unless_the_formula_says_otherwise() {
        Made own =
                plain().superfat("5").add("citric-acid-monohydrate", "1", LYE).made(1000);
        Made sale = plain().superfat("5")
                .add("citric-acid-monohydrate", "1", LYE)
                .forSale()
                .made(1000);
        Made saleCompensated = plain().superfat("5")
                .add("citric-acid-monohydrate", "1", LYE)
                .forSale()
                .acids(AcidRule.COMPENSATE)
                .made(1000);
        assertThat(own.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
        assertThat(sale.superfat()).isGreaterThan(9);
        assertThat(saleCompensated.superfat()).isCloseTo(own.superfat(), within(TOLERANCE_SUPERFAT));
    }

    @Test
    void an_acid_that_takes_all_alkali_leaves_none_for_the_oils() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .naoh("50", AlkaliChoice.As.PURE)
                .add("citric-acid-anhydrous", "20", LYE)
                .made(1000);
        assertThat(made.reaction().taken()).isGreaterThan(made.reaction().alkali());
        assertThat(made.reaction().reaching()).isZero();
        assertThat(made.superfat()).isEqualTo(100);
    }

    @Test
    void bicarbonate_takes_one_alkali_for_each_of_its_own() {
        // NaHCO3 + NaOH gives Na2CO3 + H2O; M(NaHCO3) 84.006 g/mol, IUPAC abridged weights, memory
        Made made = plain().superfat("5").add("sodium-bicarbonate", "1", LYE).made(1000);
        assertThat(made.reaction().taken()).isCloseTo(10 / 84.006, within(1e-5));
        assertThat(made.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void the_fat_of_milk_joins_the_equivalents() {
        OwnMaterial milk = Own.of("milk", "milk").water("90").fat("4", "230").material();
        Made made = plain().own(milk).superfat("5").replaceWater("milk", "20").made(1000);
        double milkFat = 200 * 0.04 * 230 / 56_105;
        assertThat(made.reaction().equivalents()).isCloseTo(ALL_OF_190 + milkFat, within(TOLERANCE_MOLES));
        assertThat(made.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void the_fat_of_milk_as_written_raises_the_superfat() {
        OwnMaterial milk = Own.of("milk", "milk").water("90").fat("4", "230").material();
        Made made = plain().own(milk)
                .superfat("5")
                .replaceWater("milk", "20")
                .acids(AcidRule.AS_WRITTEN)
                .made(1000);
        double milkFat = 200 * 0.04 * 230 / 56_105;
        double expected = 100 * (1 - 0.95 * ALL_OF_190 / (ALL_OF_190 + milkFat));
        assertThat(expected).isGreaterThan(5.9);
        assertThat(made.superfat()).isCloseTo(expected, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void goats_milk_of_the_tables_brings_its_fat() {
        Made made = plain().superfat("5").replaceWater("goat-milk", "20").made(1000);
        var makeup = Tables.bundled().additive("goat-milk").orElseThrow().makeup();
        assertThat(makeup.fat()).isBetween(0.03, 0.05);
        assertThat(made.reaction().equivalents())
                .isCloseTo(
                        ALL_OF_190 + 200 * makeup.fat() * makeup.fatSaponificationValue() / 56_105,
                        within(TOLERANCE_MOLES));
    }

    @Test
    void wax_counts_with_its_sure_part_only() {
        // beeswax: the middle of its acid value 17 to 24 (BP/Ph. Eur. White Beeswax), 20.5 mg KOH/g
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "98")
                .oil("beeswax", "2")
                .superfat("5")
                .made(1000);
        assertThat(made.reaction().equivalents()).isCloseTo((980 * 190 + 20 * 20.5) / 56_105, within(TOLERANCE_MOLES));
        assertThat(made.reaction().freeAcid()).isCloseTo(20 * 20.5 / 56_105, within(TOLERANCE_MOLES));
    }

    @ParameterizedTest
    @ValueSource(strings = {"jojoba", "lanolin"})
    void a_wax_without_an_acid_value_takes_no_alkali_for_sure(String wax) {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "90")
                .oil(wax, "10")
                .superfat("5")
                .made(1000);
        assertThat(made.reaction().equivalents()).isCloseTo(900 * 190 / 56_105.0, within(TOLERANCE_MOLES));
    }

    @Test
    void a_wax_of_the_makers_own_counts_with_its_acid_value() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .own(Own.of("own-wax", OwnMaterial.WAX)
                        .saponificationValue("95")
                        .acidValue("18")
                        .material())
                .oil("fat", "90")
                .oil("own-wax", "10")
                .superfat("5")
                .made(1000);
        assertThat(made.reaction().equivalents()).isCloseTo((900 * 190 + 100 * 18) / 56_105.0, within(TOLERANCE_MOLES));
    }

    @Test
    void a_free_fatty_acid_is_acid_wholly_and_gives_water() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .own(Own.of("stearin", OwnMaterial.FATTY_ACID)
                        .saponificationValue("200")
                        .material())
                .oil("fat", "50")
                .oil("stearin", "50")
                .superfat("5")
                .made(1000);
        double acid = 500 * 200 / 56_105.0;
        assertThat(made.reaction().freeAcid()).isCloseTo(acid, within(TOLERANCE_MOLES));
        // one water for each mole of acid: IUPAC M(H2O) 18.015, memory
        assertThat(made.reaction().waterFormedGrams()).isCloseTo(acid * 18.015, within(TOLERANCE_GRAMS));
    }

    @Test
    void glycerides_form_no_water() {
        assertThat(plain().superfat("5").made(1000).reaction().waterFormedGrams())
                .isZero();
    }

    @Test
    void an_oils_own_acid_value_is_the_part_that_forms_water() {
        Made made = aFormula()
                .own(Own.oil("old-fat", "190").acidValue("12").material())
                .oil("old-fat", "100")
                .superfat("5")
                .made(1000);
        assertThat(made.reaction().equivalents()).isCloseTo(ALL_OF_190, within(TOLERANCE_MOLES));
        assertThat(made.reaction().freeAcid()).isCloseTo(12_000 / 56_105.0, within(TOLERANCE_MOLES));
        assertThat(made.reaction().waterFormedGrams()).isCloseTo(18.015 * 12_000 / 56_105, within(TOLERANCE_GRAMS));
    }

    @Test
    void free_acids_take_alkali_first_and_too_little_alkali_goes_to_them_alone() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .own(Own.of("stearin", OwnMaterial.FATTY_ACID)
                        .saponificationValue("200")
                        .material())
                .oilGrams("fat", "500")
                .oilGrams("stearin", "500")
                .naoh("40", AlkaliChoice.As.PURE)
                .made(1000);
        assertThat(made.reaction().reaching()).isLessThan(made.reaction().freeAcid());
        assertThat(made.reaction().waterFormedGrams()).isCloseTo(40 / 39.997 * 18.015, within(TOLERANCE_GRAMS));
    }

    @Test
    void an_acid_among_the_additions_forms_water_too() {
        Made made = plain().superfat("5").add("citric-acid-anhydrous", "1", LYE).made(1000);
        // three protons of 192.123 g/mol
        assertThat(made.reaction().waterFormedGrams()).isCloseTo(10 / 192.123 * 3 * 18.015, within(1e-3));
    }

    @Test
    void a_fat_that_is_locked_in_seed_does_not_react() {
        Made made = plain().superfat("5").add("poppy-seed", "5", OILS).made(1000);
        assertThat(made.reaction().equivalents()).isCloseTo(ALL_OF_190, within(TOLERANCE_MOLES));
    }

    @ParameterizedTest(name = "{0} g NaOH as it comes, {1} % pure")
    @CsvSource({"130, 98", "130, 97.5", "131.5, 99.2"})
    void alkali_given_as_it_comes_counts_by_its_purity(String grams, double purity) {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .naoh(grams, AlkaliChoice.As.WEIGHED)
                .purity(purity, 90)
                .made(1000);
        double pure = Double.parseDouble(grams) * purity / 100;
        assertThat(made.superfat()).isCloseTo(100 * (1 - pure / 39.997 / ALL_OF_190), within(TOLERANCE_SUPERFAT));
        assertThat(made.grams("naoh")).isCloseTo(Double.parseDouble(grams), within(TOLERANCE_GRAMS));
    }

    @Test
    void alkali_given_pure_is_weighed_by_its_purity() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .koh("180", AlkaliChoice.As.PURE)
                .purity(98, 90)
                .made(1000);
        assertThat(made.grams("koh")).isCloseTo(200, within(TOLERANCE_GRAMS));
        assertThat(made.superfat())
                .isCloseTo(100 * (1 - 180 / Alkali.POTASSIUM.molarMass() / ALL_OF_190), within(TOLERANCE_SUPERFAT));
    }

    @Test
    void alkali_given_goes_with_the_oils_it_was_given_for() {
        Bench bench = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .naoh("120", AlkaliChoice.As.PURE);
        assertThat(bench.made(2500).superfat()).isCloseTo(bench.made(1000).superfat(), within(TOLERANCE_SUPERFAT));
        assertThat(bench.made(2500).grams("naoh")).isCloseTo(300, within(TOLERANCE_GRAMS));
    }

    @Test
    void a_line_of_purity_assumed_is_98_and_90_percent() {
        Made sodium = plain().superfat("0").purityAssumed().made(1000);
        Made potassium = plain().superfat("0").purityAssumed().potassium().made(1000);
        assertThat(sodium.grams("naoh")).isCloseTo(ALL_OF_190 * 39.997 / 0.98, within(TOLERANCE_GRAMS));
        assertThat(potassium.grams("koh")).isCloseTo(ALL_OF_190 * 56.105 / 0.90, within(TOLERANCE_GRAMS));
    }
}
