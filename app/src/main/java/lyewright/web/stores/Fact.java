package lyewright.web.stores;

import java.util.List;

/**
 * One thing that is known of a material.
 *
 * @param label what it is
 * @param text the figure with its unit, or the words
 * @param source where it was read; empty where the text is its own source
 */
public record Fact(String label, String text, String source) {

    static void put(List<Fact> facts, String label, String text, String source) {
        if (!text.isBlank()) {
            facts.add(new Fact(label, text, source));
        }
    }

    /** Whether nothing that was opened shows it. */
    public boolean remembered() {
        return source.contains("memory");
    }
}
