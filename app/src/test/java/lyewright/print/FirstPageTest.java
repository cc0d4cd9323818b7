package lyewright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lyewright.fill.Fill;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.UnitsShown;
import lyewright.words.WeighPlan;
import lyewright.words.WeighRow;
import lyewright.words.WeighVessel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the bench needs on the first page, and how much is on it. */
class FirstPageTest {

    private static final String THREE_OILS = """
            recipe: Plain Bar
            oils: {olive-virgin: 65 %, coconut: 25 %, castor: 10 %}
            alkali: sodium
            superfat: 5 %
            water: 33 % lye
            additions:
              - {of: lavender-oil, amount: 2 % of oils, stage: trace}
            """;

    private static final String NINE_INGREDIENTS = """
            recipe: Nine
            version: 2
            oils: {olive-virgin: 30 %, coconut: 25 %, palm: 15 %, shea-butter: 10 %, sunflower: 8 %, rapeseed-low-erucic: 6 %, castor: 6 %}
            alkali: sodium
            superfat: 6 %
            water: 33 % lye
            additions:
              - {of: sugar, amount: 12 g per kg oils, stage: lye}
              - {of: lavender-oil, amount: 2 % of oils, stage: trace}
            """;

    private static final List<String> OILS = List.of(
            "coconut",
            "olive-virgin",
            "castor",
            "sunflower",
            "lard",
            "tallow",
            "palm",
            "shea-butter",
            "cocoa-butter",
            "rapeseed-low-erucic",
            "rice-bran",
            "almond-sweet",
            "avocado",
            "babassu",
            "hazelnut",
            "sesame",
            "grapeseed",
            "palm-kernel");

    private static MakingSheet inLoaf(String formula) {
        return Sheets.of(formula, Sheets.LOAF, Equipment.USUAL);
    }

    private static void allWeighingIsOn(String page, MakingSheet sheet) {
        String first = Paper.flat(page);
        WeighPlan.of(sheet).vessels().stream()
                .flatMap(vessel -> vessel.rows().stream())
                .forEach(
                        row -> assertThat(first).contains(line(row), row.weigh().shown()));
    }

