package lyewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.formula.Purities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FattyAcidsTextTest {

    @TempDir
    Path folder;

    private String text(String recipe) {
        return text(Recipes.write(folder, "some.yaml", recipe));
    }

    private static String text(Path file) {
        FormulaSource source = FormulaSource.read(file.toString(), Path.of("")).orThrow();
        Page page = new Page();
        FattyAcidsText.write(OilPhaseAcids.of(source.resolve(Purities.ASSUMED).orThrow()), page);
        return page.toString();
    }

    private static String oils(String... lines) {
        return "recipe: Some\noils: {" + String.join(", ", lines)
                + "}\nalkali: sodium\nsuperfat: 5 %\nwater: 33 % lye\n";
    }

    @Test
    void every_example_fits_the_page_and_its_bars_stand_in_line() {
        assertThat(Recipes.examples()).hasSizeGreaterThanOrEqualTo(6);
        for (Path example : Recipes.examples()) {
            List<String> lines = text(example).lines().toList();
            assertThat(lines).contains("FATTY ACIDS").allMatch(line -> Widths.of(line) <= 100);
            assertThat(lines).noneMatch(line -> line.endsWith(" "));
            List<String> bars = bars(lines);
            assertThat(bars).as(example.toString()).hasSizeGreaterThan(3);
            assertThat(bars.stream().map(line -> line.indexOf(" %")).distinct()).hasSize(1);
        }
    }

    private static List<String> bars(List<String> lines) {
        return lines.stream()
                .filter(line -> line.matches(" {2}\\S+ C[0-9]+:\\S+ .*> .* [0-9.]+ %  [0-9.]+( to [0-9.]+)?"))
                .toList();
    }

    /** Olive oil's oleic acid: 55 to 83 as published, middles adding up to 101.2 (docs/sources.md). */
    @Test
    void an_acid_has_its_bar_its_share_and_its_range() {
        List<String> lines = text(oils("olive-virgin: 100 %")).lines().toList();

        assertThat(bars(lines)).anyMatch(line -> line.matches(" {2}oleic C18:1 +=+<=+-+> +68\\.2 %  55\\.0 to 83\\.0"));
        assertThat(lines).anyMatch(line -> line.matches(" {2}under 0\\.5 % each .*C14:0 0\\.02.*"));
    }

    @Test
    void small_shares_stand_in_one_line_and_nothing_is_told_twice() {
        String text = text(oils("olive-virgin: 100 %"));

        assertThat(text.split("C16:0 ", -1)).hasSize(2);
        assertThat(text.split("C22:0 ", -1)).hasSize(2);
    }

    @Test
    void what_is_not_known_is_named_with_its_share() {
        String text = text(oils("coconut: 90 %", "beeswax: 10 %"));

        assertThat(text).contains("not known         10.0 % of the oils, which count in none of this: Beeswax (white)");
        assertThat(text(oils("coconut: 90 %", "castor: 10 %"))).doesNotContain("not known");
    }

    @Test
    void without_any_data_the_section_says_so_and_no_more() {
        String text = text(oils("mine: 100 %") + "materials: {mine: {kind: oil, saponification value: 190}}\n");

        assertThat(text).contains("Not known of any of the oils: mine 100.0 %.").doesNotContain("Keeping", "NaN");
    }

    @Test
    void a_wax_is_said_to_stand_in_no_glycerides_value() {
        assertThat(text(oils("coconut: 90 %", "jojoba: 10 %")))
                .containsPattern("Left\\s+out\\s+of\\s+it.*\\s+.*wax\\s+is\\s+no\\s+glyceride:\\s+Jojoba");
    }

    /** 254.4 by exact stoichiometry and 247.2 by AOCS Cd 3a-94 (docs/sources.md); palm oil's differ by 0.6. */
    @Test
    void why_two_ways_part_is_said_where_they_do() {
        assertThat(text(oils("coconut: 100 %")))
                .contains("254.4 mg KOH/g from these acids, 247.2 by AOCS Cd 3a-94", "They part where");
        assertThat(text(oils("palm: 100 %"))).contains("AOCS Cd 3a-94").doesNotContain("They part where");
    }

    @Test
    void figures_of_keeping_stand_apart_from_alkali_and_carry_their_sources() {
        String text = text(oils("olive-virgin: 100 %"));

        assertThat(text)
                .contains("iodine value 83.0 g/100 g by AOCS Cd 1c-85")
                .contains("oxidisability 14.5, COX 2.04, PI")
                .contains("formulas from memory", "[PMC4384276, Table 2]");
        assertThat(text).doesNotContainIgnoringCase("score", "grade", "hardness", "rating");
    }

    @Test
    void where_much_is_not_known_that_leads_and_a_value_says_of_what_it_is() {
        String text = text(oils("coconut: 60 %", "beeswax: 30 %", "jojoba: 10 %"));

        assertThat(text)
                .containsSubsequence(
                        "\n  not known         30.0 % of the oils", " lauric C12:0 ", "\nSaponification value")
                .contains("mg KOH/g from the acids of 60.0 % of the oils, ")
                .doesNotContain("from these acids", "That is", "That lies");
    }

    @Test
    void fat_that_additions_bring_is_named_with_its_share() {
        String milk = oils("coconut: 100 %") + "additions: [{of: coconut-milk, amount: 30 % of oils, stage: trace}]\n";

        assertThat(text(milk))
                .contains(
                        "\n  from additions    soap too, but in neither, in percent of the oils' mass: fat of coconut")
                .contains("6.4 %");
    }

    @Test
    void keeping_takes_no_more_than_six_lines() {
        List<String> recipes = new ArrayList<>();
        for (String oil : List.of("coconut", "castor", "hempseed", "rapeseed-low-erucic", "sunflower")) {
            recipes.add(text(oils(oil + ": 100 %")));
            recipes.add(text(oils(oil + ": 60 %", "jojoba: 25 %", "evening-primrose: 15 %")));
            recipes.add(text(oils(oil + ": 40 %", "beeswax: 30 %", "lanolin: 30 %")));
        }
        Recipes.examples().forEach(example -> recipes.add(text(example)));
        for (String text : recipes) {
            List<String> lines = text.lines().toList();
            assertThat(lines.size() - lines.indexOf(keeping(lines))).as(text).isBetween(2, 6);
        }
    }

    private static String keeping(List<String> lines) {
        return lines.stream()
                .filter(line -> line.startsWith("Keeping "))
                .findFirst()
                .orElseThrow();
    }
}
