package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class CompositionTextTest {

    @Test
    void it_fits_the_page_and_has_its_lines_in_order() {
        for (Path example : Recipes.examples()) {
            String text = Compositions.text(Compositions.of(example));

            assertThat(text.lines())
                    .as(example.toString())
                    .allMatch(line -> Widths.of(line) <= Page.WIDTH)
                    .noneMatch(line -> line.endsWith(" ") || line.contains("\u00a0"))
                    .hasSizeLessThan(40);
            assertThat(text)
                    .startsWith("WHAT THE BAR BECOMES\n")
                    .containsSubsequence("Once cured", "All of it", "\nWater", "\nAt the cut", "\nTotal fatty matter");
        }
    }

    @Test
    void the_soap_is_told_by_its_oils_with_both_alkalis_on_one_line() {
        String text = Compositions.text(Compositions.of(
                Recipes.PLAIN.replace("alkali: sodium", "alkali: {sodium: 40 %, potassium: 60 %, by: moles}")));

        assertThat(text)
                .containsPattern("\n  Soap of coconut oil +Potassium Cocoate, Sodium Cocoate +[0-9.]+ +[0-9.]+\n");
        assertThat(text).containsPattern("\nOil left over +[0-9.]+ +[0-9.]+\n");
        assertThat(text).contains("(half of the standards' most)");
    }

    @Test
    void published_grades_stand_beside_it_with_how_they_were_read() {
        String text = oneLine(Compositions.text(Compositions.of(Recipes.SALT_BAR)));

        assertThat(text)
                .contains(
                        "toilet soap 76, 70 or 60 % (IS 2888:2004, partly from memory), bathing bar 40 % (IS 13498:1997).")
                .contains("as common salt. Published grades, at most: toilet soap 1.5 % (IS 2888:2004, from memory).")
                .doesNotContainIgnoringCase("fails")
                .doesNotContainIgnoringCase("passes");
        assertThat(Compositions.text(Compositions.of(Recipes.PLAIN))).doesNotContain("Chloride");
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void when_cut_it_says_what_is_not_known_and_that_it_burns() {
        assertThat(oneLine(Compositions.text(Compositions.of(Recipes.PLAIN))))
                .contains("60 to 100 % of what will react has done so (common practice; no measurement was found)")
                .contains("still caustic");
    }

    @Test
    void water_is_told_in_one_line_by_where_it_comes_from() {
        assertThat(oneLine(Compositions.text(Compositions.of(Recipes.PLAIN + """
            additions:
              - {of: vinegar-5, amount: 10 % of oils, stage: lye}
            """))))
                .containsPattern(
                        "g added, 95\\.0 g brought by materials, 1\\.5 g formed as acids are neutralised; [0-9.]+ g of"
                                + " it dry off until the bar is cured");
        assertThat(Compositions.text(Compositions.of(Recipes.PLAIN + "cured water: 50 %\n")))
                .contains("none of it has to dry off");
    }

    @Test
    void portions_tell_only_what_differs() {
        String text = Compositions.text(Compositions.of(Recipes.SALT_BAR));
        assertThat(text)
                .containsPattern("\nPortions once cured, % +soap +salt +solids\n")
                .containsPattern("\nkelp +[0-9.]+ +[0-9.]+ +0\\.8\n")
                .contains("Green clay (French green, illite) 0.61 % in");
        String alike = Compositions.text(Compositions.of(Recipes.PLAIN + "portions: {one: 30 %, two: rest}\n"));
        assertThat(alike)
                .contains("The portions are alike, to a tenth of a percent.")
                .doesNotContain("Most in");
        assertThat(Compositions.text(Compositions.of(
                        Recipes.SALT_BAR.replace("stage: every portion\nportions", "stage: top\nportions"))))
                .contains("Portions, without toppings, %");
    }

    @Test
    void what_is_left_over_is_called_so() {
        String lye = Compositions.text(Compositions.of(Recipes.NOTEBOOK.replace("138 g", "160 g")));
        assertThat(lye).containsPattern("\nFree sodium hydroxide +Sodium Hydroxide +[0-9.]+ +[0-9.]+\n");
        String acid = Compositions.text(Compositions.of(Recipes.PLAIN + """
            additions:
              - {of: citric-acid-anhydrous, amount: 10 g, stage: top}
            """));
        assertThat(acid).containsPattern("\nCitric acid, left over +Citric Acid +10\\.0 +0\\.8\n");
    }

    @Test
    void traces_are_not_printed_as_nothing() {
        String text = Compositions.text(Compositions.of(Recipes.PLAIN + """
            additions:
              - {of: goat-milk, amount: 10 % of oils, stage: lye, replaces: water}
            """));
        assertThat(text).containsPattern("\nSodium chloride +Sodium Chloride +0\\.1 +<0\\.1\n");
    }

    @Test
    void long_names_in_wide_letters_fit_too() {
        String text = Compositions.text(Compositions.of(
                Recipes.SALT_BAR.replace("kelp", "昆布".repeat(20)).replace("plain", "白".repeat(30))));
        assertThat(text.lines()).allMatch(line -> Widths.of(line) <= Page.WIDTH);
    }
}
