package lyewright.web.make;

import java.util.List;
import lyewright.web.Piece;

/**
 * A label and what stands beside it.
 *
 * @param label a word or two
 * @param text what it is
 */
public record LineShown(String label, List<Piece> text) {

    /** Copies its list. */
    public LineShown {
        text = List.copyOf(text);
    }
}
