package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.chemistry.BatchComposition.Portion;
import lyewright.chemistry.Bench.Made;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Moment;
import lyewright.formula.AcidRule;
import lyewright.formula.Stage;
import org.junit.jupiter.api.Test;

/** Portions that become bars of their own. */
class BatchCompositionTest {

    private static Bench twoPortions() {
        return aFormula()
                .own(Own.oil("fat", "200").material())
                .oil("fat", "100")
                .superfat("10")
                .portion("plain", "60")
                .portion("kelp", "40");
    }

    private static BatchComposition composition(Made made) {
        return BatchComposition.of(made.batch(), made.masses());
    }

    @Test
    void a_single_batter_has_no_portions_and_no_worst_bar() {
        Made made = aFormula().oil("coconut", "100").superfat("5").made(1000);
        BatchComposition composition = composition(made);
        assertThat(composition.portions()).isEmpty();
        assertThat(composition.worstBar()).isEmpty();
        assertThat(composition.at(Moment.CURED)).isEqualTo(made.cured());
        assertThat(composition.at(Moment.POUR)).isEqualTo(made.poured());
    }

    /** 10 g of clay in 40 % of the batter are 2.5 times as strong there as in the whole. */
    @Test
    void what_goes_into_one_portion_is_in_that_portion_alone() {
        Made made = twoPortions()
                .add("green-clay", "1", Stage.portion("kelp"))
                .add("lavender-oil", "3", Stage.of(Stage.Kind.EVERY_PORTION))
                .add("sea-salt", "2", Stage.of(Stage.Kind.TRACE))
                .add("rose-petals", "1", Stage.of(Stage.Kind.TOP))
                .made(1000);
        BatchComposition composition = composition(made);
        Portion plain = composition.portions().get(0);
        Portion kelp = composition.portions().get(1);
        assertThat(plain.name()).isEqualTo("plain");
        assertThat(plain.cured().grams(Kind.INERT)).isZero();
        assertThat(kelp.cured().grams(Kind.INERT)).isCloseTo(10, within(1e-9));
        assertThat(plain.cured().grams(Kind.SALT)).isCloseTo(0.6 * 19.6, within(1e-9));
        double poured =
                plain.moments().get(0).totalGrams() + kelp.moments().get(0).totalGrams();
        assertThat(poured + 10).as("with the toppings").isCloseTo(made.total(), within(1e-9));
    }

    @Test
    void the_worst_bar_is_the_one_with_most_of_a_substance() {
        Made made = twoPortions()
                .add("green-clay", "1", Stage.portion("kelp"))
                .add("lavender-oil", "3", Stage.portion("plain"))
                .made(1000);
        BatchComposition composition = composition(made);
        assertThat(composition.worstBar())
                .filteredOn(w -> w.substance().of().equals("green-clay"))
                .singleElement()
                .satisfies(w -> assertThat(w.portion()).isEqualTo("kelp"))
                .satisfies(w -> assertThat(w.percent())
                        .isCloseTo(composition.portions().get(1).cured().percent(Kind.INERT), within(1e-12)));
        assertThat(composition.worstBar())
                .filteredOn(w -> w.substance().of().equals("lavender-oil"))
                .extracting(WorstBar::portion)
                .containsExactly("plain");
        for (WorstBar worst : composition.worstBar()) {
            for (Portion portion : composition.portions()) {
                assertThat(portion.cured().substances())
                        .filteredOn(s -> s.name().equals(worst.substance().name())
                                && s.of().equals(worst.substance().of()))
                        .allSatisfy(s -> assertThat(s.percent()).isLessThanOrEqualTo(worst.percent() + 1e-9));
            }
        }
    }

    @Test
    void of_bars_that_are_alike_the_first_is_named() {
        assertThat(composition(twoPortions().made(1000)).worstBar())
                .isNotEmpty()
                .extracting(WorstBar::portion)
                .containsOnly("plain");
    }

    /** Acid in one portion takes its alkali there; alkali is left over where oil was taken away. */
    @Test
    void each_portion_reacts_by_itself() {
        Made made = twoPortions()
                .acids(AcidRule.AS_WRITTEN)
                .add("citric-acid-anhydrous", "2", Stage.portion("kelp"))
                .made(1000);
        BatchComposition composition = composition(made);
        assertThat(composition.portions().get(0).cured().grams(Kind.ACID_SALT)).isZero();
        assertThat(composition.portions().get(0).cured().grams(Kind.OIL_LEFT)).isCloseTo(60, within(1e-6));
        double taken = 20 * 3 / 192.123;
        double left = 400 - (0.9 * 400 * 200 / 56_105 - taken) / (200 / 56_105.0);
        assertThat(composition.portions().get(1).cured().grams(Kind.OIL_LEFT)).isCloseTo(left, within(0.01));
    }
}
