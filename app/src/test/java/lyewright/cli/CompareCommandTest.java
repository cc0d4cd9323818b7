package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String KITCHEN = """
            recipe: Kitchen
            oils: {coconut: 350 g, olive-virgin: 200 g}
            alkali: {sodium: 80 g}
            water: 200 g
            """;

    @TempDir
    Path folder;

    private Run compare(String a, String b, String... options) {
        Recipes.write(folder, "a.yaml", a);
        Recipes.write(folder, "b.yaml", b);
        return Run.in(
                folder,
                Stream.concat(Stream.of("compare", "a.yaml", "b.yaml"), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static String swapped() {
        return Recipes.PLAIN.replace("castor: 10 %", "tallow: 10 %");
    }

    /** By hand: 100 g at 196 instead of 181.5 mg KOH/g take 1.45 g KOH more; × 0.71289 × 0.94 ÷ 0.98 is 0.99 g of NaOH. */
    @Test
    void a_swap_of_one_oil_reads_as_a_maker_would_say_it() {
        Run run = compare(Recipes.PLAIN, swapped());

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Castor oil 10 % → Tallow (beef) 10 %: needs 1.0 g more NaOH per kilogram of oils.");
        assertThat(run.lines())
                .anyMatch(line -> line.matches("Castor oil +10\\.00 +0\\.00 +-10\\.00 % of oils"))
                .anyMatch(line -> line.matches("Tallow \\(beef\\) +0\\.00 +10\\.00 +\\+10\\.00 % of oils"));
    }

    @Test
    void only_what_differs_has_a_row_and_the_rest_one_sentence() {
        List<String> lines = compare(Recipes.PLAIN, swapped()).lines();

        assertThat(lines).noneMatch(line -> line.matches("(Coconut oil|Lye, pure) +[0-9.]+ +[0-9.]+ .*"));
        String text = String.join(" ", lines).replaceAll(" +", " ");
        assertThat(text)
                .contains("The same in both, to the last digit shown: Coconut oil 25 %; Olive oil (virgin) 65 %;");
        assertThat(text).contains("Superfat before rounding 6 %").contains("Lye, pure 32 %");
    }

    @Test
    void without_a_fill_each_is_as_written_and_in_percent_for_a_kilogram_of_oils() {
        Run mixed = compare(Recipes.NOTEBOOK, Recipes.PLAIN);

        assertThat(mixed.exit()).isZero();
        assertThat(mixed.lines().get(0)).endsWith("A as written, B for 1000 g of oils");
        assertThat(compare(Recipes.PLAIN, swapped()).lines().get(0)).endsWith("each for 1000 g of oils");
        Run filled = compare(Recipes.NOTEBOOK, Recipes.PLAIN, "--bars", "10x110g", "--cured");
        assertThat(filled.lines().get(0)).endsWith("each filled as asked");
        assertThat(filled.out()).contains("Bars 10");
    }

    /** As it stands, 200 and 250 g of olive oil, each sheet the one that the sheet command makes. */
    @Test
    void masses_are_told_as_they_are_typed_and_superfats_as_each_sheet_has_them() {
        String more = KITCHEN.replace("olive-virgin: 200 g", "olive-virgin: 250 g");
        Run run = compare(KITCHEN, more);

        assertThat(run.lines().get(0)).endsWith("each as written");
        Matcher superfat = Pattern.compile(
                        "Olive oil \\(virgin\\) 200 g → 250 g; superfat ([0-9.]+) → ([0-9.]+) %: the alkali stays as written")
                .matcher(run.out());
        assertThat(superfat.find()).as(run.out()).isTrue();
        assertThat(Run.in(folder, "sheet", "a.yaml").out()).contains(superfat.group(1) + " %");
        assertThat(Run.in(folder, "sheet", "b.yaml").out()).contains(superfat.group(2) + " %");
    }

    @Test
    void several_changes_are_told_as_causes_of_one_effect() {
        String text = compare(
                        Recipes.PLAIN,
                        swapped().replace("superfat: 6 %", "superfat: 9 %")
                                + "additions: [{of: sea-salt, amount: 2 % of oils, stage: lye}]\n")
                .out()
                .replaceAll("\\s+", " ");

        assertThat(text)
                .contains("Castor oil 10 % → Tallow (beef) 10 %; superfat 6 → 9 %; other additions: needs ")
                .contains("g less NaOH per kilogram of oils.");
    }

    @Test
    void more_than_a_swap_is_told_oil_by_oil() {
        String b = Recipes.PLAIN
                .replace("olive-virgin: 65 %", "olive-virgin: 60 %")
                .replace("25 %", "30 %");

        assertThat(compare(Recipes.PLAIN, b).out().replaceAll("\\s+", " "))
                .contains("Coconut oil 25 → 30 %, Olive oil (virgin) 65 → 60 %: needs ");
    }

    @Test
    void another_alkali_is_told_with_both() {
        String b = Recipes.PLAIN.replace("alkali: sodium", "alkali: potassium");

        assertThat(compare(Recipes.PLAIN, b).out().replaceAll("\\s+", " "))
                .containsPattern(
                        "Potassium's share 0 → 100 %: needs [0-9.]+ g less NaOH and [0-9.]+ g more KOH per kilogram");
    }

    @Test
    void a_certificate_changes_the_alkali_of_the_same_oils() {
        String b = Recipes.PLAIN + "materials: {coconut: {saponification value: 265}}\n";

        assertThat(compare(Recipes.PLAIN, b).out())
                .containsPattern("\nB needs [0-9.]+ g more NaOH per kilogram of oils\\.\n");
    }

    @Test
    void stock_lye_is_compared_by_the_alkali_in_it() {
        String b = Recipes.PLAIN.replace("alkali: sodium", "alkali: half").replace("superfat: 6 %", "superfat: 2 %")
                + "materials: {half: {kind: lye, strength: 50 % sodium}}\n";

        assertThat(compare(Recipes.PLAIN, b).out()).contains("g more pure NaOH per kilogram of oils.");
    }

    @Test
    void a_file_and_itself_differ_in_nothing() {
        Recipes.write(folder, "a.yaml", Recipes.SALT_BAR);

        Run run = Run.in(folder, "compare", "a.yaml", "a.yaml");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Nothing differs: the two formulas are one and the same.");
        assertThat(run.lines()).noneMatch(line -> line.startsWith("what "));
    }

    @Test
    void two_files_that_differ_only_in_words_are_said_to() {
        Run run = compare(Recipes.PLAIN, Recipes.PLAIN.replace("recipe: Plain", "recipe: Fancy"));

        assertThat(run.out()).contains("No figure and no caution differs. The two are not written alike");
    }

    @Test
    void cautions_come_and_go() {
        Run run = compare(swapped(), Recipes.PLAIN.replace("superfat: 6 %", "superfat: 25 %"));

        List<String> lines = run.lines();
        assertThat(lines)
                .contains("CAUTIONS")
                .anyMatch(line -> line.startsWith(" comes   CARE  The superfat is 25.0 %"))
                .anyMatch(line -> line.startsWith(" differs note  The saponification value of olive oil (virgin)"))
                .anyMatch(line -> line.matches("([0-9]+ notes are|One note is) raised by both\\."));
    }

    /** A superfat under 0 is not to be made; both having it is no reason to be silent. */
    @Test
    void what_is_not_to_be_made_is_said_and_ends_with_3() {
        String caustic = Recipes.NOTEBOOK.replace("138 g", "190 g");

        Run one = compare(Recipes.PLAIN, caustic);
        assertThat(one.exit()).isEqualTo(3);
        assertThat(one.out()).contains("Notebook, version 1 (b.yaml), not to be made as it stands");
        assertThat(one.lines()).anyMatch(line -> line.startsWith(" comes   STOP"));

        Run both = compare(caustic, caustic);
        assertThat(both.exit()).isEqualTo(3);
        assertThat(both.out()).contains("Nothing differs").contains(" stays   STOP");
        assertThat(compare(caustic, Recipes.PLAIN).exit()).isEqualTo(3);
    }

    @Test
    void how_sure_the_superfat_is_is_told_where_it_changes() {
        String lean = Recipes.PLAIN.replace("superfat: 6 %", "superfat: 1 %");

        assertThat(compare(Recipes.PLAIN, lean).out())
                .containsPattern("How sure the superfat is: safe → (thin|may be)");
        assertThat(compare(Recipes.PLAIN, swapped()).out()).doesNotContain("How sure the superfat is");
    }

    @Test
    void of_unknown_acids_nothing_is_said_to_change() {
        String mine = Recipes.PLAIN.replaceAll("(?s)oils:.*alkali", "oils: {mine: 100 %}\nalkali")
                + "materials: {mine: {kind: oil, saponification value: 190}}\n";

        Run run = compare(mine, Recipes.PLAIN);

        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).doesNotContain("air turns rancid soonest");
        assertThat(run.lines()).anyMatch(line -> line.matches("oleic acid C18:1 +- +[0-9.]+ +- % of acids"));
    }

    @Test
    void pairs_of_examples_fit_the_page() {
        for (List<String> pair : pairs()) {
            Run run = Run.in(folder, "compare", pair.get(0), pair.get(1), "--total", "1500g");
            assertThat(run.exit()).as(pair + run.err()).isIn(0, 3);
            assertThat(run.lines()).as(pair.toString()).allMatch(line -> Widths.of(line) <= 100 && !line.endsWith(" "));
            assertThat(run.out()).doesNotContain("NaN", "null", "Optional");
        }
    }

    /** Each example with the next, the last with the first. */
    private static List<List<String>> pairs() {
        List<String> examples = Recipes.examples().stream().map(Path::toString).toList();
        assertThat(examples).hasSizeGreaterThanOrEqualTo(6);
        List<List<String>> pairs = new ArrayList<>();
        for (int i = 0; i < examples.size(); i++) {
            pairs.add(List.of(examples.get(i), examples.get((i + 1) % examples.size())));
        }
        return pairs;
    }

    @Test
    void names_in_any_script_stay_as_they_are_and_fit() {
        String wide = "海塩の石鹸".repeat(30);

        Run run = compare(Recipes.PLAIN.replace("Plain", wide), swapped().replace("Plain", "صابون 🧼"));

        assertThat(run.exit()).isZero();
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= 100);
        assertThat(run.out()).contains("صابون 🧼");
    }

    // Refusals: 2, nothing printed, the place named

    @Test
    void a_file_that_is_not_there_is_refused_and_both_are_told() {
        Recipes.write(folder, "a.yaml", Recipes.PLAIN);

        assertRefused(Run.in(folder, "compare", "a.yaml", "none.yaml"), "none.yaml:1:1: there is no such file");
        assertRefused(
                Run.in(folder, "compare", "none.yaml", "neither.yaml"),
                "none.yaml:1:1: there is no such file",
                "neither.yaml:1:1: there is no such file");
    }

    @Test
    void what_is_wrong_in_either_file_is_told_with_its_place() {
        assertRefused(
                compare(
                        Recipes.PLAIN.replace("castor: 10 %", "castor: 9 %"),
                        swapped().replace("tallow", "talow")),
                "a.yaml:2:1: ",
                "b.yaml:5:10: ");
    }

    @Test
    void a_formula_that_cannot_be_made_is_refused_by_name() {
        String milky =
                Recipes.PLAIN + "additions: [{of: goat-milk, amount: 60 % of oils, stage: lye, replaces: water}]\n";

        assertRefused(compare(Recipes.PLAIN, milky), "b.yaml:8:8: stock lye, liquids that replace water");
    }

    /** Fixed amounts heavier than the mould: nothing in the file is wrong, but it does not fit what was asked. */
    @Test
    void a_fill_that_one_of_them_cannot_have_is_refused_with_its_file() {
        String heavy = Recipes.PLAIN + "additions: [{of: sea-salt, amount: 400 g, stage: trace}]\n";

        Run run = compare(Recipes.PLAIN, heavy, "--total", "300g");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(1).allMatch(line -> line.contains("b.yaml"));
    }

    @Test
    void bad_options_are_refused_as_for_a_sheet() {
        assertRefused(compare(Recipes.PLAIN, swapped(), "--total", "1500"), "--total: ");
        assertRefused(compare(Recipes.PLAIN, swapped(), "--purity", "naoh=980"), "--purity: ");
        assertRefused(compare(Recipes.PLAIN, swapped(), "--balances", "x"), "--balances: ");
        assertRefused(compare(Recipes.PLAIN, swapped(), "--oils", "1kg", "--total", "1kg"), "--oils: ");
    }

    @Test
    void one_file_is_too_few_and_three_are_too_many() {
        assertRefused(
                Run.in(folder, "compare", "a.yaml"),
                "lyewright compare: the B.yaml is missing; write it as lyewright compare A.yaml B.yaml");
        assertRefused(
                Run.in(folder, "compare"),
                "lyewright compare: the A.yaml is missing; write it as lyewright compare A.yaml B.yaml");
        assertRefused(Run.in(folder, "compare", "a", "b", "c"), "lyewright compare: 'c' is one word too many");
        assertRefused(
                Run.in(folder, "sheet"), "lyewright sheet: the FILE is missing; write it as lyewright sheet FILE");
    }

    private static void assertRefused(Run run, String... starts) {
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        for (String start : starts) {
            assertThat(run.problems()).as(run.err()).anyMatch(line -> line.startsWith(start));
        }
    }

    // JSON

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(Path.of("..", "docs", "compare.schema.json")));
    }

    @Test
    void pairs_of_examples_keep_to_the_schema() throws IOException {
        JsonSchema schema = schema();
        for (List<String> pair : pairs()) {
            Run run = Run.in(folder, "compare", pair.get(0), pair.get(1), "--json", "--bars", "10x110g");
            assertThat(schema.validate(JSON.readTree(run.out())))
                    .as(pair.toString())
                    .isEmpty();
        }
        ObjectNode extra = (ObjectNode)
                JSON.readTree(compare(Recipes.PLAIN, swapped(), "--json").out());
        extra.put("time", "now");
        assertThat(schema.validate(extra)).hasSize(1);
    }

    @Test
    void rows_say_what_both_sheets_say() throws IOException {
        JsonNode comparison = JSON.readTree(
                compare(Recipes.PLAIN, swapped(), "--json", "--total", "1500g").out());
        JsonNode sheet = JSON.readTree(
                Run.in(folder, "sheet", "b.yaml", "--json", "--total", "1500g").out());

        List<String> paths = new ArrayList<>();
        for (JsonNode row : comparison.get("rows")) {
            String path = row.get("path").asText();
            paths.add(path);
            JsonNode figure = sheet.at("/" + path.replace('.', '/'));
            if (figure.isNumber() && (path.startsWith("totals.") || path.startsWith("superfat."))) {
                assertThat(row.get("b").asDouble()).as(path).isEqualTo(figure.asDouble());
            }
            if (row.get("difference").isNumber()) {
                assertThat(row.get("difference").asDouble())
                        .as(path)
                        .isCloseTo(row.get("b").asDouble() - row.get("a").asDouble(), within(2e-6));
            }
        }
        assertThat(paths)
                .doesNotHaveDuplicates()
                .contains(
                        "oils.castor",
                        "oils.tallow",
                        "perKgOils.naohGrams",
                        "superfat.sheetPercent",
                        "superfat.low95Percent",
                        "lye.pureStrengthPercent",
                        "fattyAcids.C18:1",
                        "keeping.oxidisability",
                        "totals.mouldGrams");
        assertThat(comparison.at("/a/name").asText()).isEqualTo("Plain");
        assertThat(comparison.at("/b/stopped").asBoolean()).isFalse();
    }

    @Test
    void cautions_say_what_becomes_of_them() throws IOException {
        JsonNode cautions = JSON.readTree(compare(swapped(), Recipes.PLAIN.replace("6 %", "25 %"), "--json")
                        .out())
                .get("cautions");

        assertThat(cautions)
                .anyMatch(c -> c.get("id").asText().equals("superfat-unusual")
                        && c.get("change").asText().equals("comes")
                        && c.get("a").isNull()
                        && c.get("b").asText().equals("care"))
                .anyMatch(c -> c.get("id").asText().equals("sv-remembered")
                        && c.get("change").asText().equals("changes"))
                .anyMatch(c -> c.get("change").asText().equals("stays"));
    }

    /** A quarter of a premix that is half coconut and half castor is an eighth of each. */
    @Test
    void a_premix_counts_with_its_oils_and_it_is_said() {
        String premix = Recipes.PLAIN.replace("coconut: 25 %", "winter-mix: 25 %")
                + "materials: {winter-mix: {kind: oils, oils: {coconut: 50 %, castor: 50 %}}}\n";

        Run run = compare(Recipes.PLAIN, premix);

        assertThat(run.lines())
                .contains("Of a premix each oil counts with the others: winter-mix.")
                .anyMatch(line -> line.matches("Coconut oil +25\\.00 +12\\.50 +-12\\.50 % of oils"))
                .anyMatch(line -> line.matches("Castor oil +10\\.00 +22\\.50 +\\+12\\.50 % of oils"))
                .noneMatch(line -> line.startsWith("winter-mix "));
        assertThat(compare(Recipes.PLAIN, swapped()).out()).doesNotContain("premix");
    }

    @Test
    void what_asks_for_care_in_both_is_told_and_notes_are_counted() {
        String lean = Recipes.PLAIN.replace("superfat: 6 %", "superfat: 1 %");

        Run run = compare(lean, lean.replace("superfat: 1 %", "superfat: 1 %\ncured water: 9 %"));

        assertThat(run.lines())
                .anyMatch(line -> line.matches(" stays   CARE  A superfat of 1\\.[01] % may .*"))
                .noneMatch(line -> line.startsWith(" stays   note"))
                .anyMatch(line -> line.matches("([0-9]+ notes are|One note is) raised by both\\."));
    }

    @Test
    void wax_that_is_left_has_a_row_beside_oil_that_is_left() {
        assertThat(compare(Recipes.PLAIN, Recipes.PLAIN.replace("castor", "jojoba"))
                        .lines())
                .anyMatch(line -> line.matches("Wax that does not react +0\\.0 +[0-9.]+ +\\+[0-9.]+ % of cured bar"))
                .noneMatch(line -> line.matches("Oil left over +[0-9]\\.[0-9] +1[0-9]\\..*"));
    }
}
