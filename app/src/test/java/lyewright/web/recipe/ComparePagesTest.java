package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.formula.Formula;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two versions and two recipes beside each other. */
class ComparePagesTest {

    @TempDir
    static Path home;

    private static RecipeShop shop;

    @BeforeAll
    static void open() {
        shop = new RecipeShop(home);
    }

    @BeforeEach
    void empty() {
        shop.empty();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void two_versions_are_compared_with_what_differs_and_what_does_not() {
        String id = shop.keep(RecipeShop.PLAIN);
        Formula milder = RecipeShop.formula(RecipeShop.PLAIN.replace("superfat: 6 %", "superfat: 8 %"));
        shop.book().save(id, 1, milder, true, "kinder to dry hands").orThrow();
        assertThat(shop.get("/recipes/" + id + "/compare?a=1&b=2").body())
                .contains("Superfat 6 → 8 %")
                .containsPattern(
                        "<a [^>]*>6\\.0</a></td><td [^>]*><a [^>]*>8\\.0</a></td><td [^>]*><a [^>]*>\\+2\\.0</a>")
                .contains("What is the same");
        assertThat(shop.get("/recipes/" + id + "/compare?a=2&b=2").body())
                .contains("the two formulas are one and the same");
    }

    private static String kitchen(String olive) {
        return """
                recipe: Kitchen with %1$s
                oils: {coconut: 350 g, olive-virgin: %1$s}
                alkali: {sodium: 80 g}
                water: 200 g
                """.formatted(olive);
    }

    private static String figure(String page, String path) {
        Matcher found = Pattern.compile(
                        "<a class=\"why[^\"]*\" href=\"[^\"]*figure=" + Pattern.quote(path) + "\">([^<]*)</a>")
                .matcher(page);
        assertThat(found.find()).as(path).isTrue();
        return found.group(1);
    }

    @Test
    void what_the_maker_typed_is_said_as_typed_and_the_change_in_plain_words() {
        String one = shop.keep(kitchen("200 g"));
        String other = shop.keep(kitchen("250 g"));

        assertThat(shop.get("/recipes/compare?a=" + one + "&b=" + other).body())
                .contains("Olive oil (virgin) 200 g → 250 g; superfat")
                .contains("the alkali stays as written, 12.2 g less NaOH per kilogram of oils")
                .contains("<td class=\"change\">50 g more</td>")
                .contains("Figures as written: 550 g of oils", "Figures as written: 600 g of oils")
                .contains("The same in both: Coconut oil 350 g; Water 200 g");
    }

    /** Superfat, lye and water come from one sheet on both pages. */
    @ParameterizedTest
    @CsvSource({"plain-castile, kitchen-notebook", "tideline, harbour-shave", "kitchen-notebook, oat-and-linden"})
    void each_side_has_the_figures_of_its_own_page(String a, String b) {
        String one = shop.keep(RecipeShop.example(a));
        String other = shop.keep(RecipeShop.example(b));
        String compared = shop.get("/recipes/compare?a=" + one + "&b=" + other).body();

        for (String id : List.of(one, other)) {
            String own = shop.get("/recipes/" + id).body();
            String side =
                    compared.replaceAll("(?s)<a class=\"why\" href=\"[^\"]*recipe=(?!" + id + ")[^>]*>[^<]*</a>", "");
            for (String figure : List.of(
                    "superfat.sheetPercent",
                    "superfat.low95Percent",
                    "superfat.worstPercent",
                    "lye.pureStrengthPercent")) {
                assertThat(figure(side, figure) + " %").as(figure).isEqualTo(figure(own, figure));
            }
        }
    }

    @Test
    void shares_for_a_kilogram_are_told_only_where_the_one_makes_more_than_the_other() {
        String plain = shop.keep(RecipeShop.PLAIN);
        String castile = shop.keep(RecipeShop.example("plain-castile"));
        String kitchen = shop.keep(kitchen("200 g"));

        assertThat(shop.get("/recipes/compare?a=" + plain + "&b=" + castile).body())
                .doesNotContain("g per kg oils", "% of oils</span>");
        assertThat(shop.get("/recipes/compare?a=" + plain + "&b=" + kitchen).body())
                .contains("g per kg oils", "% of oils</span>");
    }

    @Test
    void the_indices_of_keeping_are_told_by_their_names_and_what_they_stand_for() {
        String one = shop.keep(RecipeShop.PLAIN);
        String other = shop.keep(RecipeShop.example("plain-castile"));

        assertThat(shop.get("/recipes/compare?a=" + one + "&b=" + other).body())
                .contains("Calculated oxidisability (COX)", "Peroxidisability index (PI)")
                .contains("Allylic position equivalents (APE)", "Bis-allylic position equivalents (BAPE)")
                .containsPattern("How many places there are right beside a double bond, where air can begin\\.");
    }
}
