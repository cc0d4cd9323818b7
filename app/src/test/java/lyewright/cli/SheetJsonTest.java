package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetJsonTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private JsonSchema schema;

    @BeforeEach
    void read() throws IOException {
        String text = Files.readString(Path.of("..", "docs", "sheet.schema.json"));
        schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    }

    static Stream<String> fills() {
        return Stream.of(
                "--total 1500g",
                "--oils 1kg",
                "--bars 10x110g",
                "--bars 10x110g --cured",
                "--box 300x80x65mm",
                "--box 300x80x65mm --cut 25mm --blade 1mm --ends 5mm --trim 3mm",
                "--box 300x240x30mm --cut 60x80mm",
                "--tube 300x76mm --cut 25mm",
                "--cavities 12x95ml",
                "--water-fill 1450g",
                "--usual 1520g=PLAIN",
                "--total 1500g --box 300x80x65mm --water-fill 1450g --usual 1520g=PLAIN --hold-back 2%",
                "--total 1500g --balances one:20kg:0.05oz --vessels oil_pot:1480g");
    }

    @ParameterizedTest
    @MethodSource("fills")
    void every_example_in_every_fill_keeps_to_the_schema(String fill) throws IOException {
        Path plain = Recipes.write(folder, "plain.yaml", Recipes.PLAIN);
        List<Path> formulas = new ArrayList<>(Recipes.examples());
        assertThat(formulas).hasSizeGreaterThanOrEqualTo(6);
        formulas.add(plain);
        formulas.add(Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR));
        formulas.add(Recipes.write(folder, "notebook.yaml", Recipes.NOTEBOOK));
        for (Path formula : formulas) {
            List<String> args = new ArrayList<>(List.of("sheet", formula.toString(), "--json"));
            for (String word : fill.split(" ", -1)) {
                args.add(word.replace("PLAIN", plain.toString()).replace('_', ' '));
            }
            Run run = Run.in(folder, args.toArray(String[]::new));

            assertThat(run.exit()).as(formula + " " + run.err()).isIn(0, 3);
            assertThat(schema.validate(JSON.readTree(run.out())))
                    .as(formula.toString())
                    .isEmpty();
        }
    }

    private ObjectNode sheet() throws IOException {
        Path salt = Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);
        return (ObjectNode) JSON.readTree(Run.in(folder, "sheet", salt.toString(), "--bars", "10x110g", "--json")
                .out());
    }

    @Test
    void the_schema_refuses_what_is_no_sheet() throws IOException {
        assertThat(refusals(sheet())).isEmpty();
        ObjectNode withTime = sheet().put("time", "now");
        ObjectNode without = sheet();
        without.remove("totals");
        ObjectNode negative = sheet();
        ((ObjectNode) negative.get("totals")).put("oilsGrams", -1);
        ObjectNode text = sheet();
        ((ObjectNode) text.get("alkali")).put("naohGrams", "76 g");
        ObjectNode grave = sheet();
        ((ObjectNode) grave.at("/cautions/0")).put("level", "grave");
        ObjectNode deep = sheet();
        ((ObjectNode) deep.at("/vessels/0/items/0")).put("host", "here");

        for (ObjectNode bad : List.of(withTime, without, negative, text, grave, deep)) {
            assertThat(refusals(bad)).hasSize(1);
        }
    }

    private Set<ValidationMessage> refusals(JsonNode sheet) {
        return schema.validate(sheet);
    }

    @Test
    void fields_stand_in_the_order_that_was_promised() throws IOException {
        ObjectNode sheet = sheet();

        assertThat(names(sheet))
                .containsExactly(
                        "recipe",
                        "tables",
                        "vessels",
                        "totals",
                        "alkali",
                        "superfat",
                        "portions",
                        "fade",
                        "bars",
                        "batterDensityGramsPerMl",
                        "lye",
                        "composition",
                        "worstBar",
                        "fattyAcids",
                        "unknownPercent",
                        "oilPhase",
                        "keeping",
                        "cautions");
        assertThat(names(sheet.get("superfat")))
                .containsExactly(
                        "askedPercent",
                        "sheetPercent",
                        "low95Percent",
                        "high95Percent",
                        "worstPercent",
                        "freeAlkaliProbability",
                        "draws",
                        "verdict",
                        "sentence",
                        "contributions",
                        "takenAsExact",
                        "certificate");
        assertThat(names(sheet.at("/vessels/0"))).containsExactly("name", "vesselGrams", "items");
        assertThat(names(sheet.at("/vessels/0/items/0")))
                .containsExactly(
                        "of",
                        "stage",
                        "portion",
                        "exactGrams",
                        "weighGrams",
                        "readingGrams",
                        "balance",
                        "percentOfOils");
        assertThat(names(sheet.get("totals")))
                .containsExactly(
                        "oilsGrams",
                        "batchGrams",
                        "mouldGrams",
                        "targetGrams",
                        "offTargetGrams",
                        "waterGrams",
                        "waterBroughtGrams");
        assertThat(names(sheet.get("alkali")))
                .containsExactly(
                        "naohGrams",
                        "kohGrams",
                        "naohPureGrams",
                        "kohPureGrams",
                        "potassiumMolesPercent",
                        "potassiumPurePercent",
                        "potassiumWeighedPercent",
                        "jugConcentrationPercent",
                        "waterInJugGrams");
        assertThat(names(sheet.at("/cautions/0"))).containsExactly("id", "level", "text", "remedy", "source");
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void an_item_tells_its_key_stage_and_portion() throws IOException {
        ObjectNode sheet = sheet();
        List<String> items = new ArrayList<>();
        for (JsonNode vessel : sheet.get("vessels")) {
            for (JsonNode item : vessel.get("items")) {
                items.add(item.get("of").asText() + "|" + item.get("stage").asText() + "|"
                        + item.get("portion").asText());
            }
        }

        assertThat(items)
                .contains(
                        "coconut|oils|null",
                        "water|lye|null",
                        "naoh|lye|null",
                        "green-clay|portion kelp|kelp",
                        "water|portion kelp|kelp",
                        "sea-salt|every portion|plain",
                        "sea-salt|every portion|kelp");
        assertThat(items.get(items.size() - 1)).isEqualTo("naoh|lye|null");
    }

    @Test
    void numbers_are_plain_and_finer_than_a_milligram() throws IOException {
        Path salt = Recipes.write(folder, "salt.yaml", Recipes.SALT_BAR);
        String text = Run.in(folder, "sheet", salt.toString(), "--total", "1500g", "--json")
                .out();

        assertThat(text).doesNotContainPattern("[0-9][eE][+-]?[0-9]").doesNotContainPattern("\\.[0-9]{7}");
        assertThat(text).containsPattern("\"exactGrams\" : [0-9]+\\.[0-9]{3,6}");
    }

    @Test
    void the_items_add_up_to_the_batch() throws IOException {
        ObjectNode sheet = sheet();
        double sum = 0;
        for (JsonNode vessel : sheet.get("vessels")) {
            for (JsonNode item : vessel.get("items")) {
                sum += item.get("weighGrams").doubleValue();
            }
        }

        assertThat(sum)
                .isCloseTo(sheet.at("/totals/batchGrams").doubleValue(), org.assertj.core.api.Assertions.within(1e-6));
    }
}
