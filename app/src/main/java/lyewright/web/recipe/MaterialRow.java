package lyewright.web.recipe;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One of the maker's own materials.
 *
 * @param key its name
 * @param said what is said of it, by the words of {@link #WORDS}; words that say nothing are left out. The oils of a premix stand each on a line
 *     of its own, as in {@code coconut: 40 %}
 */
public record MaterialRow(String key, Map<String, String> said) {

    /** What can be said of a material. */
    public static final List<String> WORDS = List.of(
            "kind",
            "saponification value",
            "acid value",
            "iodine value",
            "density",
            "water",
            "fat",
            "fat saponification value",
            "sugar",
            "salt",
            "acid",
            "strength",
            "oils",
            "inci",
            "cas",
            "supplier",
            "source");

    static final String KIND = "kind";
    static final String OILS = "oils";

    static final MaterialRow EMPTY = new MaterialRow("", Map.of());

    /** Keeps what says something, in the words' order. */
    public MaterialRow {
        Map<String, String> kept = new LinkedHashMap<>();
        for (String word : WORDS) {
            String text = said.getOrDefault(word, "");
            if (!text.isEmpty()) {
                kept.put(word, text);
            }
        }
        said = Collections.unmodifiableMap(kept);
    }

    /** What is said under a word, empty if nothing. */
    public String said(String word) {
        return said.getOrDefault(word, "");
    }

    /** A word as part of a field's name. */
    public static String field(String word) {
        return word.replace(' ', '-');
    }

    boolean isEmpty() {
        return key.isBlank() && said.values().stream().allMatch(String::isBlank);
    }
}
