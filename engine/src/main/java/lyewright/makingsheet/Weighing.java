package lyewright.makingsheet;

import lyewright.chemistry.BatchLine;
import lyewright.material.Tables;
import lyewright.measure.Mass;
import lyewright.uncertainty.Distribution;

/**
 * One thing weighed into its vessel.
 *
 * @param line what it is
 * @param name what it is called
 * @param portion name of the portion it is for, empty outside portions
 * @param exactGrams before rounding
 * @param weigh after rounding to the balance
 * @param reading what the balance shows after it, with the vessel where that is not tared
 * @param balance on which balance
 * @param percentOfOils of all oils
 */
public record Weighing(
        BatchLine line,
        String name,
        String portion,
        double exactGrams,
        Mass weigh,
        Mass reading,
        Balance balance,
        double percentOfOils) {

    /**
     * No weighing is taken to err by more than this share of itself, so that no mass is drawn under zero; this project's own
     * rule. It bites only where a balance is far too coarse, which is cautioned.
     */
    private static final double MOST_OFF = 0.9;

    /**
     * What is really in the vessel when the balance shows the mass: off by what the balance may err under that load, and by
     * what half its step does not show.
     *
     * @param tables with the permitted errors
     * @return grams, around the mass weighed
     */
    public Distribution.Trapezoidal reallyWeighed(Tables tables) {
        double grams = weigh.grams();
        double most = MOST_OFF * grams;
        double permitted = Math.min(most, balance.permittedErrorGrams(reading.grams(), tables));
        double unseen = Math.min(most - permitted, balance.stepGrams() / 2);
        return new Distribution.Trapezoidal(grams, permitted, unseen);
    }
}
