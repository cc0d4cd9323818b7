package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code why} as it is typed: which figures there are, how they may be named, what is refused. */
class WhyCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Run why(String recipe, String... words) {
        Path file = Recipes.write(folder, "recipe.yaml", recipe);
        List<String> args = new ArrayList<>(List.of("why", file.toString()));
        args.addAll(List.of(words));
        return Run.in(folder, args.toArray(String[]::new));
    }

    @Test
    void the_soda_is_told_from_top_to_bottom() {
        Run run = why(Recipes.PLAIN, "alkali.naohGrams", "--oils", "1kg", "--purity", "naoh=98.5");

        // 250 × 256.5 + 650 × 190 + 100 × 181.5 = 205 775 mg KOH, 3.66768 mol; 94 % of it × 39.997 ÷ 0.985 = 139.99 g
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .containsSubsequence(
                        "Plain, version 1",
                        "alkali.naohGrams",
                        "139.9 g",
                        "Sodium hydroxide to weigh.",
                        "FORMULA",
                        "naohGrams   = down(needed, step)",
                        "needed      = moles × M of NaOH ÷ purity of sodium hydroxide",
                        "= 139.99",
                        "moles       = equivalents × (1 − asked superfat ÷ 100)",
                        "PUT IN",
                        "purity of sodium hydroxide",
                        "0.985",
                        "HOW SURE",
                        "SV of coconut oil",
                        "248 to 265",
                        "WHO SAYS SO",
                        "CXS 210-1999");
    }

    @Test
    void several_figures_are_told_one_after_the_other() {
        Run run = why(Recipes.PLAIN, "totals.batchGrams", "alkali.naohGrams", "--total", "1kg");

        assertThat(WhyPage.of(run.out()).keySet()).containsExactly("totals.batchGrams", "alkali.naohGrams");
    }

    @Test
    void without_a_figure_all_that_can_be_asked_is_listed() {
        Run run = why(Recipes.SALT_BAR, "--bars", "10x110g");

        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains("What can be asked", "recipe.version", "superfat.low95Percent", "alkali.naohGrams")
                .containsPattern("(?m)^fade +[0-9]+  figures$")
                .doesNotContain("fade[");
        assertThat(run.lines()).hasSizeLessThan(130);
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= Page.WIDTH);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vessels.oil pot.coconut.weighGrams | vessels[1].items[0].weighGrams",
                "vessels.cup: alkali.naoh.readingGrams | vessels[7].items[0].readingGrams",
                "portions.kelp.superfatPercent | portions[1].superfatPercent",
                "portions.plain.sea-salt.gramsPerKgOils | portions[0].additions[1].gramsPerKgOils",
                "composition.cured.totalGrams | composition[2].totalGrams",
                "composition.cured.Glycerol from castor.grams | composition[2].substances[5].grams",
                "composition.cured.Water.percent | composition[2].substances[13].percent",
                "portions.kelp.composition.pour.water.addedGrams | portions[1].composition[0].water.addedGrams",
                "fattyAcids.C18:1.percent | fattyAcids[10].percent",
                "superfat.contributions.purity of sodium hydroxide.percentOfVariance"
                        + " | superfat.contributions[1].percentOfVariance"
            })
    void what_is_counted_may_be_named(String named, String counted) {
        Run run = why(Recipes.SALT_BAR, "--bars", "10x110g", named);

        assertThat(run.err()).isEmpty();
        assertThat(WhyPage.of(run.out()).keySet()).containsExactly(counted);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "alkali.naohGram | did you mean alkali.naohGrams",
                "ALKALI.NAOHGRAMS | did you mean alkali.naohGrams?",
                "naohGrams | did you mean alkali.naohGrams?",
                "portions.kelb.superfatPercent | did you mean portions.kelp.superfatPercent",
                "alkalis | the sheet has no figure 'alkalis'",
                "recipe.name | the sheet has no figure 'recipe.name'",
                "cautions[0].text | name it as in the sheet's JSON, such as alkali.naohGrams",
                "vessels[99].vesselGrams | the sheet has no figure",
                "'' | the sheet has no figure ''",
                "totals.oilsGrams.x | the sheet has no figure"
            })
    void an_unknown_figure_is_refused_with_what_is_near(String typed, String said) {
        Run run = why(Recipes.SALT_BAR, "--bars", "10x110g", typed);

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(1);
        assertThat(run.err()).startsWith("why: ").contains(said);
    }

    @ParameterizedTest
    @CsvSource({
        "alkali, alkali.naohGrams, totals.oilsGrams",
        "fade[3], fade[3].layer, fade[2].layer",
        "vessels, vessels[0].items[0].weighGrams, alkali.naohGrams"
    })
    void a_part_of_the_sheet_lists_its_figures(String part, String inside, String outside) {
        Run run = why(Recipes.SALT_BAR, "--bars", "10x110g", part);

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains(inside).doesNotContain(outside);
        assertThat(run.lines()).allMatch(line -> Widths.of(line) <= Page.WIDTH);
    }

    @Test
    void every_unknown_figure_is_named_and_nothing_is_printed() {
        Run run = why(Recipes.PLAIN, "--oils", "1kg", "totals.oilsGrams", "no.such", "neither.this");

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.problems()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "totals.targetGrams",
                "totals.offTargetGrams",
                "bars",
                "bars.cutGrams",
                "composition.cut.totalFattyMatterPercent"
            })
    void what_the_sheet_leaves_empty_is_told_why(String figure) {
        Run run = why(Recipes.PLAIN, "--oils", "1kg", figure);

        assertThat(run.exit()).isZero();
        assertThat(run.lines().get(3)).endsWith(" none");
        assertThat(run.lines()).hasSizeBetween(8, 12);
        assertThat(run.out()).doesNotContain("FORMULA");
    }

    @Test
    void a_superfat_that_follows_from_the_alkali_was_not_asked_for() {
        Run run = why(Recipes.NOTEBOOK, "superfat.askedPercent");

        assertThat(run.out()).contains("none", "The formula gives the alkali");
    }

    @Test
    void what_is_wrong_with_the_sheet_is_refused_as_the_sheet_is() {
        Run sheet = Run.in(folder, "sheet", "missing.yaml", "--total", "1kg");
        Run why = Run.in(folder, "why", "missing.yaml", "alkali.naohGrams", "--total", "1kg");

        assertThat(why.exit()).isEqualTo(2);
        assertThat(why.err()).isEqualTo(sheet.err());
    }

    @Test
    void of_a_sheet_that_is_not_to_be_made_the_exit_code_says_so() {
        Run run = why(Recipes.NOTEBOOK.replace("138 g", "180 g"), "superfat.sheetPercent");

        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).contains("superfat.sheetPercent");
    }

    @Test
    void as_data_it_says_the_same() throws IOException {
        Run run = why(Recipes.PLAIN, "alkali.naohGrams", "totals.targetGrams", "--oils", "1kg", "--json");
        JsonNode reasons = JSON.readTree(run.out());

        assertThat(reasons).hasSize(2);
        JsonNode soda = reasons.get(0);
        assertThat(soda.get("figure").asText()).isEqualTo("alkali.naohGrams");
        assertThat(soda.get("unit").asText()).isEqualTo("g");
        assertThat(soda.at("/steps/0/formula").asText()).isEqualTo("down(needed, step)");
        assertThat(soda.at("/steps/0/value").decimalValue())
                .isEqualByComparingTo(soda.get("value").decimalValue());
        assertThat(soda.at("/inputs/0/name").asText()).isEqualTo("step");
        assertThat(soda.at("/inputs/2/spread/kind").asText()).isEqualTo("rectangular");
        assertThat(soda.at("/inputs/2/spread/low").doubleValue()).isEqualTo(0.97);
        assertThat(soda.at("/inputs/4/figure").asText()).isEqualTo("vessels[0].items[0].weighGrams");
        assertThat(soda.at("/inputs/4/source").isNull()).isTrue();
        assertThat(reasons.get(1).get("value").isNull()).isTrue();
        assertThat(reasons.get(1).get("sentence").asText()).contains("No mould mass was asked for");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--oils 1kg", "--box 300x80x65mm --hold-back 2%"})
    void without_a_figure_the_data_holds_every_reason_and_keeps_to_its_schema(String fill) throws IOException {
        String text = Files.readString(Path.of("..", "docs", "why.schema.json"));
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
        for (String recipe : List.of(Recipes.SALT_BAR, WhyRecipes.ODD.get(0), WhyRecipes.ODD.get(2))) {
            List<String> words = new ArrayList<>(List.of(fill.split(" ", -1)));
            words.add("--json");
            JsonNode reasons =
                    JSON.readTree(why(recipe, words.toArray(String[]::new)).out());

            assertThat(reasons.size()).isGreaterThan(100);
            assertThat(schema.validate(reasons)).isEmpty();
        }
    }
}
