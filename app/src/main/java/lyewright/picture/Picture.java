package lyewright.picture;

import java.util.List;

/**
 * A picture, what it says in words, and its figures.
 *
 * @param drawing the picture
 * @param sentence what it comes to; empty where the page says it
 * @param notes what else must be known to read it, a sentence each
 * @param table the same figures
 */
public record Picture(Drawing drawing, String sentence, List<String> notes, FigureTable table) {

    /** Copies its list. */
    public Picture {
        sentence = Drawing.clean(sentence);
        notes = notes.stream().map(Drawing::clean).toList();
    }
}
