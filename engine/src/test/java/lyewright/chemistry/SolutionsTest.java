package lyewright.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.material.Alkali;
import lyewright.material.Outside;
import lyewright.material.Tables;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Densities of lye and what dissolves in water and lye, against published points. */
class SolutionsTest {

    private static final double TOLERANCE_DENSITY_20_C = 0.001; // g/ml
    private static final double TOLERANCE_DENSITY_HOT = 0.003; // g/ml
    private static final double TOLERANCE_SOLUBILITY = 0.005; // percent by mass; the points themselves
    private static final double TOLERANCE_SODA_ACROSS_SOURCES = 6.5; // percent by mass; encyclopedias part by so much

    private final Solutions solutions = Solutions.of(Tables.bundled());

    /** CRC Handbook of Chemistry and Physics, 102nd edition, "Concentrative properties of aqueous solutions", 20 °C. */
    @Tag("validation")
    @ParameterizedTest(name = "{0} % NaOH at 20 °C: {1} g/ml")
    @CsvSource({
        "0.5, 1.0039", "1, 1.0095", "2, 1.0207", "5, 1.0538", "8, 1.0869", "10, 1.1089", "12, 1.1309", "15, 1.1640",
        "18, 1.1971", "19, 1.2082", "20, 1.2192", "22, 1.2412", "24, 1.2631", "26, 1.2848", "30, 1.3277", "32, 1.3488",
        "34, 1.3697", "40, 1.4299"
    })
    void soda_lye_at_20_celsius(double percent, double published) {
        assertThat(solutions.lyeDensity(Alkali.SODIUM, percent, 20))
                .isCloseTo(published, within(TOLERANCE_DENSITY_20_C));
    }

    /** The same table for KOH. */
    @Tag("validation")
    @ParameterizedTest(name = "{0} % KOH at 20 °C: {1} g/ml")
    @CsvSource({
        "0.5, 1.0025",
        "5, 1.0419",
        "10, 1.0873",
        "20, 1.1818",
        "25, 1.2309",
        "30, 1.2813",
        "35, 1.3337",
        "40, 1.3881",
        "45, 1.4445",
        "50, 1.5024"
    })
    void potash_lye_at_20_celsius(double percent, double published) {
        assertThat(solutions.lyeDensity(Alkali.POTASSIUM, percent, 20))
                .isCloseTo(published, within(TOLERANCE_DENSITY_20_C));
    }

    /** Handbook table of NaOH by strength and temperature reprinted by a soap-plant maker (soapworld.biz, caustic soda). */
    @Tag("validation")
    @ParameterizedTest(name = "{0} % NaOH at {1} °C: {2} g/ml")
    @CsvSource({
        "24, 20, 1.2629", "24, 100, 1.2124", "28, 40, 1.2942", "32, 20, 1.3490", "32, 40, 1.3362", "32, 60, 1.3232",
        "36, 30, 1.3834", "40, 80, 1.3889", "44, 60, 1.4405", "50, 20, 1.5253", "50, 40, 1.5109", "50, 100, 1.4690"
    })
    void strong_soda_lye_by_temperature(double percent, double celsius, double published) {
        assertThat(solutions.lyeDensity(Alkali.SODIUM, percent, celsius)).isCloseTo(published, within(1e-9));
    }

    /** NaOH to 6 mol/kg from 10 to 85 °C (advancedthermo.com, density of NaOH solutions). */
    @Tag("validation")
    @ParameterizedTest(name = "{0} % NaOH at {1} °C: {2} g/ml")
    @CsvSource({
        "0.3984, 10, 1.00437", "3.8459, 25, 1.03911", "7.4069, 40, 1.07114", "10.7136, 55, 1.09840",
        "13.7922, 70, 1.12243", "16.6656, 25, 1.17925", "16.6656, 85, 1.14397", "19.3537, 40, 1.20013"
    })
    void weak_soda_lye_by_temperature(double percent, double celsius, double published) {
        assertThat(solutions.lyeDensity(Alkali.SODIUM, percent, celsius)).isCloseTo(published, within(1e-9));
    }

    static List<CSVRecord> densities() {
        return Outside.rows("lye_points.csv");
    }

    static List<CSVRecord> solubilities() {
        return Outside.rows("solubility_points.csv");
    }

    /** Points kept apart from the bundled tables, each with its source: within 0.001 g/ml at 20 °C, 0.003 hot. */
    @Tag("validation")
    @ParameterizedTest(name = "{0}")
    @MethodSource("densities")
    void densities_kept_apart_from_the_tables(CSVRecord row) {
        Alkali alkali = row.get("solute").equals("KOH") ? Alkali.POTASSIUM : Alkali.SODIUM;
        double celsius = Outside.number(row, "temperature_c");
        assertThat(solutions.lyeDensity(alkali, Outside.number(row, "mass_percent"), celsius))
                .isCloseTo(
                        Outside.number(row, "density_g_ml"),
                        within(celsius == 20 ? TOLERANCE_DENSITY_20_C : TOLERANCE_DENSITY_HOT));
    }

