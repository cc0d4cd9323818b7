package lyewright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON as it is printed: indented, numbers plain, a line feed at its end. */
final class JsonText {

    private static final JsonFactory FACTORY =
            JsonFactory.builder().disable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

    private JsonText() {}

    /** What writes it. */
    interface Content {
        void writeTo(JsonGenerator json) throws IOException;
    }

    static String of(Content content) {
        StringWriter text = new StringWriter();
        DefaultIndenter lineFeeds = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
            json.setPrettyPrinter(
                    new DefaultPrettyPrinter().withObjectIndenter(lineFeeds).withArrayIndenter(lineFeeds));
            content.writeTo(json);
        } catch (IOException e) {
            throw new UncheckedIOException("a string cannot fail to be written", e);
        }
        return text.append('\n').toString();
    }
}
