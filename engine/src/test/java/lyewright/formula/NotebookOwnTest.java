package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.NotebookText.Offer;
import lyewright.material.Tables;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A notebook in which the maker's own materials are named. */
class NotebookOwnTest {

    private static final MaterialNames NAMES = own("""
              vanilla-fo: {kind: fragrance}
              my pumpkin oil: {kind: oil, saponification value: 191 ± 2}
              coconut oil: {kind: oil, saponification value: 240 ± 2}
              shop milk: {kind: milk, water: 88 %}
              half lye: {kind: lye, strength: 50 % sodium}
              soft mix: {kind: oils, oils: {my pumpkin oil: 50 %, lard: 50 %}}
            """);

    private static MaterialNames own(String materials) {
        FormulaFile.Read read = FormulaFile.read("""
                recipe: T
                oils: {coconut: 100 %}
                alkali: sodium
                superfat: 5 %
                water: 33 % lye
                materials:
                """ + materials);
        assertThat(read.problems()).isEmpty();
        return MaterialNames.of(Tables.bundled())
                .with(read.formula().orElseThrow().materials());
    }

    private static Formula formula(String text) {
        NotebookText.Read read = NotebookText.read(text, NAMES);
        assertThat(read.troubles()).as(text).isEmpty();
        return read.formula().orElseThrow();
    }

    private static List<String> keys(Formula formula) {
        return formula.materials().stream().map(OwnMaterial::key).toList();
    }

    @Test
    void what_is_named_is_carried_in_the_recipe_and_nothing_else() {
        Formula read = formula("T\nmy pumpkin oil 200 g\nlard 100 g\nsuperfat 5\nwater 90 g\nVanilla FO 9 g");

        assertThat(read.oils()).extracting(OilLine::key).containsExactly("my pumpkin oil", "lard");
        assertThat(read.additions()).extracting(Addition::of).containsExactly("vanilla-fo");
        assertThat(keys(read)).containsExactly("my pumpkin oil", "vanilla-fo");
        assertThat(FormulaFile.read(FormulaFile.write(read)).formula()).contains(read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"coconut oil 100 g", "Coconut Oil 100 g", "100g COCONUT OIL"})
    void the_makers_own_goes_before_the_tables(String line) {
        Formula read = formula("T\n" + line + "\nsuperfat 5\nwater 30 g");

        assertThat(read.oils()).extracting(OilLine::key).containsExactly("coconut oil");
        assertThat(keys(read)).containsExactly("coconut oil");
        assertThat(NAMES.key("coconut oil", MaterialNames.Place.OILS).orThrow()).isEqualTo("coconut oil");
    }

    @Test
    void a_key_of_the_tables_in_full_means_itself() {
        Formula read = formula("T\ncoconut 100 g\nsuperfat 5\nwater 30 g");

        assertThat(read.oils()).extracting(OilLine::key).containsExactly("coconut");
        assertThat(read.materials()).isEmpty();
    }

    @Test
    void an_own_figure_for_a_key_of_the_tables_counts_by_every_name() {
        MaterialNames names = own("  coconut: {saponification value: 256.1}\n");
        for (String typed : List.of("coconut", "Coconut oil", "coconut oil (76 deg)")) {
            Formula read = NotebookText.read("T\n" + typed + " 100 g\nsuperfat 5\nwater 30 g", names)
                    .formula()
                    .orElseThrow();
            assertThat(keys(read)).as(typed).containsExactly("coconut");
        }
    }

    @Test
    void a_premix_carries_what_it_was_mixed_from() {
        assertThat(keys(formula("T\nsoft mix 100 g\nsuperfat 5\nwater 30 g")))
                .containsExactly("soft mix", "my pumpkin oil");
    }

    @Test
    void a_stock_lye_is_the_alkali() {
        Formula read = formula("T\nlard 100 g\nhalf lye 26 g\nwater 20 g");

        assertThat(read.alkali())
                .isEqualTo(new AlkaliChoice.Stock("half lye", Optional.of(WrittenMass.ofGrams("26")), false));
        assertThat(NotebookText.read("T\nlard 100 g\nhalf lye 26 g\nsoda 3 g\nwater 20 g", NAMES)
                        .troubles())
                .extracting(trouble -> trouble.problem().what())
                .containsExactly("alkali stands beside a stock lye");
    }

    /** 26 g of a lye half water brings 13 g: with 20 g from the jug that is 33 g, and the file says which is which. */
    @Test
    void water_beside_a_stock_lye_is_what_the_jug_gives() {
        Formula read = formula("T\nlard 100 g\nhalf lye 26 g\nwater 20 g");

        assertThat(read.water()).isEqualTo(new WaterRule.Weight(WrittenMass.ofGrams("33.00"), false));
        assertThat(FormulaFile.write(read)).contains("water: 33.00 g  # 20 g as typed, the rest is the lye's own");
        assertThat(formula("T\nlard 100 g\nhalf lye 26 g\nwater 0 g").water())
                .isEqualTo(new WaterRule.Weight(WrittenMass.ofGrams("13.00"), false));
    }

    @Test
    void a_rule_of_water_counts_the_stock_lyes_own_already() {
        assertThat(formula("T\nlard 100 g\nhalf lye 26 g\nwater 2:1").water())
                .isEqualTo(formula("T\nlard 100 g\nsoda 13 g\nwater 2:1").water());
    }

    @Test
    void a_stock_lye_without_water_asks_for_what_goes_in_beside_it() {
        assertThat(NotebookText.read("T\nlard 100 g\nhalf lye 26 g", NAMES).troubles())
                .extracting(trouble -> trouble.problem().remedy())
                .containsExactly("write what goes in beside the lye's own, as in water 155 g, or water 0 g for none");
    }

    @Test
    void an_own_milk_is_asked_about_as_any_milk() {
        assertThat(NotebookText.read("T\nlard 100 g\nsoda 13 g\nwater 20 g\nshop milk 30 g", NAMES)
                        .troubles()
                        .get(0)
                        .offers())
                .extracting(Offer::line)
                .containsExactly("shop milk 30 g in the lye as water", "shop milk 30 g at trace");
    }

    @Test
    void a_misspelt_own_name_is_offered() {
        assertThat(NotebookText.read("T\nlard 100 g\nsoda 13 g\nwater 20 g\nmy pumkin oil 30 g", NAMES)
                        .troubles()
                        .get(0)
                        .offers())
                .extracting(Offer::line)
                .containsExactly("my pumpkin oil 30 g");
    }
}
