package lyewright.benchmarks;

import java.util.LinkedHashMap;
import java.util.Map;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.makingsheet.PortionSheet.PortionAddition;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;

/**
 * What must come out, by the names of {@link SheetCells}, so that nobody is timed who computes something else: every mass
 * exact and weighed, readings, totals, lye, superfat, density, portions, and how many cautions of each level.
 */
final class Answers {

    private static final double TOLERANCE = 1e-6;

    /** Lines of the additions to each portion, in the order in which they go in. */
    private static final int[][] ADDITIONS_OF_PORTIONS = {{7, 9}, {5, 8, 10}};

    /** Something that was computed, by name. */
    interface Computed {
        double get(String name);
    }

    private final Map<String, Double> expected = new LinkedHashMap<>();

    private Answers() {}

    static Answers of(MakingSheet sheet) {
        Answers answers = new Answers();
        answers.expected.put("oilsAsked", sheet.filled().oilsGrams());
        answers.putWeighings(sheet);
        answers.putTotals(sheet);
        answers.putLye(sheet.lye());
        for (int p = 0; p < sheet.portions().size(); p++) {
            answers.putPortion(p, sheet.portions().get(p));
        }
        answers.putCautions(sheet);
        return answers;
    }

    private void putWeighings(MakingSheet sheet) {
        for (Vessel vessel : sheet.vessels()) {
            for (Weighing weighing : vessel.weighings()) {
                int line = sheet.batch().lines().indexOf(weighing.line());
                expected.put("exact" + line, weighing.exactGrams());
                expected.put("weigh" + line, weighing.weigh().grams());
                expected.put("reading" + line, weighing.reading().grams());
                expected.put("by" + line, weighing.balance().step().grams());
                expected.put("share" + line, weighing.percentOfOils());
            }
        }
    }

    private void putTotals(MakingSheet sheet) {
        expected.put("oils", sheet.totals().oils());
        expected.put("batch", sheet.totals().batch());
        expected.put("mould", sheet.totals().mould());
        expected.put("water", sheet.totals().water());
        expected.put("brought", sheet.totals().waterBrought());
        expected.put("sheetSuperfat", sheet.sheetSuperfatPercent());
        expected.put("batterDensity", sheet.batterDensity());
    }

    private void putLye(LyeSheet lye) {
        expected.put("pure", lye.naohPureGrams());
        expected.put("concentration", lye.concentrationPercent());
        expected.put("pureStrength", lye.pureStrengthPercent());
        expected.put("weighedStrength", lye.weighedStrengthPercent());
        expected.put("waterLeft", lye.waterLeftGrams());
        expected.put("saltPerWater", lye.saltPerWaterPercent());
        expected.put("held", lye.saltHeldPercent());
    }

    private void putPortion(int p, PortionSheet portion) {
        expected.put("base" + p, portion.baseBatterGrams());
        expected.put("portionOils" + p, portion.oilsGrams());
        expected.put("portionWater" + p, portion.waterGrams());
        expected.put("portionSuperfat" + p, portion.superfatPercent());
        expected.put("portion" + p, portion.totalGrams());
        int[] lines = ADDITIONS_OF_PORTIONS[p];
        if (lines.length != portion.additions().size()) {
            throw new IllegalStateException("portion " + portion.name() + " has other additions than expected");
        }
        for (int i = 0; i < lines.length; i++) {
            PortionAddition addition = portion.additions().get(i);
            expected.put("ofAll" + lines[i], addition.gramsPerKilogramOils());
            expected.put("ofPortion" + lines[i], addition.gramsPerKilogramPortionOils());
            expected.put("jugReading" + lines[i], addition.readingGrams());
        }
    }

    private void putCautions(MakingSheet sheet) {
        expected.put("notes", 0.0);
        expected.put("cares", 0.0);
        expected.put("stops", 0.0);
        for (Caution caution : sheet.cautions()) {
            expected.merge(caution.level().word() + "s", 1.0, Double::sum);
        }
    }

    /**
     * Compares.
     *
     * @param who computed it
     * @param computed what was computed
     * @throws IllegalStateException if anything differs by more than a millionth, of a gram, of a percent, or of itself
     */
    void check(String who, Computed computed) {
        expected.forEach((name, value) -> {
            double other = computed.get(name);
            if (!(Math.abs(other - value) <= TOLERANCE * Math.max(1, Math.abs(value)))) {
                throw new IllegalStateException(who + " gives " + name + " as " + other + ", the sheet as " + value);
            }
        });
    }
}
