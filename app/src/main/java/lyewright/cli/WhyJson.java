package lyewright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import lyewright.why.Reason;
import lyewright.why.Spread;
import lyewright.words.Figures;

/** Reasons as data: what the page of text says, for another page to show beside a figure. */
final class WhyJson {

    /** Decimals of what may lie between two ends. */
    private static final int DECIMALS = 9;

    private final JsonGenerator json;

    private WhyJson(JsonGenerator json) {
        this.json = json;
    }

    /** A list of reasons, a line feed at its end. */
    static String of(List<Reason> reasons) {
        return Json.text(json -> new WhyJson(json).write(reasons));
    }

    private void write(List<Reason> reasons) throws IOException {
        json.writeStartArray();
        for (Reason reason : reasons) {
            write(reason);
        }
        json.writeEndArray();
    }

    private void write(Reason reason) throws IOException {
        json.writeStartObject();
        json.writeStringField("figure", reason.path());
        json.writeStringField("title", reason.title());
        number("value", reason.text());
        json.writeStringField("unit", reason.unit());
        json.writeStringField("sentence", reason.sentence());
        json.writeArrayFieldStart("steps");
        for (Reason.Step step : reason.steps()) {
            step(step);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("equations");
        for (Reason.Check check : reason.checks()) {
            equation(check);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("inputs");
        for (Reason.Input input : reason.inputs()) {
            input(input);
        }
        json.writeEndArray();
        texts("sources", reason.sources());
        texts("notes", reason.notes());
        json.writeEndObject();
    }

    /** A number as it is printed; null where there is none. */
    private void number(String field, String text) throws IOException {
        if (text.isEmpty()) {
            json.writeNullField(field);
        } else {
            json.writeNumberField(field, new BigDecimal(text));
        }
    }

    private void step(Reason.Step step) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", step.name());
        json.writeStringField("formula", step.formula());
        number("value", step.text());
        json.writeStringField("unit", step.unit());
        json.writeStringField("meaning", step.meaning());
        json.writeEndObject();
    }

    private void equation(Reason.Check check) throws IOException {
        json.writeStartObject();
        json.writeStringField("meaning", check.meaning());
        json.writeFieldName("left");
        step(check.left());
        json.writeFieldName("right");
        step(check.right());
        json.writeEndObject();
    }

    private void input(Reason.Input input) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", input.name());
        number("value", input.text());
        json.writeStringField("unit", input.unit());
        json.writeStringField("meaning", input.meaning());
        Json.textOrNull(json, "source", input.source());
        Json.textOrNull(json, "figure", input.figure().orElse(""));
        spread(input.spread());
        json.writeEndObject();
    }

    private void spread(Optional<Spread> spread) throws IOException {
        if (spread.isEmpty()) {
            json.writeNullField("spread");
            return;
        }
        json.writeObjectFieldStart("spread");
        json.writeStringField("kind", spread.get().kind().word());
        number("low", end(spread.get().low()));
        number("high", end(spread.get().high()));
        number("evenLow", end(spread.get().evenLow()));
        number("evenHigh", end(spread.get().evenHigh()));
        json.writeStringField("source", spread.get().source());
        json.writeEndObject();
    }

    private static String end(double value) {
        return Figures.upTo(value, DECIMALS);
    }

    private void texts(String field, List<String> texts) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
