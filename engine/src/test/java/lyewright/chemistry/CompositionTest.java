package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.chemistry.Bench.Made;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.formula.AcidRule;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Stage;
import lyewright.material.Outside;
import lyewright.measure.WrittenMass;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Bars reckoned by hand from molar masses, and a problem with a published answer, through the composition. */
@Tag("validation")
class CompositionTest {

    private static final double TOLERANCE_GRAMS = 0.005; // g; the figures by hand are printed to 0.01 g
    private static final double TOLERANCE_PERCENT = 0.005; // percent of the bar; printed to 0.01
    private static final double TOLERANCE_PER_GRAM = 0.00002; // g/g; printed to 0.00001

    /** More water than was poured: so nothing dries off. */
    private static final String UNDRIED = "50";

    private static final Stage LYE = Stage.of(Stage.Kind.LYE);

    private static Bench triolein() {
        return aFormula()
                .own(Own.oil("triolein-like", "190.09").material())
                .oil("triolein-like", "100")
                .curedWater(UNDRIED);
    }

    /** A kilogram of it, so that alkali can be given in grams. */
    private static Bench kilogram() {
        return aFormula().own(Own.oil("triolein-like", "190.09").material()).oilGrams("triolein-like", "1000");
    }

    /** The one substance of a kind, in grams. */
    private static double only(Composition composition, Kind kind, String name) {
        List<Substance> found =
                composition.substances().stream().filter(s -> s.kind() == kind).toList();
        assertThat(found).extracting(Substance::name).containsExactly(name);
        return found.get(0).grams();
    }

    /**
     * By hand, IUPAC abridged atomic weights (memory): 1000 g of an oil of saponification value 190.09, 5 % less alkali than it
     * could take, lye of 33 %: 1390.115 g with 98.81 g of glycerol, 50.00 g of oil left, and so 979.93 g of soap. Fatty matter as
     * ISO 685 counts it, glycerides with it: 71.94 % as poured, 69.00 % once reacted and before anything has dried.
     */
    @Test
    void batch_of_1000_grams_reckoned_by_hand() {
        Made made = triolein().superfat("5").lye("33").made(1000);

        Composition cured = made.cured();
        assertThat(cured.totalGrams()).isCloseTo(1390.115, within(TOLERANCE_GRAMS));
        assertThat(only(cured, Kind.SOAP, "Sodium soap of triolein-like")).isCloseTo(979.93, within(TOLERANCE_GRAMS));
        assertThat(only(cured, Kind.GLYCEROL, "Glycerol")).isCloseTo(98.81, within(TOLERANCE_GRAMS));
        assertThat(only(cured, Kind.OIL_LEFT, "triolein-like")).isCloseTo(50.00, within(TOLERANCE_GRAMS));
        assertThat(only(cured, Kind.WATER, "Water")).isCloseTo(261.377, within(TOLERANCE_GRAMS));
        assertThat(cured.totalFattyMatterPercent().orElseThrow()).isCloseTo(69.00, within(TOLERANCE_PERCENT));
        assertThat(cured.chloridePercent()).contains(0.0);

        Composition poured = made.poured();
        assertThat(poured.totalFattyMatterPercent().orElseThrow()).isCloseTo(71.94, within(TOLERANCE_PERCENT));
        assertThat(only(poured, Kind.FREE_ALKALI, "Sodium hydroxide")).isCloseTo(128.738, within(TOLERANCE_GRAMS));
        assertThat(only(poured, Kind.OIL_LEFT, "triolein-like")).isCloseTo(1000, within(1e-9));
    }

    static List<CSVRecord> triglycerides() {
        return Outside.rows("triglyceride_soap.csv");
    }

    /** Pure glycerides without superfat; the figures were worked out apart from the engine (IUPAC weights, memory). */
    @ParameterizedTest(name = "{0}")
    @MethodSource("triglycerides")
    void pure_glycerides(CSVRecord row) {
        Made made = aFormula()
                .own(Own.oil("fat", row.get("saponification_value")).material())
                .oil("fat", "100")
                .superfat("0")
                .curedWater("0")
                .made(1000);

        Composition cured = made.cured();
        assertThat(cured.grams(Kind.SOAP) / 1000)
                .isCloseTo(Outside.number(row, "soap_g_per_g"), within(TOLERANCE_PER_GRAM));
        assertThat(cured.grams(Kind.GLYCEROL) / 1000)
                .isCloseTo(Outside.number(row, "glycerol_g_per_g"), within(TOLERANCE_PER_GRAM));
        double fattyMatter = cured.totalFattyMatterPercent().orElseThrow() * cured.totalGrams() / 100;
        assertThat(100 * fattyMatter / cured.grams(Kind.SOAP))
                .isCloseTo(Outside.number(row, "fatty_matter_of_soap_percent"), within(TOLERANCE_PERCENT));
        assertThat(cured.grams(Kind.OIL_LEFT)).isZero();
    }

