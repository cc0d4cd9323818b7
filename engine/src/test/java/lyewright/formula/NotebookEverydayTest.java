package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NotebookText.Offer;
import lyewright.formula.NotebookText.Trouble;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A notebook as people write it: everyday words, lists, names of recipes; and what a line may have meant. */
class NotebookEverydayTest {

    private static final Tables TABLES = Tables.bundled();

    private static final String WHOLE = "Trial\nlard 350 g\nsoda 45 g\nwater 120 g\n";

    private static Formula formula(String text) {
        NotebookText.Read read = NotebookText.read(text, TABLES);
        assertThat(read.troubles()).as(text).isEmpty();
        return read.formula().orElseThrow();
    }

    private static Trouble trouble(String text) {
        List<Trouble> troubles = NotebookText.read(text, TABLES).troubles();
        assertThat(troubles).as(text).hasSize(1);
        return troubles.get(0);
    }

    // Names of materials

    @ParameterizedTest
    @CsvSource({
        "extra virgin olive oil, olive-virgin",
        "Olive oil extra virgin, olive-virgin",
        "EVOO, olive-virgin",
        "coconut oil (76 deg), coconut",
        "coconut oil 76, coconut",
        "coconut 76°, coconut",
        "76 degree coconut oil, coconut",
        "canola oil, rapeseed-low-erucic",
        "soybean oil, soya"
    })
    void everyday_names_of_oils_are_known(String typed, String key) {
        for (String line : List.of(typed + " 200 g", "200g " + typed)) {
            assertThat(formula(WHOLE + line).oils().get(1)).as(line).isEqualTo(oil(key, "200"));
        }
    }

    private static OilLine oil(String key, String grams) {
        return new OilLine(key, new OilLine.Weight(WrittenMass.ofGrams(grams)));
    }

    @ParameterizedTest
    @CsvSource({
        "lemongrass essential oil, lemongrass-oil",
        "Lemongrass EO, lemongrass-oil",
        "tea tree e.o., tea-tree-oil",
        "essential oil of peppermint, peppermint-oil",
        "rosemary eo, rosemary-oil",
        "lavender essential oil, lavender-oil"
    })
    void an_essential_oil_is_called_so(String typed, String key) {
        assertThat(formula(WHOLE + typed + " 15 g").additions())
                .as(typed)
                .extracting(Addition::of)
                .containsExactly(key);
    }

    @Test
    void an_essential_oil_is_never_taken_for_another_material() {
        assertThat(trouble(WHOLE + "orange EO 15 g").offers())
                .extracting(Offer::line)
                .containsExactly("sweet orange 15 g", "bitter orange 15 g");
        assertThat(trouble(WHOLE + "coconut EO 15 g").problem().what()).isEqualTo("'coconut EO' is not known");
    }

