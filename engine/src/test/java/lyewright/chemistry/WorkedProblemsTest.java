package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.Bench.Made;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.WaterRule;
import lyewright.material.Alkali;
import lyewright.measure.Share;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Problems with published answers, and batches reckoned by hand from molar masses, through the engine itself. */
@Tag("validation")
class WorkedProblemsTest {

    /** Half of the last digit that the source prints. */
    private static final double TOLERANCE_FACTOR = 1e-5; // g/g

    private static final double TOLERANCE_MILLIGRAMS = 0.002; // g; atomic weights differ in the fifth digit
    private static final double TOLERANCE_PRINTED_KG = 0.005; // kg; the answers are printed to 0.01 kg

    /**
     * NaOH 39.99677 ÷ KOH 56.10530 g/mol = 0.712888 (IUPAC abridged atomic weights: H 1.008, O 15.999, Na 22.98976928,
     * K 39.0983; weights from memory).
     */
    @Test
    void a_gram_of_potash_is_worth_0_71289_grams_of_soda() {
        assertThat(Alkali.SODIUM.molarMass() / Alkali.POTASSIUM.molarMass())
                .isCloseTo(0.71289, within(TOLERANCE_FACTOR));
        assertThat(Stoichiometry.gramsPerGram(1000, Alkali.SODIUM)).isCloseTo(0.71289, within(TOLERANCE_FACTOR));
        assertThat(Stoichiometry.gramsPerGram(1000, Alkali.POTASSIUM)).isCloseTo(1, within(1e-12));
    }

    /** Glycerol for each gram of alkali spent on ester: 92.094 ÷ (3 × 39.997) and ÷ (3 × 56.105), same weights. */
    @Test
    void ester_gives_a_third_of_a_mole_of_glycerol_for_each_mole_of_alkali() {
        assertThat(Stoichiometry.GLYCEROL / (3 * Alkali.SODIUM.molarMass()))
                .isCloseTo(0.767512, within(TOLERANCE_FACTOR));
        assertThat(Stoichiometry.GLYCEROL / (3 * Alkali.POTASSIUM.molarMass()))
                .isCloseTo(0.547150, within(TOLERANCE_FACTOR));
    }

    /**
     * School examination problem (khoahoc.vn): 8.58 kg of fat needs exactly 1.2 kg NaOH and gives 0.92 kg of glycerol; the
     * answer asked for is the mass of soap, 8.86 kg.
     */
    @Test
    void examination_problem_of_8_58_kg_of_fat() {
        double saponificationValue = 1.2 / 39.997 * 56_105 / 8.58;
        Made made = aFormula()
                .own(Own.oil("fat", "%.10f".formatted(saponificationValue)).material())
                .oilGrams("fat", "8580")
                .naoh("1200", AlkaliChoice.As.PURE)
                .made(8580);
        assertThat(made.superfat()).isCloseTo(0, within(1e-6));
        double glycerol = made.reaction().equivalents() / 3 * Stoichiometry.GLYCEROL / 1000;
        assertThat(glycerol).isCloseTo(0.92, within(TOLERANCE_PRINTED_KG)).isCloseTo(0.9210, within(0.0001));
        double soap = (made.grams("fat") + made.grams("naoh")) / 1000 - glycerol;
        assertThat(soap).isCloseTo(8.86, within(TOLERANCE_PRINTED_KG));
        assertThat(made.reaction().waterFormedGrams()).isZero();
    }

    /**
     * Simmons and Appleton, Handbook of Soap Manufacture, 1908: coconut oil with half its weight of lye of 71.4 °Tw, 32.64 %
     * NaOH by the same book's table. At a saponification value of 257 that is 10.9 % less than the oil could take.
     */
    @Test
    void cold_process_recipe_of_1908() {
        Made made = aFormula()
                .own(Own.oil("coconut-1908", "257").material())
                .own(Own.lye("lye-71-tw", "32.64", Alkali.SODIUM))
                .oilGrams("coconut-1908", "100")
                .stockGrams("lye-71-tw", "50")
                // the lye's own water is all there is
                .waterGrams("33.68")
                .made(100);
        assertThat(made.reaction().alkali() * Alkali.SODIUM.molarMass()).isCloseTo(16.32, within(0.001));
        assertThat(made.reaction().equivalents() * Alkali.SODIUM.molarMass()).isCloseTo(18.32, within(0.005));
        assertThat(made.grams(Kind.WATER)).isCloseTo(0, within(1e-9));
        assertThat(made.superfat()).isCloseTo(10.9, within(0.05));
    }