    /**
     * School examination problem (khoahoc.vn): 8.58 kg of fat and exactly 1.2 kg of NaOH give 0.92 kg of glycerol; the answer
     * asked for is the soap, 8.86 kg.
     */
    @Test
    void examination_problem_of_8_58_kg_of_fat() {
        double saponificationValue = 1.2 / 39.997 * 56_105 / 8.58;
        Composition cured = aFormula()
                .own(Own.oil("fat", "%.10f".formatted(saponificationValue)).material())
                .oilGrams("fat", "8580")
                .naoh("1200", AlkaliChoice.As.PURE)
                .made(8580)
                .cured();

        assertThat(cured.grams(Kind.GLYCEROL) / 1000).isCloseTo(0.92, within(0.005));
        assertThat(cured.grams(Kind.SOAP) / 1000).isCloseTo(8.86, within(0.005));
    }

    /**
     * Trisodium citrate 258.07, sodium lactate 112.06, sodium acetate 82.03, sodium carbonate 105.99 g/mol (IUPAC abridged
     * atomic weights, memory): each gram of citric acid, 192.123 g/mol, gives 1.34325 g; of citric acid monohydrate, 210.138,
     * 1.22810; of 80 % lactic acid, 90.078, 0.99523; of 5 % vinegar, acetic acid 60.052, 0.06830; of sodium bicarbonate,
     * 84.006, 1.26169. Ten grams of each, no more alkali than they take.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "citric-acid-anhydrous, Sodium citrate, 13.4325",
        "citric-acid-monohydrate, Sodium citrate, 12.2810",
        "lactic-acid-80, Sodium lactate, 9.9523",
        "vinegar-5, Sodium acetate, 0.6830",
        "sodium-bicarbonate, Sodium carbonate, 12.6169"
    })
    void acids_become_their_salts(String key, String salt, double grams) {
        Made made = triolein()
                .superfat("5")
                .acids(AcidRule.COMPENSATE)
                .add(key, "1", LYE)
                .made(1000);

        assertThat(only(made.cured(), Kind.ACID_SALT, salt)).isCloseTo(grams, within(0.003));
        assertThat(made.cured().grams(Kind.ACID_LEFT)).isZero();
        assertThat(made.cured().grams(Kind.GLYCEROL)).isCloseTo(98.81, within(TOLERANCE_GRAMS));
        double water = made.reaction().waterFormedGrams();
        assertThat(made.cured().water().formedGrams()).isEqualTo(water);
        // a water for each mole of alkali: 0.4504 g for each gram of NaOH
        double moreAlkali =
                made.grams("naoh") - triolein().superfat("5").made(1000).grams("naoh");
        assertThat(water).isCloseTo(0.4504 * moreAlkali, within(0.001));
    }

    /** Tripotassium citrate, 306.39 g/mol: 1.59478 g for each gram of citric acid; by halves 0.67163 g and 0.79739 g. */
    @Test
    void a_mixed_alkali_gives_both_salts_and_both_soaps_by_moles() {
        Composition cured = triolein()
                .superfat("5")
                .mix("50", "50", AlkaliChoice.Basis.MOLES)
                .acids(AcidRule.COMPENSATE)
                .add("citric-acid-anhydrous", "1", LYE)
                .made(1000)
                .cured();

        assertThat(grams(cured, "Sodium citrate")).isCloseTo(6.7163, within(0.002));
        assertThat(grams(cured, "Potassium citrate")).isCloseTo(7.9739, within(0.002));
        // half of 979.93 g, and as much with 16.108 g more for each of its 1.60935 moles
        assertThat(grams(cured, "Sodium soap of triolein-like")).isCloseTo(489.965, within(0.01));
        assertThat(grams(cured, "Potassium soap of triolein-like")).isCloseTo(489.965 + 25.923, within(0.01));
    }

    private static double grams(Composition composition, String name) {
        return composition.substances().stream()
                .filter(s -> s.name().equals(name))
                .mapToDouble(Substance::grams)
                .sum();
    }