    /** Points kept apart from the bundled tables, each with its source. */
    @Tag("validation")
    @ParameterizedTest(name = "{0}")
    @MethodSource("solubilities")
    void solubilities_kept_apart_from_the_tables(CSVRecord row) {
        assertThat(solutions.solubilityPercent(row.get("solute"), Outside.number(row, "temperature_c")))
                .isCloseTo(Outside.number(row, "mass_percent"), within(TOLERANCE_SOLUBILITY));
    }

    /** Between published points: 33 % at 40 °C is 1.3464, a straight line between 32 % (1.3362) and 36 % (1.3768). */
    @Tag("validation")
    @Test
    void hot_lye_between_the_published_points() {
        assertThat(solutions.lyeDensity(Alkali.SODIUM, 33, 40)).isCloseTo(1.3464, within(0.0001));
        // 30 % at 60 °C lies between 28 % (1.2814) and 32 % (1.3232)
        assertThat(solutions.lyeDensity(Alkali.SODIUM, 30, 60)).isCloseTo(1.3023, within(TOLERANCE_DENSITY_HOT));
        // 36 % at 70 °C lies between 60 °C (1.3634) and 80 °C (1.3498)
        assertThat(solutions.lyeDensity(Alkali.SODIUM, 36, 70)).isCloseTo(1.3566, within(TOLERANCE_DENSITY_HOT));
    }

    /** Dow caustic soda physical properties: 50 % NaOH has specific gravity 1.52 at 20 °C. */
    @Tag("validation")
    @Test
    void stock_lye_of_half_its_mass() {
        assertThat(solutions.lyeDensity(Alkali.SODIUM, 50, 20)).isCloseTo(1.52 * 0.9982, within(0.01));
    }

    /** Water at 20 °C weighs 0.9982 g/ml (CRC Handbook, 102nd edition), and lye of no strength is water. */
    @Tag("validation")
    @ParameterizedTest
    @EnumSource(Alkali.class)
    void lye_of_no_strength_is_water(Alkali alkali) {
        assertThat(solutions.lyeDensity(alkali, 0, 20)).isCloseTo(0.9982, within(TOLERANCE_DENSITY_20_C));
    }

    @ParameterizedTest(name = "at {0} °C")
    @ValueSource(doubles = {5, 20, 25, 40, 60, 80, 100, 110})
    void stronger_lye_is_heavier(double celsius) {
        for (Alkali alkali : Alkali.values()) {
            double lighter = solutions.lyeDensity(alkali, 0, celsius);
            for (double percent = 0.25; percent <= 60; percent += 0.25) {
                double heavier = solutions.lyeDensity(alkali, percent, celsius);
                assertThat(heavier).as("%s %.2f %%", alkali, percent).isGreaterThan(lighter);
                lighter = heavier;
            }
        }
    }

    @ParameterizedTest(name = "{0} %")
    @ValueSource(doubles = {2, 10, 19.3537, 21, 24, 33, 50})
    void hotter_lye_is_lighter(double percent) {
        for (Alkali alkali : Alkali.values()) {
            double heavier = solutions.lyeDensity(alkali, percent, 10);
            for (double celsius = 15; celsius <= 100; celsius += 5) {
                double lighter = solutions.lyeDensity(alkali, percent, celsius);
                assertThat(lighter).as("%s at %.0f °C", alkali, celsius).isLessThan(heavier);
                heavier = lighter;
            }
        }
    }

    /** No step where one published table of soda lye ends and the other begins, more than the line between them makes. */
    @Test
    void the_two_tables_of_soda_lye_join_without_a_step() {
        for (double celsius : new double[] {20, 40, 60, 80}) {
            for (double join : new double[] {19.3537, 24}) {
                double before = solutions.lyeDensity(Alkali.SODIUM, join - 1e-6, celsius);
                double after = solutions.lyeDensity(Alkali.SODIUM, join + 1e-6, celsius);
                assertThat(after - before)
                        .as("%.4f %% at %.0f °C", join, celsius)
                        .isBetween(0.0, 1e-6);
            }
        }
    }

