package lyewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Moment;
import lyewright.fill.Fill;
import lyewright.makingsheet.AFormula;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Purpose;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** Sums that sentences, pictures and comparisons speak of. That their formulas give them, {@link EveryFigureRecomputesTest} sees. */
class SumsTest {

    private static AFormula salty() {
        return AFormula.ofOils("coconut", "60 %", "beeswax", "4 %", "olive-virgin", "rest")
                .superfat("12 %")
                .portions("plain", "60 %", "kelp", "rest")
                .add("sea-salt", "30 % of oils", "trace")
                .add("green-clay", "12 g per kg portion oils", "portion kelp")
                .dispersed("water", "3 to 1")
                .add("lavender-oil", "2 % of oils", "every portion");
    }

    private static final MakingSheet SHEET = salty().sheet(Fill.mouldMass(1500));
    private static final Why WHY = Why.of(SHEET);

    private static Reason reason(String path) {
        return WHY.reason(path).orThrow();
    }

    private static double value(String path) {
        return reason(path).value().orElseThrow();
    }

    @Test
    void all_soap_is_the_sum_of_each_oils_soap_and_each_leads_to_its_own_why() {
        Composition cured = SHEET.composition().at(Moment.CURED);
        Reason soap = reason("composition.cured.soap.grams");

        assertThat(soap.value().orElseThrow()).isCloseTo(cured.grams(Composition.Kind.SOAP), within(1e-9));
        assertThat(soap.inputs())
                .hasSizeGreaterThan(1)
                .allSatisfy(input ->
                        assertThat(reason(input.figure().orElseThrow()).value()).contains(input.value()));
        assertThat(soap.steps().get(0).formula()).contains(" + ");
    }

    @Test
    void the_kinds_of_the_cured_bar_come_to_all_of_it() {
        List<String> kinds = WHY.paths().stream()
                .filter(path -> path.startsWith("composition[2].kinds.") && path.endsWith(".percent"))
                .toList();

        assertThat(kinds).hasSizeGreaterThan(6);
        assertThat(kinds.stream().mapToDouble(SumsTest::value).sum()).isCloseTo(100, within(1e-6));
    }

    /** Only the oil is superfat. */
    @Test
    void wax_that_is_left_is_no_oil_that_is_left() {
        assertThat(value("composition.cured.waxLeft.percent"))
                .isCloseTo(SHEET.composition().at(Moment.CURED).waxLeftPercent(), within(1e-9));
        assertThat(reason("composition.cured.oilLeft.percent").inputs())
                .noneMatch(input ->
                        input.meaning().toLowerCase(java.util.Locale.ROOT).contains("wax"));
    }

    @Test
    void what_is_poured_is_all_that_is_weighed_by_what_it_is_for() {
        double sum = 0;
        for (Purpose purpose : Purpose.values()) {
            sum += WHY.reason("sums.poured." + purpose.word() + ".grams") instanceof Outcome.Ok<Reason> poured
                    ? poured.value().value().orElseThrow()
                    : 0;
        }

        assertThat(sum).isCloseTo(SHEET.totals().batch(), within(1e-6));
        assertThat(value("sums.poured.salt.grams"))
                .isCloseTo(0.3 * SHEET.totals().oils(), within(3.0));
        assertThat(WHY.reason("sums.poured.stockLye.grams").problems()).isNotEmpty();
    }

    @Test
    void what_goes_into_every_portion_is_added_up() {
        Reason lavender = reason("sums.additions.lavender-oil.grams");

        assertThat(lavender.inputs()).hasSize(2);
        assertThat(lavender.steps().get(0).formula()).isEqualTo("lavender + lavender 2");
        assertThat(value("sums.additions.lavender-oil.percentOfOils")).isCloseTo(2, within(0.01));
    }

    @Test
    void what_is_weighed_and_does_not_reach_the_mould_stays_behind() {
        Fill full = Fill.mouldMass(1500);
        Fill heldBack = new Fill(full.target(), full.mould(), full.cut(), 0.02);
        MakingSheet sheet = salty().sheet(heldBack);
        Reason stays = Why.of(sheet).reason("sums.heldBackGrams").orThrow();

        assertThat(stays.value().orElseThrow()).isCloseTo(0.02 * sheet.totals().batch(), within(1e-9));
        assertThat(stays.steps().get(0).formula()).isEqualTo("batch − mould");
    }

    @Test
    void every_row_of_a_comparison_leads_to_a_figure_of_the_same_value() {
        List<Comparison.Row> rows = Comparison.figures(SHEET);

        assertThat(rows).hasSizeGreaterThan(50).allSatisfy(row -> {
            Reason reason = reason(WHY.ofComparison(row.path()).orElseThrow());
            assertThat(reason.value().orElseThrow())
                    .as("%s shows %s", row.path(), reason.path())
                    .isCloseTo(row.a().orElseThrow(), within(1e-9));
        });
    }

    @Test
    void what_only_the_other_has_leads_nowhere() {
        assertThat(Set.of("oils.castor", "additions.honey", "fattyAcids.C22:1", "cured.acidLeftPercent"))
                .allSatisfy(row -> assertThat(WHY.ofComparison(row)).as(row).isEmpty());
    }
}
