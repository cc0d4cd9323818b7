package lyewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.AFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.HouseMaterials;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** What can be asked, how it may be named, and that an answer says where everything comes from. */
class WhyTest {

    private static AFormula plain() {
        return AFormula.ofOils("coconut", "250 g", "olive-virgin", "750 g")
                .superfat("5 %")
                .puritiesAssumed();
    }

    private static Why of(AFormula formula) {
        return Why.of(formula.sheet(Fill.mouldMass(1500)));
    }

    private static Reason reason(AFormula formula, String path) {
        return of(formula).reason(path).orThrow();
    }

    @Test
    void an_answer_holds_the_figure_its_formula_and_what_is_put_in() {
        Reason reason = reason(plain(), "alkali.naohGrams");

        assertThat(reason.title()).isEqualTo("Sodium hydroxide to weigh");
        assertThat(reason.unit()).isEqualTo("g");
        assertThat(reason.steps().get(0).formula()).isEqualTo("down(needed, step)");
        assertThat(reason.steps()).extracting(Reason.Step::name).contains("needed", "moles", "equivalents");
        assertThat(reason.inputs())
                .extracting(Reason.Input::name)
                .contains("coconut oil", "SV of coconut oil", "purity of sodium hydroxide", "asked superfat", "step");
        assertThat(reason.text()).isEqualTo(Digits.figure(reason.value().orElseThrow()));
    }

