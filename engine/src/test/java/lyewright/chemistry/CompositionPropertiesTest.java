package lyewright.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.formula.Purities;
import lyewright.formula.RandomFormulas;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** What holds for every batch, on formulas of every shape. A case is its seed. */
class CompositionPropertiesTest {

    private static final int CASES = 1500;
    private static final double OILS = 1000; // g
    private static final double TOLERANCE_MILLIGRAM = 0.001; // g

    private record Case(long seed, BatchLines batch, BatchComposition composition) {

        double[] masses() {
            return batch.massesAt(OILS);
        }

        List<Composition> settled() {
            List<Composition> settled = new ArrayList<>();
            for (List<Composition> moments : all()) {
                moments.stream().filter(Composition::settled).forEach(settled::add);
            }
            return settled;
        }

        /** Of the batch and of each portion. */
        private List<List<Composition>> all() {
            List<List<Composition>> all = new ArrayList<>(List.of(composition.moments()));
            composition.portions().forEach(portion -> all.add(portion.moments()));
            return all;
        }

        @Override
        public String toString() {
            return "seed " + seed;
        }
    }

    private static final List<Case> MADE = made();

    /** Those that can be weighed at all: nothing under 0, and something that reacts. */
    private static List<Case> made() {
        List<Case> made = new ArrayList<>();
        for (long seed = 0; seed < CASES; seed++) {
            Outcome<BatchLines> laidOut = ResolvedFormula.of(
                            RandomFormulas.of(seed), Tables.bundled(), Purities.ASSUMED)
                    .then(BatchLines::of);
            if (laidOut instanceof Outcome.Ok<BatchLines> ok) {
                double[] masses = ok.value().massesAt(OILS);
                if (Arrays.stream(masses).allMatch(m -> m >= 0)) {
                    made.add(new Case(seed, ok.value(), BatchComposition.of(ok.value(), masses)));
                }
            }
        }
        assertThat(made).hasSizeGreaterThan(CASES / 3);
        return made;
    }

    @Test
    void the_cases_are_of_every_kind() {
        Set<Kind> kinds = new HashSet<>();
        MADE.forEach(made ->
                made.composition.moments().get(2).substances().forEach(substance -> kinds.add(substance.kind())));
        assertThat(kinds).containsExactlyInAnyOrder(Kind.values());
        assertThat(MADE).anyMatch(made -> made.composition.portions().size() > 2);
        assertThat(MADE).anyMatch(made -> made.batch.lines().stream().anyMatch(BatchLine::onTop));
    }

    @Test
    void mass_in_is_mass_out_at_every_moment() {
        for (Case made : MADE) {
            for (Composition composition : made.settled()) {
                double sum = composition.substances().stream()
                        .mapToDouble(Substance::grams)
                        .sum();
                double percent = composition.substances().stream()
                        .mapToDouble(Substance::percent)
                        .sum();
                assertThat(sum)
                        .as("%s, %s", made, composition.moment())
                        .isCloseTo(composition.totalGrams(), within(TOLERANCE_MILLIGRAM));
                assertThat(percent).as(made.toString()).isCloseTo(100, within(1e-6));
            }
            double weighed = Arrays.stream(made.masses()).sum();
            Composition.Water water = made.composition.moments().get(2).water();
            assertThat(made.composition.moments().get(0).totalGrams())
                    .as(made.toString())
                    .isCloseTo(weighed, within(TOLERANCE_MILLIGRAM));
            assertThat(made.composition.moments().get(2).totalGrams() + water.lostGrams())
                    .as(made.toString())
                    .isCloseTo(weighed, within(TOLERANCE_MILLIGRAM));
        }
    }

