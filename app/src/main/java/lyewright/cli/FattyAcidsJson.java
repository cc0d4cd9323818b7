package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OxidationIndices;

/** The fatty acids of a formula as JSON: four fields written into an object that is open. */
final class FattyAcidsJson {

    private FattyAcidsJson() {}

    /** Writes {@code fattyAcids}, {@code unknownPercent}, {@code oilPhase} and {@code keeping}, in that order. */
    static void write(OilPhaseAcids acids, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("fattyAcids");
        for (OilPhaseAcids.Share share : acids.acids()) {
            json.writeStartObject();
            json.writeStringField("acid", share.acid().code());
            json.writeStringField("name", share.acid().commonName());
            Json.number(json, "lowPercent", share.lowPercent());
            Json.number(json, "percent", share.percent());
            Json.number(json, "highPercent", share.highPercent());
            json.writeEndObject();
        }
        json.writeEndArray();
        Json.number(json, "unknownPercent", acids.unknownPercent());
        json.writeObjectFieldStart("oilPhase");
        Json.number(json, "saponificationValueFromAcids", acids.saponificationValue());
        Json.number(json, "saponificationValueCd3a94", acids.saponificationValueCd3a94());
        Json.number(json, "iodineValueFromAcids", acids.iodineValue());
        json.writeEndObject();
        writeKeeping(acids, json);
    }

    private static void writeKeeping(OilPhaseAcids acids, JsonGenerator json) throws IOException {
        Optional<Keeping> keeping = Keeping.of(acids);
        if (keeping.isEmpty()) {
            json.writeNullField("keeping");
            return;
        }
        OxidationIndices indices = keeping.get().indices();
        json.writeObjectFieldStart("keeping");
        Json.number(json, "iodineValue", acids.iodineValue());
        Json.number(json, "oxidisability", indices.oxidisability());
        Json.number(json, "cox", indices.cox());
        Json.number(json, "pi", indices.peroxidisability());
        Json.number(json, "ape", indices.allylic());
        Json.number(json, "bape", indices.bisAllylic());
        json.writeArrayFieldStart("sentences");
        for (String sentence : keeping.get().sentences()) {
            json.writeString(sentence);
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
