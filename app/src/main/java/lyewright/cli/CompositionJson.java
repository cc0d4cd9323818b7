package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import lyewright.chemistry.Composition;
import lyewright.chemistry.Composition.Substance;
import lyewright.chemistry.WorstBar;

/** What batter and bar consist of, as fields of an open JSON object. */
final class CompositionJson {

    private CompositionJson() {}

    /** Field {@code composition}: the moments of a batch or of one portion. */
    static void writeMoments(JsonGenerator json, List<Composition> moments) throws IOException {
        json.writeArrayFieldStart("composition");
        for (Composition moment : moments) {
            writeMoment(json, moment);
        }
        json.writeEndArray();
    }

    private static void writeMoment(JsonGenerator json, Composition composition) throws IOException {
        json.writeStartObject();
        json.writeStringField("moment", composition.moment().word());
        Json.number(json, "totalGrams", composition.totalGrams());
        json.writeBooleanField("settled", composition.settled());
        Json.number(json, "reactedLowPercent", composition.reactedLowPercent());
        Json.number(json, "reactedHighPercent", composition.reactedHighPercent());
        json.writeArrayFieldStart("substances");
        for (Substance substance : composition.substances()) {
            json.writeStartObject();
            writeName(json, substance);
            Json.textOrNull(json, "inci", substance.inci());
            json.writeStringField("of", substance.of());
            Json.number(json, "grams", substance.grams());
            Json.number(json, "percent", substance.percent());
            json.writeEndObject();
        }
        json.writeEndArray();
        Json.number(json, "totalFattyMatterPercent", composition.totalFattyMatterPercent());
        Json.number(json, "chloridePercent", composition.chloridePercent());
        writeWater(json, composition.water());
        json.writeEndObject();
    }

    private static void writeName(JsonGenerator json, Substance substance) throws IOException {
        json.writeStringField("kind", substance.kind().word());
        json.writeStringField("name", substance.name());
    }

    private static void writeWater(JsonGenerator json, Composition.Water water) throws IOException {
        json.writeObjectFieldStart("water");
        Json.number(json, "addedGrams", water.addedGrams());
        Json.number(json, "broughtGrams", water.broughtGrams());
        Json.number(json, "formedGrams", water.formedGrams());
        Json.number(json, "lostGrams", water.lostGrams());
        json.writeEndObject();
    }

    /** Field {@code worstBar}. */
    static void writeWorstBar(JsonGenerator json, List<WorstBar> worstBar) throws IOException {
        json.writeArrayFieldStart("worstBar");
        for (WorstBar worst : worstBar) {
            json.writeStartObject();
            writeName(json, worst.substance());
            json.writeStringField("of", worst.substance().of());
            json.writeStringField("portion", worst.portion());
            Json.number(json, "percent", worst.percent());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
