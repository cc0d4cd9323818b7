package lyewright.web.recipe;

import java.util.List;
import lyewright.web.Frame;

/**
 * The page that takes a formula file in.
 *
 * @param frame around it
 * @param text as pasted, or as the file said
 * @param file the file's name, empty where none was given
 * @param troubles all that is wrong, in the order of the text
 * @param more how many more there are than are told
 */
public record ImportPage(Frame frame, String text, String file, List<Trouble> troubles, int more) {

    /** Copies its list. */
    public ImportPage {
        troubles = List.copyOf(troubles);
    }

    /**
     * One thing that is wrong.
     *
     * @param line where, from 1; 0 where it is about the whole
     * @param column from 1
     * @param before the line itself, up to that place
     * @param at the word at that place
     * @param after the rest of the line
     * @param sentence what, and what to do
     */
    public record Trouble(int line, int column, String before, String at, String after, String sentence) {

        /** Whether there is a line to show. */
        public boolean hasLine() {
            return !(before + at + after).isBlank();
        }
    }

    /** How many there are in all. */
    public int count() {
        return troubles.size() + more;
    }
}
