package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Weighing;
import lyewright.records.setting.Units;
import lyewright.web.make.MakePages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.recipe.RecipeSheet;
import lyewright.web.start.Start;
import lyewright.web.why.WhyPages;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workshop set to ounces, with balances that count in grams: grams are what is weighed, ounces stand beside them. */
class OunceWorkshopTest {

    /** By definition. */
    private static final double OUNCE = 28.349523125;

    private static final Pattern BOTH = Pattern.compile("([0-9.]+) g \\(([0-9.]+) oz\\)");

    private static TestWorkshop workshop;
    private static Formula formula;
    private static String recipe = "";

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        workshop = TestWorkshop.start(
                home,
                Units.OUNCES,
                shop -> List.of(new RecipePages(shop), new MakePages(shop), new Start(shop), new WhyPages(shop)));
        // the balances at hand show grams
        for (String balance : List.of("kitchen:5kg:1g", "fine:500g:0.1g")) {
            workshop.shop()
                    .records()
                    .equipment()
                    .addBalance(Balance.parse(balance).orThrow())
                    .orThrow();
        }
        formula = FormulaFile.read(Files.readString(Path.of("..", "examples", "tideline.yaml")))
                .formula()
                .orElseThrow();
        recipe = workshop.shop().records().recipes().add(formula).orThrow().recipeId();
    }

    @AfterAll
    static void close() {
        workshop.close();
    }

    private static List<Weighing> weighings() {
        MakingSheet sheet = RecipeSheet.of(formula, workshop.shop()).orThrow();
        return sheet.vessels().stream()
                .flatMap(vessel -> vessel.weighings().stream())
                .toList();
    }

    /** Every mass that is said in both units says the same in both. */
    private static long saidTwice(String page) {
        Matcher both = BOTH.matcher(page);
        long found = 0;
        while (both.find()) {
            found++;
            assertThat(Double.parseDouble(both.group(2)) * OUNCE)
                    .as(both.group())
                    .isCloseTo(Double.parseDouble(both.group(1)), within(0.005 * OUNCE));
        }
        return found;
    }

    @Test
    void every_mass_to_weigh_is_on_the_recipes_page_in_both() throws Exception {
        String page = workshop.get("/recipes/" + recipe).body();
        List<String> masses = Pattern.compile("/why\\?[^\"]*weighGrams\">([^<]*)<")
                .matcher(page)
                .results()
                .map(link -> link.group(1))
                .toList();

        assertThat(masses)
                .hasSameSizeAs(weighings())
                .allMatch(text -> BOTH.matcher(text).matches());
        assertThat(saidTwice(page)).isGreaterThanOrEqualTo(masses.size());
    }

    @Test
    void every_mass_to_weigh_is_on_the_making_sheet_in_both() throws Exception {
        String page = workshop.get("/make?recipe=" + recipe + "&much=total&amount=1500g")
                .body();
        List<String> masses = Pattern.compile("<td class=\"number mass two\">(.*?)</td>")
                .matcher(page)
                .results()
                .map(cell -> cell.group(1).replaceAll("<[^>]*>", ""))
                .toList();

        assertThat(masses)
                .hasSameSizeAs(weighings())
                .allMatch(text -> BOTH.matcher(text).matches());
        assertThat(saidTwice(String.join(" ", masses))).isEqualTo(masses.size());
        // 1500 ÷ 28.349523125 = 52.91, and the figure of grams still leads to its reason
        assertThat(page).contains("52.91 oz (<a class=\"why\"");
    }

    @Test
    void a_notebook_is_answered_in_both() throws Exception {
        String answer = workshop.post(
                        "/notebook/answer",
                        "text",
                        "Trial\ncoconut oil 350 g\nolive (virgin) 350 g\nsoda 100 g\nwater 215 g")
                .body();

        // 350 ÷ 28.349523125 = 12.346
        assertThat(Stream.of("350 g (12.35 oz)", "215 g (7.58 oz)", "100.0 g (3.53 oz)"))
                .allMatch(answer::contains);
        assertThat(answer.replaceAll("<[^>]*>", "")).contains("As it stands it makes 35.80 oz (1015 g) of batter");
    }

    @Test
    void two_recipes_beside_each_other_are_told_in_both() throws Exception {
        String other = workshop.shop()
                .records()
                .recipes()
                .importFormula(FormulaFile.read(Files.readString(Path.of("..", "examples", "harbour-shave.yaml")))
                        .formula()
                        .orElseThrow())
                .orThrow()
                .version()
                .recipeId();
        String page =
                workshop.get("/recipes/compare?a=" + recipe + "&b=" + other).body();

        assertThat(saidTwice(page.replaceAll("<[^>]*>", ""))).isGreaterThan(10);
        assertThat(page).contains("<span class=\"unit muted small\">oz</span>");
        assertThat(page)
                .doesNotContain(
                        "<span class=\"unit muted small\">g</span>", "<span class=\"unit muted small\">g per kg oils");
        assertThat(page.replaceAll("<[^>]*>", "")).containsPattern("[0-9.]+ oz \\([0-9.]+ g\\) (more|less) NaOH");
    }

    @Test
    void another_oil_is_told_in_both() throws Exception {
        String page = workshop.get("/make?recipe=" + recipe + "&much=total&amount=1500g&out=coconut&in=babassu")
                .body();
        String swap = page.substring(page.indexOf("class=\"swap"), page.indexOf("Go on with it"));

        assertThat(swap.replaceAll("<[^>]*>", ""))
                .containsPattern("[0-9.]+ oz \\([0-9.]+ g\\) (more|less) NaOH")
                .containsPattern("Weighed in all oz")
                .doesNotContain("g per kg oils");
    }
}
