package lyewright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** JSON as every command prints it: indented by two, any script as it is, numbers plain and to a millionth. */
final class Json {

    private static final int DECIMALS = 6;
    private static final JsonFactory FACTORY =
            JsonFactory.builder().disable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    private Json() {}

    /** Writes one document. */
    interface Writer {
        void write(JsonGenerator json) throws IOException;
    }

    /** The document, a line feed at its end. */
    static String text(Writer writer) {
        StringWriter text = new StringWriter();
        DefaultIndenter lineFeeds = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(lineFeeds).withArrayIndenter(lineFeeds));
            writer.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException("a string cannot fail to be written", e);
        }
        return text.append('\n').toString();
    }

    /** A text, or null where it is empty. */
    static void textOrNull(JsonGenerator json, String field, String text) throws IOException {
        if (text.isEmpty()) {
            json.writeNullField(field);
        } else {
            json.writeStringField(field, text);
        }
    }

    static void number(JsonGenerator json, String field, Optional<Double> value) throws IOException {
        if (value.isPresent()) {
            number(json, field, value.get());
        } else {
            json.writeNullField(field);
        }
    }

    static void number(JsonGenerator json, String field, double value) throws IOException {
        json.writeNumberField(field, decimal(value));
    }

    /** To a millionth, without zeros at its end: finer than any balance, and the same text on every machine. */
    private static BigDecimal decimal(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
        BigDecimal stripped = rounded.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
