package lyewright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Weighing;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.web.make.MakePages;
import lyewright.web.recipe.RecipePages;
import lyewright.web.recipe.RecipeSheet;
import lyewright.web.start.Start;
import lyewright.web.stores.StoresPages;
import lyewright.web.why.WhyPages;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workshop set to ounces, with balances that count in grams: grams are what is weighed, ounces stand beside them. */
class OunceWorkshopTest {

    /** By definition. */
    private static final double OUNCE = 28.349523125;

    private static final Pattern BOTH = Pattern.compile("([0-9.]+) g \\(([0-9.]+) oz\\)");

    private static final String CAUSTIC = """
            recipe: All too little
            version: 1
            use: own
            alkali: sodium
            oils:
              coconut: 60 %
              olive-virgin: 40 %
            superfat: 5 %
            water: 60 % lye
            additions:
              - of: table-salt
                amount: 30 % of oils
                stage: lye
              - of: sugar
                amount: 20 g per kg oils
                stage: lye
            process: {make: cold, oils: 40 C, lye: 38 C}
            """;

    private static TestWorkshop workshop;
    private static Formula formula;
    private static String recipe = "";

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        workshop = TestWorkshop.start(
                home,
                Units.OUNCES,
                shop -> List.of(
                        new RecipePages(shop),
                        new MakePages(shop),
                        new Start(shop),
                        new WhyPages(shop),
                        new StoresPages(shop)));
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

    @Test
    void no_gram_stands_alone_on_a_page() throws Exception {
        String other = kept("harbour-shave.yaml");
        String lampRoom = kept("lamp-room.yaml");
        String asked = "&much=total&amount=1500g";
        List<String> alone = new ArrayList<>();
        for (String page : List.of(
                "/recipes/" + recipe,
                "/recipes/" + other,
                "/recipes/" + caustic(),
                "/recipes/" + lampRoom,
                "/make?recipe=" + recipe + asked,
                "/make?recipe=" + lampRoom + asked,
                "/make?recipe=" + caustic() + asked,
                "/make/becomes?recipe=" + recipe + asked,
                "/make/becomes?recipe=" + other + asked,
                "/recipes/compare?a=" + recipe + "&b=" + other,
                "/recipes/compare?a=" + recipe + "&b=" + caustic(),
                "/stores")) {
            HttpResponse<String> answer = workshop.get(page);
            assertThat(answer.statusCode()).as(page).isEqualTo(200);
            GramsAlone.on(answer.body()).forEach(grams -> alone.add(page + ": " + grams));
        }
        assertThat(alone).isEmpty();
        assertThat(GramsAlone.text(workshop.get("/recipes/" + caustic()).body()))
                .containsPattern("jug has [0-9.]+ oz \\([0-9.]+ g\\) of water for [0-9.]+ oz \\([0-9.]+ g\\)");
    }

    @Test
    void no_gram_stands_alone_on_paper_but_in_the_columns_of_the_balances() throws Exception {
        for (String id : List.of(recipe, caustic(), kept("lamp-room.yaml"))) {
            byte[] pdf = bytes("/make/sheet.pdf?recipe=" + id + "&much=total&amount=1500g&paper=LETTER");
            try (PDDocument document = Loader.loadPDF(pdf)) {
                String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
                assertThat(text).contains("oz", "Before the alkali is opened");
                String sentences = text.substring(0, text.indexOf("it comes last and is rounded down"))
                        + text.substring(text.indexOf("Before the alkali is opened"));
                assertThat(GramsAlone.in(sentences)).as(id).isEmpty();
            }
        }
    }

    @Test
    void in_degrees_fahrenheit_no_degree_celsius_stands_alone() throws Exception {
        Workshop usual = workshop.shop().workshop();
        save(new Workshop(
                usual.name(),
                usual.units(),
                Degrees.FAHRENHEIT,
                usual.currency(),
                usual.market(),
                usual.paper(),
                usual.sodiumPurity(),
                usual.potassiumPurity(),
                usual.holdBack()));
        for (String page : List.of("/recipes/" + recipe, "/make?recipe=" + recipe + "&much=total&amount=1500g")) {
            String text = GramsAlone.text(workshop.get(page).body());

            assertThat(text).as(page).contains("°F");
            assertThat(text.replaceAll("°F \\([0-9. to]+ °C\\)", "")).as(page).doesNotContainPattern("[0-9] °C");
        }
        save(usual);
    }

    private static void save(Workshop settings) {
        workshop.shop().records().settings().save(settings).orThrow();
    }

    private static byte[] bytes(String path) throws Exception {
        try (InputStream answer = URI.create(workshop.at() + path).toURL().openStream()) {
            return answer.readAllBytes();
        }
    }

    private static String kept(String example) throws Exception {
        return workshop.shop()
                .records()
                .recipes()
                .importFormula(FormulaFile.read(Files.readString(Path.of("..", "examples", example)))
                        .formula()
                        .orElseThrow())
                .orThrow()
                .version()
                .recipeId();
    }

    /** Less water in the jug than alkali, salt that does not dissolve there, and a mould that disagrees with itself. */
    private static String caustic() {
        return workshop.shop()
                .records()
                .recipes()
                .add(FormulaFile.read(CAUSTIC).formula().orElseThrow())
                .orThrow()
                .recipeId();
    }
}