    @Test
    void everything_put_in_says_where_it_comes_from() {
        for (long seed = 0; seed < 15; seed++) {
            Outcome<MakingSheet> sheet = ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                    .then(formula -> MakingSheet.of(formula, Fill.mouldMass(1500), Equipment.USUAL));
            if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
                Why why = Why.of(ok.value());
                Set<String> paths = Set.copyOf(why.paths());
                for (Reason reason : why.all()) {
                    assertThat(reason.sentence()).as(reason.path()).endsWith(".");
                    for (Reason.Input input : reason.inputs()) {
                        assertThat(input.meaning())
                                .as("%d %s %s", seed, reason.path(), input)
                                .isNotBlank();
                        assertThat(input.source().isBlank())
                                .as("%d %s %s", seed, reason.path(), input)
                                .isEqualTo(input.figure().isPresent());
                        input.figure()
                                .ifPresent(path -> assertThat(paths.contains(path))
                                        .as(path)
                                        .isTrue());
                    }
                }
            }
        }
    }

    @Test
    void a_figure_put_in_has_the_value_it_has_by_itself() {
        List<Reason> all = of(plain().add("lavender-oil", "20 g", "trace")).all();
        Map<String, Optional<Double>> values = new HashMap<>();
        all.forEach(reason -> values.put(reason.path(), reason.value()));
        for (Reason reason : all) {
            for (Reason.Input input : reason.inputs()) {
                input.figure()
                        .ifPresent(path -> assertThat(values.get(path))
                                .as(reason.path() + " puts in " + path)
                                .contains(input.value()));
            }
        }
    }

    @Test
    void the_sources_are_each_told_once() {
        Reason reason = reason(plain(), "superfat.sheetPercent");

        assertThat(reason.sources())
                .doesNotHaveDuplicates()
                .contains("IUPAC abridged atomic weights (memory)", "CXS 210-1999 Table 2 (via ZYO)");
    }

    @Test
    void what_is_not_sure_says_between_which_ends_it_lies() {
        Reason reason = reason(
                plain().purities("naoh=98 ± 0.4").own(HouseMaterials.oilOfFive("house-oil")), "superfat.sheetPercent");

        Spread soda = spread(reason, "purity of sodium hydroxide");
        assertThat(soda.kind()).isEqualTo(Spread.Kind.NORMAL);
        assertThat(soda.low()).isCloseTo(0.976, within(1e-12));
        Spread coconut = spread(reason, "SV of coconut oil");
        assertThat(coconut.kind()).isEqualTo(Spread.Kind.RECTANGULAR);
        assertThat(coconut.low()).isEqualTo(248);
        assertThat(coconut.high()).isEqualTo(265);
        // 0.2 g of error in service from 500 to 2000 steps, and half a step of 0.1 g
        Spread weighed = spread(reason, "sodium hydroxide");
        assertThat(weighed.kind().word()).isEqualTo("trapezoidal");
        assertThat(weighed.high() - weighed.low()).isCloseTo(0.5, within(1e-9));
        assertThat(weighed.evenHigh() - weighed.evenLow()).isCloseTo(0.3, within(1e-9));
    }

    private static Spread spread(Reason reason, String input) {
        return reason.inputs().stream()
                .filter(i -> i.name().equals(input))
                .findFirst()
                .orElseThrow()
                .spread()
                .orElseThrow();
    }

    /** 35 % of 650 g is 227.49999999999997 g in doubles, which is half a step all the same. */
    @Test
    void half_a_step_is_rounded_up_however_doubles_carry_it() {
        Why why = Why.of(AFormula.ofOils("coconut", "35 %", "olive-virgin", "65 %")
                .superfat("5 %")
                .sheet(Fill.oilMass(650)));

        Reason edge = why.reason("vessels.oil pot.coconut.weighGrams").orThrow();
        assertThat(edge.text()).isEqualTo("228");
        assertThat(edge.inputs().get(0).text()).startsWith("227.");
    }

    @Test
    void a_volume_is_found_by_trial_and_shown_to_fit() {
        Fill box = lyewright.fill.Moulds.fullOf(lyewright.fill.Moulds.box(300, 80, 65));
        Reason reason = Why.of(plain().sheet(box)).reason("totals.targetGrams").orThrow();

        assertThat(reason.checks()).hasSize(1);
        assertThat(reason.checks().get(0).right().formula()).isEqualTo("length × width × height ÷ 1000");
        assertThat(reason.checks().get(0).right().text()).isEqualTo("1560");
        assertThat(reason.checks().get(0).left().text()).isEqualTo("1560");
    }

    @Test
    void what_is_not_there_is_told_why() {
        Why why = Why.of(
                AFormula.ofOils("olive-virgin", "1 kg").naohAsWeighed("130 g").sheet(Fill.oilMass(1000)));

        for (String path : List.of("superfat.askedPercent", "totals.targetGrams", "totals.offTargetGrams", "bars")) {
            Reason reason = why.reason(path).orThrow();
            assertThat(reason.value()).as(path).isEmpty();
            assertThat(reason.text()).as(path).isEmpty();
            assertThat(reason.steps()).as(path).isEmpty();
            assertThat(reason.sentence()).as(path).isNotBlank();
        }
        assertThat(why.reason("bars.count").orThrow().path()).isEqualTo("bars");
    }

    @Test
    void oils_whose_acids_nobody_knows_have_none_of_their_figures() {
        Why why = of(AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %"));

        assertThat(why.reason("keeping").orThrow().value()).isEmpty();
        assertThat(why.reason("oilPhase.iodineValueFromAcids").orThrow().value())
                .isEmpty();
        assertThat(why.reason("unknownPercent").orThrow().value()).contains(100.0);
    }

    @Test
    void a_counted_thing_may_be_named() {
        Why why = of(AFormula.ofOils("coconut", "30 %", "olive-virgin", "rest")
                .superfat("6 %")
                .portions("plain", "60 %", "dark sea", "rest")
                .add("green-clay", "12 g per kg portion oils", "portion dark sea")
                .dispersed("water", "3 to 1"));

        assertThat(why.reason("portions.dark sea.superfatPercent").orThrow().path())
                .isEqualTo("portions[1].superfatPercent");
        assertThat(why.reason("portions.dark sea.green-clay.grams").orThrow().path())
                .isEqualTo("portions[1].additions[0].grams");
        assertThat(why.reason("vessels.cup: alkali.naoh.exactGrams").orThrow().path())
                .matches("vessels\\[\\d\\].items\\[0\\].exactGrams");
        assertThat(why.reason("composition.cured.Water.grams").orThrow().title())
                .startsWith("Water in the batch");
    }

    @Test
    void an_unknown_figure_is_refused_with_what_is_near() {
        Why why = of(plain());

        assertThat(said(why, "alkali.naohGram")).contains("no figure 'alkali.naohGram'", "alkali.naohGrams");
        assertThat(said(why, "naohgrams")).contains("did you mean alkali.naohGrams?");
        assertThat(said(why, "naohGram")).contains("did you mean alkali.naohGrams?");
        assertThat(said(why, "totals")).contains("'totals' holds several figures", "totals.oilsGrams");
        assertThat(said(why, "")).contains("no figure ''");
        assertThat(said(why, "nothing like it at all")).contains("such as alkali.naohGrams");
    }

    private static String said(Why why, String path) {
        Outcome<Reason> outcome = why.reason(path);
        assertThat(outcome.problems()).hasSize(1);
        return outcome.problems().get(0).sentence();
    }

    /** 30 and 70 % by pure mass: 30 ÷ 39.997 and 70 ÷ 56.105 mol. */
    @Test
    void a_mix_by_mass_is_turned_into_moles() {
        Reason reason = reason(plain().mixed("30 %", "70 %", AlkaliChoice.Basis.PURE_MASS), "alkali.kohGrams");

        assertThat(reason.steps())
                .filteredOn(step -> step.name().equals("share of KOH"))
                .singleElement()
                .satisfies(step ->
                        assertThat(step.value()).isCloseTo(70 / 56.105 / (30 / 39.997 + 70 / 56.105), within(1e-12)));
    }
}
