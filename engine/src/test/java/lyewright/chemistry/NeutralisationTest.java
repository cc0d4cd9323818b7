package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.chemistry.Bench.Made;
import lyewright.formula.AcidRule;
import lyewright.formula.Stage;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Outside;
import lyewright.material.Tables;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What alkali an acid takes, for each gram of it, and what that does to a batch. */
@Tag("validation")
class NeutralisationTest {

    private static final double TOLERANCE_FACTOR = 0.00002; // g/g; the figures are printed to 0.00001
    private static final double TOLERANCE_GRAMS = 0.001; // g

    /** An assay in a substance's name, as in lactic acid 80 %. */
    private static final Pattern ASSAY = Pattern.compile("(\\d+) %");

    private static final Stage LYE = Stage.of(Stage.Kind.LYE);

    static List<CSVRecord> published() {
        return Outside.rows("neutralisation.csv");
    }

    /**
     * Protons that soap neutralises × M(alkali) ÷ M(acid) × assay, from IUPAC abridged atomic weights (memory). Third citric
     * pKa 6.4 is taken wholly at soap's pH, the second of ascorbic acid, 11.8, is not. Grams for each gram.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void acids_of_the_table(CSVRecord row) {
        String name = row.get("substance");
        Tables.Acid acid = Tables.bundled().acid(name).orElseThrow();
        Matcher assay = ASSAY.matcher(name);
        double share = assay.find() ? Double.parseDouble(assay.group(1)) / 100 : 1;
        double molesPerGram = share * acid.protons() / acid.molarMass();
        assertThat(molesPerGram * Alkali.SODIUM.molarMass())
                .isCloseTo(Outside.number(row, "g_naoh_per_g"), within(TOLERANCE_FACTOR));
        assertThat(molesPerGram * Alkali.POTASSIUM.molarMass())
                .isCloseTo(Outside.number(row, "g_koh_per_g"), within(TOLERANCE_FACTOR));
    }

    @Test
    void no_acid_of_the_table_is_unchecked() {
        List<String> checked =
                published().stream().map(row -> row.get("substance")).toList();
        assertThat(Tables.bundled().acidNames()).containsExactlyInAnyOrderElementsOf(checked);
    }

    /** Additives by what they hold: the same figures times the assay; what has no assay printed says where its own is from. */
    @ParameterizedTest(name = "{0}: {1} g NaOH, {2} g KOH")
    @CsvSource({
        // product as sold, IUPAC abridged atomic weights (memory)
        "citric-acid-anhydrous, 0.62455, 0.87608",
        "citric-acid-monohydrate, 0.57101, 0.80098",
        "lactic-acid-80, 0.35522, 0.49828",
        "lactic-acid-88, 0.39074, 0.54811",
        "vinegar-5, 0.03330, 0.04671",
        "vinegar-6, 0.03996, 0.05606",
        "tartaric-acid, 0.53298, 0.74764",
        "ascorbic-acid, 0.22709, 0.31856",
        "disodium-edta, 0.21490, 0.30145",
        "sodium-bicarbonate, 0.47612, 0.66787",
        // KAl(SO4)2·12H2O, 474.37 g/mol, 3 mol to Al(OH)3
        "potassium-alum, 0.25295, 0.35482",
        // Na2B4O7·10H2O, 381.36 g/mol, 2 mol to metaborate
        "borax, 0.20976, 0.29424",
        // Simmons and Appleton 1908: mean equivalent of four lots of rosin 319.2
        "rosin, 0.12530, 0.17577"
    })
    void additives_that_take_alkali(String key, double naoh, double koh) {
        double molesPerGram =
                Tables.bundled().additive(key).orElseThrow().makeup().acidMolesPerGram();
        assertThat(molesPerGram * Alkali.SODIUM.molarMass()).isCloseTo(naoh, within(TOLERANCE_FACTOR));
        assertThat(molesPerGram * Alkali.POTASSIUM.molarMass()).isCloseTo(koh, within(TOLERANCE_FACTOR));
    }

    /**
     * Sour foods by titratable acidity: lemon juice 5.2 % citric acid, yoghurt 0.95 % and buttermilk 0.8 % lactic acid, wine
     * 0.6 % tartaric acid, beer 0.2 % lactic acid (typical values, memory).
     */
    @ParameterizedTest(name = "{0}: {1} % of an acid of {2} g/mol with {3} protons")
    @CsvSource({
        "lemon-juice, 5.2, 192.123, 3",
        "yoghurt, 0.95, 90.078, 1",
        "buttermilk, 0.8, 90.078, 1",
        "wine, 0.6, 150.086, 2",
        "beer, 0.2, 90.078, 1"
    })
    void sour_foods(String key, double percent, double molarMass, int protons) {
        double molesPerGram =
                Tables.bundled().additive(key).orElseThrow().makeup().acidMolesPerGram();
        assertThat(molesPerGram).isCloseTo(percent / 100 * protons / molarMass, within(0.000001));
    }

