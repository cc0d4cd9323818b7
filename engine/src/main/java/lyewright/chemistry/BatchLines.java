package lyewright.chemistry;

import java.util.List;
import lyewright.formula.Linear;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.measure.Outcome;

/**
 * Everything weighed for a formula, each line a straight line in the mass of its oils. Fixed amounts and shares of the
 * batch apart, the whole batch therefore scales with one number.
 *
 * @param formula what it was made from
 * @param lines in the order oils, additions each followed by its dispersing liquid, plain water, alkali
 * @param total everything weighed
 * @param waterByRule the water the formula's rule asks for: plain, dispersing, replaced by liquids, and a stock lye's
 * @param alkaliMoles all alkali
 */
public record BatchLines(
        ResolvedFormula formula, List<BatchLine> lines, Linear total, Linear waterByRule, Linear alkaliMoles) {

    /** Takes its list as it is: only {@link BatchBuilder} makes one. */
    public BatchLines {}

    /**
     * Lays a formula out.
     *
     * @param formula resolved
     * @return its lines, or why they make no batch: additions over 100 % of the batch
     */
    public static Outcome<BatchLines> of(ResolvedFormula formula) {
        return new BatchBuilder(formula).build();
    }

    /**
     * The mass of everything weighed for a mass of oils.
     *
     * @param oils grams of oils
     * @return grams
     */
    public double batchAt(double oils) {
        return (total.perOils() * oils + total.fixed()) / (1 - total.perBatch());
    }

    /**
     * The mass of oils for a mass of everything weighed.
     *
     * @param batch grams of everything weighed
     * @return grams of oils; 0 or less where fixed amounts alone are heavier
     */
    public double oilsFor(double batch) {
        return (batch * (1 - total.perBatch()) - total.fixed()) / total.perOils();
    }

    /**
     * Each line's mass.
     *
     * @param oils grams of oils
     * @return grams by line
     */
    public double[] massesAt(double oils) {
        double batch = batchAt(oils);
        double[] masses = new double[lines.size()];
        for (int i = 0; i < masses.length; i++) {
            masses[i] = lines.get(i).mass().at(oils, batch);
        }
        return masses;
    }

    /**
     * What of given masses is in one portion: its share of the base batter, and whatever goes into it alone. Toppings lie on
     * the whole and are in no portion.
     *
     * @param masses grams by line
     * @param portion place of the portion in the formula, from 0
     * @return grams by line
     */
    public double[] massesOfPortion(double[] masses, int portion) {
        double[] part = new double[masses.length];
        for (int i = 0; i < part.length; i++) {
            part[i] = masses[i] * shareIn(portion, lines.get(i));
        }
        return part;
    }

    /**
     * Where the liquid of a dispersion comes from.
     *
     * @param line a line of kind {@link BatchLine.Kind#DISPERSING_LIQUID}
     * @return out of the water, out of the oils, or on top of both
     */
    public DispersingLiquid.From liquidFrom(BatchLine line) {
        return formula.additions()
                .get(line.place())
                .liquid()
                .orElseThrow(() -> new IllegalStateException(line.key() + " is no dispersing liquid"))
                .from();
    }

    /**
     * Whether a line is part of the oils, in the pot or in a dispersion.
     *
     * @param line any line
     * @return true for oils and for the oil that something is wetted out with
     */
    public boolean isOil(BatchLine line) {
        return line.kind() == BatchLine.Kind.OIL
                || (line.kind() == BatchLine.Kind.DISPERSING_LIQUID && liquidFrom(line) == DispersingLiquid.From.OILS);
    }

    /**
     * All oils among given masses.
     *
     * @param masses grams by line
     * @return grams, those that something is wetted out with included
     */
    public double oilsIn(double[] masses) {
        double oils = 0;
        for (int i = 0; i < masses.length; i++) {
            oils += isOil(lines.get(i)) ? masses[i] : 0;
        }
        return oils;
    }

    /**
     * How much of a line is in one portion.
     *
     * @param portion its place among the formula's portions, -1 for the whole batch
     * @param line any line
     * @return the portion's share of base batter, 1 for what goes into that portion alone, else 0; of the whole batch 1
     */
    public double shareIn(int portion, BatchLine line) {
        if (portion < 0 || line.portion() == portion) {
            return 1;
        }
        return line.inBaseBatter() ? formula.portions().get(portion).fraction() : 0;
    }
}
