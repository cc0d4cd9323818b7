package lyewright.web.make;

/**
 * A piece of a sentence: plain words, or a figure that leads to why it is what it is.
 *
 * @param text the words
 * @param why the address of its reason; empty for plain words
 */
public record Piece(String text, String why) {

    static Piece plain(String text) {
        return new Piece(text, "");
    }

    /** Whether it is a figure that can be asked about. */
    public boolean asks() {
        return !why.isEmpty();
    }
}