    /** Every additive that takes alkali stands in one of the tests above, so that none comes in unchecked. */
    @Test
    void no_additive_takes_alkali_unchecked() {
        Set<String> taking = new TreeSet<>();
        for (Additive additive : Tables.bundled().additives()) {
            if (additive.makeup().acidMolesPerGram() > 0) {
                taking.add(additive.key());
                assertThat(additive.makeup().acidName()).as(additive.key()).isNotEmpty();
            }
        }
        assertThat(taking)
                .containsExactlyInAnyOrder(
                        "citric-acid-anhydrous",
                        "citric-acid-monohydrate",
                        "lactic-acid-80",
                        "lactic-acid-88",
                        "vinegar-5",
                        "vinegar-6",
                        "tartaric-acid",
                        "ascorbic-acid",
                        "disodium-edta",
                        "sodium-bicarbonate",
                        "potassium-alum",
                        "borax",
                        "rosin",
                        "lemon-juice",
                        "yoghurt",
                        "buttermilk",
                        "wine",
                        "beer");
    }

    private static double moreAlkali(String key, String percent, boolean potassium, double purity) {
        Bench bench = aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "100")
                .superfat("5")
                .acids(AcidRule.COMPENSATE)
                .purity(purity, purity);
        if (potassium) {
            bench.potassium();
        }
        String alkali = potassium ? "koh" : "naoh";
        double without = bench.made(1000).grams(alkali);
        return bench.add(key, percent, LYE).made(1000).grams(alkali) - without;
    }

    /**
     * Worked by hand: 10 g citric acid monohydrate, 10 ÷ 210.138 × 3 × 39.997 = 5.710 g NaOH, 5.827 g of 98 % beads; 20 g of
     * 80 % lactic acid 7.104 g; 100 g of 5 % vinegar 3.330 g; 10 g of tartaric acid 5.330 g; 10 g of ascorbic acid 2.271 g;
     * 10 g of anhydrous citric acid with KOH of 90 % 9.734 g. Each as percent of 1000 g of oils.
     */
    @ParameterizedTest(name = "{0}: {1} % of oils takes {4} g")
    @CsvSource({
        "citric-acid-monohydrate, 1, false, 100, 5.710",
        "citric-acid-monohydrate, 1, false, 98, 5.827",
        "lactic-acid-80, 2, false, 100, 7.104",
        "vinegar-5, 10, false, 100, 3.330",
        "tartaric-acid, 1, false, 100, 5.330",
        "ascorbic-acid, 1, false, 100, 2.271",
        "citric-acid-anhydrous, 1, true, 90, 9.734"
    })
    void worked_examples_through_a_batch(String key, String percent, boolean potassium, double purity, double grams) {
        assertThat(moreAlkali(key, percent, potassium, purity)).isCloseTo(grams, within(TOLERANCE_GRAMS));
    }

    /** An acid of the maker's own, named as in the table: 40 % citric acid anhydrous takes 0.4 × 0.62455 g NaOH a gram. */
    @Test
    void an_acid_of_the_makers_own_counts_by_its_share() {
        Bench bench = aFormula()
                .own(Own.oil("fat", "190").material())
                .own(Own.of("sour-syrup", "liquid")
                        .water("60")
                        .acid("40", "citric acid anhydrous")
                        .material())
                .oil("fat", "100")
                .superfat("5");
        Made without = bench.made(1000);
        Made with = bench.add("sour-syrup", "2", LYE).made(1000);
        assertThat(with.grams("naoh") - without.grams("naoh")).isCloseTo(20 * 0.4 * 0.62455, within(TOLERANCE_GRAMS));
    }

    /**
     * 1 % of free oleic acid is an acid value of 1.986 mg KOH/g: 10 × 56.1053 ÷ 282.468 (IUPAC abridged atomic weights,
     * memory; the trade's rule of thumb is 1.99).
     */
    @Test
    void one_percent_of_free_oleic_acid() {
        Tables.Acid oleic = Tables.bundled().acid("oleic acid").orElseThrow();
        double acidValue = 0.01 / oleic.molarMass() * Stoichiometry.MILLIGRAMS_KOH_PER_MOLE;
        assertThat(acidValue).isCloseTo(1.986, within(0.001));
        assertThat(Stoichiometry.molesPerGram(acidValue)).isCloseTo(0.01 / oleic.molarMass(), within(1e-12));
    }

    /** Stearic acid of an acid value of 200 to 210 takes 0.1426 to 0.1497 g NaOH a gram, not the pure acid's 0.1406. */
    @Test
    void stearic_acid_of_the_trade_is_not_pure() {
        assertThat(Stoichiometry.gramsPerGram(200, Alkali.SODIUM)).isCloseTo(0.1426, within(0.00005));
        assertThat(Stoichiometry.gramsPerGram(210, Alkali.SODIUM)).isCloseTo(0.1497, within(0.00005));
        Made made = aFormula().oil("stearic-acid-50", "100").superfat("0").made(1000);
        double acidValue = Tables.bundled()
                .oil("stearic-acid-50")
                .orElseThrow()
                .saponificationValue()
                .middle();
        assertThat(made.grams("naoh"))
                .isCloseTo(Stoichiometry.gramsPerGram(acidValue, Alkali.SODIUM) * 1000, within(1e-6));
        assertThat(made.grams("naoh")).isGreaterThan(140.59);
    }
}
