package lyewright.chemistry;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.ResolvedFormula.PortionPart;

/**
 * What a whole batch, and each portion of it, consists of from pouring to the cured bar.
 *
 * @param moments the whole batch, toppings included: poured, cut, cured
 * @param portions each portion by itself, without toppings; none for a single batter
 * @param worstBar where portions become bars of their own: for each substance the bar that has most of it; none for a single
 *     batter
 */
public record BatchComposition(List<Composition> moments, List<Portion> portions, List<WorstBar> worstBar) {

    /** Copies its lists. */
    public BatchComposition {
        moments = List.copyOf(moments);
        portions = List.copyOf(portions);
        worstBar = List.copyOf(worstBar);
    }

    /**
     * One portion.
     *
     * @param name its name
     * @param moments poured, cut, cured
     */
    public record Portion(String name, List<Composition> moments) {

        /** Copies its list. */
        public Portion {
            moments = List.copyOf(moments);
        }

        /**
         * The bar that is of this portion alone.
         *
         * @return its composition once cured
         */
        public Composition cured() {
            return BatchComposition.at(moments, Composition.Moment.CURED);
        }
    }

    /**
     * What given masses become.
     *
     * @param batch the batch's lines
     * @param masses grams by line, none under 0
     * @return the composition of all of it and of each portion
     */
    public static BatchComposition of(BatchLines batch, double[] masses) {
        List<PortionPart> parts = batch.formula().portions();
        List<Portion> portions = new ArrayList<>(parts.size());
        for (int p = 0; p < parts.size(); p++) {
            portions.add(new Portion(parts.get(p).name(), Composition.of(batch, batch.massesOfPortion(masses, p))));
        }
        return new BatchComposition(Composition.of(batch, masses), portions, WorstBar.among(portions));
    }

    /**
     * The batch at one moment.
     *
     * @param moment which
     * @return its composition then
     */
    public Composition at(Composition.Moment moment) {
        return at(moments, moment);
    }

    private static Composition at(List<Composition> moments, Composition.Moment moment) {
        return moments.stream()
                .filter(composition -> composition.moment() == moment)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no composition at " + moment.word()));
    }
}
