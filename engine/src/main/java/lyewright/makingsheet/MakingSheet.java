package lyewright.makingsheet;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLines;
import lyewright.fill.Fill;
import lyewright.fill.Filled;
import lyewright.formula.ResolvedFormula;
import lyewright.measure.Outcome;

/**
 * Everything to weigh for one batch, in order, with the chemistry behind it and what to beware of. A pure value: the same
 * formula, fill and equipment give the same sheet. All totals are of the rounded sheet.
 *
 * @param formula what is made
 * @param batch its lines
 * @param fill how much was asked for
 * @param filled what that came to
 * @param equipment what it is weighed with
 * @param vessels in the order of weighing: alkali last
 * @param totals masses
 * @param lye alkali and its jug
 * @param askedSuperfatPercent asked; empty where the alkali is given
 * @param sheetSuperfatPercent of the rounded sheet
 * @param band how sure that superfat is; drawn when it is first asked
 * @param portions none for a single batter
 * @param fade layers of a fading pour, none without one or where it would run dry
 * @param bars what comes out, if it is known
 * @param batterDensity g/ml
 * @param practice which figures of common practice fit it
 * @param plainCautions gravest first, without those that hang on how sure the superfat is: ask {@link #cautions()}
 */
public record MakingSheet(
        ResolvedFormula formula,
        BatchLines batch,
        Fill fill,
        Filled filled,
        Equipment equipment,
        List<Vessel> vessels,
        Totals totals,
        LyeSheet lye,
        Optional<Double> askedSuperfatPercent,
        double sheetSuperfatPercent,
        SuperfatBand band,
        List<PortionSheet> portions,
        List<FadingPour.Layer> fade,
        Optional<Bars> bars,
        double batterDensity,
        UsualPractice practice,
        List<Caution> plainCautions) {

    /** Takes its lists as they are: only {@link SheetBuilder} makes one. */
    public MakingSheet {}

    /**
     * Makes the sheet.
     *
     * @param formula resolved
     * @param fill how much
     * @param equipment what to weigh with
     * @return the sheet, or why there is none
     */
    public static Outcome<MakingSheet> of(ResolvedFormula formula, Fill fill, Equipment equipment) {
        Outcome<BatchLines> lines = BatchLines.of(formula);
        if (!(lines instanceof Outcome.Ok<BatchLines> ok)) {
            return new Outcome.Refused<>(lines.problems());
        }
        return SheetBuilder.build(ok.value(), fill, equipment);
    }

    /**
     * Masses of the rounded sheet, in grams.
     *
     * @param oils all oils, those that additions are wetted out with included
     * @param batch everything weighed
     * @param mould what reaches the mould
     * @param target mould mass asked for, if one was
     * @param water by the formula's rule: plain, dispersing, liquids that replace it, a stock lye's own
     * @param waterBrought in potash and in additions that do not replace water
     */
    public record Totals(
            double oils, double batch, double mould, Optional<Double> target, double water, double waterBrought) {

        /**
         * How far the rounded sheet is off.
         *
         * @return mould less target, if there is one
         */
        public Optional<Double> offTarget() {
            return target.isPresent() ? Optional.of(mould - target.get()) : Optional.empty();
        }
    }

    /**
     * What comes out of the mould.
     *
     * @param count bars
     * @param cutGrams one bar as cut
     * @param curedGrams one bar once cured
     * @param offcutsGrams what the cut leaves over
     */
    public record Bars(int count, double cutGrams, double curedGrams, double offcutsGrams) {}

    /**
     * What batter and bar consist of, with these weights.
     *
     * @return poured, cut and cured; the batch and each portion
     */
    public BatchComposition composition() {
        return BatchComposition.of(batch, weighedGrams());
    }

    /** Grams on the balance by line of the batch; 0 for what is not weighed. */
    private double[] weighedGrams() {
        IdentityHashMap<BatchLine, Double> byLine = new IdentityHashMap<>();
        for (Vessel vessel : vessels) {
            for (Weighing weighing : vessel.weighings()) {
                byLine.put(weighing.line(), weighing.weigh().grams());
            }
        }
        return batch.lines().stream()
                .mapToDouble(line -> byLine.getOrDefault(line, 0.0))
                .toArray();
    }

    /**
     * Everything to beware of. Where free alkali is not out of the question this draws the bands.
     *
     * @return gravest first
     */
    public List<Caution> cautions() {
        return CautionRules.withBands(plainCautions, band, portions);
    }

    /**
     * How sure the superfat is, without statistics. A portion that is worse than the batch comes first.
     *
     * @return some plain sentences
     */
    public String howSure() {
        String words = SuperfatWords.of(band, FreeAlkaliCautions.leaner(band, portions));
        // a sheet that something else stops is called safe in nothing
        return stopped() ? words.replaceFirst("^Safe as to alkali\\.", "Not to be made as it stands.") : words;
    }

    /**
     * What the superfat comes to in a word: that of the batch, or of a portion that is worse.
     *
     * @return the worst verdict
     */
    public SuperfatBand.Verdict verdict() {
        SuperfatBand.Verdict worst = band.verdict();
        for (PortionSheet portion : FreeAlkaliCautions.leaner(band, portions)) {
            SuperfatBand.Verdict own = portion.band().verdict();
            worst = own.compareTo(worst) > 0 ? own : worst;
        }
        return worst;
    }

    /**
     * Whether anything stops it.
     *
     * @return true if a caution says stop
     */
    public boolean stopped() {
        List<Caution> cautions = cautions();
        return !cautions.isEmpty() && cautions.get(0).level() == Caution.Level.STOP;
    }
}