    /** CRC Handbook, 98th edition, aqueous solubility of inorganic compounds at various temperatures. */
    @Tag("validation")
    @ParameterizedTest(name = "{0} at {1} °C: {2} %")
    @CsvSource({
        "NaOH, 0, 30",
        "NaOH, 10, 39",
        "NaOH, 20, 46",
        "NaOH, 25, 50",
        "NaOH, 30, 53",
        "NaOH, 40, 58",
        "NaOH, 60, 67",
        "NaOH, 80, 74",
        "NaOH, 100, 79",
        "KOH, 0, 48.7",
        "KOH, 20, 53.2",
        "KOH, 25, 54.7",
        "KOH, 40, 57.9",
        "KOH, 60, 59.5",
        "KOH, 100, 64.6",
        "NaCl, 0, 26.28",
        "NaCl, 20, 26.41",
        "NaCl, 25, 26.45",
        "NaCl, 60, 27.03",
        "NaCl, 100, 28.05"
    })
    void what_dissolves_in_water(String solute, double celsius, double percent) {
        assertThat(solutions.solubilityPercent(solute, celsius)).isCloseTo(percent, within(TOLERANCE_SOLUBILITY));
    }

    /**
     * Other sources than the table's: an encyclopedia has 52.2 % NaOH at 20 °C and 75.8 % at 80 °C; J. Chem. Eng. data in ACS
     * Omega 2020 (PMC7081322) has 76.28 % at 90 °C. They part most at 20 °C, where a monohydrate forms.
     */
    @Tag("validation")
    @ParameterizedTest(name = "{0} °C: {1} %")
    @CsvSource({"20, 52.2", "80, 75.8", "90, 76.28"})
    void soda_in_water_against_other_sources(double celsius, double percent) {
        assertThat(solutions.solubilityPercent("NaOH", celsius))
                .isCloseTo(percent, within(TOLERANCE_SODA_ACROSS_SOURCES));
    }

    @Test
    void between_two_temperatures_solubility_lies_on_a_straight_line() {
        assertThat(solutions.solubilityPercent("NaOH", 35)).isCloseTo((53 + 58) / 2.0, within(TOLERANCE_SOLUBILITY));
    }

    @Test
    void beyond_the_published_temperatures_the_last_solubility_holds() {
        assertThat(solutions.solubilityPercent("NaCl", -10)).isEqualTo(solutions.solubilityPercent("NaCl", 0));
        assertThat(solutions.solubilityPercent("NaCl", 120)).isEqualTo(solutions.solubilityPercent("NaCl", 100));
    }

    @Test
    void a_solute_the_tables_lack_is_our_fault() {
        assertThatThrownBy(() -> solutions.solubilityPercent("XeF2", 20))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("XeF2");
    }

    /**
     * NaCl in NaOH solution at 90 °C, percent by mass of the saturated solution: ACS Omega 2020, 5 (PMC7081322), table 8.
     * Columns: NaOH, NaCl, water.
     */
    @Tag("validation")
    @ParameterizedTest(name = "{0} % NaOH holds {1} % NaCl")
    @CsvSource({
        "0, 27.80, 72.20",
        "8.65, 15.54, 72.64",
        "16.42, 10.71, 70.30",
        "24.67, 7.14, 66.61",
        "30.11, 4.60, 63.64",
        "34.21, 4.34, 59.76",
        "36.51, 3.64, 57.90",
        "51.00, 4.01, 42.94",
        "68.87, 2.87, 28.26"
    })
    void what_salt_hot_lye_holds(double naoh, double nacl, double water) {
        assertThat(solutions.saltPerWater(naoh / water)).isCloseTo(nacl / water, within(1e-9));
    }

    /** Point 13 of the same table (28.46 % NaOH, 9.47 % NaCl, 58.92 % water) lies off the others and is left out. */
    @Tag("validation")
    @Test
    void the_point_that_lies_off_the_others_is_left_out() {
        assertThat(solutions.saltPerWater(28.46 / 58.92)).isLessThan(0.6 * 9.47 / 58.92);
        assertThat(Tables.bundled().saltInLye())
                .filteredOn(Tables.SaltInLyePoint::outlier)
                .hasSize(1);
    }

    @Test
    void a_third_of_lye_by_mass_holds_a_fifth_of_what_water_holds() {
        double inLye = solutions.saltPerWater(33 / 62.5);
        assertThat(inLye).isBetween(0.06, 0.085);
        assertThat(inLye).isLessThan(solutions.saltPerWater(0) / 4);
    }

    @Test
    void stronger_lye_than_was_measured_holds_what_the_strongest_did() {
        assertThat(solutions.saltPerWater(10)).isEqualTo(solutions.saltPerWater(68.87 / 28.26));
    }

    @Test
    void the_same_tables_give_the_same_solutions() {
        assertThat(Solutions.of(Tables.bundled())).isSameAs(solutions);
    }
}
