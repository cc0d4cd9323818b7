package lyewright.web.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.web.make.MakeShop;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WhyPagesTest {

    private static MakeShop shop;

    @BeforeAll
    static void open(@TempDir Path home) throws Exception {
        shop = new MakeShop(home);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    /** The first number of each text: what the page shows must be what its reason comes to, rounded as shown. */
    @ParameterizedTest
    @ValueSource(strings = {"tideline", "shave", "notebook", "plain", "caustic"})
    void every_figure_of_a_sheet_leads_to_its_own_formula_and_sources(String recipe) {
        leadToTheirOwn(shop.get(shop.make(recipe)).body(), 20);
    }

    private static void leadToTheirOwn(String page, int least) {
        Map<String, String> answers = new HashMap<>();

        assertThat(MakeShop.whys(page)).hasSizeGreaterThan(least).allSatisfy(link -> {
            String reason = answers.computeIfAbsent(link.address(), WhyPagesTest::reason);
            assertThat(reason).as(link.figure()).contains("class=\"formula-line\"");
            assertThat(shows(link.text(), value(reason)))
                    .as("%s says %s, its reason %s", link.figure(), link.text(), value(reason))
                    .isTrue();
        });
        // what comes from other figures alone leads on to them, all else names who says so; but a fade's first layer is
        // all colour, and what there is none of needs no source
        answers.values()
                .forEach(reason -> assertThat(reason)
                        .containsPattern("class=\"sources\"|a class=\"why\"|formula-line\">= 100<|reason-value\">0 "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tideline", "shave", "notebook"})
    void every_figure_of_what_the_bar_becomes_leads_to_its_own(String recipe) {
        String address = shop.make(recipe).replace("/make?", "/make/becomes?");

        leadToTheirOwn(shop.get(address).body(), 40);
        assertThat(shop.getInPlace(address).body()).contains("The cured bars").doesNotContain("<html");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tideline", "shave", "notebook"})
    void every_figure_of_the_recipes_page_leads_to_its_own(String recipe) {
        leadToTheirOwn(shop.get("/recipes/" + shop.recipe(recipe)).body(), 40);
    }

    @Test
    void every_figure_of_a_comparison_leads_to_its_own_and_a_change_to_both() {
        String page = shop.get("/recipes/compare?a=" + shop.recipe("tideline") + "&b=" + shop.recipe("shave"))
                .body();

        leadToTheirOwn(page, 100);
        String change = reason(MakeShop.whys(page).stream()
                .filter(link -> link.address().startsWith("/why/change")
                        && link.address().contains("lye.pureStrengthPercent"))
                .findFirst()
                .orElseThrow()
                .address());
        assertThat(MakeShop.whys(change)).hasSize(2);
        leadToTheirOwn(change, 1);
    }

    @Test
    void every_figure_with_another_oil_leads_to_its_own() {
        String page = shop.get(shop.make("tideline", "out", "coconut", "in", "babassu"))
                .body();
        String swapped = page.substring(page.indexOf("Every figure that changes"), page.indexOf("class=\"sheet "));

        leadToTheirOwn(swapped, 60);
        assertThat(swapped).contains("swapped=yes", "/why/change?");
    }

    @Test
    void a_change_of_nothing_is_not_here() {
        HttpResponse<String> page = shop.get("/why/change?a=" + shop.recipe("plain") + "&of-a=1&b="
                + shop.recipe("tideline") + "&of-b=1&figure=nothing");

        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("Nothing that changes from A to B goes by");
    }

    @ParameterizedTest
    @ValueSource(strings = {"superfat.low95Percent", "superfat.freeAlkaliProbability", "portions.kelp.high95Percent"})
    void what_was_drawn_is_shown_as_it_was_drawn(String figure) {
        assertThat(reason("/why?" + shop.query("tideline", "mould", "loaf") + "&figure=" + MakeShop.encoded(figure)))
                .contains("pic-drawn", "Left of 0 ");
    }

    private static String reason(String address) {
        HttpResponse<String> answer = shop.getInPlace(address);
        assertThat(answer.statusCode()).as(address).isEqualTo(200);
        return answer.body();
    }

    /** With all its digits, which a change has not. */
    private static String value(String reason) {
        Matcher value = Pattern.compile("class=\"reason-value\">([^<]+)<").matcher(reason);
        assertThat(value.find()).isTrue();
        Matcher exact = Pattern.compile("(?s)exact-figures.*?<td class=\"number\">([^<]+)<")
                .matcher(reason);
        if (!exact.find()) {
            return value.group(1);
        }
        assertThat(shows(value.group(1), exact.group(1)))
                .as("%s at the head, exactly %s", value.group(1), exact.group(1))
                .isTrue();
        return exact.group(1);
    }

    private static boolean shows(String shown, String exact) {
        if (shown.startsWith("none ")) {
            return number(exact).signum() == 0;
        }
        BigDecimal number = number(shown);
        if (shown.startsWith("&lt;") || shown.startsWith("under ")) {
            return number(exact).compareTo(number) < 0;
        }
        if (shown.startsWith("over ")) {
            return number(exact).movePointRight(2).compareTo(number) > 0;
        }
        // a chance is shown in percent
        return near(number, number(exact)) || near(number, number(exact).movePointRight(2));
    }

    private static boolean near(BigDecimal shown, BigDecimal exact) {
        // both are rounded from what neither tells whole
        BigDecimal apart = shown.abs().subtract(exact.abs()).abs();
        return apart.compareTo(half(shown).add(half(exact))) <= 0;
    }

    private static BigDecimal half(BigDecimal rounded) {
        return BigDecimal.ONE.movePointLeft(rounded.scale()).movePointLeft(1).multiply(BigDecimal.valueOf(5));
    }

    private static BigDecimal number(String text) {
        Matcher number = Pattern.compile("[-+]?[0-9]+(?:\\.[0-9]+)?").matcher(text);
        assertThat(number.find()).as(text).isTrue();
        return new BigDecimal(number.group());
    }

    @Test
    void every_mass_that_is_weighed_can_be_asked_about() {
        String page = shop.get(shop.make("tideline")).body();

        assertThat(page.split("class=\"number mass\"")).hasSizeGreaterThan(8).satisfies(parts -> {
            for (int i = 1; i < parts.length; i++) {
                assertThat(parts[i]).startsWith("><a class=\"why\" href=\"/why?recipe=");
            }
        });
    }

    @Test
    void a_reason_has_formula_inputs_doubt_and_sources() {
        String page = shop.get("/why?" + shop.query("tideline", "much", "total", "amount", "1500g")
                        + "&figure=alkali.naohGrams")
                .body();

        assertThat(page)
                .contains("Sodium hydroxide to weigh", "purity of sodium hydroxide", "anywhere between", "Who says so");
        assertThat(page).contains("/make?recipe=" + shop.recipe("tideline"), "amount=1500g");
    }

    @Test
    void the_figure_follows_what_is_made() {
        String small = value(
                reason("/why?" + shop.query("plain", "much", "oils", "amount", "500g") + "&figure=totals.oilsGrams"));
        String large = value(
                reason("/why?" + shop.query("plain", "much", "oils", "amount", "2kg") + "&figure=totals.oilsGrams"));

        assertThat(small).isEqualTo("500 g");
        assertThat(large).isEqualTo("2000 g");
    }

    @Test
    void without_mould_and_amount_it_is_the_recipe_alone() {
        String page = shop.get("/why?" + shop.query("plain", "version", "1") + "&figure=totals.oilsGrams")
                .body();

        assertThat(value(page)).isEqualTo("1000 g");
        assertThat(page).contains("Of the recipe alone", "/recipes/" + shop.recipe("plain") + "/versions/1");
    }

    @Test
    void a_name_may_stand_for_a_place() {
        assertThat(shop.get("/why?" + shop.query("tideline", "mould", "loaf") + "&figure="
                                + MakeShop.encoded("portions.kelp.superfatPercent"))
                        .body())
                .contains("Superfat of portion kelp");
    }

    @ParameterizedTest
    @CsvSource({"alkali.naohGram,Sodium hydroxide to weigh", "naohGrams,Sodium hydroxide to weigh"})
    void an_unknown_figure_is_not_here_and_the_nearest_is_offered(String figure, String near) {
        HttpResponse<String> page = shop.get("/why?" + shop.query("plain", "mould", "loaf") + "&figure=" + figure);

        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("No such figure", near);
    }

    @ParameterizedTest
    @ValueSource(strings = {"%3Cscript%3Ealert(1)%3C%2Fscript%3E", "..%2F..%2Fetc", "zzz"})
    void whatever_is_asked_it_is_only_text(String figure) {
        HttpResponse<String> page = shop.get("/why?" + shop.query("plain") + "&figure=" + figure);

        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).doesNotContain("<script>alert");
    }

    @Test
    void a_character_that_is_none_is_refused_with_its_address() {
        assertThat(shop.get("/why?" + shop.query("plain") + "&figure=%00").statusCode())
                .isEqualTo(400);
    }

    @Test
    void a_sheet_that_cannot_be_has_no_figures_and_says_why() {
        HttpResponse<String> page = shop.get("/why?" + shop.query("plain", "much", "full") + "&figure=bars.count");

        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("without a mould nothing is full");
    }

    // Every figure

    @Test
    void all_figures_are_listed_by_what_they_are_of() {
        String page =
                shop.get("/why?" + shop.query("tideline", "mould", "loaf")).body();

        assertThat(page)
                .contains("<h2>Alkali</h2>", "<h2>Superfat</h2>", "Potassium hydroxide to weigh", "figures</span>");
    }

    @Test
    void figures_in_rows_are_listed_part_by_part_and_none_is_heavy() {
        Matcher parts = Pattern.compile("&amp;in=([^\"]+)\"")
                .matcher(shop.get("/why?" + shop.query("tideline", "mould", "loaf"))
                        .body());
        int found = 0;
        while (parts.find()) {
            HttpResponse<String> part =
                    shop.get("/why?" + shop.query("tideline", "mould", "loaf") + "&in=" + parts.group(1));
            assertThat(part.statusCode()).isEqualTo(200);
            assertThat(MakeShop.whys(part.body())).isNotEmpty();
            assertThat(part.body().length()).as(parts.group(1)).isLessThan(150_000);
            found++;
        }
        assertThat(found).isGreaterThan(4);
    }

    @Test
    void a_figure_is_found_by_words_of_it() {
        String found = shop.getInPlace("/why?" + shop.query("tideline", "mould", "loaf") + "&q=salt+held")
                        .body()
                + shop.getInPlace("/why?" + shop.query("tideline", "mould", "loaf") + "&q=rosemary")
                        .body();

        assertThat(found).contains("Rosemary").doesNotContain("<html", "Sodium hydroxide to weigh");
        assertThat(shop.getInPlace("/why?" + shop.query("tideline", "mould", "loaf") + "&q=unicorn")
                        .body())
                .contains("No figure of this sheet goes by");
    }
}