    /**
     * By hand from triolein: saponification value 190.09, 1000 g, 5 % less alkali than it could take, lye of 33 %: NaOH
     * 128.738 g, water 261.377 g, 1390.115 g in all; 98.81 g of glycerol are formed.
     */
    @Test
    void batch_of_1000_grams_reckoned_by_hand() {
        Made made = aFormula()
                .own(Own.oil("triolein-like", "190.09").material())
                .oil("triolein-like", "100")
                .superfat("5")
                .lye("33")
                .made(1000);
        assertThat(made.grams("naoh")).isCloseTo(128.738, within(TOLERANCE_MILLIGRAMS));
        assertThat(made.grams(Kind.WATER)).isCloseTo(261.377, within(TOLERANCE_MILLIGRAMS));
        assertThat(made.total()).isCloseTo(1390.115, within(2 * TOLERANCE_MILLIGRAMS));
        assertThat(made.reaction().reaching() / 3 * Stoichiometry.GLYCEROL).isCloseTo(98.81, within(0.005));
        assertThat(made.superfat()).isCloseTo(5, within(1e-9));
    }

    /**
     * By hand: 1000 g oil, 135 g NaOH and 270 g water are 1405 g with 19.217 % water; dried to 15, 12, 10 and 8 % water they
     * are 1335.3, 1289.8, 1261.1 and 1233.7 g.
     */
    @ParameterizedTest(name = "dried to {0} % water it is {1} g")
    @CsvSource({"15, 1335.3", "12, 1289.8", "10, 1261.1", "8, 1233.7"})
    void drying_leaves_all_that_is_not_water(double percent, double grams) {
        Made made = aFormula()
                .own(Own.oil("fat", "200").material())
                .oilGrams("fat", "1000")
                .naoh("135", AlkaliChoice.As.PURE)
                .waterGrams("270")
                .made(1000);
        assertThat(made.total()).isCloseTo(1405, within(1e-9));
        assertThat(100 * made.reaction().waterGrams() / made.total()).isCloseTo(19.217, within(0.0005));
        assertThat(made.reaction().curedGrams(percent / 100)).isCloseTo(grams, within(0.05));
    }

    @Test
    void a_bar_is_never_heavier_cured_than_poured() {
        Made made = aFormula()
                .own(Own.oil("fat", "200").material())
                .oilGrams("fat", "1000")
                .naoh("135", AlkaliChoice.As.PURE)
                .waterGrams("135")
                .made(1000);
        assertThat(made.reaction().curedGrams(0.30)).isEqualTo(made.reaction().totalGrams());
    }

    /** Water that free acid forms dries off too: 100 g of acid of value 200 forms 18.015 × 100 × 200 ÷ 56105 g. */
    @Test
    void water_that_acid_forms_is_not_bar() {
        Made made = aFormula()
                .own(Own.of("acid", "fatty-acid").saponificationValue("200").material())
                .oilGrams("acid", "100")
                .koh("10", AlkaliChoice.As.PURE)
                .waterGrams("30")
                .made(100);
        double formed = 18.015 * 10 / 56.105;
        assertThat(made.reaction().waterFormedGrams()).isCloseTo(formed, within(1e-9));
        assertThat(made.reaction().curedGrams(0)).isCloseTo(100 + 10 - formed, within(1e-9));
    }

    /** 100 g pure NaOH is 103.093 g at 97 %, 102.041 at 98, 101.010 at 99; 100 g pure KOH 111.111 at 90, 117.647 at 85. */
    @ParameterizedTest(name = "{1} % {0}: {2} g")
    @CsvSource({"naoh, 97, 103.093", "naoh, 98, 102.041", "naoh, 99, 101.010", "koh, 90, 111.111", "koh, 85, 117.647"})
    void less_pure_alkali_is_more_to_weigh(String key, double purity, double grams) {
        Bench bench = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .purity(purity, purity);
        Made made = (key.equals("naoh")
                        ? bench.naoh("100", AlkaliChoice.As.PURE)
                        : bench.koh("100", AlkaliChoice.As.PURE))
                .made(1000);
        assertThat(made.grams(key)).isCloseTo(grams, within(0.0005));
    }

    /** A lye's strength is pure alkali ÷ (pure alkali + water), so inert parts are in neither. */
    @Test
    void thirty_percent_lye_is_thirty_percent_whatever_the_purity() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "100")
                .superfat("5")
                .water(new WaterRule.LyeStrength(Share.ofPercent("30"), false))
                .purity(97, 90)
                .made(1000);
        double pure = made.grams("naoh") * 0.97;
        assertThat(pure / (pure + made.grams(Kind.WATER))).isCloseTo(0.30, within(1e-12));
    }
}