    /** Stearic acid, C18H36O2, 284.484 g/mol: sodium stearate 306.466, so 1.07727 g for each gram, and no glycerol. */
    @Test
    void a_free_acid_gives_soap_and_water_and_no_glycerol() {
        Composition cured = aFormula()
                .own(Own.of("pure-stearic", "fatty-acid")
                        .saponificationValue("197.2166")
                        .material())
                .oil("pure-stearic", "100")
                .superfat("0")
                .made(1000)
                .cured();

        assertThat(cured.grams(Kind.SOAP)).isCloseTo(1077.27, within(TOLERANCE_GRAMS));
        assertThat(cured.grams(Kind.GLYCEROL)).isZero();
        assertThat(cured.water().formedGrams()).isCloseTo(18.015 * 1000 / 284.484, within(0.001));
    }

    /** Free acids are taken wholly before glycerides: 500 g of each, and alkali for the acid and half of the fat. */
    @Test
    void free_acids_of_the_oils_come_before_glycerides() {
        Bench bench = aFormula()
                .own(Own.of("acid", "fatty-acid").saponificationValue("200").material())
                .own(Own.oil("fat", "200").material())
                .oilGrams("acid", "500")
                .oilGrams("fat", "500");
        double half = 500 * 200 / 56_105.0 * 39.997;
        Composition enough = bench.naoh("%.9f".formatted(1.5 * half), AlkaliChoice.As.PURE)
                .made(1000)
                .cured();
        assertThat(enough.grams(Kind.ACID_LEFT)).isCloseTo(0, within(1e-5));
        assertThat(enough.grams(Kind.OIL_LEFT)).isCloseTo(250, within(1e-5));

        Composition little = bench.naoh("%.9f".formatted(0.5 * half), AlkaliChoice.As.PURE)
                .made(1000)
                .cured();
        assertThat(only(little, Kind.ACID_LEFT, "acid")).isCloseTo(250, within(1e-5));
        assertThat(little.grams(Kind.OIL_LEFT)).isCloseTo(500, within(1e-9));
        assertThat(little.grams(Kind.GLYCEROL)).isZero();
    }

    /**
     * An oil of saponification value 200 and acid value 20, nothing known of its acids: they are of 56105 ÷ 200 less a third of
     * 38.049, 267.842 g/mol, so 95.48 g of free acid in 1000 g, and only 904.52 g of glycerides.
     */
    @Test
    void an_acid_value_is_free_acid_in_the_oil() {
        Composition cured = aFormula()
                .own(Own.oil("old-oil", "200").acidValue("20").material())
                .oilGrams("old-oil", "1000")
                .naoh("10", AlkaliChoice.As.PURE)
                .made(1000)
                .cured();
        double acid = 1000 * 20 / 56_105.0 * 267.842;
        double reacted = 10 / 39.997 / (1000 * 20 / 56_105.0);
        assertThat(only(cured, Kind.ACID_LEFT, "Free acid of old-oil")).isCloseTo(acid * (1 - reacted), within(0.001));
        assertThat(cured.grams(Kind.OIL_LEFT)).isCloseTo(1000 - acid, within(0.001));
    }

    /** Free acid of coconut oil by its acids' number average, 100 g at an acid value of 56.105 being 0.1 mol. */
    @Test
    void free_acid_of_a_known_oil_is_weighed_by_its_acids() {
        Made made = aFormula()
                .own(Own.of("coconut", "")
                        .saponificationValue("256")
                        .acidValue("56.105")
                        .material())
                .oilGrams("coconut", "100")
                .naoh("0.0001", AlkaliChoice.As.PURE)
                .made(100);
        double mean = made.batch().formula().oil(0).acids().numberAverageMolarMass();
        assertThat(mean).isBetween(200.0, 215.0);
        assertThat(made.cured().grams(Kind.ACID_LEFT)).isCloseTo(0.1 * mean, within(0.001));
    }

    /** Beeswax of acid value 20.5 (17 to 24): 1000 g hold 0.36539 mol of acid, of 396.7 g/mol (cerotic, memory) 144.95 g. */
    @Test
    void of_a_wax_only_its_free_acid_reacts() {
        Composition cured =
                aFormula().oil("beeswax", "100").superfat("0").made(1000).cured();
        double moles = 1000 * 20.5 / 56_105;
        assertThat(only(cured, Kind.SOAP, "Sodium soap of beeswax (white)"))
                .isCloseTo(moles * (396.70 + 39.997 - 18.015), within(0.001));
        assertThat(only(cured, Kind.OIL_LEFT, "Wax left of beeswax (white)"))
                .isCloseTo(1000 - moles * 396.70, within(0.001));
        assertThat(cured.grams(Kind.GLYCEROL)).isZero();
    }

