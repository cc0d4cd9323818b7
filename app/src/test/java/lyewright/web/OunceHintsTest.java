package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lyewright.formula.FormulaFile;
import lyewright.records.setting.Units;
import lyewright.web.make.MakePages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.start.Start;
import lyewright.web.stores.StoresPages;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever weighs in ounces and measures in inches is given no example in grams or millimetres. */
class OunceHintsTest {

    private static final Pattern EXAMPLES = Pattern.compile(
            "<(?:span|p) class=\"hint\"[^>]*>(.*?)</(?:span|p)>|placeholder=\"([^\"]*)\"|<option value=\"([^\"]*)\"",
            Pattern.DOTALL);

    /** A figure with a metric unit; of laboratory figures, such as mg KOH/g, there is no other. Millilitres are in every kitchen. */
    private static final Pattern METRIC = Pattern.compile("[0-9.]+\\s?(?:g|kg|mm|cm|grams?)(?![\\p{L}/])");

    private static TestWorkshop workshop;
    private static String recipe = "";

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        workshop = TestWorkshop.start(
                home,
                Units.OUNCES,
                shop -> List.of(new RecipePages(shop), new MakePages(shop), new Start(shop), new StoresPages(shop)));
        recipe = workshop.shop()
                .records()
                .recipes()
                .add(FormulaFile.read(Files.readString(Path.of("..", "examples", "tideline.yaml")))
                        .formula()
                        .orElseThrow())
                .orThrow()
                .recipeId();
    }

    @AfterAll
    static void close() {
        workshop.close();
    }

    static Stream<String> pages() {
        return Stream.of(
                "/start",
                "/notebook",
                "/recipes",
                "/recipes/import",
                "/recipes/RECIPE",
                "/make",
                "/make?recipe=RECIPE",
                "/stores",
                "/stores/moulds/new?kind=loaf",
                "/stores/moulds/new?kind=slab",
                "/stores/moulds/new?kind=tube",
                "/stores/moulds/new?kind=cavities",
                "/stores/moulds/new?kind=unmeasured",
                "/stores/balances/new",
                "/stores/jugs/new",
                "/stores/materials/new?kind=oil");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void no_example_is_metric(String page) throws Exception {
        var answer = workshop.get(page.replace("RECIPE", recipe));
        assertThat(answer.statusCode()).as(page).isIn(200, 303);
        List<String> metric = EXAMPLES.matcher(answer.body())
                .results()
                .flatMap(found -> Stream.of(found.group(1), found.group(2), found.group(3)))
                .filter(text -> text != null && METRIC.matcher(text).find())
                .map(text -> text.replaceAll("<[^>]*>", ""))
                .toList();
        assertThat(metric).as(page).isEmpty();
    }
}
