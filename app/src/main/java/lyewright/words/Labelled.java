package lyewright.words;

/**
 * A label and what stands beside it.
 *
 * @param label a word or two, first letter large
 * @param text what it is
 */
public record Labelled(String label, String text) {}
