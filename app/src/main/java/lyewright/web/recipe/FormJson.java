package lyewright.web.recipe;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Comments;

/** A form as text for the store of drafts. Fields that a later release knows are passed over, those it lacks are empty. */
final class FormJson {

    /** Of this way of writing; goes up when an older release would read it wrongly. */
    static final int SCHEMA = 1;

    /** The longest text that is read, in characters. */
    static final int LARGEST = 4 << 20;

    private static final ObjectMapper JSON = new ObjectMapper();

    private FormJson() {}

    static String write(FormulaForm form) {
        ObjectNode root = JSON.createObjectNode();
        root.put("schema", SCHEMA);
        ObjectNode fields = root.putObject("fields");
        form.fields().forEach(fields::put);
        ObjectNode remarks = root.putObject("remarks");
        remarks.set("before", JSON.valueToTree(form.remarks().before()));
        remarks.set("beside", JSON.valueToTree(form.remarks().beside()));
        remarks.set("after", JSON.valueToTree(form.remarks().after()));
        return root.toString();
    }

    /** The form; empty where the text is none, or is of a later release. */
    static Optional<FormulaForm> read(String text) {
        if (text.length() > LARGEST) {
            return Optional.empty();
        }
        try {
            JsonNode root = JSON.readTree(text);
            int schema = root.path("schema").asInt(0);
            return schema < 1 || schema > SCHEMA ? Optional.empty() : Optional.of(form(root));
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    private static FormulaForm form(JsonNode root) {
        Map<String, List<String>> fields = new HashMap<>();
        texts(root.path("fields")).forEach((name, value) -> fields.put(name, List.of(value)));
        JsonNode remarks = root.path("remarks");
        Map<String, List<String>> before = new HashMap<>();
        remarks.path("before").properties().forEach(entry -> before.put(entry.getKey(), list(entry.getValue())));
        return FormulaForm.from(fields)
                .withRemarks(new Comments(before, texts(remarks.path("beside")), list(remarks.path("after"))));
    }

    private static Map<String, String> texts(JsonNode object) {
        Map<String, String> texts = new HashMap<>();
        object.properties()
                .forEach(entry -> texts.put(entry.getKey(), entry.getValue().asText("")));
        return texts;
    }

    private static List<String> list(JsonNode array) {
        List<String> list = new ArrayList<>();
        array.forEach(item -> list.add(item.asText("")));
        return list;
    }
}