    /** Coconut oil: at most 15 g/kg (CXS 210-1999, Table 2); half of that is taken. */
    @Test
    void unsaponifiable_matter_is_half_of_the_standards_maximum_and_stays() {
        Made made = aFormula().oil("coconut", "100").superfat("0").made(1000);
        assertThat(only(made.poured(), Kind.UNSAPONIFIABLE, "Unsaponifiable matter of coconut oil"))
                .isCloseTo(7.5, within(1e-9));
        assertThat(made.cured().grams(Kind.UNSAPONIFIABLE)).isCloseTo(7.5, within(1e-9));
        assertThat(made.cured().grams(Kind.OIL_LEFT)).isCloseTo(0, within(1e-6));
        assertThat(made.poured().grams(Kind.OIL_LEFT)).isCloseTo(992.5, within(1e-9));
    }

    /** Alkali left over is 1000 g × 3.3881 mol less than the soda given: 160 g NaOH − 135.513 g. */
    @Test
    void alkali_that_nothing_takes_is_left() {
        Composition cured =
                kilogram().naoh("160", AlkaliChoice.As.PURE).made(1000).cured();
        double left = 160 - 1000 * 190.09 / 56_105 * 39.997;
        assertThat(only(cured, Kind.FREE_ALKALI, "Sodium hydroxide")).isCloseTo(left, within(1e-6));
        assertThat(cured.grams(Kind.OIL_LEFT)).isZero();
    }

    @Test
    void left_alkali_of_a_mix_is_of_both() {
        Bench bench = kilogram()
                .alkali(new AlkaliChoice.Given(
                        Optional.of(WrittenMass.ofGrams("79.994")),
                        Optional.of(WrittenMass.ofGrams("112.21")),
                        Optional.of(AlkaliChoice.As.PURE),
                        true));
        Composition cured = bench.made(1000).cured();
        double left = 4 - 1000 * 190.09 / 56_105;
        assertThat(grams(cured, "Sodium hydroxide")).isCloseTo(left / 2 * 39.997, within(1e-6));
        assertThat(grams(cured, "Potassium hydroxide")).isCloseTo(left / 2 * 56.105, within(1e-6));
    }

    /** 30 g of citric acid take 18.736 g of NaOH; with 9.368 g half of it is left and no oil reacts. */
    @Test
    void too_little_alkali_for_the_acid_leaves_acid() {
        Composition cured = kilogram()
                .naoh("9.3682", AlkaliChoice.As.PURE)
                .add("citric-acid-anhydrous", "3", LYE)
                .made(1000)
                .cured();
        assertThat(only(cured, Kind.ACID_LEFT, "Citric acid")).isCloseTo(15, within(0.005));
        assertThat(cured.grams(Kind.OIL_LEFT)).isCloseTo(1000, within(1e-9));
        assertThat(cured.grams(Kind.SOAP)).isZero();
    }

    /** Jojoba takes no alkali for sure: what is left of it is no superfat, which is 5 % of the other fat. */
    @Test
    void wax_that_is_left_is_told_from_oil_that_is_left() {
        Bench.Made made = aFormula()
                .own(Own.oil("fat", "200").material())
                .oil("fat", "80")
                .oil("jojoba", "20")
                .superfat("5")
                .made(1000);
        Composition cured = made.cured();
        assertThat(left(cured)).containsExactlyInAnyOrder("Wax left of jojoba oil (liquid wax) 200.000", "fat 40.000");
        assertThat(cured.waxLeftPercent()).isCloseTo(100 * 200 / cured.totalGrams(), within(1e-9));
        assertThat(cured.substances())
                .filteredOn(Composition.Substance::waxLeft)
                .hasSize(1);
        assertThat(made.poured().waxLeftPercent()).isZero();
        assertThat(left(made.poured())).containsExactlyInAnyOrder("Jojoba oil (liquid wax) 200.000", "fat 800.000");
    }

    private static List<String> left(Composition composition) {
        return composition.substances().stream()
                .filter(s -> s.kind() == Kind.OIL_LEFT)
                .map(s -> String.format(Locale.ROOT, "%s %.3f", s.name(), s.grams()))
                .toList();
    }
}
