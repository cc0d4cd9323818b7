package lyewright.web.recipe;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.chemistry.OxidationIndices;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.words.FattyAcidWords;
import lyewright.words.Figures;

/** A sheet's figures but those of the bar, each with the way to its why. */
final class LookTold {

    private final MakingSheet sheet;
    private final Ingredients.Address address;

    LookTold(MakingSheet sheet, Ingredients.Address address) {
        this.sheet = sheet;
        this.address = address;
    }

    private Told told(String label, String value, String figure) {
        return Told.of(label, value, address.why(figure));
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
        told.add(told("Weighed in all", Figures.grams(sheet.totals().batch(), 1), "totals.batchGrams"));
        told.add(told("Water by the rule", Figures.grams(sheet.totals().water(), 1), "totals.waterGrams"));
        if (sheet.totals().waterBrought() >= 0.05) {
            told.add(told(
                    "Water that comes with materials",
                    Figures.grams(sheet.totals().waterBrought(), 1),
                    "totals.waterBroughtGrams"));
        }
        told.add(told("Lye, pure alkali", Figures.percent(lye.pureStrengthPercent(), 1), "lye.pureStrengthPercent"));
        told.add(told("In its jug", Figures.percent(lye.concentrationPercent(), 1), "alkali.jugConcentrationPercent"));
        told.add(
                told("Water to spare in the jug", Figures.fixed(lye.waterLeftGrams(), 1) + " g", "lye.waterLeftGrams"));
        if (lye.naohPureGrams() > 0 && lye.kohPureGrams() > 0) {
            told.add(told(
                    "Potassium's share by moles",
                    Figures.percent(lye.potassiumMolesPercent(), 1),
                    "alkali.potassiumMolesPercent"));
        }
        if (lye.saltPerWaterPercent() >= 0.5) {
            told.add(told(
                    "Salt to 100 g of water",
                    Figures.fixed(lye.saltPerWaterPercent(), 1) + " g",
                    "lye.saltPerWaterPercent"));
        }
        told.add(told("Batter", Figures.fixed(sheet.batterDensity(), 3) + " g/ml", "batterDensityGramsPerMl"));
        return told;
    }

    List<Told> acids(OilPhaseAcids acids) {
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < acids.acids().size(); i++) {
            Share share = acids.acids().get(i);
            told.add(told(
                    FattyAcidWords.name(share),
                    Figures.percent(share.percent(), 1) + " (" + FattyAcidWords.range(share) + ")",
                    "fattyAcids[" + i + "].percent"));
        }
        return told;
    }

    List<Told> keeping(OilPhaseAcids acids, Keeping keeping) {
        OxidationIndices indices = keeping.indices();
        List<Told> told = new ArrayList<>();
        acids.iodineValue()
                .ifPresent(value -> told.add(
                        told("Iodine value", Figures.fixed(value, 1) + " g/100 g", "oilPhase.iodineValueFromAcids")));
        acids.saponificationValue()
                .ifPresent(value -> told.add(told(
                        "Saponification value from the acids",
                        Figures.fixed(value, 1) + " mg KOH/g",
                        "oilPhase.saponificationValueFromAcids")));
        told.add(told("Oxidisability", Figures.fixed(indices.oxidisability(), 1), "keeping.oxidisability"));
        told.add(told("COX", Figures.fixed(indices.cox(), 2), "keeping.cox"));
        told.add(told("Peroxidisability index", Figures.fixed(indices.peroxidisability(), 1), "keeping.pi"));
        told.add(told("Allylic positions (APE)", Figures.fixed(indices.allylic(), 1), "keeping.ape"));
        told.add(told("Bis-allylic positions (BAPE)", Figures.fixed(indices.bisAllylic(), 1), "keeping.bape"));
        return told;
    }
}
