package lyewright.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.NotebookText;
import lyewright.formula.OwnMaterial;
import lyewright.records.Records;
import lyewright.records.recipe.RecipeVersion;
import lyewright.records.setting.Units;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.LotSaid;
import lyewright.web.TestWorkshop;
import lyewright.web.cupboard.CupboardPages;
import lyewright.web.recipe.NewerFigures;
import lyewright.web.recipe.RecipePages;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was received under a name that no table has is there for recipes under that name. */
class ReceivedFragranceTest {

    private static final String NAME = "Sea Breeze fragrance oil";
    private static final String NOTEBOOK = """
            Breeze
            olive-virgin 700 g
            coconut oil 300 g
            superfat 5 %%
            water 280 g
            %s 30 g
            """;

    @TempDir
    Path home = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private TestWorkshop workshop;

    private final LocalDate today = LocalDate.now(ZoneOffset.UTC);

    @BeforeEach
    void start() {
        workshop = TestWorkshop.start(
                home,
                Units.GRAMS,
                shop -> List.of(new MakePages(shop), new CupboardPages(shop), new RecipePages(shop)));
    }

    @AfterEach
    void stop() {
        workshop.close();
    }

    private Records records() {
        return workshop.shop().records();
    }

    private String received(String name, ItemKind kind, int daysGood) {
        return received(ItemSaid.of(name, kind, Identity.none()), daysGood);
    }

    private String received(ItemSaid item, int daysGood) {
        LotSaid said = LotSaid.of(today.minusDays(20)).withBestBefore(Optional.of(today.plusDays(daysGood)));
        return records()
                .lots()
                .receive(records().author(), "", new Delivery("", List.of(Arrival.of(item, said, 50_000))))
                .orThrow()
                .get(0)
                .itemId();
    }

    private List<String> troubles(String called) {
        return NotebookText.read(NOTEBOOK.formatted(called), workshop.shop().names()).troubles().stream()
                .map(trouble -> trouble.problem().what())
                .toList();
    }

    private String recipe(String called) {
        RecipeVersion version = records()
                .recipes()
                .add(NotebookText.read(
                                NOTEBOOK.formatted(called), workshop.shop().names())
                        .formula()
                        .orElseThrow())
                .orThrow();
        return version.recipeId();
    }

    private String sheet(String recipe) throws Exception {
        return workshop.get("/make?recipe=" + recipe + "&much=written")
                .body()
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    @Test
    void a_fragrance_that_came_is_named_in_a_recipe_at_once_and_taken() throws Exception {
        assertThat(troubles(NAME)).isNotEmpty();
        received(NAME, ItemKind.FRAGRANCE, 400);
        assertThat(troubles(NAME)).isEmpty();
        String sheet = sheet(recipe("sea breeze fragrance oil"));
        assertThat(sheet)
                .contains("30 g of lot 26-0001")
                .doesNotContain("sea Breeze")
                .doesNotContain("does not know " + NAME);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sea Breeze fragrance oil", "sea breeze  fragrance oil"})
    void one_that_is_described_as_ones_own_and_one_that_came_are_the_same(String described) throws Exception {
        records()
                .materials()
                .add(OwnMaterial.of(described.replace("  ", " "), "fragrance"))
                .orThrow();
        received(NAME, ItemKind.FRAGRANCE, 400);
        assertThat(sheet(recipe(NAME))).contains("30 g of lot 26-0001");
    }

    @Test
    void what_recipes_call_it_may_be_a_name_of_ones_own() throws Exception {
        received(ItemSaid.of("SB-50 batch scent", ItemKind.FRAGRANCE, Identity.ofKey("Harbour scent")), 400);
        assertThat(troubles("harbour scent")).isEmpty();
        assertThat(sheet(recipe("harbour scent"))).doesNotContain("does not know Harbour");
    }

    @Test
    void its_day_is_told_to_the_recipe() throws Exception {
        received(NAME, ItemKind.FRAGRANCE, 3);
        assertThat(workshop.get("/recipes/" + recipe(NAME)).body()).contains(NAME + ", lot", "best before");
    }

    @Test
    void an_oil_without_figures_stays_unknown_and_its_page_says_what_it_needs() throws Exception {
        String item = received("Kokosöl", ItemKind.OIL, 400);
        assertThat(troubles("Kokosöl")).isNotEmpty();
        assertThat(workshop.get("/stores/cupboard/" + item).body()).contains("an oil needs a saponification value");
    }

    @Test
    void the_page_of_a_fragrance_says_what_is_known_of_it() throws Exception {
        String item = received(NAME, ItemKind.FRAGRANCE, 400);
        assertThat(workshop.get("/stores/cupboard/" + item).body())
                .contains(NAME + ". They know nothing of it but its kind: a fragrance.");
    }

    @Test
    void what_the_tables_know_stays_theirs() {
        received("Olive oil", ItemKind.ADDITIVE, 400);
        List<String> own = new ArrayList<>();
        workshop.shop().names().ofMaker().forEach(material -> own.add(material.key()));
        assertThat(own).isEmpty();
    }

    @Test
    void what_a_recipe_carries_of_it_is_not_taken_from_it_by_what_came() {
        received("Sea Breeze", ItemKind.FRAGRANCE, 400);
        Formula carries = FormulaFile.read("""
                        recipe: Breeze
                        oils: {olive-virgin: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        additions: [{of: Sea Breeze, amount: 3 % of oils, stage: trace}]
                        materials:
                          Sea Breeze:
                            kind: fragrance
                            density: 0.95 g/ml
                        """).formula().orElseThrow();
        assertThat(NewerFigures.of(carries, workshop.shop().names()).isEmpty()).isTrue();
    }
}
