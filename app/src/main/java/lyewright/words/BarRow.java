package lyewright.words;

/**
 * A line of what a bar consists of.
 *
 * @param name what it is
 * @param inci its INCI name, often empty
 * @param grams in the whole batch
 * @param percent of it
 * @param setIn whether it is part of the line above that has it not
 */
public record BarRow(String name, String inci, String grams, String percent, boolean setIn) {}