    @Test
    void nothing_is_under_nothing_and_no_bar_gains_weight() {
        for (Case made : MADE) {
            for (Composition composition : made.settled()) {
                assertThat(composition.substances()).as(made.toString()).allMatch(s -> s.grams() > 0);
                assertThat(composition.totalFattyMatterPercent().orElseThrow())
                        .as(made.toString())
                        .isBetween(0.0, 100.0);
                assertThat(composition.chloridePercent().orElseThrow())
                        .as(made.toString())
                        .isBetween(0.0, 100.0);
            }
            assertThat(made.composition.moments().get(2).water().lostGrams())
                    .as(made.toString())
                    .isGreaterThanOrEqualTo(0);
        }
    }

    @Test
    void no_substance_is_told_twice() {
        for (Case made : MADE) {
            for (Composition composition : made.settled()) {
                assertThat(composition.substances())
                        .as(made.toString())
                        .extracting(s -> List.of(s.kind(), s.name(), s.of()))
                        .doesNotHaveDuplicates();
            }
        }
    }

    /** Glycerol is a third of a mole for each mole of alkali that reaches glycerides, and what was added as such. */
    @Test
    void glycerol_comes_of_glycerides_and_never_of_free_acids() {
        for (Case made : MADE) {
            Reaction reaction = Reaction.of(made.batch.lines(), made.masses());
            double onGlycerides =
                    Math.max(0, Math.min(reaction.reaching(), reaction.equivalents()) - reaction.freeAcid());
            Composition cured = made.composition.moments().get(2);
            double added = grams(made.composition.moments().get(0), Kind.GLYCEROL);
            assertThat(grams(cured, Kind.GLYCEROL))
                    .as(made.toString())
                    .isCloseTo(added + onGlycerides / 3 * Stoichiometry.GLYCEROL, within(TOLERANCE_MILLIGRAM));
        }
    }

    private static double grams(Composition composition, Kind kind) {
        return composition.grams(kind);
    }

    /** Superfat under 0 is free alkali in the bar, and only that is. */
    @Test
    void free_alkali_is_what_the_superfat_says() {
        for (Case made : MADE) {
            Reaction reaction = Reaction.of(made.batch.lines(), made.masses());
            Composition cured = made.composition.moments().get(2);
            double left = 0;
            for (Substance s : cured.substances()) {
                double molarMass = s.name().startsWith("Sodium") ? 39.997 : 56.105;
                left += s.kind() == Kind.FREE_ALKALI ? s.grams() / molarMass : 0;
            }
            double expected = Math.max(0, reaction.reaching() - reaction.equivalents());
            assertThat(left).as(made.toString()).isCloseTo(expected, within(1e-6));
        }
    }

    @Test
    void portions_and_toppings_are_the_batch() {
        for (Case made : MADE) {
            if (made.composition.portions().isEmpty()) {
                continue;
            }
            double[] sum = new double[made.masses().length];
            for (int p = 0; p < made.composition.portions().size(); p++) {
                double[] part = made.batch.massesOfPortion(made.masses(), p);
                for (int i = 0; i < sum.length; i++) {
                    sum[i] += part[i];
                }
            }
            for (int i = 0; i < sum.length; i++) {
                BatchLine line = made.batch.lines().get(i);
                double all = made.masses()[i];
                assertThat(sum[i])
                        .as("%s, %s", made, line.key())
                        .isCloseTo(line.onTop() ? 0 : all, within(1e-9 * (1 + all)));
            }
        }
    }

    /** Twice the batch is the same bar. */
    @Test
    void a_bar_does_not_depend_on_the_size_of_the_batch() {
        for (Case made : MADE) {
            double[] twice = Arrays.stream(made.masses()).map(m -> 2 * m).toArray();
            Composition once = made.composition.moments().get(2);
            Composition doubled = Composition.of(made.batch, twice).get(2);
            assertThat(doubled.substances()).as(made.toString()).hasSameSizeAs(once.substances());
            for (Kind kind : Kind.values()) {
                assertThat(doubled.percent(kind)).as("%s, %s", made, kind).isCloseTo(once.percent(kind), within(1e-9));
            }
        }
    }
}
