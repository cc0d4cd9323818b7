package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import lyewright.formula.MaterialChange;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.CautionChange;
import lyewright.makingsheet.Comparison;
import lyewright.makingsheet.MakingSheet;

/** A comparison as JSON, fields as in {@code docs/compare.schema.json} and in that order. */
final class CompareJson {

    private CompareJson() {}

    /** The comparison, a line feed at its end. */
    static String of(Comparison comparison) {
        return Json.text(json -> write(comparison, json));
    }

    private static void write(Comparison comparison, JsonGenerator json) throws IOException {
        json.writeStartObject();
        writeRecipe("a", comparison.a(), json);
        writeRecipe("b", comparison.b(), json);
        json.writeStringField("tables", comparison.b().formula().tables().edition());
        json.writeArrayFieldStart("rows");
        for (Comparison.Row row : comparison.rows()) {
            json.writeStartObject();
            json.writeStringField("path", row.path());
            json.writeStringField("label", row.label());
            json.writeStringField("unit", row.unit());
            Json.number(json, "a", row.a());
            Json.number(json, "b", row.b());
            Json.number(json, "difference", row.difference());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("materials");
        for (MaterialChange change : comparison.materials()) {
            json.writeStartObject();
            json.writeStringField("key", change.key());
            json.writeStringField("name", change.name());
            json.writeStringField("figure", change.figure());
            writeSaid("a", change.a(), json);
            writeSaid("b", change.b(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("cautions");
        for (CautionChange change : comparison.cautions()) {
            writeCaution(change, json);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void writeSaid(String field, Optional<MaterialChange.Said> said, JsonGenerator json)
            throws IOException {
        if (said.isEmpty()) {
            json.writeNullField(field);
            return;
        }
        json.writeObjectFieldStart(field);
        json.writeStringField("value", said.get().value());
        json.writeStringField("source", said.get().source());
        json.writeEndObject();
    }

    private static void writeRecipe(String field, MakingSheet sheet, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("name", sheet.formula().formula().recipe());
        json.writeNumberField("version", sheet.formula().formula().version());
        json.writeBooleanField("stopped", sheet.stopped());
        json.writeEndObject();
    }

    private static void writeCaution(CautionChange change, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", change.caution().id());
        json.writeStringField("change", change.change().name().toLowerCase(Locale.ROOT));
        writeLevel("a", change.a(), json);
        writeLevel("b", change.b(), json);
        json.writeStringField("text", change.caution().text());
        json.writeEndObject();
    }

    private static void writeLevel(String field, Optional<Caution> caution, JsonGenerator json) throws IOException {
        Json.textOrNull(json, field, caution.map(c -> c.level().word()).orElse(""));
    }
}
