package lyewright.makingsheet;

import java.util.LinkedHashMap;
import java.util.Map;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.Composition;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.Reaction;
import lyewright.formula.ResolvedFormula;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.ResolvedFormula.DispersingLiquid;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Alkali;
import lyewright.material.OilBlend;

/** One sheet's figures: what it asks for a kilogram of oils before rounding, all else as the sheet has it. */
final class ComparedSheet {

    final MakingSheet sheet;
    final OilPhaseAcids acids;

    /** What the cured bar consists of, with the sheet's rounded weights. */
    final Composition cured;

    /** Names by key, of oils and additions. */
    final Map<String, String> names = new LinkedHashMap<>();

    /** A premix counts with its parts. */
    final Map<String, Double> oilPercents = new LinkedHashMap<>();

    final Map<String, Double> additionsPerKilogram = new LinkedHashMap<>();
    final double superfat;
    final double saponificationValue;
    final double water;
    final double allWater;

    /** With the sheet's rounded weights. */
    final double lyeStrength;

    /** With the sheet's rounded weights. */
    final double jugStrength;

    double naoh;
    double naohPure;
    double koh;
    double kohPure;

    /** Potassium's share of the alkali by moles, percent, with the sheet's rounded weights. */
    final double potassium;

    ComparedSheet(MakingSheet sheet) {
        this.sheet = sheet;
        ResolvedFormula formula = sheet.formula();
        acids = OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams());
        cured = sheet.composition().at(Composition.Moment.CURED);
        double value = 0;
        for (OilPart part : formula.oils()) {
            for (OilBlend.Part one : part.parts()) {
                names.put(one.oil().key(), one.oil().name());
                oilPercents.merge(one.oil().key(), 100 * part.fraction() * one.fraction(), Double::sum);
            }
            value += part.fraction() * part.saponificationValue();
        }
        saponificationValue = value;
        for (AdditionPart addition : formula.additions()) {
            names.put(addition.written().of(), addition.material().name());
        }
        BatchLines batch = sheet.batch();
        double oils = sheet.filled().oilsGrams();
        double[] masses = batch.massesAt(oils);
        double perKilogram = 1000 / oils;
        for (int i = 0; i < masses.length; i++) {
            look(batch.lines().get(i), masses[i] * perKilogram);
        }
        Reaction reaction = Reaction.of(batch.lines(), masses);
        superfat = reaction.superfatPercent();
        potassium = sheet.lye().potassiumMolesPercent();
        water = batch.waterByRule().at(oils, batch.batchAt(oils)) * perKilogram;
        allWater = reaction.waterGrams() * perKilogram;
        lyeStrength = sheet.lye().pureStrengthPercent();
        jugStrength = sheet.lye().concentrationPercent();
    }

    private void look(BatchLine line, double grams) {
        if (line.kind() == Kind.ALKALI) {
            Alkali alkali = sheet.formula().alkaliOf(line.key());
            double pure = grams * line.alkali() * alkali.molarMass();
            naoh += alkali == Alkali.SODIUM ? grams : 0;
            naohPure += alkali == Alkali.SODIUM ? pure : 0;
            koh += alkali == Alkali.POTASSIUM ? grams : 0;
            kohPure += alkali == Alkali.POTASSIUM ? pure : 0;
        } else if (line.kind() == Kind.ADDITION || onTopOfAll(line)) {
            names.putIfAbsent(line.key(), line.key());
            additionsPerKilogram.merge(line.key(), grams, Double::sum);
        }
    }

    /** Glycerin that something is wetted out with is neither part of the oils nor of the water. */
    private boolean onTopOfAll(BatchLine line) {
        return line.kind() == Kind.DISPERSING_LIQUID && sheet.batch().liquidFrom(line) == DispersingLiquid.From.EXTRA;
    }
}
