package lyewright.formula;

import static lyewright.formula.FormulaTexts.NOTEBOOK;
import static lyewright.formula.FormulaTexts.PLAIN;
import static lyewright.formula.FormulaTexts.formula;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lyewright.material.Tables;
import lyewright.measure.MassUnit;
import lyewright.measure.Problem;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;

/** What the rules find in formulas that no file could hold, and how they look at the tables. Files: BadFormulaFileTest. */
class FormulaRulesTest {

    private static List<String> paths(Formula formula) {
        return FormulaRules.check(formula).stream().map(Problem::path).toList();
    }

    private static Formula with(List<OilLine> oils, List<PortionLine> portions, List<OwnMaterial> materials) {
        Formula f = formula(PLAIN);
        return new Formula(
                f.recipe(),
                1,
                Use.OWN,
                "",
                oils,
                f.alkali(),
                f.superfat(),
                f.water(),
                f.acids(),
                f.curedWater(),
                f.process(),
                List.of(),
                portions,
                materials,
                Comments.NONE);
    }

    private static Formula with(AlkaliChoice alkali) {
        Formula f = formula(NOTEBOOK);
        return new Formula(
                f.recipe(),
                1,
                Use.OWN,
                "",
                f.oils(),
                alkali,
                f.superfat(),
                f.water(),
                f.acids(),
                f.curedWater(),
                f.process(),
                List.of(),
                List.of(),
                List.of(),
                Comments.NONE);
    }

    private static Formula with(Process process, Addition addition) {
        Formula f = formula(PLAIN + "portions: {a into b: 50 %, c: 50 %}\n");
        return new Formula(
                f.recipe(),
                1,
                Use.OWN,
                "",
                f.oils(),
                f.alkali(),
                f.superfat(),
                f.water(),
                f.acids(),
                f.curedWater(),
                process,
                List.of(addition),
                f.portions(),
                List.of(),
                Comments.NONE);
    }

    private static final Addition SALT = new Addition(
            "sea-salt",
            new Amount.Weight(WrittenMass.ofGrams("5"), false),
            Stage.of(Stage.Kind.TRACE),
            Optional.empty(),
            false);

    private static OilLine oil(String key, String percent) {
        return new OilLine(key, new OilLine.Percent(Share.ofPercent(percent)));
    }

    private static OwnMaterial material(String key, String kind, List<OwnMaterial.BlendPart> oils) {
        return new OwnMaterial(
                key,
                kind,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                oils,
                "",
                "",
                "",
                "");
    }

    @Test
    void a_formula_that_keeps_the_rules_costs_no_list() {
        assertThat(FormulaRules.check(formula(PLAIN))).isEmpty();
        assertThat(FormulaRules.check(formula(NOTEBOOK), Tables.bundled())).isEmpty();
    }

    @Test
    void oils_listed_twice_or_without_a_name_are_found() {
        List<OilLine> oils = List.of(oil("coconut", "50"), oil("coconut", "25"), oil("", "20"), oil(" castor", "5"));
        assertThat(paths(with(oils, List.of(), List.of()))).containsExactly("oils.coconut", "oils", "oils. castor");
    }

    @Test
    void portions_listed_twice_or_without_a_name_are_found() {
        Optional<Share> half = Optional.of(Share.ofPercent("40"));
        List<PortionLine> portions = List.of(
                new PortionLine("a", half),
                new PortionLine("a", half),
                new PortionLine("b\nc", Optional.of(Share.ofPercent("20"))));
        assertThat(paths(with(formula(PLAIN).oils(), portions, List.of())))
                .containsExactly("portions.a", "portions.b\nc");
    }

    @Test
    void materials_listed_twice_or_without_a_name_are_found() {
        List<OwnMaterial.BlendPart> twice = List.of(
                new OwnMaterial.BlendPart("castor", Share.ofPercent("50")),
                new OwnMaterial.BlendPart("castor", Share.ofPercent("50")));
        List<OwnMaterial> materials = List.of(
                material("m", "salt", List.of()), material("m", "oils", twice), material("", "salt", List.of()));
        assertThat(paths(with(formula(PLAIN).oils(), List.of(), materials)))
                .containsExactly("materials.m", "materials.m.oils.castor", "materials");
    }

