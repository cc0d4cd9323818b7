package lyewright.makingsheet;

import java.util.List;

/**
 * One portion of the batter and what goes into its jug.
 *
 * @param name its name
 * @param sharePercent of the base batter
 * @param emptyGrams its jug's empty weight, 0 where it is tared
 * @param baseBatterGrams base batter poured into its jug
 * @param oilsGrams oils in it, those that additions were wetted out with included
 * @param waterGrams water in it, from rule, dispersions and additions
 * @param superfatPercent its own superfat: oil that something was wetted out with leaves the base batter leaner, and acid
 *     in one portion takes alkali there only
 * @param band how sure that superfat is; drawn when it is first asked
 * @param additions what goes in, in order
 * @param totalGrams everything in its jug at the end
 */
public record PortionSheet(
        String name,
        double sharePercent,
        double emptyGrams,
        double baseBatterGrams,
        double oilsGrams,
        double waterGrams,
        double superfatPercent,
        SuperfatBand band,
        List<PortionAddition> additions,
        double totalGrams) {

    /**
     * What goes into a portion.
     *
     * @param of its key
     * @param grams of it, without the liquid it was wetted out with
     * @param liquidGrams of that liquid, 0 if none
     * @param gramsPerKilogramOils against all oils of the batch
     * @param gramsPerKilogramPortionOils against the portion's own oils
     * @param readingGrams what the balance shows under the jug after it
     */
    public record PortionAddition(
            String of,
            double grams,
            double liquidGrams,
            double gramsPerKilogramOils,
            double gramsPerKilogramPortionOils,
            double readingGrams) {}

    /**
     * Water against oils.
     *
     * @return percent of the portion's oils
     */
    public double waterPercentOfOils() {
        return 100 * waterGrams / oilsGrams;
    }
}
