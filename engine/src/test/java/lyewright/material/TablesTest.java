package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for the bundled tables as tables: keys, sources, ranges. */
class TablesTest {

    private final Tables tables = Tables.bundled();

    @Test
    void there_is_one_edition_and_it_is_named() {
        assertThat(CsvTable.rows("edition.csv")).hasSize(1);
        assertThat(tables.edition()).matches("\\d{4}-\\d{2}-\\d{2}.*");
        assertThat(Tables.bundled()).isSameAs(tables);
    }

    @Test
    void no_key_is_used_twice_among_oils_additives_and_fragrances() {
        List<String> keys = new ArrayList<>();
        for (String table : List.of("oils.csv", "additives.csv", "fragrances.csv")) {
            CsvTable.rows(table).forEach(row -> keys.add(row.text("key")));
        }
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(keys).hasSize(tables.oils().size() + tables.additives().size());
        assertThat(keys).allMatch(tables::has);
    }

    /** Keys a formula gives another meaning: what a sheet weighs, and the words a dispersion is said with. */
    @Test
    void no_key_is_a_word_that_a_sheet_uses_for_something_else() {
        for (String word : List.of("water", "oil", "naoh", "koh", "rest")) {
            assertThat(tables.has(word)).as(word).isFalse();
        }
    }

    @Test
    void keys_are_lower_case_words_joined_by_hyphens() {
        Stream.concat(
                        tables.oils().stream().map(Oil::key),
                        tables.additives().stream().map(Additive::key))
                .forEach(key -> assertThat(key).matches("[a-z0-9]+(-[a-z0-9]+)*"));
    }

    @Test
    void no_acid_of_a_table_is_listed_twice() {
        List<String> codes = new ArrayList<>();
        CsvTable.rows("fatty_acids.csv").forEach(row -> codes.add(row.text("code")));
        assertThat(codes).doesNotHaveDuplicates().hasSize(tables.fattyAcids().size());
        List<String> pairs = new ArrayList<>();
        CsvTable.rows("oil_fatty_acids.csv")
                .forEach(row -> pairs.add(row.text("oil_key") + " " + row.text("acid_code")));
        assertThat(pairs).doesNotHaveDuplicates();
        List<String> names = new ArrayList<>();
        CsvTable.rows("acids.csv").forEach(row -> names.add(row.text("substance")));
        assertThat(names).doesNotHaveDuplicates().hasSize(tables.acidNames().size());
        List<String> practices = new ArrayList<>();
        CsvTable.rows("common_practice.csv").forEach(row -> practices.add(row.text("id")));
        assertThat(practices).doesNotHaveDuplicates().hasSize(tables.practices().size());
    }

