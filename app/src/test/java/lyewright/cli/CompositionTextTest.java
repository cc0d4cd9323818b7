package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.material.Alkali;
import lyewright.words.Figures;
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
        assertThat(text)
                .containsPattern("\nUnsaponifiable matter +[0-9.]+ +[0-9.]+\n")
                .contains("\nOf unsaponifiable matter standards give only the most; half of that is taken.\n");
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
                .contains("\nWhat differs between the portions once cured, in percent; the rest is alike.\nportion ")
                .containsPattern("\nportion +soap +salt +solids\n")
                .containsPattern("\nkelp +[0-9.]+ +[0-9.]+ +0\\.8\n")
                .contains("Green clay (French green, illite) 0.61 % in");
        String alike = Compositions.text(Compositions.of(Recipes.PLAIN + "portions: {one: 30 %, two: rest}\n"));
        assertThat(alike)
                .contains("The portions are alike, to a tenth of a percent.")
                .doesNotContain("Most in");
        assertThat(Compositions.text(Compositions.of(
                        Recipes.SALT_BAR.replace("stage: every portion\nportions", "stage: top\nportions"))))
                .contains("What differs between the portions once cured, without toppings, in percent;");
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

    /** Jojoba takes no alkali for sure, so that of 100 g of it 100 g are left beside a superfat of 6 %. */
    @Test
    void wax_that_does_not_react_is_no_oil_left_over() {
        String wax = Recipes.PLAIN.replace("castor", "jojoba");

        assertThat(Compositions.text(Compositions.of(wax)))
                .containsPattern("\nWax that does not react +100\\.0 +[0-9.]+\n")
                .containsPattern("\nOil left over +5[0-9]\\.[0-9] +[0-9.]+\n");
        assertThat(Compositions.text(Compositions.of(wax + """
                additions:
                  - {of: kaolin, amount: 20 % of portion oils, stage: portion one}
                portions: {one: 30 %, two: rest}
                """)))
                .containsPattern("\nportion .* oil left +wax left .*\n");
    }

    @Test
    void what_takes_the_place_of_water_is_said_to_be_partly_none() {
        assertThat(oneLine(Compositions.text(Compositions.of(Recipes.PLAIN.replace("32 % lye", "300 g") + """
                additions:
                  - {of: goat-milk, amount: 200 g, stage: lye, replaces: water}
                """))))
                .containsPattern(
                        "Water 27[0-9.]+ g added \\(the rule's 300\\.0 g count 2[0-9.]+ g as water that are none");
        assertThat(Compositions.text(Compositions.of(Recipes.PLAIN))).doesNotContain("the rule's");
    }

    /** Free alkali is caustic: a superfat of nearly 0 hides none of it, where a trace of anything else is left out. */
    @Test
    void free_alkali_is_told_however_little() {
        double takes = 200 * Alkali.SODIUM.molarMass() / Alkali.POTASSIUM.molarMass();
        BatchComposition trace = Compositions.of(withSodium(takes + 0.02));

        assertThat(trace.at(Moment.CURED).grams(Kind.FREE_ALKALI)).isCloseTo(0.02, within(0.0015));
        assertThat(Compositions.text(trace))
                .containsPattern("\nFree sodium hydroxide +Sodium Hydroxide +0\\.0[0-9]{2} +<0\\.1\n");
        assertThat(Compositions.text(Compositions.of(withSodium(takes - 0.02)))).doesNotContain("Free ");
    }

    /** Clay wetted out with oil takes oil from the other portion, which is then caustic though the batch is not. */
    @Test
    void free_alkali_of_one_portion_is_told_however_little() {
        double takes = 200 * Alkali.SODIUM.molarMass() / Alkali.POTASSIUM.molarMass();
        String portions = withSodium(takes - 1.4) + """
                additions:
                  - {of: kaolin, amount: 20 g per kg portion oils, stage: portion b, disperse: {in: oil, ratio: 1 to 1}}
                portions: {a: 50 %, b: rest}
                """;
        BatchComposition batch = Compositions.of(portions);
        double inA = batch.portions().get(0).cured().grams(Kind.FREE_ALKALI);

        assertThat(batch.at(Moment.CURED).grams(Kind.FREE_ALKALI)).isZero();
        assertThat(inA).isGreaterThan(0.0005);
        String text = Compositions.text(batch);
        assertThat(text)
                .containsPattern("\nportion .*free alkali.*\n")
                .containsPattern("\na .* <0\\.1 .*\n")
                .contains("Sodium hydroxide under 0.01 % in a");
    }

    private static String withSodium(double grams) {
        return "recipe: Trace\noils: {mine: 1000 g}\nalkali: {sodium: " + Figures.fixed(grams, 3)
                + " g, as: pure}\nwater: 300 g\nmaterials: {mine: {kind: oil, saponification value: 200 mg KOH/g}}\n";
    }

    @Test
    void salts_and_carbonates_have_one_heading_and_rosin_stands_with_soap() {
        String text = Compositions.text(Compositions.of(Recipes.PLAIN + """
                additions:
                  - {of: citric-acid-anhydrous, amount: 1 % of oils, stage: lye}
                  - {of: sodium-bicarbonate, amount: 1 % of oils, stage: lye}
                  - {of: rosin, amount: 5 % of oils, stage: oils}
                """));
        assertThat(text)
                .containsSubsequence(
                        "\nSoap ", "\n  Soap of rosin ", "\nSalts of acids and carbonates ", "\n  Sodium carbonate ")
                .containsPattern("\nAll of it +[0-9.]+ +100\\.0\n");
    }
}