    // Amounts

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "castor 200gms | 200 g",
                "castor 200 grams | 200 g",
                "castor 5,1 oz | 5.1 oz",
                "castor 0,500 kg | 0.500 kg",
                "castor 12,2500 g | 12.2500 g",
                "castor 1,250.5 g | 1250.5 g"
            })
    void amounts_are_read_where_they_can_mean_one_thing_only(String line, String mass) {
        assertThat(formula(WHOLE + line).oils().get(1).amount())
                .isEqualTo(new OilLine.Weight(WrittenMass.parse(mass).orThrow()));
    }

    @Test
    void a_thousand_is_never_read_as_one() {
        assertThat(trouble(WHOLE + "castor 1,000 g").offers())
                .containsExactly(new Offer("1000 g", "castor 1000 g"), new Offer("1 g", "castor 1 g"));
        assertThat(trouble("T\nall in grams\nlard 1,000\nsuperfat 5\nwater 300").offers())
                .containsExactly(new Offer("1000 g", "lard 1000"), new Offer("1 g", "lard 1"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"superfat 5", "Superfat: 5", "5 superfat", "SF 5 %", "super fat 5,0 %", "lye discount 5%"})
    void a_superfat_is_percent_whether_it_says_so_or_not(String line) {
        Formula read = formula("T\nlard 100 g\nwater 30 g\n" + line);

        assertThat(read.superfat().orElseThrow().fraction()).isEqualTo(0.05);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "water 2:1 | 2 to 1",
                "water 2 to 1 | 2 to 1",
                "water: 2 : 1 | 2 to 1",
                "water to lye 2:1 | 2 to 1",
                "water:lye 1,8:1 | 1.8 to 1",
                "2:1 water to lye | 2 to 1",
                "lye to water 1:2 | 2 to 1",
                "water 33,5 % lye | 33.5 % lye"
            })
    void water_may_be_so_many_times_the_alkali(String line, String rule) {
        assertThat(WaterText.print(
                        formula("T\nlard 100 g\nsuperfat 5 %\n" + line).water()))
                .isEqualTo(rule);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "castor 20 gr | castor 20 g",
                "castor 12 oz (340 g) | castor 12 oz ; castor (340 g)",
                "lavender 3 % | lavender 3 % of oils ; lavender 3 % of batch",
                "castor 25 | castor 25 g ; castor 25 oz",
                "chamomile tea 50 g in the lye | water (chamomile tea) 50 g in the lye",
                "rose water 50 g | water (rose water) 50 g",
                "castro 50 g at trace | castor oil 50 g at trace",
                "olive 350 g | olive oil (virgin) 350 g ; olive oil (refined) 350 g ; olive pomace oil 350 g",
                "1. olive  oil 350 g | 1. olive oil (virgin) 350 g ; 1. olive oil (refined) 350 g ; 1. olive pomace oil 350 g",
                "goat milk 200 g | goat milk 200 g in the lye as water ; goat milk 200 g at trace",
                "stearic acid 20 g | stearic-acid-50 20 g ; stearic-acid-90 20 g"
            })
    void what_a_line_may_have_meant_is_offered_as_whole_lines(String line, String offered) {
        assertThat(trouble(WHOLE + line).offers()).extracting(Offer::line).containsExactly(offered.split(" ; "));
    }

    @Test
    void whatever_is_offered_for_a_name_is_read_without_a_question() {
        for (String typed :
                List.of("olive", "shea", "cocoa", "cedarwood", "clay", "milk", "oxide", "salt", "orange EO")) {
            List<Offer> offers = trouble(WHOLE + typed + " 20 g at trace").offers();
            assertThat(offers).as(typed).hasSizeGreaterThan(1);
            for (Offer offer : offers) {
                String line = offer.line();
                List<Trouble> troubles = NotebookText.read(WHOLE + line, TABLES).troubles();
                assertThat(troubles)
                        .as(line)
                        .allMatch(trouble -> trouble.problem().what().contains("belongs to the oils"));
            }
        }
    }

    @Test
    void what_is_steeped_in_water_is_water() {
        Formula alone = formula("T\nlard 100 g\nsuperfat 5 %\nwater (chamomile tea) 30 g");
        assertThat(WaterText.print(alone.water())).isEqualTo("30 g");
        assertThat(FormulaFile.write(alone)).contains("water: 30 g  # typed: water (chamomile tea) 30 g");

        Formula both = formula("T\nlard 100 g\nsuperfat 5 %\nwater 20 g\nwater (chamomile tea) 10 g");
        assertThat(WaterText.print(both.water())).isEqualTo("30 g");
        assertThat(trouble("T\nlard 100 g\nsuperfat 5 %\nwater 20 g\nwater 10 g")
                        .problem()
                        .what())
                .startsWith("water stands on line 4 already");
    }

    // Milk

    @Test
    void milk_in_the_lye_comes_beside_water_that_is_weighed() {
        Formula read = formula(WHOLE + "goat's milk 50 g in the lye as water");

        assertThat(read.additions())
                .containsExactly(new Addition(
                        "goat-milk",
                        new Amount.Weight(WrittenMass.ofGrams("50"), false),
                        Stage.of(Stage.Kind.LYE),
                        Optional.empty(),
                        false));
        assertThat(WaterText.print(read.water())).isEqualTo("120 g");
    }

    @Test
    void milk_in_the_lye_takes_the_place_of_water_that_is_a_rule_or_not_said() {
        Formula rule = formula("T\nlard 500 g\nsuperfat 5\nwater 2:1\ngoat milk 50 g in the lye as water");
        assertThat(rule.additions().get(0).replacesWater()).isTrue();
        assertThat(WaterText.print(rule.water())).isEqualTo("2 to 1");

        Formula all = formula("T\nlard 500 g\nsuperfat 5\ngoat milk 150 g in the lye as water");
        assertThat(all.additions().get(0).replacesWater()).isTrue();
        assertThat(WaterText.print(all.water())).isEqualTo("150 g");

        Formula poured = formula("T\nlard 500 g\nsuperfat 5\ngoat milk 200 ml in the lye as water");
        double density = Tables.bundled().additive("goat-milk").orElseThrow().gramsPerMillilitre();
        assertThat(((WaterRule.Weight) poured.water()).mass().grams()).isBetween(200 * density, 200 * density + 0.1);
    }

    // Lists and names

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1. Lard 450 g\n2. castor 50 g\n3. soda 60 g\n4. water 150 g",
                "1) 450 g lard\n2) 50 g castor\n3) 60 g soda\n4) 150 g water",
                "- lard 450 g\n- castor 50 g\n- soda 60 g\n- water 150 g",
                "* lard 450 g\n* castor 50 g\n* soda 60 g\n* water 150 g",
                "\u2022 lard 450 g\n\u2022 50 g castor\n\u2022 soda 60 g\n\u2022 water 150 g"
            })
    void a_list_is_read_without_what_it_has_in_front(String list) {
        Formula read = formula(list + "\nrecipe: T");

        assertThat(read.oils()).containsExactly(oil("lard", "450"), oil("castor", "50"));
        assertThat(WaterText.print(read.water())).isEqualTo("150 g");
    }

    @Test
    void a_line_that_begins_with_a_number_is_no_list() {
        assertThat(formula(WHOLE + "2.5 oz castor").oils().get(1).amount())
                .isEqualTo(new OilLine.Weight(WrittenMass.parse("2.5 oz").orThrow()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Goats milk",
                "Castor",
                "Lard",
                "KOH",
                "SF99",
                "Milk in2",
                "Name w 2 oils",
                "Bar 2",
                "Castile 2024",
                "Winter 24/25",
                "coconut oil",
                "Water"
            })
    void a_first_line_without_an_amount_is_the_recipes_name(String name) {
        NotebookText.Read read = NotebookText.read(name + "\nlard 350 g\nsoda 45 g\nwater 120 g", TABLES);

        assertThat(read.troubles()).as(name).isEmpty();
        assertThat(read.formula().orElseThrow().recipe()).isEqualTo(name);
        assertThat(read.nameLine()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lard 350", "olive oil 350", "oilve 350", "soda 45"})
    void a_first_line_whose_unit_was_forgotten_is_no_name_unless_that_is_said(String line) {
        Trouble trouble = NotebookText.read(line + "\ncastor 350 g\nwater 120 g", TABLES).troubles().stream()
                .filter(t -> t.problem().what().endsWith("has no unit"))
                .findFirst()
                .orElseThrow();
        assertThat(trouble.offers()).extracting(Offer::line).contains(line + " g", "recipe: " + line);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "olive oil (virgin) 5oo g",
                "half kilo of olive",
                "olive (virgin) 1e9 g",
                "a pound of lard",
                "coconut a quarter pound"
            })
    void an_oil_on_the_first_line_is_never_lost_for_a_name(String line) {
        NotebookText.Read read = NotebookText.read(line + "\ncastor 350 g\nwater 120 g\nsuperfat 5 %", TABLES);

        assertThat(read.nameLine()).isZero();
        assertThat(read.troubles())
                .filteredOn(trouble -> trouble.place().line() == 1)
                .flatExtracting(Trouble::offers)
                .extracting(Offer::line)
                .contains("recipe: " + line);
    }

    @Test
    void an_unfinished_line_alone_is_no_name_yet() {
        assertThat(NotebookText.read("Castor", TABLES).nameLine()).isZero();
        assertThat(NotebookText.read("# from aunt Ida\ncastor oil\n\n", TABLES).nameLine())
                .isZero();
    }

    @Test
    void potash_on_the_first_line_is_the_alkali_where_no_other_line_says_which() {
        Formula read = formula("potash\nrecipe: T\nlard 100 g\nwater 30 g\nsuperfat 3 %");
        assertThat(read.alkali()).isEqualTo(new AlkaliChoice.Single(Alkali.POTASSIUM));
        assertThat(NotebookText.read("KOH\nlard 100 g\nwater 30 g\nsuperfat 3 %", TABLES)
                        .nameLine())
                .isZero();
        assertThat(read.superfat()).contains(Share.ofPercent("3"));
    }

    @Test
    void spoons_that_somebody_weighed_are_grams_and_the_words_are_a_remark() {
        MaterialNames names =
                MaterialNames.of(Tables.bundled()).withSpoons(Map.of("kaolin", Map.of("teaspoon", 2100L)));
        for (String said : List.of("kaolin 2 teaspoons", "kaolin 2 tsp", "2 level tsp kaolin", "kaolin 2 t")) {
            NotebookText.Read read =
                    NotebookText.read("Trial\ncoconut 350 g\nsoda 60 g\nwater 120 g\n" + said + "\n", names);
            assertThat(read.troubles()).as(said).isEmpty();
            Formula formula = read.formula().orElseThrow();
            assertThat(formula.additions().get(0).of()).isEqualTo("kaolin");
            assertThat(FormulaFile.write(formula))
                    .as(said)
                    .contains("4.2 g")
                    .contains("each of 2.1 g by your own spoon");
        }
        for (String unsure : List.of("kaolin 2 tablespoons", "kaolin 2 heaped tsp", "zinc oxide 2 tsp")) {
            assertThat(NotebookText.read("Trial\ncoconut 350 g\nsoda 60 g\nwater 120 g\n" + unsure + "\n", names)
                            .troubles())
                    .as(unsure)
                    .isNotEmpty();
        }
    }
}