    @Test
    void every_oil_of_the_fatty_acid_table_is_an_oil() {
        Set<String> keys = new HashSet<>();
        CsvTable.rows("oil_fatty_acids.csv").forEach(row -> keys.add(row.text("oil_key")));
        assertThat(keys).allSatisfy(key -> assertThat(tables.oil(key)).as(key).isPresent());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fatty_acids.csv",
                "oil_fatty_acids.csv",
                "acids.csv",
                "lye_densities.csv",
                "solubilities.csv",
                "salt_in_lye.csv",
                "balance_errors.csv",
                "common_practice.csv"
            })
    void every_row_names_its_source(String table) {
        List<CsvTable.Row> rows = CsvTable.rows(table);
        assertThat(rows).isNotEmpty();
        assertThat(rows)
                .filteredOn(row -> row.text("source").length() <= 5)
                .extracting(row -> row.cells().getRecordNumber())
                .isEmpty();
    }

    @Test
    void every_figure_of_an_oil_names_its_source() {
        for (CsvTable.Row row : CsvTable.rows("oils.csv")) {
            sourced(row, "sap_low_mg_koh_g", "sap_source");
            sourced(row, "sap_high_mg_koh_g", "sap_source");
            sourced(row, "iodine_low", "iodine_source");
            sourced(row, "iodine_high", "iodine_source");
            sourced(row, "acid_value_low", "acid_value_source");
            sourced(row, "acid_value_high", "acid_value_source");
            sourced(row, "density_g_ml", "density_source");
            sourced(row, "unsap_max_g_kg", "unsap_source");
            sourced(row, "inci_oil", "inci_oil_source");
            sourced(row, "cas", "cas_source");
        }
    }

    private static void sourced(CsvTable.Row row, String column, String source) {
        if (row.has(column)) {
            assertThat(row.text(source)).as("%s %s", row.text("key"), column).hasSizeGreaterThan(1);
        }
    }

    @Test
    void every_additive_and_fragrance_names_its_sources() {
        for (CsvTable.Row row : CsvTable.rows("additives.csv")) {
            for (String column : List.of("identity_source", "physical_source", "practice_source")) {
                assertThat(row.text(column))
                        .as("%s %s", row.text("key"), column)
                        .hasSizeGreaterThan(5);
            }
        }
        for (CsvTable.Row row : CsvTable.rows("fragrances.csv")) {
            for (String column : List.of("density_source", "usual_source")) {
                assertThat(row.text(column))
                        .as("%s %s", row.text("key"), column)
                        .hasSizeGreaterThan(5);
            }
        }
    }

    @Test
    void every_oil_has_a_density_that_an_oil_can_have() {
        assertThat(tables.oils()).isNotEmpty().allSatisfy(oil -> {
            assertThat(oil.density().at(40)).as(oil.key()).isBetween(0.84, 1.0);
            assertThat(oil.density().slopePerKelvin()).as(oil.key()).isBetween(-0.001, -0.0004);
            assertThat(oil.density().source()).as(oil.key()).isNotEmpty();
        });
    }

    @Test
    void every_additive_has_a_density_and_says_when_it_is_assumed() {
        assertThat(tables.additives())
                .isNotEmpty()
                .allSatisfy(additive -> assertThat(additive.gramsPerMillilitre())
                        .as(additive.key())
                        .isBetween(0.8, 8.0));
        for (CsvTable.Row row : CsvTable.rows("additives.csv")) {
            assertThat(tables.additive(row.text("key")).orElseThrow().densityAssumed())
                    .as(row.text("key"))
                    .isEqualTo(!row.has("density_g_cm3"));
        }
    }

    @Test
    void saponification_values_are_those_of_fats_acids_and_waxes() {
        assertThat(tables.oils())
                .allSatisfy(oil -> assertThat(oil.saponificationValue().middle())
                        .as(oil.key())
                        .isBetween(oil.kind() == OilKind.WAX ? 80.0 : 160.0, 290.0));
    }

    @Test
    void what_an_addition_is_made_of_is_at_most_all_of_it() {
        assertThat(tables.additives()).allSatisfy(additive -> {
            Additive.Makeup makeup = additive.makeup();
            assertThat(makeup.water() + makeup.fat() + makeup.sugar() + makeup.salt())
                    .as(additive.key())
                    .isBetween(0.0, 1.005);
            assertThat(makeup.acidMolesPerGram()).as(additive.key()).isBetween(0.0, 0.03);
            assertThat(makeup.fat() > 0)
                    .as(additive.key())
                    .isEqualTo(makeup.fatSaponificationValue() > 0 && makeup.fat() > 0);
        });
    }

    @Test
    void a_powder_is_wetted_with_water_oil_or_glycerin_and_its_ratio_runs_upward() {
        assertThat(tables.additives())
                .filteredOn(a -> a.dispersing().isPresent())
                .isNotEmpty()
                .allSatisfy(additive -> {
                    Additive.Dispersing d = additive.dispersing().orElseThrow();
                    assertThat(d.liquid()).as(additive.key()).isIn("water", "oil", "glycerin");
                    assertThat(d.lowRatio()).as(additive.key()).isPositive().isLessThanOrEqualTo(d.highRatio());
                });
    }

    @Test
    void usual_doses_run_upward_and_are_percent_of_oils() {
        assertThat(tables.additives())
                .filteredOn(a -> a.usualDose().isPresent())
                .isNotEmpty()
                .allSatisfy(additive -> {
                    Additive.UsualDose dose = additive.usualDose().orElseThrow();
                    assertThat(dose.low()).as(additive.key()).isBetween(0.0, dose.high());
                    assertThat(dose.high()).as(additive.key()).isLessThanOrEqualTo(100);
                });
        // 250 to 1000 g per kg of oils is 25 to 100 %
        assertThat(tables.additive("sea-salt").orElseThrow().usualDose().orElseThrow())
                .satisfies(dose -> assertThat(dose.low()).isCloseTo(25, within(1e-9)))
                .satisfies(dose -> assertThat(dose.high()).isCloseTo(100, within(1e-9)));
    }

    @Test
    void effects_are_single_words() {
        assertThat(tables.additive("sea-salt").orElseThrow().effects()).contains("hardens", "scratchy");
        assertThat(tables.additives())
                .allSatisfy(additive -> assertThat(additive.effects())
                        .as(additive.key())
                        .allSatisfy(effect -> assertThat(effect).matches("[a-z-]+")));
    }

    @Test
    void a_fragrance_is_inert_and_can_sensitise() {
        Additive lavender = tables.additive("lavender-oil").orElseThrow();
        assertThat(lavender.kind()).isEqualTo(AdditiveKind.FRAGRANCE);
        assertThat(lavender.makeup()).isEqualTo(Additive.Makeup.INERT);
        assertThat(lavender.hazard()).contains("sensitise");
        assertThat(lavender.usualDose()).isPresent();
    }

    @Test
    void kinds_are_written_in_lower_case() {
        assertThat(AdditiveKind.ALKALI_SALT.word()).isEqualTo("alkali-salt");
        assertThat(AdditiveKind.SALT.word()).isEqualTo("salt");
    }

    @Test
    void what_the_tables_lack_is_absent_and_the_nearest_is_offered() {
        assertThat(tables.oil("moonbeam")).isEmpty();
        assertThat(tables.additive("moonbeam")).isEmpty();
        assertThat(tables.has("moonbeam")).isFalse();
        assertThat(tables.nearest("coconutt")).first().isEqualTo("coconut");
        assertThat(tables.nearest("se-salt")).first().isEqualTo("sea-salt");
        assertThat(tables.has("coconut")).isTrue();
        assertThat(tables.has("sea-salt")).isTrue();
    }

    @Test
    void a_figure_of_practice_that_the_table_lacks_is_our_fault() {
        assertThatThrownBy(() -> tables.practice("moon-phase"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("moon-phase");
    }

    /** Figures of common practice, no published source. */
    @ParameterizedTest(name = "{0}: {1} to {2}")
    @CsvSource({"superfat-bar, 5, 8", "superfat-salt-bar, 15, 20", "superfat-shaving, 3, 6", "blend-milk, 20, 32"})
    void figures_of_practice_are_marked_as_such(String id, double low, double high) {
        Tables.Practice practice = tables.practice(id);
        assertThat(practice.low()).isEqualTo(low);
        assertThat(practice.high()).isEqualTo(high);
        assertThat(tables.practices())
                .contains(practice)
                .allSatisfy(p -> assertThat(p.source()).contains("common practice"));
    }

    @Test
    void an_acid_is_found_by_its_name_or_by_a_beginning_that_only_it_has() {
        assertThat(tables.acid("citric acid monohydrate"))
                .map(Tables.Acid::protons)
                .contains(3);
        assertThat(tables.acid("acetic")).map(Tables.Acid::name).contains("acetic acid pure");
        assertThat(tables.acid("citric acid"))
                .as("without crystal water unless that is said")
                .map(Tables.Acid::name)
                .contains("citric acid anhydrous");
        assertThat(tables.acid("lactic acid")).map(Tables.Acid::molarMass).contains(90.078);
        assertThat(tables.acid("tartaric acid")).map(Tables.Acid::protons).contains(2);
        assertThat(tables.acid("acid")).as("many acids").isEmpty();
        assertThat(tables.acid("")).isEmpty();
        assertThat(tables.acid("moonic acid")).isEmpty();
    }

    @Test
    void oils_that_pour_are_those_of_a_high_iodine_value() {
        assertThat(tables.oil("olive-virgin").orElseThrow().pours()).isTrue();
        assertThat(tables.oil("castor").orElseThrow().pours()).isTrue();
        assertThat(tables.oil("coconut").orElseThrow().pours()).isFalse();
        assertThat(tables.oil("cocoa-butter").orElseThrow().pours()).isFalse();
        // liquid, but a wax and an acid
        assertThat(tables.oil("jojoba").orElseThrow().pours()).isFalse();
        assertThat(tables.oil("oleic-acid").orElseThrow().pours()).isFalse();
    }

    /** Oils with lauric and myristic acid together over half: the marine soaps of 1908 (Simmons and Appleton). */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "coconut, true",
        "palm-kernel, true",
        "babassu, true",
        "palm, false",
        "olive-virgin, false",
        "tallow, false",
        "castor, false",
        "beeswax, false"
    })
    void what_lathers_in_salt_water(String key, boolean lathers) {
        assertThat(tables.oil(key).orElseThrow().lathersInSalt()).isEqualTo(lathers);
    }

    /** Last digit of a CAS number: sum of the others, counted from the right and weighted 1, 2, 3 …, modulo 10 (CAS rule). */
    @Test
    void every_cas_number_passes_its_check_digit() {
        int seen = 0;
        for (String table : List.of("oils.csv", "additives.csv")) {
            for (CsvTable.Row row : CsvTable.rows(table)) {
                for (String cas : casNumbers(row.text("cas"))) {
                    seen++;
                    assertThat(checkDigit(cas))
                            .as("%s %s", row.text("key"), cas)
                            .isEqualTo(cas.charAt(cas.length() - 1) - '0');
                }
            }
        }
        assertThat(seen).isGreaterThan(100);
    }

    private static List<String> casNumbers(String cell) {
        return java.util.regex.Pattern.compile("\\b\\d{2,7}-\\d{2}-\\d\\b")
                .matcher(cell)
                .results()
                .map(java.util.regex.MatchResult::group)
                .toList();
    }

    private static int checkDigit(String cas) {
        String digits = cas.replace("-", "");
        int sum = 0;
        for (int i = digits.length() - 2, weight = 1; i >= 0; i--, weight++) {
            sum += weight * (digits.charAt(i) - '0');
        }
        return sum % 10;
    }

    @Test
    void permitted_errors_of_balances_run_upward_and_end_open() {
        for (String accuracyClass : List.of("I", "II", "III", "IIII")) {
            List<Tables.BalanceErrorRow> rows = tables.balanceErrors().stream()
                    .filter(row -> row.accuracyClass().equals(accuracyClass))
                    .toList();
            assertThat(rows).as(accuracyClass).isNotEmpty();
            for (int i = 1; i < rows.size(); i++) {
                assertThat(rows.get(i).fromSteps()).isEqualTo(rows.get(i - 1).toSteps());
                assertThat(rows.get(i).inServiceSteps())
                        .isGreaterThan(rows.get(i - 1).inServiceSteps());
            }
        }
    }

    @Test
    void what_a_maker_calls_an_oil_leads_to_its_key() {
        assertThat(tables.nearest("coconut oil")).containsExactly("coconut");
        assertThat(tables.nearest("Olive Oil")).contains("olive-virgin", "olive-refined", "olive-pomace");
        assertThat(tables.nearest("canola")).containsExactly("rapeseed-low-erucic");
        assertThat(tables.nearest("Shea butter (unrefined)").get(0)).isEqualTo("shea-butter");
        assertThat(tables.nearest("cocnut").get(0)).isEqualTo("coconut");
        assertThat(tables.nearest("zz")).isEmpty();
    }
}
