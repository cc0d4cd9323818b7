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
        JsonNumbers.write(json, "totalGrams", composition.totalGrams());
        json.writeBooleanField("settled", composition.settled());
        JsonNumbers.write(json, "reactedLowPercent", composition.reactedLowPercent());
        JsonNumbers.write(json, "reactedHighPercent", composition.reactedHighPercent());
        json.writeArrayFieldStart("substances");
        for (Substance substance : composition.substances()) {
            json.writeStartObject();
            writeName(json, substance);
            writeText(json, "inci", substance.inci());
            json.writeStringField("of", substance.of());
            JsonNumbers.write(json, "grams", substance.grams());
            JsonNumbers.write(json, "percent", substance.percent());
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonNumbers.write(json, "totalFattyMatterPercent", composition.totalFattyMatterPercent());
        JsonNumbers.write(json, "chloridePercent", composition.chloridePercent());
        writeWater(json, composition.water());
        json.writeEndObject();
    }

    private static void writeName(JsonGenerator json, Substance substance) throws IOException {
        json.writeStringField("kind", substance.kind().word());
        json.writeStringField("name", substance.name());
    }

    private static void writeText(JsonGenerator json, String field, String text) throws IOException {
        if (text.isEmpty()) {
            json.writeNullField(field);
        } else {
            json.writeStringField(field, text);
        }
    }

    private static void writeWater(JsonGenerator json, Composition.Water water) throws IOException {
        json.writeObjectFieldStart("water");
        JsonNumbers.write(json, "addedGrams", water.addedGrams());
        JsonNumbers.write(json, "broughtGrams", water.broughtGrams());
        JsonNumbers.write(json, "formedGrams", water.formedGrams());
        JsonNumbers.write(json, "lostGrams", water.lostGrams());
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
            JsonNumbers.write(json, "percent", worst.percent());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
