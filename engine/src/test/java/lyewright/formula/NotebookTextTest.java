package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Oil;
import lyewright.material.Tables;
import lyewright.measure.MassUnit;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotebookTextTest {

    private static final Tables TABLES = Tables.bundled();

    /** Four lines to which a test adds its own. */
    private static final String WHOLE = "Trial\ncoconut 350 g\nsoda 60 g\nwater 120 g\n";

    private static Formula formula(String text) {
        NotebookText.Read read = NotebookText.read(text, TABLES);
        assertThat(read.troubles()).as(text).isEmpty();
        return read.formula().orElseThrow();
    }

    private static Formula with(String line) {
        return formula(WHOLE + line);
    }

    /** The refusals as they are shown: line:column: what; remedy. */
    private static List<String> troubles(String text) {
        NotebookText.Read read = NotebookText.read(text, TABLES);
        assertThat(read.formula().isEmpty()).as(text).isEqualTo(!read.troubles().isEmpty());
        return read.troubles().stream()
                .map(t -> t.place().line() + ":" + t.place().column() + ": "
                        + t.problem().sentence())
                .toList();
    }

    private static String trouble(String line) {
        List<String> troubles = troubles(WHOLE + line);
        assertThat(troubles).as(line).hasSize(1);
        return troubles.get(0);
    }

    private static OilLine oil(String key, String grams) {
        return new OilLine(key, new OilLine.Weight(WrittenMass.ofGrams(grams)));
    }

    @Test
    void a_page_of_a_notebook_becomes_a_formula_file() {
        Formula read = formula("""
                Tideline trial

                coconut oil 350 g
                350g olive pomace
                castor 25 g
                soda 117 g
                water 255 g
                lavender 15 g at trace
                """);

        assertThat(FormulaFile.write(read)).isEqualTo("""
                recipe: Tideline trial
                version: 1
                use: own
                oils:
                  coconut: 350 g
                  olive-pomace: 350 g
                  castor: 25 g
                alkali: {sodium: 117 g, as: weighed}
                water: 255 g
                additions:
                  - of: lavender-oil
                    amount: 15 g
                    stage: trace
                """);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "castor 25 g | castor | 25 g",
                "Castor Oil: 25g | castor | 25 g",
                "- castor oils = 25 grams | castor | 25 g",
                "25 g castor | castor | 25 g",
                "25 g of castor | castor | 25 g",
                "1.5 oz tallow | tallow | 1.5 oz",
                "tallow .5 LB | tallow | .5 lb",
                "2 pounds lard | lard | 2 lb",
                "lard 0.2 kg | lard | 0.2 kg",
                "beeswax 900 mg | beeswax | 900 mg",
                "sweet almond 20 g | almond-sweet | 20 g",
                "olive (pomace) 20 g | olive-pomace | 20 g",
                "mango butter 20 g | mango-kernel-butter | 20 g",
                "peanut oil 20 g | groundnut | 20 g",
                "wool fat 20 g | lanolin | 20 g",
                "illipe 20 g | illipe-butter | 20 g",
                "stearic acid 50 20 g | stearic-acid-50 | 20 g",
                "castor 25 g in the oils | castor | 25 g",
                "castor\u00a025\u00a0g | castor | 25 g",
                "castor 3 1/2 oz | castor | 3.5 oz",
                "castor 3\u00bd oz | castor | 3.5 oz",
                "castor \u215e oz | castor | 0.875 oz",
                "castor 5/16 lb | castor | 0.3125 lb",
                "castor 1 \u2153 oz | castor | 1.33333 oz",
                "castor 2-1/2 oz | castor | 2.5 oz",
                "castor 1 lb 4.5 oz | castor | 20.5 oz",
                "castor 1 lb, 4 1/4 oz | castor | 20.25 oz",
                "1 kg 50 g castor | castor | 1050 g",
                "Ricinus Communis Seed Oil 25 g | castor | 25 g"
            })
    void an_oil_is_known_however_it_is_typed(String line, String key, String mass) {
        OilLine read = with(line).oils().get(1);

        assertThat(read.key()).isEqualTo(key);
        assertThat(read.amount())
                .isEqualTo(new OilLine.Weight(WrittenMass.parse(mass).orThrow()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lavender 15 g at trace | lavender-oil | 15 g | trace",
                "lavender oil 15 ml | lavender-oil | 15 ml | trace",
                "12 ml rosemary, at trace. | rosemary-oil | 12 ml | trace",
                "sugar 10 g (in the lye) | sugar | 10 g | lye",
                "annatto 2 g in oils | annatto | 2 g | oils",
                "poppy seeds 3 g ON TOP | poppy-seed | 3 g | top",
                "vinegar 5 % 100 g in lye | vinegar-5 | 100 g | lye",
                "brine-25 100 g in lye | brine-25 | 100 g | lye",
                "baking soda 1 g | sodium-bicarbonate | 1 g | trace"
            })
    void an_addition_goes_in_at_trace_unless_its_line_says_when(String line, String key, String amount, String stage) {
        Addition read = with(line).additions().get(0);

        assertThat(read.of()).isEqualTo(key);
        assertThat(read.amount().toString()).isEqualTo(amount);
        assertThat(read.stage().toString()).isEqualTo(stage);
    }

    @ParameterizedTest
    @ValueSource(strings = {"soda", "Caustic soda", "lye", "sodium hydroxide", "NaOH", "Sodium hydroxide (NaOH)"})
    void sodium_hydroxide_goes_by_its_words_of_the_trade(String word) {
        AlkaliChoice read =
                formula("T\ncoconut 100 g\n" + word + " 17 g\nwater 30 g").alkali();

        assertThat(read)
                .isEqualTo(new AlkaliChoice.Given(
                        Optional.of(WrittenMass.ofGrams("17")),
                        Optional.empty(),
                        Optional.of(AlkaliChoice.As.WEIGHED),
                        false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"potash", "caustic potash", "Potassium hydroxide", "koh", "potash (KOH)"})
    void both_alkalis_may_be_given(String word) {
        Formula read = formula("T\ncoconut 100 g\nsoda 10 g\n" + word + " 9 g\ndistilled water 30 g");

        assertThat(read.alkali())
                .isEqualTo(new AlkaliChoice.Given(
                        Optional.of(WrittenMass.ofGrams("10")),
                        Optional.of(WrittenMass.ofGrams("9")),
                        Optional.of(AlkaliChoice.As.WEIGHED),
                        false));
        assertThat(read.water()).isEqualTo(new WaterRule.Weight(WrittenMass.ofGrams("30"), false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"superfat 5 %", "Superfat: 5%", "5 % superfat"})
    void a_superfat_stands_in_place_of_soda(String line) {
        Formula read = formula("T\ncoconut 100 g\nwater 30 g\n" + line);

        assertThat(read.superfat()).contains(Share.ofPercent("5"));
        assertThat(read.alkali()).isEqualTo(new AlkaliChoice.Single(Alkali.SODIUM));
    }

    @Test
    void potash_may_be_named_beside_a_superfat() {
        Formula read = formula("T\ncoconut 100 g\npotash\nwater 30 g\nsuperfat 3 %");

        assertThat(read.alkali()).isEqualTo(new AlkaliChoice.Single(Alkali.POTASSIUM));
        assertThat(formula("potassium hydroxide\nT: 2\ncoconut 100 g".replace("T: 2", "recipe: T")
                                + "\nwater 30 g\nsuperfat 3 %")
                        .alkali())
                .isEqualTo(new AlkaliChoice.Single(Alkali.POTASSIUM));
        assertThat(troubles("T\ncoconut 100 g\npotash\nsoda\nwater 30 g\nsuperfat 3 %"))
                .containsExactly(
                        "3:1: 'potash' has no amount; write how much of each; shares of the two go into a formula file",
                        "4:1: 'soda' has no amount; write how much of each; shares of the two go into a formula file");
        assertThat(troubles("T\ncoconut 100 g\npotash\nwater 30 g"))
                .containsExactly(
                        "3:1: 'potash' has no amount; write it as soda 71 g, or give a superfat instead, as in superfat 5 %");
    }

    @Test
    void oils_may_be_shares_of_the_oils() {
        Formula read = formula("""
                T
                coconut 38 %
                olive pomace 55%
                castor 7 percent
                superfat 5 %
                water 33 % lye
                lavender 3 % of oils
                kaolin 10 g per kg oils
                """);

        assertThat(FormulaFile.write(read)).contains("""
                oils:
                  coconut: 38 %
                  olive-pomace: 55 %
                  castor: 7 %
                alkali: sodium
                superfat: 5 %
                water: 33 % lye
                additions:
                  - of: lavender-oil
                    amount: 3 % of oils
                    stage: trace
                  - of: kaolin
                    amount: 10 g per kg oils
                    stage: trace
                """);
        assertThat(troubles("T\ncoconut 38 %\ncastor 7 %\nsuperfat 5 %\nwater 33 %"))
                .containsExactly(
                        "2:9: the oils add up to 45 %; change the shares until they add up to 100 %",
                        "5:7: '33 %' does not say of what; write water 33 % of oils, or water 33 % lye for the lye's strength");
        assertThat(troubles("T\ncoconut 100 %\nlye 33 %\nwater 30 %"))
                .containsExactly(
                        "3:5: '33 %' of lye may be the alkali or its solution; write sodium hydroxide 33 %, or water 33 % lye");
    }

    @ParameterizedTest
    @CsvSource({"water 2 to 1, 2 to 1", "water: 33 % lye, 33 % lye", "Water 26 % of oils, 26 % of oils"})
    void water_may_be_a_rule(String line, String rule) {
        assertThat(WaterText.print(
                        formula("T\ncoconut 100 g\nsuperfat 5 %\n" + line).water()))
                .isEqualTo(rule);
    }

    @ParameterizedTest
    @CsvSource({"water 155 ml, 155 g", "water 1.2 litres, 1.2 kg", "155ml distilled water, 155 g"})
    void water_may_be_measured_by_volume(String line, String mass) {
        Formula read = formula("T\ncoconut 100 g\nsuperfat 5 %\n" + line);

        assertThat(WaterText.print(read.water())).isEqualTo(mass);
        assertThat(read.comments().beside().get("water")).startsWith(" typed: ").containsAnyOf("ml", "l");
    }

    @Test
    void an_assessors_table_in_percent_by_weight_is_so_many_grams() {
        Formula read = formula("""
                Tideline
                all in % by weight
                Aqua\t22.9
                Cocos Nucifera Oil\t35.0
                olive pomace\t26.5
                castor\t4.1
                Sodium Hydroxide\t10.2
                lavender\t1.3
                """);

        assertThat(FormulaFile.write(read))
                .contains("""
                # typed in percent; read as so many grams
                oils:
                  coconut: 35.0 g  # typed: Cocos Nucifera Oil
                """, "alkali: {sodium: 10.2 g, as: weighed}\nwater: 22.9 g\n", "    amount: 1.3 g\n");
        assertThat(formula("T\ncoconut 100 %\nsodium hydroxide 17 %\nwater 35 %")
                        .water())
                .isEqualTo(new WaterRule.Weight(WrittenMass.ofGrams("35"), false));
    }

    @Test
    void a_table_must_be_whole() {
        assertThat(troubles("T\ncoconut 60 %\nsodium hydroxide 9.5 %\nwater 20 %"))
                .containsExactly(
                        "2:9: the percentages add up to 89.5 %, and those of the oils to 60 %; write all that goes in, so that either adds up to 100 %");
        assertThat(troubles("T\ncoconut 100 %\nsodium hydroxide 9.5 %\nwater 20 g"))
                .containsExactly(
                        "2:9: some of the recipe is in percent and some is not; write everything in percent, water and additions too, or everything as masses");
    }

    @Test
    void one_line_may_say_the_unit_of_all() {
        Formula grams = formula("T\ncoconut 100\nall in grams\nvinegar 5 % 10 in lye\nsuperfat 5 %\nwater 30");
        Formula ounces = formula("T\ncoconut 10\nsoda 1.7\nwater 3\nAll in oz");

        assertThat(grams.oils()).containsExactly(oil("coconut", "100"));
        assertThat(grams.additions().get(0).amount().toString()).isEqualTo("10 g");
        assertThat(ounces.oils())
                .containsExactly(
                        new OilLine("coconut", new OilLine.Weight(new WrittenMass(BigDecimal.TEN, MassUnit.OUNCE))));
    }

    @Test
    void a_name_with_a_number_is_said_to_be_the_recipes() {
        assertThat(formula("# tried in spring\nrecipe: Bar 2\ncoconut 100 g\nsuperfat 5 %\nwater 30 g")
                        .recipe())
                .isEqualTo("Bar 2");
        assertThat(formula("Castile 2024\ncoconut 100 g\nsuperfat 5 %\nwater 30 g")
                        .recipe())
                .isEqualTo("Castile 2024");
    }

    @Test
    void remarks_and_what_was_typed_for_a_key_are_kept() {
        String written = FormulaFile.write(formula("""
                # of last autumn
                Trial
                # pressed <b>here</b>: cold
                peanut oil 100 g
                soda 13 g
                # rain
                water 30 g
                #
                zinc 2 g at trace
                # the end
                """));

        assertThat(written.lines())
                .contains(
                        "# of last autumn",
                        "  # pressed <b>here</b>: cold",
                        "  groundnut: 100 g  # typed: peanut oil",
                        "# rain",
                        "# the end");
        assertThat(written).contains("zinc-oxide  # typed: zinc");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "350g olive | 5:1: 'olive' may be olive oil (virgin), olive oil (refined) or olive pomace oil; write one",
                "cocoa 20 g | 5:1: 'cocoa' may be cocoa butter or cocoa powder; write one",
                "shea 20 g | 5:1: 'shea' may be shea butter (unrefined) or shea butter refined; write one",
                "wax 20 g | 5:1: 'wax' may mean jojoba oil (liquid wax); if it does, write jojoba oil (liquid wax)",
                "virgin 20 g | 5:1: 'virgin' may mean olive oil (virgin); if it does, write olive oil (virgin)",
                "castr 20 g | 5:1: 'castr' is not known; did you mean castor oil?",
                "oilve oil 20 g | 5:1: 'oilve oil' is not known; did you mean olive oil (virgin), olive oil (refined) or olive pomace oil?",
                "peper mint EO 20 g | 5:1: 'peper mint EO' is not known; write another name of it, or describe it as a material of your own; begin a remark with #",
                "wather 20 g | 5:1: 'wather' is not known; did you mean water?",
                "unicorn fat 20 g | 5:1: 'unicorn fat' is not known; write another name of it, or describe it as a material of your own; begin a remark with #",
                "oil 20 g | 5:1: 'oil' names no material; write which, as in coconut oil 350 g",
                "lye 50 % 20 g | 5:1: 'lye 50 %' is not known; write another name of it, or describe it as a material of your own; begin a remark with #",
                "castor 25 | 5:8: '25' has no unit; write 25 g, or all in grams on a line of its own if no line has a unit",
                "castor 1,000 g | 5:8: '1,000 g' may be 1000 g or 1 g; write 1000 g, or 1 g",
                "castor 1,250 g | 5:8: '1,250 g' may be 1250 g or 1.25 g; write 1250 g, or 1.25 g",
                "castor 2 tsp | 5:8: '2 tsp' is no weight: how much that weighs depends on what is in it; weigh it once, and write g or oz",
                "lavender 1 tbsp at trace | 5:10: '1 tbsp' is no weight: how much that weighs depends on what is in it; weigh it once, and write g or oz",
                "castor 2 parts | 5:8: '2 parts' is no weight; write each oil in percent, or weigh it and write g or oz",
                "castor 20 gr | 5:8: '20 gr' may be grams or grains; write 20 g, if grams",
                "2x potash | 5:1: '2x' does not say how much it weighs; write its weight, as in soda 71 g",
                "chamomile tea 50 g | 5:1: 'chamomile tea' is not known; what is steeped in water counts as water; write water (chamomile tea)",
                "goat's milk 50 g | 5:1: it is not said when 'goat's milk' goes in; write in the lye as water behind it and freeze it first, or at trace",
                "beer 50 g | 5:1: it is not said when 'beer' goes in; write in the lye as water behind it, or at trace",
                "superfat 5 g | 5:10: '5 g' is not a percentage; write superfat 5 %",
                "castor -5 g | 5:8: '-5 g' is negative; write a number of 0 or more",
                "castor 0 g | 5:8: the amount of 'castor' is 0; write more than 0, or leave it out",
                "castor 2 oz 56.7 g | 5:13: '2 oz' and '56.7 g' are two amounts; write one of them",
                "castor 20 ml | 5:8: '20 ml' is a volume, but an oil is weighed; weigh it and write g, kg, oz or lb",
                "castor 2 fl oz | 5:8: '2 fl oz' is a volume, and fluid ounces differ from country to country; weigh it and write g or oz, or write ml",
                "castor 2 cups | 5:8: '2 cups' is no weight: how much that weighs depends on what is in it; weigh it once, and write g or oz",
                "castor 5 g at trace | 5:1: 'castor' belongs to the oils, which go into one pot; leave out when it goes in, so that its alkali is counted",
                "castor 5 % | 5:8: 'castor' is percent among masses; write all oils in percent, or all as masses",
                "castor | 5:1: 'castor' has no amount; write it as coconut 350 g; a name of the recipe as recipe: Castile; begin a remark with #",
                "castor 5 6 | 5:1: 'castor 5 6' has no amount; write it as coconut 350 g; a name of the recipe as recipe: Castile; begin a remark with #",
                "coconut oil 5 g | 5:1: 'coconut oil', which is coconut, stands on line 2 already; make one line of the two",
                "water 5 g | 5:1: water stands on line 4 already; make one line of the two",
                "naoh 5 g | 5:1: this alkali stands on line 3 already; make one line of the two",
                "potash 5 ml | 5:8: '5 ml' is a volume, but alkali is weighed; weigh it and write g, kg, oz or lb",
                "potash 5 g at trace | 5:1: 'potash' goes into the lye jug; leave out when it goes in",
                "superfat 5 % | 5:1: both a superfat and the alkali are given; leave one of the lines out: each follows from the other",
                "superfat 5 | 5:1: both a superfat and the alkali are given; leave one of the lines out: each follows from the other",
                "lavender 5 drops | 5:10: '5 drops' is no weight: how much that weighs depends on what is in it; weigh it once, and write g or oz",
                "recipe: Other | 5:1: the recipe has a name already, 'Trial'; write one recipe, and one name",
                "all in cups | 5:1: 'cups' is not a unit for all; write all in grams, all in oz or all in percent",
                "<script>alert(1)</script> 5 g | 5:1: '<script>alert(1)</script>' is not known; write another name of it, or describe it as a material of your own; begin a remark with #",
                "lavender 3 % | 5:10: '3 %' does not say of what; write 3 % of oils, or 3 % of batch",
                "castor \u2155 g | 5:1: 'castor \u2155 g' has no amount; write it as coconut 350 g; a name of the recipe as recipe: Castile; begin a remark with #",
                "potash | 5:1: 'potash' has no amount; write it as soda 71 g, or give a superfat instead, as in superfat 5 %",
                "castor 2 lb 20 oz | 5:13: '2 lb' and '20 oz' are two amounts; write one of them",
                "water 2 to 1 | 5:1: water stands on line 4 already; make one line of the two",
                "elaeis guineensis oil 5 g | 5:1: 'elaeis guineensis oil' may be palm oil, palm olein or palm stearin; write one"
            })
    void what_is_not_plain_is_refused_with_what_to_write(String line, String trouble) {
        assertThat(trouble(line)).isEqualTo(trouble);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "castor ~25",
                "castor 20-25",
                "castor 20 - 25",
                "castor \u00b1 3",
                "castor 1/5",
                "castor 1/2/4",
                "castor 1/2 - 1",
                "castor 1 000",
                "castor 25 to",
                "castor 1e3",
                "castor <25",
                "castor 25?",
                "castor 2 x"
            })
    void no_sign_beside_a_number_is_passed_over(String line) {
        assertThat(troubles("T\nall in grams\ncoconut 100\nsuperfat 5 %\nwater 40\n" + line))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("6:");
    }

    @Test
    void units_are_on_every_line_or_on_one_for_all() {
        assertThat(troubles("T\nall in grams\ncoconut 100 g\nsuperfat 5 %\nwater 40\nall in oz"))
                .containsExactly(
                        "3:9: '100 g' has a unit of its own, but line 2 says it for all; leave the unit out here, or write one on every line and take line 2 out",
                        "6:1: the unit of all is said on line 2 already; say it once");
    }

    @Test
    void what_is_missing_is_said_in_the_words_of_a_notebook() {
        assertThat(troubles("\n  \n"))
                .containsExactly(
                        "1:1: the recipe has no name; write it on the first line, or anywhere as recipe: Bar 2",
                        "1:1: there are no oils; write at least one, as in coconut 350 g",
                        "1:1: neither soda nor a superfat is given; write soda 71 g, or superfat 5 %",
                        "1:1: the recipe does not say its water; write it, as in water 155 g");
        assertThat(troubles("T\nsoda 17 g\nwater 30 g"))
                .containsExactly("1:1: there are no oils; write at least one, as in coconut 350 g");
    }

    @Test
    void a_thing_that_cannot_be_read_is_not_missed_as_well() {
        assertThat(troubles("T\ncocnut 100 g\nsoda 17\nwater 3.500,5 g"))
                .extracting(t -> t.substring(0, 4))
                .containsExactly("2:1:", "3:6:", "4:7:");
    }

    @Test
    void the_rules_of_a_formula_hold_here_too() {
        assertThat(troubles("T\ncoconut 100 g\nsuperfat 100 %\nwater 0 g"))
                .containsExactly(
                        "3:10: a superfat of 100 % is not possible; it must be under 100 %; bars usually have 5 to 8 %",
                        "4:7: '0 g' has a 0 in it, but alkali needs water; write more than 0; 33 % lye is usual");
        assertThat(troubles("N".repeat(201) + "\ncoconut 100 g\nsuperfat 5 %\nwater 30 g"))
                .containsExactly("1:1: the recipe's name is longer than 200 characters; write a name of one line");
    }

    @Test
    void a_trouble_keeps_its_line_as_it_was_typed() {
        String line = "\t <td class=\"oil\">\u00a0" + "x".repeat(90) + "</td> 5 g";

        NotebookText.Read read = NotebookText.read(WHOLE + line, TABLES);

        assertThat(read.troubles()).hasSize(1);
        NotebookText.Trouble trouble = read.troubles().get(0);
        assertThat(trouble.line()).isEqualTo(line);
        assertThat(trouble.place()).isEqualTo(new Places.Place(5, 3));
        assertThat(trouble.problem().what()).hasSizeLessThan(80).contains("\u2026");
    }

    @Test
    void a_pasted_page_is_refused_line_by_line() {
        String page = "<!doctype html>\n<html><body>\n<li>Coconut oil &nbsp; 350 g</li>\n<script>x=1</script>\n</html>";

        assertThat(troubles(page))
                .hasSizeGreaterThanOrEqualTo(4)
                .anyMatch(t -> t.contains("'<li>Coconut oil &nbsp; </li>'"));
    }

    @Test
    void three_hundred_lines_are_read_and_a_hundred_troubles_told() {
        String oils = Stream.concat(
                        Stream.of("T", "soda 40 g", "water 90 g"),
                        IntStream.range(0, 297)
                                .mapToObj(i -> i < 50
                                        ? new ArrayList<>(TABLES.oils()).get(i).key() + " 7 g"
                                        : "lard 7 g"))
                .collect(Collectors.joining("\n"));

        assertThat(troubles(oils)).hasSize(100).allMatch(t -> t.contains("lard stands on line "));
        assertThat(troubles(oils + "\n\nlard 7 g"))
                .containsExactly("301:1: there are 302 lines; write at most 300, and one recipe only");
        assertThat(formula(oils.lines().limit(53).collect(Collectors.joining("\n")))
                        .oils())
                .hasSize(50);
    }

    @Test
    void what_is_no_text_is_refused_whole() {
        assertThat(troubles("x".repeat(NotebookText.LARGEST + 1)))
                .containsExactly(
                        "1:1: the text is larger than 100 KB; write one recipe, and keep its papers elsewhere");
        assertThat(NotebookText.read(new byte[NotebookText.LARGEST + 1], TABLES).troubles())
                .hasSize(1);
        assertThat(NotebookText.read(new byte[] {'T', '\n', (byte) 0xff}, TABLES)
                        .troubles())
                .hasSize(1)
                .allMatch(t -> t.problem().what().equals("the file is not UTF-8 text"));
        assertThat(troubles("T\ncoconut\u0000 3 g")).hasSize(1).allMatch(t -> t.startsWith("2:8: there is a control"));
        assertThat(troubles(WHOLE + "castor " + "x".repeat(400) + " 5 g"))
                .hasSize(1)
                .allMatch(t -> t.contains("is a line of over 300 characters"));
        assertThat(NotebookText.read(("\ufeff" + WHOLE).getBytes(StandardCharsets.UTF_8), TABLES)
                        .formula())
                .isPresent();
    }

    static Stream<Oil> oils() {
        return TABLES.oils().stream();
    }

    @ParameterizedTest
    @MethodSource("oils")
    void every_oil_is_known_by_its_key_and_its_common_name(Oil oil) {
        for (String name : List.of(oil.key(), oil.key().replace('-', ' '), oil.name())) {
            assertThat(formula("T\n" + name + " 12.5 g\nsuperfat 5 %\nwater 5 g")
                            .oils())
                    .as(name)
                    .containsExactly(oil(oil.key(), "12.5"));
        }
    }

    static Stream<Additive> additives() {
        return TABLES.additives().stream();
    }

    @ParameterizedTest
    @MethodSource("additives")
    void every_additive_is_known_by_its_key_and_its_common_name(Additive additive) {
        for (String name : List.of(additive.key(), additive.name())) {
            assertThat(with(name + " 12.5 g at trace").additions())
                    .as(name)
                    .extracting(Addition::of)
                    .containsExactly(additive.key());
        }
    }

    @Test
    void what_is_printed_as_a_notebook_reads_the_same() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            Formula formula = simple(random);

            Formula read = formula(print(formula, random));

            assertThat(read).as("seed " + seed).isEqualTo(formula);
            assertThat(FormulaFile.read(FormulaFile.write(read)).formula()).contains(read);
        }
    }

    /** Bits of every kind put together at random: read or refused, never broken, and what is read is a sound formula. */
    @Test
    void whatever_is_typed_is_read_or_refused() {
        String[] bits = {
            "Trial",
            "coconut",
            "castor oil",
            "soda",
            "water",
            "superfat",
            "lavender",
            "#",
            "recipe:",
            "all in",
            "grams",
            "oz",
            "g",
            "kg",
            "ml",
            "%",
            "at trace",
            "in the lye",
            "12",
            "3,5",
            "0",
            "-",
            "1.25",
            "fl oz",
            "\n",
            "\n",
            "\n",
            "\n",
            " ",
            " ",
            "\t",
            "(",
            "<b>",
            "&nbsp;",
            "\u00a0",
            "\u2028",
            "\u00bd",
            "\ud83e\uddfc",
            "\u0000",
            "\r",
            ": ",
            " #",
            "'",
            "\"",
            "{",
            "*",
            "\u0661"
        };
        int read = 0;
        for (int seed = 0; seed < 4000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(seed % 2 == 0 ? WHOLE : "");
            for (int i = random.nextInt(1 + seed % 30); i > 0; i--) {
                text.append(bits[random.nextInt(bits.length)]).append(random.nextInt(3) == 0 ? "" : " ");
            }
            NotebookText.Read result = NotebookText.read(text.toString(), TABLES);
            assertThat(result.formula().isEmpty())
                    .as("seed " + seed)
                    .isEqualTo(!result.troubles().isEmpty());
            if (result.formula().isPresent()) {
                Formula formula = result.formula().get();
                assertThat(FormulaFile.read(FormulaFile.write(formula)).formula())
                        .as("seed " + seed)
                        .contains(formula);
                read++;
            }
        }
        assertThat(read).as("texts that were read").isGreaterThan(100);
    }

    private static Formula simple(Random random) {
        List<Oil> oils = new ArrayList<>(TABLES.oils());
        Collections.shuffle(oils, random);
        List<Additive> additives = new ArrayList<>(TABLES.additives());
        Collections.shuffle(additives, random);
        boolean given = random.nextBoolean();
        return new Formula(
                "Trial " + (char) ('A' + random.nextInt(26)),
                1,
                Use.OWN,
                "",
                oils.stream()
                        .limit(1 + random.nextInt(12))
                        .map(oil -> new OilLine(oil.key(), new OilLine.Weight(mass(random))))
                        .toList(),
                given
                        ? new AlkaliChoice.Given(
                                Optional.of(mass(random)),
                                random.nextBoolean() ? Optional.of(mass(random)) : Optional.empty(),
                                Optional.of(AlkaliChoice.As.WEIGHED),
                                false)
                        : new AlkaliChoice.Single(Alkali.SODIUM),
                given ? Optional.empty() : Optional.of(Share.ofPercent(Integer.toString(random.nextInt(30)))),
                new WaterRule.Weight(mass(random), false),
                Optional.empty(),
                Optional.empty(),
                Process.COLD,
                additives.stream()
                        .limit(random.nextInt(4))
                        .map(a -> new Addition(
                                a.key(),
                                new Amount.Weight(mass(random), false),
                                Stage.of(Stage.Kind.TRACE),
                                Optional.empty(),
                                false))
                        .toList(),
                List.of(),
                List.of(),
                Comments.NONE);
    }

    private static WrittenMass mass(Random random) {
        MassUnit[] units = MassUnit.values();
        return new WrittenMass(
                BigDecimal.valueOf(1 + random.nextInt(99_999), random.nextInt(4)), units[random.nextInt(units.length)]);
    }

    private static String print(Formula formula, Random random) {
        List<String> lines = new ArrayList<>();
        for (OilLine line : formula.oils()) {
            lines.add(line(line.key(), ((OilLine.Weight) line.amount()).mass(), random));
        }
        if (formula.alkali() instanceof AlkaliChoice.Given given) {
            given.sodium().ifPresent(mass -> lines.add(line("soda", mass, random)));
            given.potassium().ifPresent(mass -> lines.add(line("potash", mass, random)));
        }
        formula.superfat().ifPresent(share -> lines.add("superfat " + share));
        lines.add(line("water", ((WaterRule.Weight) formula.water()).mass(), random));
        formula.additions().forEach(a -> lines.add(a.of() + " " + a.amount() + " at trace"));
        return "recipe: " + formula.recipe() + "\n" + String.join("\n", lines);
    }

    private static String line(String name, WrittenMass mass, Random random) {
        String spaced = random.nextBoolean() ? mass.toString() : mass.toString().replace(" ", "");
        return switch (random.nextInt(3)) {
            case 0 -> name + " " + spaced;
            case 1 -> spaced + " " + name;
            default -> name + ":  " + spaced + "\t";
        };
    }
}