    @Test
    void more_than_five_hundred_of_anything_are_too_many() {
        List<OilLine> oils = new ArrayList<>();
        List<PortionLine> portions = new ArrayList<>();
        List<OwnMaterial> materials = new ArrayList<>();
        List<OwnMaterial.BlendPart> parts = new ArrayList<>();
        IntStream.range(0, 501).forEach(i -> {
            oils.add(oil("o" + i, "1"));
            portions.add(new PortionLine("p" + i, Optional.empty()));
            parts.add(new OwnMaterial.BlendPart("o" + i, Share.WHOLE));
        });
        assertThat(paths(with(oils, portions, List.of(material("m", "oils", parts)))))
                .containsExactly("oils", "portions", "materials.m.oils");
        IntStream.range(0, 501).forEach(i -> materials.add(material("m" + i, "salt", List.of())));
        assertThat(paths(with(formula(PLAIN).oils(), List.of(), materials))).containsExactly("materials");
        Formula f = formula(PLAIN);
        assertThat(paths(new Formula(
                        f.recipe(),
                        1,
                        Use.OWN,
                        "",
                        f.oils(),
                        f.alkali(),
                        f.superfat(),
                        f.water(),
                        f.acids(),
                        f.curedWater(),
                        f.process(),
                        java.util.Collections.nCopies(501, SALT),
                        List.of(),
                        List.of(),
                        Comments.NONE)))
                .containsExactly("additions");
    }

    @Test
    void alkali_given_as_nothing_is_found() {
        AlkaliChoice none = new AlkaliChoice.Given(Optional.empty(), Optional.empty(), Optional.empty(), false);
        assertThat(paths(with(none))).containsExactly("alkali");
        AlkaliChoice nameless = new AlkaliChoice.Stock("", Optional.of(WrittenMass.ofGrams("0")), false);
        assertThat(paths(with(nameless))).containsExactly("alkali", "alkali");
    }

    @Test
    void a_pour_keeps_the_word_into_for_itself() {
        Process.Pour pour = new Process.Pour("c", "a into b", BigDecimal.TEN);
        Process process =
                new Process(Process.Make.COLD, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(pour));
        assertThat(FormulaRules.check(with(process, SALT)))
                .singleElement()
                .satisfies(problem -> assertThat(problem.path()).isEqualTo("process.pour"))
                .satisfies(problem -> assertThat(problem.what()).contains("the word into"));
    }

    @Test
    void a_rate_is_of_oils_only() {
        Addition addition = new Addition(
                "sea-salt",
                new Amount.Per(WrittenMass.ofGrams("5"), MassUnit.KILOGRAM, Amount.Base.BATCH),
                Stage.of(Stage.Kind.TRACE),
                Optional.empty(),
                false);
        assertThat(paths(with(Process.COLD, addition))).containsExactly("additions.0.amount");
    }

    @Test
    void whether_a_kind_and_a_value_may_be_left_out_is_the_tables_to_say() {
        Formula bare = with(formula(PLAIN).oils(), List.of(), List.of(material("x", "", List.of())));
        assertThat(FormulaRules.check(bare)).isEmpty();
        assertThat(FormulaRules.check(bare, key -> key.equals("x"))).isEmpty();
        assertThat(FormulaRules.check(bare, key -> false))
                .extracting(Problem::path)
                .containsExactly("materials.x.kind");
        Formula wax = with(formula(PLAIN).oils(), List.of(), List.of(material("x", "wax", List.of())));
        assertThat(FormulaRules.check(wax, key -> true)).isEmpty();
        assertThat(FormulaRules.check(wax, key -> false))
                .extracting(Problem::path)
                .containsExactly("materials.x.saponification value");
        Formula salt = with(formula(PLAIN).oils(), List.of(), List.of(material("sea-salt", "fatty-acid", List.of())));
        assertThat(FormulaRules.check(salt, Tables.bundled()::has)).isEmpty();
        assertThat(FormulaRules.check(salt, Tables.bundled()))
                .extracting(Problem::path)
                .containsExactly("materials.sea-salt.saponification value");
    }
}
