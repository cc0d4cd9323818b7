package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import lyewright.fill.Fill;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** How often each superfat was drawn, on generated formulas and on some that are hardly or not at all in doubt. */
class SuperfatShapeTest {

    private static final int CASES = 60;

    private static void holds(String as, SuperfatBand band) {
        SuperfatShape shape = band.shape();
        int many = shape.shares().size();

        assertThat(many).as(as).isBetween(1, 24);
        assertThat(shape.shares()).as(as).allMatch(share -> share >= 0);
        assertThat(shape.shares().stream().mapToDouble(share -> share).sum())
                .as(as)
                .isCloseTo(1, within(1e-9));
        assertThat(shape.belowZero()).as(as).isCloseTo(band.freeAlkaliProbability(), within(1e-9));
        boolean within = shape.edge(0) < 0 && shape.edge(many) > 0;
        assertThat(!within || IntStream.rangeClosed(0, many).anyMatch(i -> shape.edge(i) == 0))
                .as("%s: zero is an edge of %s", as, shape)
                .isTrue();
    }

    @Test
    void the_shares_are_all_of_the_draws_and_those_below_zero_the_chance_of_alkali() {
        int sheets = 0;
        for (long seed = 0; seed < CASES; seed++) {
            Outcome<MakingSheet> sheet = ResolvedFormula.of(RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                    .then(formula -> MakingSheet.of(formula, Fill.mouldMass(1500), Equipment.USUAL));
            if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
                holds("case " + seed, ok.value().band());
                sheets++;
            }
        }
        assertThat(sheets).isGreaterThan(CASES / 3);
    }

    @Test
    void where_the_low_end_is_there_a_fortieth_lies_below() {
        SuperfatBand band = AFormula.ofOils("coconut", "100 %")
                .superfat("3 %")
                .puritiesAssumed()
                .sheet(Fill.oilMass(1000))
                .band();
        SuperfatShape shape = band.shape();
        double below = 0;
        double surely = 0;
        for (int i = 0; i < shape.shares().size(); i++) {
            surely += shape.edge(i + 1) <= band.lowPercent() ? shape.shares().get(i) : 0;
            below += shape.edge(i) < band.lowPercent() ? shape.shares().get(i) : 0;
        }

        assertThat(0.025).isBetween(surely - 1e-9, below + 1e-9);
    }

    @Test
    void a_few_draws_beyond_zero_are_not_cut_off() {
        for (String superfat : new String[] {"0 %", "3 %", "3.5 %", "4 %"}) {
            holds(
                    superfat,
                    AFormula.ofOils("coconut", "100 %")
                            .superfat(superfat)
                            .puritiesAssumed()
                            .sheet(Fill.oilMass(1000))
                            .band());
        }
        holds(
                "far too much soda",
                AFormula.ofOils("olive-virgin", "100 g")
                        .naohAsWeighed("90 g")
                        .sheet(Fill.AS_WRITTEN)
                        .band());
    }
}
