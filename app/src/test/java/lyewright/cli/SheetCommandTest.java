package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What each way of asking comes to. */
class SheetCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** So fine that rounding to it hides nothing. */
    private static final List<String> FINE = List.of("--balances", "fine:100kg:1mg:I");

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        Recipes.write(folder, "plain.yaml", Recipes.PLAIN);
        Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);
        Recipes.write(folder, "notebook.yaml", Recipes.NOTEBOOK);
    }

    private JsonNode json(String file, String... options) {
        List<String> args = new ArrayList<>(List.of("sheet", file, "--json"));
        args.addAll(List.of(options));
        Run run = Run.in(folder, args.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isIn(0, 3);
        assertThat(run.err()).isEmpty();
        return tree(run.out());
    }

    private static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private JsonNode fine(String file, String... options) {
        List<String> all = new ArrayList<>(FINE);
        all.addAll(List.of(options));
        return json(file, all.toArray(String[]::new));
    }

    @Test
    void total_is_what_reaches_the_mould() {
        JsonNode sheet = fine("salt.yaml", "--total", "1500g", "--hold-back", "2%");

        assertThat(sheet.at("/totals/targetGrams").doubleValue()).isEqualTo(1500);
        assertThat(sheet.at("/totals/mouldGrams").doubleValue()).isCloseTo(1500, within(0.02));
        assertThat(sheet.at("/totals/batchGrams").doubleValue()).isCloseTo(1500 / 0.98, within(0.02));
    }

    @Test
    void one_batch_told_in_six_ways_is_one_sheet() {
        JsonNode byTotal = fine("salt.yaml", "--total", "1500g");
        double oils = byTotal.at("/totals/oilsGrams").doubleValue();
        double millilitres = 1500 / byTotal.at("/batterDensityGramsPerMl").doubleValue();
        // 0.9982 g/ml: water at 20 °C, CRC Handbook, 102nd edition
        List<JsonNode> sheets = List.of(
                fine("salt.yaml", "--oils", decimals(oils) + "g"),
                fine("salt.yaml", "--bars", "10x150g"),
                fine("salt.yaml", "--box", "100x100x" + decimals(millilitres / 10) + "mm"),
                fine("salt.yaml", "--cavities", "10x" + decimals(millilitres / 10) + "ml"),
                fine("salt.yaml", "--water-fill", decimals(millilitres * 0.9982) + "g"),
                fine("salt.yaml", "--usual", "1500g=salt.yaml"));

        for (JsonNode sheet : sheets) {
            for (String figure : List.of(
                    "/totals/oilsGrams", "/totals/batchGrams", "/alkali/naohGrams", "/alkali/waterInJugGrams")) {
                assertThat(sheet.at(figure).doubleValue())
                        .as(figure)
                        .isCloseTo(byTotal.at(figure).doubleValue(), within(0.02));
            }
        }
    }

    private static String decimals(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
    }

    @Test
    void cured_bars_are_heavier_when_they_are_poured() {
        JsonNode cut = fine("plain.yaml", "--bars", "10x110g");
        JsonNode cured = fine("plain.yaml", "--bars", "10x110g", "--cured");

        assertThat(cut.at("/bars/cutGrams").doubleValue()).isCloseTo(110, within(0.01));
        assertThat(cured.at("/bars/curedGrams").doubleValue()).isCloseTo(110, within(0.01));
        assertThat(cured.at("/totals/mouldGrams").doubleValue())
                .isGreaterThan(cut.at("/totals/mouldGrams").doubleValue());
    }

    @Test
    void a_box_with_a_cut_says_how_many_bars() {
        JsonNode sheet = fine("plain.yaml", "--box", "300x80x65mm", "--cut", "25mm", "--ends", "5mm", "--blade", "1mm");

        // (300 − 2·5 + 1) ÷ (25 + 1) = 11.19: eleven whole bars
        assertThat(sheet.at("/bars/count").intValue()).isEqualTo(11);
        assertThat(sheet.at("/bars/offcutsGrams").doubleValue()).isPositive();
    }

    @Test
    void a_grid_makes_the_box_a_slab() {
        JsonNode sheet = fine("plain.yaml", "--box", "300x240x30mm", "--cut", "60x80mm");

        assertThat(sheet.at("/bars/count").intValue()).isEqualTo(15);
        assertThat(sheet.at("/bars/offcutsGrams").doubleValue()).isCloseTo(0, within(0.01));
    }

    @Test
    void a_tube_holds_its_circle_times_its_length() {
        JsonNode sheet = fine("plain.yaml", "--tube", "300x76mm");
        double density = sheet.at("/batterDensityGramsPerMl").doubleValue();

        assertThat(sheet.at("/totals/mouldGrams").doubleValue())
                .isCloseTo(Math.PI * 3.8 * 3.8 * 30 * density, within(0.05));
    }

    @Test
    void a_target_rules_and_the_mould_is_compared() {
        JsonNode sheet = json("plain.yaml", "--total", "1000g", "--box", "300x80x65mm");

        assertThat(sheet.at("/totals/targetGrams").doubleValue()).isEqualTo(1000);
        assertThat(ids(sheet)).contains("mould-not-full").doesNotContain("mould-data-disagree");
    }

    @Test
    void figures_of_a_mould_that_agree_raise_nothing() {
        JsonNode sheet = json("plain.yaml", "--box", "300x80x65mm", "--water-fill", "1557g");

        assertThat(ids(sheet)).doesNotContain("mould-data-disagree");
    }

    private static List<String> ids(JsonNode sheet) {
        List<String> ids = new ArrayList<>();
        sheet.get("cautions").forEach(c -> ids.add(c.get("id").textValue()));
        return ids;
    }

    @Test
    void a_formula_in_grams_is_made_as_written() {
        JsonNode sheet = json("notebook.yaml");

        assertThat(sheet.at("/totals/oilsGrams").doubleValue()).isEqualTo(1000);
        assertThat(sheet.at("/alkali/naohGrams").doubleValue()).isCloseTo(138, within(0.11));
        assertThat(sheet.at("/superfat/askedPercent").isNull()).isTrue();
        assertThat(sheet.at("/totals/targetGrams").isNull()).isTrue();
        assertThat(sheet.at("/totals/offTargetGrams").isNull()).isTrue();
    }

    @Test
    void purity_changes_what_is_weighed_and_not_what_reacts() {
        JsonNode assumed = fine("plain.yaml", "--oils", "1kg");
        JsonNode given = fine("plain.yaml", "--oils", "1kg", "--purity", "naoh=100");

        assertThat(given.at("/alkali/naohGrams").doubleValue())
                .isCloseTo(0.98 * assumed.at("/alkali/naohGrams").doubleValue(), within(0.01));
        assertThat(given.at("/alkali/naohPureGrams").doubleValue())
                .isCloseTo(assumed.at("/alkali/naohPureGrams").doubleValue(), within(0.01));
        assertThat(ids(assumed)).contains("purity-assumed");
        assertThat(ids(given)).doesNotContain("purity-assumed");
    }

    @Test
    void a_vessel_that_is_not_tared_is_in_the_readings() {
        JsonNode sheet = json("salt.yaml", "--total", "1500g", "--vessels", "lye jug:312g,oil pot:1480g,jug kelp:210g");

        JsonNode pot = vessel(sheet, "oil pot");
        assertThat(pot.get("vesselGrams").doubleValue()).isEqualTo(1480);
        assertThat(pot.at("/items/0/readingGrams").doubleValue())
                .isEqualTo(1480 + pot.at("/items/0/weighGrams").doubleValue());
        assertThat(vessel(sheet, "lye jug").get("vesselGrams").doubleValue()).isEqualTo(312);
        JsonNode kelp = sheet.at("/portions/1");
        assertThat(kelp.at("/additions/2/readingGrams").doubleValue())
                .isCloseTo(210 + kelp.get("totalGrams").doubleValue(), within(0.001));
    }

    private static JsonNode vessel(JsonNode sheet, String name) {
        for (JsonNode vessel : sheet.get("vessels")) {
            if (vessel.get("name").textValue().equals(name)) {
                return vessel;
            }
        }
        throw new AssertionError("no vessel " + name);
    }

    @Test
    void a_balance_in_ounces_is_read_in_ounces() {
        Run run = Run.in(folder, "sheet", "notebook.yaml", "--balances", "post:11lb:0.05oz");

        assertThat(run.exit()).isZero();
        // 250 g ÷ 28.349523125 g/oz (international pound, 1959) = 8.82 oz, in steps of 0.05
        assertThat(run.out()).contains("8.80 oz (249.5 g)");
    }

    @Test
    void a_stop_is_printed_and_says_so_in_its_exit_code() {
        Recipes.write(folder, "strong.yaml", Recipes.NOTEBOOK.replace("sodium: 138 g", "sodium: 160 g"));

        Run run = Run.in(folder, "sheet", "strong.yaml");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("NOT TO BE MADE AS IT STANDS").contains("STOP");
        assertThat(Run.in(folder, "sheet", "strong.yaml", "--json").exit()).isEqualTo(3);
    }

    @Test
    void the_same_words_give_the_same_bytes() {
        String[] typed = {"sheet", "salt.yaml", "--total", "1500g", "--json"};

        assertThat(Run.in(folder, typed)).isEqualTo(Run.in(folder, typed));
    }
}
