package lyewright.web.recipe;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.records.recipe.Drafts;

/**
 * What somebody is typing, as it is kept between two keystrokes.
 *
 * @param form the fields
 * @param file the formula as a file, where that is typed instead of the fields; else empty
 * @param why why it will be saved
 * @param window the window it was typed in
 * @param serial counts what that window sent, so that what arrives late does not go over what is newer
 */
record Drafted(FormulaForm form, String file, String why, String window, long serial) {

    /** Of this way of writing; goes up when an older release would read it wrongly. */
    static final int SCHEMA = 1;

    private static final ObjectMapper JSON = new ObjectMapper();

    boolean isFile() {
        return !file.isEmpty();
    }

    /** As text for the store of drafts. */
    String write() {
        ObjectNode root = JSON.createObjectNode();
        root.put("schema", SCHEMA);
        root.put("window", window);
        root.put("serial", serial);
        root.put("why", why);
        root.put(FormFields.FILE, file);
        ObjectNode fields = root.putObject("fields");
        form.fields().forEach(fields::put);
        return root.toString();
    }

    /** What was kept; empty where the text is none, or is of a later release. What a later release added is passed over. */
    static Optional<Drafted> read(String text) {
        if (text.length() > Drafts.LONGEST_FORM) {
            return Optional.empty();
        }
        try {
            JsonNode root = JSON.readTree(text);
            int schema = root.path("schema").asInt(0);
            return schema < 1 || schema > SCHEMA ? Optional.empty() : Optional.of(of(root));
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    private static Drafted of(JsonNode root) {
        Map<String, List<String>> fields = new HashMap<>();
        root.path("fields")
                .properties()
                .forEach(entry ->
                        fields.put(entry.getKey(), List.of(entry.getValue().asText(""))));
        return new Drafted(
                FormulaForm.from(fields),
                root.path(FormFields.FILE).asText(""),
                root.path("why").asText(""),
                root.path("window").asText(""),
                root.path("serial").asLong(0));
    }
}
