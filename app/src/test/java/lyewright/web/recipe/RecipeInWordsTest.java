package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a recipe's page says is in it, and what it takes for granted. */
class RecipeInWordsTest {

    private static final String WETTED = """
            recipe: Wetted
            version: 1
            use: own
            oils: {coconut: 30 %, olive-virgin: rest}
            alkali: sodium
            superfat: 6 %
            water: 33 % lye
            process: {oils: 38 C, lye: 100 F, oven: 55 C then off}
            additions:
              - {of: activated-charcoal, amount: 10 g per kg oils, stage: trace, disperse: {in: oil, ratio: 3 to 1}}
              - {of: kaolin, amount: 12 g per kg oils, stage: trace, disperse: {in: water, ratio: 2 to 1}}
            """;

    private static final String MASSES = """
            recipe: Masses
            version: 1
            use: own
            oils: {coconut: 150 g, olive-virgin: 450 g}
            alkali: sodium
            superfat: 6 %
            water: 33 % lye
            """;

    @TempDir
    static Path home;

    private static RecipeShop shop;

    @BeforeAll
    static void open() {
        shop = new RecipeShop(home);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    /** What can be read, without marks. */
    private static String text(String formula) {
        return shop.get("/recipes/" + shop.keep(formula))
                .body()
                .replaceAll("(?s).*<h2 id=\"in\">", "")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    @Test
    void an_oil_that_wets_something_out_is_shown_whole_and_in_its_parts() {
        assertThat(text(WETTED))
                .contains("the rest 700.0 g in the pot 670 g wets out the activated charcoal 30.0 g")
                .contains("30 % 300 g");
    }

    @Test
    void water_that_wets_something_out_is_part_of_the_water() {
        assertThat(text(WETTED))
                .containsPattern("33 % lye 286\\.0 g in the lye jug 262 g wets out the white clay [^0-9]* 24\\.0 g");
    }

    @Test
    void an_amount_that_is_a_mass_is_said_once() {
        assertThat(text(MASSES)).contains("450 g").doesNotContain("450 g 450 g").doesNotContain("150 g 150 g");
    }

    @Test
    void temperatures_are_read_with_their_sign() {
        assertThat(text(WETTED))
                .contains("oils at 38 °C")
                .contains("lye at 100 °F")
                .contains("oven 55 °C, then off");
    }

    @Test
    void the_page_says_which_balances_and_purity_it_takes_and_that_a_printed_sheet_stays() {
        assertThat(text(MASSES))
                .contains("Balances: kitchen, 5 kg in steps of 1 g")
                .contains("Sodium hydroxide: 98 % pure (assumed).")
                .contains("as they are now; a sheet that was printed stays as it was printed");
    }
}
