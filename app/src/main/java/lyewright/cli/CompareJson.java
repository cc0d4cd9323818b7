package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
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
        json.writeArrayFieldStart("cautions");
        for (CautionChange change : comparison.cautions()) {
            writeCaution(change, json);
        }
        json.writeEndArray();
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
