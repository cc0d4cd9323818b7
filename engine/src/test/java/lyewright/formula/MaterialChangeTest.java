package lyewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lyewright.formula.MaterialChange.Said;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;

/** What a certificate changes is named, with both figures and where each comes from. */
class MaterialChangeTest {

    private static Formula formula(String materials) {
        return FormulaFile.read("""
                        recipe: Lot
                        oils: {olive-virgin: 80 %, coconut: rest}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        """ + materials).formula().orElseThrow();
    }

    private static MaterialNames names(String materials) {
        return MaterialNames.of(Tables.bundled()).with(formula(materials).materials());
    }

    private static final Formula PLAIN = formula("");
    private static final Formula SETTLED = formula("""
            materials:
              olive-virgin: {saponification value: 188 ± 1, source: certificate L-204}
            """);

    @Test
    void a_certificate_goes_before_the_tables_and_says_so() {
        List<MaterialChange> changes = MaterialChange.between(PLAIN, SETTLED, Tables.bundled());

        assertThat(changes).hasSize(1);
        MaterialChange change = changes.get(0);
        assertThat(change.name()).isEqualTo("Olive oil (virgin)");
        assertThat(change.figure()).isEqualTo("saponification value");
        assertThat(change.a().orElseThrow().value()).isEqualTo("190 (184 to 196) mg KOH/g");
        assertThat(change.a().orElseThrow().source())
                .isEqualTo(Tables.bundled()
                        .oil("olive-virgin")
                        .orElseThrow()
                        .saponificationValue()
                        .source());
        assertThat(change.b()).contains(new Said("188 ± 1 mg KOH/g", "certificate L-204"));
    }

    @Test
    void another_certificate_with_the_same_figure_is_another_source() {
        Formula later = formula("""
                materials:
                  olive-virgin: {saponification value: 188 ± 1, source: certificate L-209}
                """);

        assertThat(MaterialChange.between(SETTLED, later, Tables.bundled()))
                .containsExactly(new MaterialChange(
                        "olive-virgin",
                        "Olive oil (virgin)",
                        "source",
                        Optional.of(new Said("certificate L-204", "")),
                        Optional.of(new Said("certificate L-209", ""))));
        assertThat(MaterialChange.between(later, later, Tables.bundled())).isEmpty();
    }

    @Test
    void each_figure_that_a_certificate_gives_is_named_by_itself() {
        Formula more = formula("""
                materials:
                  olive-virgin: {saponification value: 188 ± 1, acid value: 0.8, source: certificate L-204}
                """);

        assertThat(MaterialChange.between(SETTLED, more, Tables.bundled()))
                .extracting(
                        MaterialChange::figure,
                        change -> change.b().orElseThrow().value())
                .containsExactly(org.assertj.core.groups.Tuple.tuple("acid value", "0.8 mg KOH/g"));
    }

    @Test
    void a_material_that_only_one_of_two_names_is_no_change_of_figures() {
        Formula other = PLAIN.withOils(List.of(new OilLine("coconut", new OilLine.Rest())));

        assertThat(MaterialChange.between(other, SETTLED, Tables.bundled())).isEmpty();
    }

    @Test
    void what_is_kept_now_is_taken_over_for_what_the_formula_names() {
        MaterialNames kept = names("""
                materials:
                  olive-virgin: {saponification value: 188 ± 1, source: certificate L-204}
                  castor: {saponification value: 180 ± 1, source: certificate L-205}
                """);

        assertThat(OwnFigures.takenOver(PLAIN, kept::own)).isEqualTo(SETTLED);
        assertThat(OwnFigures.takenOver(SETTLED, kept::own)).isEqualTo(SETTLED);
        assertThat(OwnFigures.takenOver(PLAIN, names("")::own)).isSameAs(PLAIN);
    }

    @Test
    void oils_of_a_premix_that_is_taken_over_come_with_it() {
        String oils = """
                recipe: Lot
                oils: {house: 80 %, coconut: rest}
                alkali: sodium
                superfat: 5 %
                water: 33 % lye
                materials:
                  house: {kind: oils, oils: {olive-virgin: 90 %, castor: 10 %}}
                """;
        Formula carried = FormulaFile.read(oils).formula().orElseThrow();
        MaterialNames kept = MaterialNames.of(Tables.bundled()).with(SETTLED.materials());

        assertThat(OwnFigures.takenOver(carried, kept::own).materials())
                .extracting(OwnMaterial::key)
                .containsExactly("house", "olive-virgin");
    }
}
