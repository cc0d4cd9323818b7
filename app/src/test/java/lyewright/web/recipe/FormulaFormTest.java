package lyewright.web.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Comments;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaFormTest {

    private static final MaterialNames NAMES = MaterialNames.of(Tables.bundled());

    private static final int CASES = 2_000;

    /** The fields that a browser sends for a small recipe, which a test changes. */
    private static Map<String, String> castile(String... changes) {
        Map<String, String> fields = new LinkedHashMap<>(FormulaForm.blank().fields());
        fields.put("recipe", "Plain Castile");
        fields.put("oils.0.name", "olive-virgin");
        fields.put("oils.0.amount", "rest");
        for (int i = 0; i < changes.length; i += 2) {
            fields.put(changes[i], changes[i + 1]);
        }
        return fields;
    }

    private static FormulaForm form(Map<String, String> fields) {
        Map<String, List<String>> sent = new LinkedHashMap<>();
        fields.forEach((name, text) -> sent.put(name, List.of(text)));
        return FormulaForm.from(sent);
    }

    private static FormRead read(String... changes) {
        return form(castile(changes)).read(NAMES);
    }

    private static Formula formula(String... changes) {
        FormRead read = read(changes);
        assertThat(read.problems()).isEmpty();
        return read.formula().orElseThrow();
    }

    /** Each problem as field: what; remedy. */
    private static List<String> troubles(FormRead read) {
        assertThat(read.formula().isEmpty()).isEqualTo(!read.problems().isEmpty());
        List<String> all = new ArrayList<>();
        read.problems().forEach((field, some) -> some.forEach(p -> all.add(field + ": " + p.sentence())));
        return all;
    }

    @Test
    void two_thousand_formulas_come_back_from_their_form_and_from_its_fields() {
        for (long seed = 0; seed < CASES; seed++) {
            Formula formula = RandomFormulas.of(seed);
            FormulaForm form = FormulaForm.of(formula);
            FormRead read = form.read(NAMES);
            assertThat(read.problems()).as("seed %d: %s", seed, form).isEmpty();
            assertThat(read.formula()).as("seed %d: %s", seed, form).contains(formula);
            assertThat(form(form.fields())).as("seed %d", seed).isEqualTo(form);
        }
    }

    @Test
    void two_thousand_drafts_are_kept_whole() {
        for (long seed = 0; seed < CASES; seed++) {
            FormulaForm form = FormulaForm.of(RandomFormulas.of(seed));
            Drafted drafted = new Drafted(form, seed % 2 == 0 ? "" : "file: " + seed, "why", "a window", seed);
            assertThat(Drafted.read(drafted.write())).as("seed %d", seed).contains(drafted);
        }
    }

    @Test
    void materials_may_go_by_their_common_names() {
        Formula read = formula(
                "oils.0.name", " Coconut oil ",
                "oils.1.name", "cocoa",
                "oils.1.amount", "20 %",
                "additions.0.of", "lavender",
                "additions.0.amount", "2 % of oils",
                "additions.0.stage", "trace");

        assertThat(read.oils().stream().map(line -> line.key())).containsExactly("coconut", "cocoa-butter");
        assertThat(read.additions().get(0).of()).isEqualTo("lavender-oil");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sodium | sodium",
                "Caustic soda | sodium",
                "potash (KOH) | potassium",
                "40 % sodium, 60 % potassium by moles | {sodium: 40 %, potassium: 60 %, by: moles}",
                "{sodium: 40 %, potassium: rest, by: moles} | {sodium: 40 %, potassium: 60 %, by: moles}",
                "potash 60% and soda 40%, pure mass | {sodium: 40 %, potassium: 60 %, by: pure mass}",
                "30 % soda rest potash as weighed | {sodium: 30 %, potassium: 70 %, by: as weighed}"
            })
    void alkali_is_one_line_of_text(String line, String inTheFile) {
        Formula read = formula("alkali", line);

        assertThat(FormulaFile.write(read)).contains("\nalkali: " + inTheFile + "\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "76 g sodium | {sodium: 76 g}",
                "soda 76g as weighed | {sodium: 76 g, as: weighed}",
                "10 oz potassium hydroxide pure | {potassium: 10 oz, as: pure}",
                "76 g fixed sodium, 20 g fixed potash | {sodium: 76 g fixed, potassium: 20 g fixed}",
                "280 g of my-lye | {my-lye: 280 g}",
                "280 g fixed of my-lye | {my-lye: 280 g fixed}",
                "my-lye | my-lye"
            })
    void alkali_may_be_a_mass_or_a_stock_lye(String line, String inTheFile) {
        Formula read = formula(
                "alkali", line,
                "oils.0.amount", "1 kg",
                "superfat", line.contains(" ") ? "" : "5 %",
                "materials.0.key", "my-lye",
                "materials.0.kind", "lye",
                "materials.0.strength", "50 % sodium");

        assertThat(FormulaFile.write(read)).contains("\nalkali: " + inTheFile + "\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "40 % sodium, 60 % potassium | '40 % sodium, 60 % potassium' does not say what the shares are of; write by moles, by pure mass or as weighed behind it",
                "40 % sodium 60 % | '60 %' is not a way of saying the alkali; write sodium, potassium, 40 % sodium, 60 % potassium by moles, 76 g sodium as weighed, or a stock lye's name",
                "40 % sodium 60 % sodium by moles | sodium stands twice here; write it once",
                "40 % sodium, 70 % potassium by moles | the two alkalis add up to 110 %; change the shares until they add up to 100 %",
                "soda salt | 'soda salt' is neither sodium, potassium nor a stock lye of this formula; write sodium or potassium, or describe the lye under materials with kind: lye",
                "76 g | '76 g' is not a way of saying the alkali; write sodium, potassium, 40 % sodium, 60 % potassium by moles, 76 g sodium as weighed, or a stock lye's name"
            })
    void alkali_that_is_not_plain_is_refused_beside_its_field(String line, String trouble) {
        assertThat(troubles(read("alkali", line))).containsExactly("alkali: " + trouble);
    }

    @ParameterizedTest
    @ValueSource(strings = {"34 % lye", "33 % lye as weighed", "26 % of oils", "2 to 1", "2 to 1 as weighed", "265 g"})
    void water_is_one_line_of_text(String line) {
        assertThat(FormulaFile.write(formula("water", line))).contains("\nwater: " + line + "\n");
    }

    @Test
    void a_superfat_needs_no_sign() {
        assertThat(formula("superfat", "7").superfat().orElseThrow().toString()).isEqualTo("7 %");
        assertThat(troubles(read("superfat", "7,5")))
                .containsExactly("superfat: '7,5 %' has a comma in its number; write 7.5 %");
    }

    @Test
    void a_problem_stands_at_its_own_row_though_rows_above_are_empty() {
        FormRead read = read(
                "oils.2.name", "castor",
                "oils.2.amount", "5",
                "additions.2.of", "sea-salt",
                "additions.2.amount", "60 %",
                "additions.2.stage", "trace",
                "additions.4.of", "green-clay",
                "additions.4.amount", "12 g",
                "additions.4.stage", "portion kelp",
                "additions.4.in", "whey");

        assertThat(troubles(read))
                .containsExactlyInAnyOrder(
                        "oils.2.amount: '5' has no unit; write 5 % or 5 g",
                        "additions.2.amount: '60 %' does not say of what; write 60 % of oils, of portion oils or of batch",
                        "additions.4.stage: there is no portion 'kelp'; list it under portions with its share",
                        "additions.4.ratio: it is not said in how much; write it as 3 to 1",
                        "additions.4.in: 'whey' is neither water, oil, glycerin nor one of the formula's oils; write water, oil, glycerin or an oil's key");
    }

    @Test
    void what_is_missing_is_said_at_its_field_in_the_words_of_a_form() {
        Map<String, String> fields = castile("recipe", " ", "oils.0.name", "", "alkali", "", "water", "");
        fields.put("additions.0.of", "kaolin");
        fields.put("portions.0.share", "40 %");
        fields.put("materials.0.kind", "oil");

        assertThat(troubles(form(fields).read(NAMES)).stream()
                        .map(trouble -> trouble.substring(0, trouble.indexOf(':'))))
                .containsExactlyInAnyOrder(
                        "recipe",
                        "oils.0.name",
                        "alkali",
                        "water",
                        "additions.0.amount",
                        "additions.0.stage",
                        "portions.0.name",
                        "materials.0.key",
                        "materials.0.saponification-value");
    }

    @Test
    void an_oil_that_stands_twice_is_said_at_the_second_row_and_not_of_the_sum() {
        FormRead read = read("oils.0.amount", "50 %", "oils.1.name", "Olive oil (virgin)", "oils.1.amount", "50 %");

        assertThat(troubles(read))
                .containsExactly("oils.1.name: 'olive-virgin' is listed twice; make one row of the two");
    }

    @Test
    void shares_that_do_not_add_up_are_said_of_the_group() {
        assertThat(troubles(read("oils.0.amount", "90 %")))
                .containsExactly("oils: the oils add up to 90 %; change the shares until they add up to 100 %");
    }

    @Test
    void an_unknown_name_is_answered_with_what_it_may_be() {
        assertThat(troubles(read("oils.0.name", "olive")))
                .containsExactly("oils.0.name: 'olive' may be olive-virgin, olive-refined or olive-pomace; write one");
        assertThat(troubles(read("oils.0.name", "fine sea salt")))
                .containsExactly("oils.0.name: 'fine sea salt', sea-salt, is not an oil; list it under additions");
    }

    @Test
    void materials_of_the_workshop_that_are_named_come_into_the_formula_with_all_they_are_made_of() {
        Formula source = formula(
                "materials.0.key", "House olive",
                "materials.0.kind", "oil",
                "materials.0.saponification-value", "189.5 ± 1.0 mg KOH/g",
                "materials.0.source", "certificate L-204",
                "materials.1.key", "winter mix",
                "materials.1.kind", "oils",
                "materials.1.oils", "house olive 60 %\ncoconut: rest",
                "materials.2.key", "fifty",
                "materials.2.kind", "lye",
                "materials.2.strength", "50 % sodium",
                "materials.3.key", "never named",
                "materials.3.kind", "clay");
        MaterialNames workshop = NAMES.with(source.materials());

        FormulaForm form = form(castile("oils.0.name", "Winter mix", "alkali", "fifty"));
        Formula read = form.read(workshop).formula().orElseThrow();

        assertThat(read.alkali()).isEqualTo(new AlkaliChoice.Stock("fifty", Optional.empty(), false));
        assertThat(read.materials().stream().map(OwnMaterial::key))
                .containsExactlyInAnyOrder("winter mix", "House olive", "fifty");
        assertThat(read.materials())
                .allSatisfy(own -> assertThat(source.materials()).contains(own));
        assertThat(FormulaForm.of(read).read(NAMES).formula()).contains(read);
    }

    @Test
    void the_remarks_of_an_addition_move_with_its_row() {
        Formula source = FormulaFile.read("""
                        recipe: Tideline
                        # the oils
                        oils:
                          coconut: 100 %
                        alkali: sodium
                        superfat: 18 %
                        water: 34 % lye
                        additions:
                          # first
                          - of: kaolin
                            amount: 2 g  # by the spoon
                            stage: trace
                          # second
                          - of: sea-salt
                            amount: 60 % of oils
                            stage: trace
                        """).formula().orElseThrow();
        FormulaForm form = FormulaForm.of(source);
        Map<String, String> swapped = new LinkedHashMap<>(form.fields());
        form.fields().forEach((name, text) -> {
            if (name.startsWith("additions.")) {
                swapped.put("additions." + (name.charAt(10) == '0' ? "3" : "1") + name.substring(11), text);
            }
        });
        swapped.keySet().removeIf(name -> name.startsWith("additions.0"));

        Comments moved = form(swapped).read(NAMES).formula().orElseThrow().comments();

        assertThat(moved.before()).containsEntry("additions.0", List.of(" second"));
        assertThat(moved.before()).containsEntry("additions.1", List.of(" first"));
        assertThat(moved.before()).containsEntry("oils", List.of(" the oils"));
        assertThat(moved.beside()).containsEntry("additions.1.amount", " by the spoon");
    }

    @Test
    void what_is_typed_cannot_become_another_entry_of_the_file() {
        Formula read = formula("recipe", "a\": {x: 1} # not a remark", "notes", "oils:\r\n  lard: 100 %\r\n---\r\n");

        assertThat(read.recipe()).isEqualTo("a\": {x: 1} # not a remark");
        assertThat(read.notes()).isEqualTo("oils:\n  lard: 100 %\n---\n");
        assertThat(read.oils()).hasSize(1);
        assertThat(read("recipe", "x\u0000y").problems()).containsOnlyKeys("recipe");
        assertThat(read("recipe", "x\nuse: sale").problems()).containsOnlyKeys("recipe");
        assertThat(formula("recipe", "x\ud800y").recipe()).isEqualTo("x\ufffdy");
    }

    @Test
    void more_than_a_form_holds_is_refused_and_said_of_its_field() {
        assertThat(FormFields.tooMuch(Map.of("oils.200.name", List.of("x")))
                        .orElseThrow()
                        .sentence())
                .isEqualTo("the form has room for 200 oils; edit a longer formula as a file");
        assertThat(FormFields.tooMuch(Map.of("water", List.of("x".repeat(2001))))
                        .orElseThrow()
                        .path())
                .isEqualTo("water");
        assertThat(FormFields.tooMuch(Map.of("oils.199.name", List.of("x"), "notes", List.of("x".repeat(50_000)))))
                .isEmpty();
        assertThat(FormulaForm.from(Map.of("oils.999999.name", List.of("x"))).oils())
                .hasSize(200);
    }

    @Test
    void a_draft_of_a_later_release_is_not_read_and_one_with_unknown_fields_is() {
        Drafted drafted = new Drafted(form(castile()), "", "", "", 0);
        String draft = drafted.write();

        assertThat(Drafted.read(draft.replace("\"schema\":1", "\"schema\":2"))).isEmpty();
        assertThat(Drafted.read(draft.replace("\"schema\":1", "\"schema\":1,\"later\":[1]")
                        .replace("\"recipe\"", "\"colour\":\"red\",\"recipe\"")))
                .contains(drafted);
        assertThat(Drafted.read("{")).isEmpty();
        assertThat(Drafted.read("[]")).isEmpty();
        assertThat(Drafted.read("x".repeat(1_000_001))).isEmpty();
    }

    @Test
    void every_field_of_a_blank_form_is_named() {
        assertThat(FormulaForm.blank().fields().keySet().stream().collect(Collectors.joining(" ")))
                .isEqualTo("recipe version use notes oils.0.name oils.0.amount oils.1.name oils.1.amount oils.2.name"
                        + " oils.2.amount alkali superfat water acids cured-water process.make process.oils process.lye"
                        + " process.oven process.pour");
    }

    @Test
    void an_oil_without_an_amount_says_nothing_of_the_others() {
        assertThat(troubles(read("oils.0.amount", "60 %", "oils.1.name", "coconut", "oils.1.amount", "")))
                .containsExactly("oils.1.amount: it has no amount; write 350 g, 80 % or rest");
        assertThat(troubles(read("oils.0.amount", "600 g", "oils.1.name", "coconut", "oils.1.amount", "")))
                .containsExactly("oils.1.amount: it has no amount; write 350 g, 80 % or rest");
    }

    @Test
    void an_oil_of_nothing_is_said_to_be_0() {
        assertThat(troubles(read("oils.1.name", "coconut", "oils.1.amount", "0 %")))
                .containsExactly("oils.1.amount: the amount of 'coconut' is 0; write more than 0, or leave it out");
    }
}
