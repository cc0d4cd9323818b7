package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.FadingPour;
import lyewright.makingsheet.LyeSheet;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;

/**
 * A sheet as JSON, fields as in {@code docs/sheet.schema.json} and in that order. Written field by field, since the names
 * are a promise to others that a renamed component must not break. Nothing of the machine or the moment is in it.
 */
final class SheetJson {

    private final MakingSheet sheet;
    private final JsonGenerator json;

    private SheetJson(MakingSheet sheet, JsonGenerator json) {
        this.sheet = sheet;
        this.json = json;
    }

    /** The sheet, a line feed at its end. */
    static String of(MakingSheet sheet) {
        return Json.text(json -> new SheetJson(sheet, json).write());
    }

    private void write() throws IOException {
        BatchComposition composition = sheet.composition();
        json.writeStartObject();
        json.writeObjectFieldStart("recipe");
        json.writeStringField("name", sheet.formula().formula().recipe());
        json.writeNumberField("version", sheet.formula().formula().version());
        json.writeEndObject();
        json.writeStringField("tables", sheet.formula().tables().edition());
        writeVessels();
        writeTotals();
        writeAlkali();
        writeSuperfat();
        writePortions(composition);
        writeFade();
        writeBars();
        number("batterDensityGramsPerMl", sheet.batterDensity());
        writeLye();
        CompositionJson.writeMoments(json, composition.moments());
        CompositionJson.writeWorstBar(json, composition.worstBar());
        FattyAcidsJson.write(OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams()), json);
        writeCautions();
        json.writeEndObject();
    }

    private void writeVessels() throws IOException {
        json.writeArrayFieldStart("vessels");
        for (Vessel vessel : sheet.vessels()) {
            json.writeStartObject();
            json.writeStringField("name", vessel.name());
            number("vesselGrams", vessel.emptyGrams());
            json.writeArrayFieldStart("items");
            for (Weighing weighing : vessel.weighings()) {
                writeItem(weighing);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void writeItem(Weighing weighing) throws IOException {
        json.writeStartObject();
        json.writeStringField("of", weighing.line().key());
        json.writeStringField("stage", weighing.line().stage().toString());
        Json.textOrNull(json, "portion", weighing.portion());
        number("exactGrams", weighing.exactGrams());
        number("weighGrams", weighing.weigh().grams());
        number("readingGrams", weighing.reading().grams());
        json.writeStringField("balance", weighing.balance().name());
        number("percentOfOils", weighing.percentOfOils());
        json.writeEndObject();
    }

    private void writeTotals() throws IOException {
        MakingSheet.Totals totals = sheet.totals();
        json.writeObjectFieldStart("totals");
        number("oilsGrams", totals.oils());
        number("batchGrams", totals.batch());
        number("mouldGrams", totals.mould());
        number("targetGrams", totals.target());
        number("offTargetGrams", totals.offTarget());
        number("waterGrams", totals.water());
        number("waterBroughtGrams", totals.waterBrought());
        json.writeEndObject();
    }

    private void writeAlkali() throws IOException {
        LyeSheet lye = sheet.lye();
        json.writeObjectFieldStart("alkali");
        number("naohGrams", lye.naohGrams());
        number("kohGrams", lye.kohGrams());
        number("naohPureGrams", lye.naohPureGrams());
        number("kohPureGrams", lye.kohPureGrams());
        number("potassiumMolesPercent", lye.potassiumMolesPercent());
        number("potassiumPurePercent", lye.potassiumPurePercent());
        number("potassiumWeighedPercent", lye.potassiumWeighedPercent());
        number("jugConcentrationPercent", lye.concentrationPercent());
        number("waterInJugGrams", lye.waterInJugGrams());
        json.writeEndObject();
    }

    private void writeSuperfat() throws IOException {
        SuperfatBand band = sheet.band();
        json.writeObjectFieldStart("superfat");
        number("askedPercent", sheet.askedSuperfatPercent());
        number("sheetPercent", sheet.sheetSuperfatPercent());
        number("low95Percent", band.lowPercent());
        number("high95Percent", band.highPercent());
        number("worstPercent", band.worstPercent());
        number("freeAlkaliProbability", band.freeAlkaliProbability());
        json.writeNumberField("draws", band.draws());
        json.writeStringField("verdict", sheet.verdict().word());
        json.writeStringField("sentence", sheet.howSure());
        json.writeArrayFieldStart("contributions");
        for (SuperfatBand.Contribution contribution : band.contributions()) {
            json.writeStartObject();
            json.writeStringField("input", contribution.input());
            number("percentOfVariance", contribution.percentOfVariance());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("takenAsExact");
        for (String exact : band.takenAsExact()) {
            json.writeString(exact);
        }
        json.writeEndArray();
        writeCertificate(band.certificateGain());
        json.writeEndObject();
    }

    private void writeCertificate(Optional<SuperfatBand.Gain> gain) throws IOException {
        if (gain.isEmpty()) {
            json.writeNullField("certificate");
            return;
        }
        json.writeObjectFieldStart("certificate");
        json.writeStringField("oil", gain.get().oil());
        number("low95Percent", gain.get().lowPercent());
        number("high95Percent", gain.get().highPercent());
        json.writeEndObject();
    }

    private void writePortions(BatchComposition composition) throws IOException {
        json.writeArrayFieldStart("portions");
        for (int p = 0; p < sheet.portions().size(); p++) {
            PortionSheet portion = sheet.portions().get(p);
            json.writeStartObject();
            json.writeStringField("name", portion.name());
            number("sharePercent", portion.sharePercent());
            number("baseBatterGrams", portion.baseBatterGrams());
            number("oilsGrams", portion.oilsGrams());
            number("waterGrams", portion.waterGrams());
            number("waterPercentOfOils", portion.waterPercentOfOils());
            number("superfatPercent", portion.superfatPercent());
            number("low95Percent", portion.band().lowPercent());
            number("high95Percent", portion.band().highPercent());
            number("freeAlkaliProbability", portion.band().freeAlkaliProbability());
            json.writeStringField("verdict", portion.band().verdict().word());
            json.writeArrayFieldStart("additions");
            for (PortionSheet.PortionAddition addition : portion.additions()) {
                writeAddition(addition);
            }
            json.writeEndArray();
            number("totalGrams", portion.totalGrams());
            CompositionJson.writeMoments(json, composition.portions().get(p).moments());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void writeAddition(PortionSheet.PortionAddition addition) throws IOException {
        json.writeStartObject();
        json.writeStringField("of", addition.of());
        number("grams", addition.grams());
        number("liquidGrams", addition.liquidGrams());
        number("gramsPerKgOils", addition.gramsPerKilogramOils());
        number("gramsPerKgPortionOils", addition.gramsPerKilogramPortionOils());
        number("readingGrams", addition.readingGrams());
        json.writeEndObject();
    }

    private void writeFade() throws IOException {
        json.writeArrayFieldStart("fade");
        for (FadingPour.Layer layer : sheet.fade()) {
            json.writeStartObject();
            json.writeNumberField("layer", layer.layer());
            number("pourGrams", layer.pourGrams());
            number("colourPercent", layer.colourPercent());
            number("addPlainGrams", layer.addPlainGrams());
            number("jugBeforeGrams", layer.jugBeforeGrams());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void writeBars() throws IOException {
        if (sheet.bars().isEmpty()) {
            json.writeNullField("bars");
            return;
        }
        MakingSheet.Bars bars = sheet.bars().get();
        json.writeObjectFieldStart("bars");
        json.writeNumberField("count", bars.count());
        number("cutGrams", bars.cutGrams());
        number("curedGrams", bars.curedGrams());
        number("offcutsGrams", bars.offcutsGrams());
        json.writeEndObject();
    }

    private void writeLye() throws IOException {
        LyeSheet lye = sheet.lye();
        json.writeObjectFieldStart("lye");
        json.writeArrayFieldStart("dissolvesIn");
        for (String key : lye.dissolvesIn()) {
            json.writeString(key);
        }
        json.writeEndArray();
        number("waterLeftGrams", lye.waterLeftGrams());
        number("pureStrengthPercent", lye.pureStrengthPercent());
        number("weighedStrengthPercent", lye.weighedStrengthPercent());
        number("saltPerWaterPercent", lye.saltPerWaterPercent());
        number("saltHeldPercent", lye.saltHeldPercent());
        number("saltUndissolvedPercent", lye.saltUndissolvedPercent());
        json.writeEndObject();
    }

    private void writeCautions() throws IOException {
        json.writeArrayFieldStart("cautions");
        for (Caution caution : sheet.cautions()) {
            json.writeStartObject();
            json.writeStringField("id", caution.id());
            json.writeStringField("level", caution.level().word());
            json.writeStringField("text", caution.text());
            json.writeStringField("remedy", caution.remedy());
            json.writeStringField("source", caution.source());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void number(String field, Optional<Double> value) throws IOException {
        Json.number(json, field, value);
    }

    private void number(String field, double value) throws IOException {
        Json.number(json, field, value);
    }
}
