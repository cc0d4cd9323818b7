package lyewright.chemistry;

import java.util.List;

/**
 * What given masses of a formula's lines come to. Superfat is 100 × (1 − alkali that reaches the oil phase ÷ all
 * equivalents of the oil phase); what acids among the additions take never reaches it.
 *
 * @param equivalents mol of alkali the oil phase can take, free acids and the fat of additions included
 * @param freeAcid mol of those that are free acid
 * @param taken mol of alkali that additions take first
 * @param alkali mol of alkali weighed
 * @param totalGrams everything weighed
 * @param waterGrams all water weighed, wherever it is
 */
public record Reaction(
        double equivalents, double freeAcid, double taken, double alkali, double totalGrams, double waterGrams) {

    /**
     * Adds the lines up.
     *
     * @param lines the batch's lines
     * @param masses grams of each
     * @return what they come to
     */
    public static Reaction of(List<BatchLine> lines, double[] masses) {
        double equivalents = 0;
        double freeAcid = 0;
        double taken = 0;
        double alkali = 0;
        double total = 0;
        double water = 0;
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = lines.get(i);
            double m = masses[i];
            equivalents += m * line.equivalents();
            freeAcid += m * line.freeAcid();
            taken += m * line.taken();
            alkali += m * line.alkali();
            water += m * line.water();
            total += m;
        }
        return new Reaction(equivalents, freeAcid, taken, alkali, total, water);
    }

    /**
     * Alkali that reaches the oil phase.
     *
     * @return mol, 0 where additions take it all
     */
    public double reaching() {
        return Math.max(0, alkali - taken);
    }

    /**
     * The superfat.
     *
     * @return percent of the equivalents left without alkali; under 0 when there is alkali left over
     */
    public double superfatPercent() {
        return 100 * (1 - reaching() / equivalents);
    }

    /**
     * Water that neutralisation forms: one for each mole of acid neutralised, whether of the oil phase or the additions.
     *
     * @return grams
     */
    public double waterFormedGrams() {
        return Stoichiometry.WATER * (Math.min(reaching(), freeAcid) + Math.min(alkali, taken));
    }

    /**
     * The mass once cured: all that is not water, with water as its share. Never more than was poured.
     *
     * @param curedWater water of the cured bar, as a fraction
     * @return grams
     */
    public double curedGrams(double curedWater) {
        return Math.min(totalGrams, curedGramsUnlimited(curedWater));
    }

    /**
     * The mass once cured as the cured water alone would have it, which may be more than was poured.
     *
     * @param curedWater water of the cured bar, as a fraction
     * @return grams
     */
    public double curedGramsUnlimited(double curedWater) {
        return (totalGrams - waterGrams - waterFormedGrams()) / (1 - curedWater);
    }
}
