package lyewright.web.recipe;

import java.util.List;
import lyewright.web.Piece;

/**
 * Figures with their words, each leading to why it is that.
 *
 * @param label what it is
 * @param value the figures with their units
 * @param setIn whether it is part of the line above that has it not
 */
public record Told(String label, List<Piece> value, boolean setIn) {

    /** Copies its list. */
    public Told {
        value = List.copyOf(value);
    }

    static Told of(String label, Piece... value) {
        return new Told(label, List.of(value), false);
    }

    static Told of(String label, String value, String why) {
        return of(label, new Piece(value, why));
    }
}
