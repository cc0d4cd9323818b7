package lyewright.records.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What an entry tells: a JSON object, its names in order, so that the same facts are the same text. Facts that are empty are left out. */
public final class EntryText {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Map<String, Object> facts = new TreeMap<>();

    /** A fact in words; nothing where they are empty. */
    public EntryText with(String name, String words) {
        if (!words.isEmpty()) {
            facts.put(name, words);
        }
        return this;
    }

    /** A fact that may be missing. */
    public EntryText with(String name, Optional<?> fact) {
        fact.ifPresent(it -> facts.put(name, it instanceof Number ? it : it.toString()));
        return this;
    }

    /** A whole number. */
    public EntryText with(String name, long number) {
        facts.put(name, number);
        return this;
    }

    /** The text that is kept and sealed. */
    public String text() {
        try {
            return JSON.writeValueAsString(facts);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("words and numbers can always be written", e);
        }
    }

    /**
     * What a text that is kept tells.
     *
     * @return each fact by its name; none where the text is not one of ours, as after an edit
     */
    public static Map<String, String> facts(String text) {
        Map<String, String> facts = new TreeMap<>();
        try {
            for (Map.Entry<String, JsonNode> fact : JSON.readTree(text).properties()) {
                facts.put(fact.getKey(), fact.getValue().asText());
            }
            return facts;
        } catch (JsonProcessingException e) {
            return Map.of();
        }
    }
}
