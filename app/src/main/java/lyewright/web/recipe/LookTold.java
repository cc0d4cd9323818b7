package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.words.Figures;
import lyewright.words.UnitsShown;

/** A sheet's figures but those of the bar and of the acids, each with the way to its why. */
final class LookTold {

    private final MakingSheet sheet;
    private final UnitsShown units;
    private final UnaryOperator<String> why;

    LookTold(MakingSheet sheet, UnitsShown units, UnaryOperator<String> why) {
        this.units = units;
        this.sheet = sheet;
        this.why = why;
    }

    private Told told(String label, String value, String figure) {
        return Told.of(label, value, why.apply(figure));
    }

    List<Told> band() {
        SuperfatBand band = sheet.band();
        List<Told> told = new ArrayList<>();
        told.add(told("By the sheet", Figures.percent(band.sheetPercent(), 2), "superfat.sheetPercent"));
        told.add(told("19 times in 20 over", Figures.percent(band.lowPercent(), 1), "superfat.low95Percent"));
        told.add(told("19 times in 20 under", Figures.percent(band.highPercent(), 1), "superfat.high95Percent"));
        told.add(told("All at its worst at once", Figures.percent(band.worstPercent(), 1), "superfat.worstPercent"));
        told.add(told(
                "Chance that alkali is left over",
                chance(band.freeAlkaliProbability()),
                "superfat.freeAlkaliProbability"));
        for (int i = 0; i < sheet.portions().size(); i++) {
            told.add(told(
                    "In " + sheet.portions().get(i).name(),
                    Figures.percent(sheet.portions().get(i).superfatPercent(), 2),
                    "portions[" + i + "].superfatPercent"));
        }
        return told;
    }

    private static String chance(double probability) {
        double percent = 100 * probability;
        if (percent <= 0) {
            return "none seen";
        }
        return percent < 0.1 ? "under 0.1 %" : percent > 99.9 ? "over 99.9 %" : Figures.percent(percent, 1);
    }

    List<Told> lye() {
        LyeSheet lye = sheet.lye();
        List<Told> told = new ArrayList<>();
        told.add(told("Weighed in all", units.tenths(sheet.totals().batch()), "totals.batchGrams"));
        told.add(told("Water by the rule", units.tenths(sheet.totals().water()), "totals.waterGrams"));
        if (sheet.totals().waterBrought() >= 0.05) {
            told.add(told(
                    "Water that comes with materials",
                    units.tenths(sheet.totals().waterBrought()),
                    "totals.waterBroughtGrams"));
        }
        told.add(told("Lye, pure alkali", Figures.percent(lye.pureStrengthPercent(), 1), "lye.pureStrengthPercent"));
        told.add(told("In its jug", Figures.percent(lye.concentrationPercent(), 1), "alkali.jugConcentrationPercent"));
        told.add(told("Water to spare in the jug", units.tenths(lye.waterLeftGrams()), "lye.waterLeftGrams"));
        if (lye.naohPureGrams() > 0 && lye.kohPureGrams() > 0) {
            told.add(told(
                    "Potassium's share by moles",
                    Figures.percent(lye.potassiumMolesPercent(), 1),
                    "alkali.potassiumMolesPercent"));
        }
        if (lye.saltPerWaterPercent() >= 0.5) {
            told.add(told(
                    units.ounces() ? "Salt to 100 parts of water" : "Salt to 100 g of water",
                    Figures.fixed(lye.saltPerWaterPercent(), 1) + (units.ounces() ? " parts" : " g"),
                    "lye.saltPerWaterPercent"));
        }
        told.add(told("Batter", Figures.fixed(sheet.batterDensity(), 3) + " g/ml", "batterDensityGramsPerMl"));
        return told;
    }
}
