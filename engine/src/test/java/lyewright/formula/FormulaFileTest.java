package lyewright.formula;

import static lyewright.formula.FormulaTexts.NOTEBOOK;
import static lyewright.formula.FormulaTexts.PLAIN;
import static lyewright.formula.FormulaTexts.formula;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Places.Place;
import lyewright.material.Alkali;
import lyewright.measure.MassUnit;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaFileTest {

    /** The example of the format's description, its comments included. */
    private static final String TIDELINE = """
            recipe: Tideline
            version: 3
            use: sale                    # own | sale
            notes: Sea-salt bar, green clay in two fifths of the batter.
            oils:                        # all percent (add up to 100), or all masses; one oil may be `rest`
              coconut: 80 %
              olive-virgin: 12 %
              castor: rest
            alkali: sodium               # sodium | potassium | {sodium: 40 %, potassium: 60 %, by: moles}
            superfat: 18 %               # or leave it out and give the alkali itself
            water: 34 % lye              # or  26 % of oils   or  2 to 1   or  265 g
            acids: as written            # compensate (more alkali) | as written (superfat rises)
            cured water: 9 %             # of the cured bar; default 10 % (common practice)
            process: {make: cold, oils: 38 C, lye: 38 C, oven: 55 C then off, pour: fade plain into kelp in 7}
            additions:
              - of: green-clay
                amount: 12 g per kg portion oils
                stage: portion kelp
                disperse: {in: water, ratio: 3 to 1, ahead: 1 h}     # its liquid comes out of the batch's water
              - of: rosemary-oil
                amount: 2.2 % of oils
                stage: every portion
              - of: sea-salt
                amount: 60 % of oils
                stage: every portion     # listed last: goes in last
            portions:                    # shares of the base batter; add up to 100 %; one may be `rest`
              plain: 60 %
              kelp: rest
            materials:                   # what the tables lack, or what a certificate says otherwise
              house-olive:
                kind: oil
                saponification value: 189.5 ± 1.0 mg KOH/g           # or  184 to 196
                source: certificate L-204
            """;

    @Test
    void the_described_example_means_what_it_says() {
        Formula f = formula(TIDELINE);
        assertThat(f.recipe()).isEqualTo("Tideline");
        assertThat(f.version()).isEqualTo(3);
        assertThat(f.use()).isEqualTo(Use.SALE);
        assertThat(f.notes()).isEqualTo("Sea-salt bar, green clay in two fifths of the batter.");
        assertThat(f.oils())
                .containsExactly(
                        new OilLine("coconut", new OilLine.Percent(Share.ofPercent("80"))),
                        new OilLine("olive-virgin", new OilLine.Percent(Share.ofPercent("12"))),
                        new OilLine("castor", new OilLine.Rest()));
        assertThat(f.alkali()).isEqualTo(new AlkaliChoice.Single(Alkali.SODIUM));
        assertThat(f.superfat()).contains(Share.ofPercent("18"));
        assertThat(f.water()).isEqualTo(new WaterRule.LyeStrength(Share.ofPercent("34"), false));
        assertThat(f.acids()).contains(AcidRule.AS_WRITTEN);
        assertThat(f.curedWater()).contains(Share.ofPercent("9"));
        assertThat(f.process().make()).isEqualTo(Process.Make.COLD);
        assertThat(f.process().oils().orElseThrow()).hasToString("38 C");
        assertThat(f.process().oven().orElseThrow().thenOff()).isTrue();
        assertThat(f.process().pour()).contains(new Process.Pour("plain", "kelp", BigDecimal.valueOf(7)));
        assertThat(f.additions()).hasSize(3);
        assertThat(f.additions().get(0).amount())
                .isEqualTo(new Amount.Per(WrittenMass.ofGrams("12"), MassUnit.KILOGRAM, Amount.Base.PORTION_OILS));
        assertThat(f.additions().get(0).stage()).isEqualTo(Stage.portion("kelp"));
        assertThat(f.additions().get(0).disperse().orElseThrow().ratioText()).isEqualTo("3 to 1");
        assertThat(f.additions().get(2).stage()).isEqualTo(Stage.of(Stage.Kind.EVERY_PORTION));
        assertThat(f.portions())
                .containsExactly(
                        new PortionLine("plain", Optional.of(Share.ofPercent("60"))),
                        new PortionLine("kelp", Optional.empty()));
        assertThat(f.materials().get(0).saponificationValue().orElseThrow()).hasToString("189.5 ± 1.0");
    }

    @Test
    void every_comment_of_the_described_example_is_in_its_normal_form() {
        String normal = FormulaFile.write(formula(TIDELINE));
        TIDELINE.lines()
                .filter(line -> line.contains("#"))
                .map(line -> line.substring(line.indexOf('#')))
                .forEach(comment -> assertThat(normal).contains(comment));
        assertThat(normal.lines().map(line -> line.replaceFirst(" +#.*", "")))
                .containsExactlyElementsOf(TIDELINE.lines()
                        .map(line -> line.replaceFirst(" +#.*", ""))
                        .toList());
    }

    @Test
    void what_is_left_out_has_the_described_default() {
        Formula f = formula(PLAIN);
        assertThat(f.version()).isEqualTo(1);
        assertThat(f.use()).isEqualTo(Use.OWN);
        assertThat(f.process()).isEqualTo(Process.COLD);
        assertThat(f.acids()).isEmpty();
        assertThat(f.acidRule()).isEqualTo(AcidRule.COMPENSATE);
        assertThat(f.curedWater()).isEmpty();
        assertThat(f.comments()).isEqualTo(Comments.NONE);
    }

    @Test
    void the_normal_form_names_version_and_use() {
        assertThat(FormulaFile.write(formula(PLAIN)))
                .isEqualTo(PLAIN.replace("recipe: Plain\n", "recipe: Plain\nversion: 1\nuse: own\n"));
    }

    @Test
    void groups_that_are_named_but_empty_are_as_if_left_out() {
        String empty = "notes:\nprocess:\nadditions:\nportions:\nmaterials:\n";
        assertThat(formula(PLAIN + empty)).isEqualTo(formula(PLAIN));
        assertThat(formula(PLAIN + "materials: {}\nadditions: []\n")).isEqualTo(formula(PLAIN));
    }

    @Test
    void a_scalar_is_the_text_that_was_typed() {
        Formula f = formula(PLAIN.replace("recipe: Plain", "recipe: no").replace("30 %", "030 %") + "version: 010\n");
        assertThat(f.recipe()).isEqualTo("no");
        assertThat(f.version()).isEqualTo(10);
        assertThat(f.oils().get(0).amount()).isEqualTo(new OilLine.Percent(Share.ofPercent("30")));
        assertThat(formula(PLAIN.replace("Plain", "~")).recipe()).isEqualTo("~");
        assertThat(formula(PLAIN.replace("30 %", "\"30  %\"")).oils().get(0).amount())
                .isEqualTo(new OilLine.Percent(Share.ofPercent("30")));
    }

    @ParameterizedTest
    @CsvSource({
        "34 % lye",
        "34 % lye as weighed",
        "26 % of oils",
        "2 to 1",
        "1.85 to 1 as weighed",
        "265 g",
        "9.5 oz fixed"
    })
    void every_way_of_saying_water_reads_and_prints(String water) {
        Formula f = formula(PLAIN.replace("33 % lye", water));
        assertThat(WaterText.print(f.water())).isEqualTo(water);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2.2 % of oils",
                "2 % of portion oils",
                "3 % of batch",
                "12 g per kg oils",
                "0.2 oz per lb portion oils",
                "500 mg per g oils",
                "1 g per oz oils",
                "5 g",
                "5 g fixed",
                "20 ml",
                "0.1 l fixed"
            })
    void every_way_of_saying_how_much_reads_and_prints(String amount) {
        Formula f =
                formula(PLAIN + "additions:\n  - of: sea-salt\n    amount: " + amount + "\n    stage: every portion\n");
        assertThat(f.additions().get(0).amount()).hasToString(amount);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lye", "oils", "trace", "top", "every portion", "portion kelp"})
    void every_stage_reads_and_prints(String stage) {
        Formula f = formula(PLAIN + "additions:\n  - of: sea-salt\n    amount: 5 g\n    stage: " + stage
                + "\nportions: {kelp: 100 %}\n");
        assertThat(f.additions().get(0).stage()).hasToString(stage);
    }

    @ParameterizedTest
    @ValueSource(strings = {"55 C then off", "70 C for 2 h", "160 F for 90 min then off", "55 C"})
    void every_oven_reads_and_prints(String oven) {
        Formula f = formula(PLAIN + "process: {make: oven, oven: " + oven + "}\n");
        assertThat(f.process().oven().orElseThrow()).hasToString(oven);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sodium",
                "potassium",
                "{sodium: 40 %, potassium: 60 %, by: moles}",
                "{sodium: 40.5 %, potassium: 59.5 %, by: pure mass}",
                "{sodium: 1 %, potassium: 99 %, by: as weighed}"
            })
    void every_alkali_beside_a_superfat_reads_and_prints(String alkali) {
        assertThat(FormulaFile.write(formula(PLAIN.replace("sodium", alkali)))).contains("alkali: " + alkali + "\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{sodium: 71 g}",
                "{sodium: 71 g, as: weighed}",
                "{potassium: 2.5 oz fixed, as: pure}",
                "{sodium: 60 g fixed, potassium: 20 g fixed, as: pure}",
                "{jug: 152 g}",
                "{jug: 152 g fixed}"
            })
    void every_mass_of_alkali_reads_and_prints(String alkali) {
        String lye = "materials:\n  jug:\n    kind: lye\n    strength: 50 ± 0.5 % sodium\n";
        assertThat(FormulaFile.write(formula(NOTEBOOK.replace("{sodium: 71 g}", alkali) + lye)))
                .contains("alkali: " + alkali + "\n")
                .contains("    strength: 50 ± 0.5 % sodium\n");
    }

    @Test
    void all_alkali_may_come_from_a_stock_lye() {
        String lye = "materials:\n  jug:\n    kind: lye\n    strength: 48 to 50 % potassium\n";
        Formula f = formula(PLAIN.replace("sodium", "jug") + lye);
        assertThat(f.alkali()).isEqualTo(new AlkaliChoice.Stock("jug", Optional.empty(), false));
        assertThat(f.materials().get(0).strength().orElseThrow().alkali()).isEqualTo(Alkali.POTASSIUM);
    }

    @Test
    void the_rest_of_an_alkali_is_what_the_other_leaves() {
        String mix = "{sodium: rest, potassium: 62.5 %, by: moles}";
        assertThat(formula(PLAIN.replace("sodium", mix)).alkali())
                .isEqualTo(new AlkaliChoice.Mix(
                        Share.ofPercent("37.5"), Share.ofPercent("62.5"), AlkaliChoice.Basis.MOLES));
    }

    @Test
    void the_rest_of_a_premix_is_what_the_others_leave() {
        Formula f = formula(PLAIN + "materials:\n  base:\n    kind: oils\n    oils:\n      coconut: 30 %\n"
                + "      palm-kernel: rest\n      castor: 5.5 %\n");
        assertThat(f.materials().get(0).oils())
                .contains(new OwnMaterial.BlendPart("palm-kernel", Share.ofPercent("64.5")));
    }

    @Test
    void a_figure_of_mg_koh_may_leave_its_unit_out_and_is_written_with_it() {
        String own = """
                materials:
                  house-olive:
                    kind: oil
                    saponification value: 184 to 196
                    acid value: 1.2
                    iodine value: 75 to 94
                """;
        assertThat(FormulaFile.write(formula(PLAIN + own)))
                .contains("saponification value: 184 to 196 mg KOH/g\n")
                .contains("acid value: 1.2 mg KOH/g\n")
                .contains("iodine value: 75 to 94 g/100 g\n");
    }

    @Test
    void a_key_of_the_tables_needs_neither_kind_nor_value() {
        Formula f = formula(PLAIN + "materials:\n  olive-virgin:\n    source: lot 7\n  coconut: {kind: oil}\n");
        assertThat(f.materials().get(0).kind()).isEmpty();
        assertThat(FormulaFile.write(f)).endsWith("  olive-virgin:\n    source: lot 7\n  coconut:\n    kind: oil\n");
    }

    @Test
    void a_material_of_which_nothing_is_said_yet_keeps_its_line() {
        String bare = "materials:\n  coconut: {}\n";
        Formula f = formula(PLAIN + bare);
        assertThat(f.materials()).hasSize(1);
        assertThat(FormulaFile.write(f)).endsWith(bare);
    }

    @Test
    void every_field_of_a_material_is_written_in_the_described_order() {
        String milk = """
                materials:
                  house-milk:
                    kind: milk
                    density: 1.03 g/ml
                    water: 87 %
                    fat: 4.0 ± 0.2 %
                    fat saponification value: 220 to 240 mg KOH/g
                    sugar: 4.5 %
                    salt: 0.1 %
                    acid: 0.15 % lactic acid pure basis
                    inci: Goat Milk
                    cas: 999-99-9
                    supplier: Fell & Fen Botanicals (invented)
                    source: 'their sheet: 2026'
                """;
        assertThat(FormulaFile.write(formula(PLAIN + milk)))
                .endsWith(milk.replace("'their sheet: 2026'", "\"their sheet: 2026\""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Морская соль",
                "صابون الغار",
                "海の石鹸",
                "Soap 🧼🌊",
                "👩‍🔬 lab",
                "é",
                "a\u00a0b",
                "- x",
                "? y",
                "a: b",
                "a #b",
                "#a",
                "'x'",
                "\"x\"",
                "a\\b",
                "{x}",
                "[x]",
                "*x",
                "&x",
                "!x",
                "|",
                ">",
                "%x",
                "@x",
                "`x",
                "x:",
                "null",
                "010",
                "---",
                "...",
                "a, b",
                "line\u2028separator"
            })
    void names_of_any_script_and_sign_are_kept_intact(String name) {
        Formula plain = formula(PLAIN);
        Formula named = new Formula(
                name.indexOf('\u2028') >= 0 ? "x" : name,
                1,
                Use.OWN,
                "Notes: " + name,
                plain.oils(),
                plain.alkali(),
                plain.superfat(),
                plain.water(),
                plain.acids(),
                plain.curedWater(),
                plain.process(),
                name.indexOf('\u2028') >= 0
                        ? List.of()
                        : List.of(new Addition(
                                name,
                                new Amount.Weight(WrittenMass.ofGrams("1"), false),
                                Stage.portion(name),
                                Optional.empty(),
                                false)),
                name.indexOf('\u2028') >= 0 ? List.of() : List.of(new PortionLine(name, Optional.of(Share.WHOLE))),
                List.of(),
                Comments.NONE);
        assertThat(formula(FormulaFile.write(named))).isEqualTo(named);
        assertThat(FormulaFile.read(FormulaFile.write(named).getBytes(StandardCharsets.UTF_8))
                        .formula())
                .contains(named);
    }

    @Test
    void a_file_may_begin_with_a_byte_order_mark_and_end_its_lines_in_any_way() {
        assertThat(formula("\uFEFF" + PLAIN)).isEqualTo(formula(PLAIN));
        assertThat(formula(PLAIN.replace("\n", "\r\n"))).isEqualTo(formula(PLAIN));
        assertThat(formula(PLAIN.replace("\n", "\r"))).isEqualTo(formula(PLAIN));
        assertThat(formula("%YAML 1.2\n---\n" + PLAIN + "...\n")).isEqualTo(formula(PLAIN));
        assertThat(formula(PLAIN.replace("\n", " # c\r\n")).comments())
                .isEqualTo(formula(PLAIN.replace("\n", " # c\n")).comments());
        assertThat(FormulaFile.read(("\uFEFF" + PLAIN.replace("6 %", "6")).getBytes(StandardCharsets.UTF_8))
                        .places()
                        .of("superfat"))
                .isEqualTo(new Place(7, 11));
    }

    @Test
    void a_file_may_be_one_line_of_braces() {
        String flow = "{recipe: Plain, oils: {coconut: 30 %, olive-virgin: 65 %, castor: 5 %}, alkali: sodium, "
                + "\"superfat\": '6 %', water: 33 % lye}";
        assertThat(formula(flow)).isEqualTo(formula(PLAIN));
    }

    @Test
    void notes_of_several_lines_are_kept() {
        String block = "notes: |-\n  First.\n\n    Second: # kept\n  Third.\n";
        Formula f = formula(PLAIN + block);
        assertThat(f.notes()).isEqualTo("First.\n\n  Second: # kept\nThird.");
        assertThat(FormulaFile.write(f)).contains(block);
        assertThat(formula(PLAIN + "notes: >\n  one\n  line\n").notes()).isEqualTo("one line\n");
    }

    @Test
    void comments_stay_with_what_they_speak_of() {
        String text = """
                # The workshop.
                # Two lines.

                # above the recipe
                recipe: Plain  # beside the recipe
                version: 1
                use: own
                notes: |  # beside the notes
                  text # not a comment
                  # nor this
                # above the oils
                oils:  # beside the oils
                  # above the first oil
                  coconut: 100 %  # beside the first oil
                # above the alkali
                alkali: sodium
                superfat: 6 %
                water: 33 % lye
                process:
                  make: cold  # beside a way
                  # above a temperature
                  oils: 40 C
                additions:
                  # above the first addition
                  - of: sea-salt  # beside its name
                    # above its amount
                    amount: 5 g
                    stage: trace  #no space
                  # above the second
                  - of: sugar
                    amount: 5 g
                    stage: lye
                    disperse:  # beside the disperse
                      in: water
                      ratio: 2 to 1  # beside the ratio
                # the end
                # of it
                """;
        Formula f = formula(text);
        assertThat(FormulaFile.write(f)).isEqualTo(text);
        assertThat(f.comments().before())
                .containsEntry("", List.of(" The workshop.", " Two lines."))
                .containsEntry("oils.coconut", List.of(" above the first oil"))
                .containsEntry("additions.1", List.of(" above the second"))
                .containsEntry("additions.0.amount", List.of(" above its amount"));
        assertThat(f.comments().beside())
                .containsEntry("additions.0.of", " beside its name")
                .containsEntry("additions.0.stage", "no space");
        assertThat(f.comments().after()).containsExactly(" the end", " of it");
    }

    @Test
    void comments_that_have_no_line_move_to_what_is_around_them_and_none_is_lost() {
        String text = """
                # top
                alkali: {  # a
                  sodium: 40 %,  # b
                  # c
                  potassium: 60 %,
                  by: moles  # d
                }  # e
                recipe: "a
                  b"  # f
                oils: { coconut: 30 %, castor: 70 % } # g
                superfat: 6 %
                water: 33 % lye
                process: # h
                # i
                additions:
                  - # j
                    amount: 5 g
                    # k
                    of: sea-salt
                    stage: trace
                  - {of: sugar, amount: 5 g, stage: trace} # l
                materials: {} # m
                --- # n
                """.replace("--- # n\n", "# n\n");
        Formula f = formula(text);
        String normal = FormulaFile.write(f);
        for (char c = 'a'; c <= 'n'; c++) {
            assertThat(normal).contains("# " + c + "\n");
        }
        assertThat(normal).contains("# top\n");
        assertThat(formula(normal)).isEqualTo(f);
        assertThat(FormulaFile.write(formula(normal))).isEqualTo(normal);
        assertThat(f.comments().beside())
                .containsEntry("alkali.sodium", " b")
                .containsEntry("recipe", " f")
                .containsEntry("oils", " g");
    }

    @Test
    void comments_made_elsewhere_are_written_at_the_nearest_line() {
        Formula plain = formula(PLAIN + "additions:\n  - of: sea-salt\n    amount: 5 g\n    stage: trace\n");
        Comments comments = new Comments(
                Map.of(
                        "oils.no-such-oil", List.of(" one"),
                        "colour", List.of(" two"),
                        "additions.0.of", List.of(" three"),
                        "additions.0", List.of(" four\u0007\nmore \t")),
                Map.of(
                        "additions.0",
                        " five",
                        "superfat.x",
                        " six",
                        "superfat",
                        " seven",
                        "nowhere.at",
                        " eight",
                        "",
                        " nine"),
                List.of(" ten"));
        Formula remarked = plain.withComments(comments);
        String text = FormulaFile.write(remarked);
        assertThat(text)
                .contains("# one\noils:")
                .contains("  # four  more\n  # three\n  - of: sea-salt  # five\n")
                .contains("# six\nsuperfat: 6 %  # seven\n");
        assertThat(text.lines().filter(line -> line.startsWith("#")).toList())
                .contains("# two", "# eight", "# nine", "# ten");
        assertThat(FormulaFile.write(formula(text))).isEqualTo(text);
    }

    @Test
    void a_place_that_is_not_there_is_the_nearest_around_it() {
        Places places = FormulaFile.read(TIDELINE).places();
        assertThat(places.of("oils.castor")).isEqualTo(new Place(8, 11));
        assertThat(places.of("additions.1.amount")).isEqualTo(new Place(21, 13));
        assertThat(places.of("additions.1.disperse.in")).isEqualTo(new Place(20, 5));
        assertThat(places.of("additions.9.amount")).isEqualTo(new Place(15, 1));
        assertThat(places.of("materials.house-olive.saponification value")).isEqualTo(new Place(32, 27));
        assertThat(places.of("process.pour")).isEqualTo(new Place(14, 73));
        assertThat(places.of("nothing.of.it")).isEqualTo(new Place(1, 1));
        assertThat(places.of("")).isEqualTo(new Place(1, 1));
        assertThat(Places.NONE.of("oils")).isEqualTo(new Place(1, 1));
        assertThat(new Place(2, 1)).isGreaterThan(new Place(1, 9)).isLessThan(new Place(2, 2));
    }
}
