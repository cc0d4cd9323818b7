package lyewright.web;

/**
 * A piece of a sentence or of a table's cell: plain words, or a figure that leads to why it is what it is.
 *
 * @param text the words
 * @param why the address of its reason, or where the reason is asked for with a form that holds all of the recipe, the figure's path;
 *     empty for plain words
 */
public record Piece(String text, String why) {

    /** Plain words. */
    public static Piece plain(String text) {
        return new Piece(text, "");
    }

    /** Whether it is a figure that can be asked about. */
    public boolean asks() {
        return !why.isEmpty();
    }
}