    /** Names of several lines are found by their first word. */
    private static String line(WeighRow row) {
        return row.name().split(" ", -1)[0];
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void an_ordinary_recipe_is_weighed_from_the_first_page_and_made_from_the_second(PaperSize size) {
        MakingSheet sheet = inLoaf(THREE_OILS);
        List<String> pages = Paper.of(sheet, Sheets.order(size)).pages();
        assertThat(pages).hasSize(2);
        allWeighingIsOn(pages.get(0), sheet);
        assertThat(pages.get(0)).contains("Before the alkali is opened").doesNotContain("Melt the oils");
        assertThat(pages.get(1)).contains("Melt the oils", "cut out for the rack");
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void nine_ingredients_are_weighed_from_the_first_page_and_take_two(PaperSize size) {
        MakingSheet sheet = inLoaf(NINE_INGREDIENTS);
        List<String> pages = Paper.of(sheet, Sheets.order(size)).pages();
        assertThat(pages).hasSize(2);
        allWeighingIsOn(pages.get(0), sheet);
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void portions_of_a_fade_are_weighed_from_the_first_page_too(PaperSize size) {
        MakingSheet sheet = Sheets.example("tideline");
        List<String> pages = Paper.of(sheet, Sheets.order(size)).pages();
        allWeighingIsOn(pages.get(0), sheet);
        assertThat(pages.get(0)).doesNotContain("Ahead of time");
    }

    @ParameterizedTest
    @ValueSource(ints = {10, 12, 14, 16, 18})
    void a_vessel_that_fits_a_page_is_never_parted(int oils) {
        String all = OILS.stream().limit(oils).map(oil -> oil + ": 90 g").collect(Collectors.joining(", "));
        MakingSheet sheet = Sheets.of(
                NINE_INGREDIENTS.replaceAll("oils: \\{.*\\}", "oils: {" + all + "}"), Fill.AS_WRITTEN, Equipment.USUAL);
        List<String> pages = Paper.of(sheet, Sheets.order(PaperSize.LETTER)).pages();
        for (WeighVessel vessel : WeighPlan.of(sheet).vessels()) {
            assertThat(pages)
                    .as(vessel.name())
                    .anySatisfy(page -> vessel.rows()
                            .forEach(row -> assertThat(Paper.flat(page))
                                    .contains(row.name() + " " + row.weigh().shown())));
        }
    }

    @Test
    void making_does_not_begin_with_its_heading_alone() {
        for (int notes = 0; notes < 12; notes++) {
            MakingSheet sheet = inLoaf(NINE_INGREDIENTS + "notes: \"" + "line\\n".repeat(notes) + "\"\n");
            assertThat(Paper.of(sheet, Sheets.order(PaperSize.A4)).pages())
                    .filteredOn(
                            page -> page.lines().anyMatch(line -> line.strip().equals("Make")))
                    .allSatisfy(page -> assertThat(page.lines().map(String::strip))
                            .anyMatch(line -> line.contains("Melt the oils")));
        }
    }

    // Cautions

    @Test
    void what_is_more_to_know_is_on_the_page_that_the_first_one_names() {
        for (String formula : List.of(THREE_OILS, NINE_INGREDIENTS)) {
            List<String> pages =
                    Paper.of(inLoaf(formula), Sheets.order(PaperSize.A4)).pages();
            Matcher more = Pattern.compile("(\\d+) notes from page (\\d+)").matcher(Paper.flat(pages.get(0)));
            assertThat(more.find()).isTrue();
            assertThat(inLoaf(formula).cautions())
                    .filteredOn(caution -> caution.level() == Caution.Level.NOTE)
                    .hasSize(Integer.parseInt(more.group(1)));
            assertThat(pages.get(Integer.parseInt(more.group(2)) - 1)).contains("How sure, and more to know");
        }
    }

    @Test
    void whatever_is_cautioned_of_says_what_to_do() {
        for (MakingSheet sheet : List.of(inLoaf(NINE_INGREDIENTS), Sheets.caustic(), Sheets.example("tideline"))) {
            String text = Paper.of(sheet, Sheets.order(PaperSize.A4)).text();
            assertThat(sheet.cautions())
                    .isNotEmpty()
                    .allSatisfy(
                            caution -> assertThat(text).contains(Paper.flat(caution.text() + " " + caution.remedy())));
        }
    }

    // Lines

    @Test
    void no_line_ends_between_a_figure_and_its_unit() {
        Pattern parted = Pattern.compile("(\\d|off|by)\\s*\\R\\s*(g|oz|%|°C|°|C|-?\\d+\\.\\d g)\\b");
        for (Fill fill : List.of(Sheets.LOAF, Fill.mouldMass(1499.4))) {
            MakingSheet sheet = Sheets.of(NINE_INGREDIENTS, fill, Equipment.USUAL);
            for (PaperSize size : PaperSize.values()) {
                assertThat(Paper.of(sheet, Sheets.order(size)).pages())
                        .allSatisfy(page ->
                                assertThat(parted.matcher(page).results()).isEmpty());
            }
        }
    }

    @Test
    void a_balance_of_two_words_stands_on_one_line() {
        Equipment named = Equipment.parseBalances("Kitchen balance:5kg:1g,Fine balance:500g:0.1g")
                .orThrow();
        MakingSheet sheet = Sheets.of(THREE_OILS, Fill.mouldMass(1500), named);
        String page = Paper.of(sheet, Sheets.order(PaperSize.A4)).pages().get(0).replace('\u00a0', ' ');
        assertThat(page.lines().filter(line -> line.contains("Fine balance"))).hasSizeGreaterThan(1);
        assertThat(page.lines().filter(line -> line.contains("Kitchen balance")))
                .hasSize(4);
    }

    @Test
    void a_long_name_of_a_mould_leaves_all_weighing_on_the_first_page() {
        String mould =
                "the old birch loaf with the sliding lid from the market at Port Ellery, lined with paper ".repeat(2);
        PaperOrder order = new PaperOrder(
                PaperSize.A4,
                "Gannet Stair Soap",
                "",
                "",
                LocalDate.of(2026, 11, 25),
                UnitsShown.METRIC,
                mould.strip());
        MakingSheet sheet = inLoaf(NINE_INGREDIENTS);
        List<String> pages = Paper.of(sheet, order).pages();
        assertThat(Paper.flat(pages.get(0))).contains(mould.strip());
        allWeighingIsOn(pages.get(0), sheet);
    }
}
