package lyewright.formula;

import java.util.Map;

/**
 * Where in the text of a formula file each entry stands, so that a problem's path becomes a line and a column. Immutable.
 */
public final class Places {

    /** Of a text that could not be taken apart: everything is at its beginning. */
    public static final Places NONE = new Places(Place.BEGINNING, Map.of());

    private final Place whole;
    private final Map<String, Place> places;

    Places(Place whole, Map<String, Place> places) {
        this.whole = whole;
        this.places = Map.copyOf(places);
    }

    /**
     * A place in a text.
     *
     * @param line from 1
     * @param column from 1, in characters as a person counts them (code points)
     */
    public record Place(int line, int column) implements Comparable<Place> {

        static final Place BEGINNING = new Place(1, 1);

        @Override
        public int compareTo(Place other) {
            return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
        }

        boolean isBefore(Place other) {
            return compareTo(other) < 0;
        }
    }

    /**
     * Where the entry at a path stands: its value where that is on one line, its name where more lines follow. For what is
     * not in the text, the nearest entry around it.
     *
     * @param path a problem's path, such as {@code additions.2.amount}
     * @return the place; for the whole file its beginning, or where the text stopped making sense
     */
    public Place of(String path) {
        String at = path;
        while (!at.isEmpty()) {
            Place place = places.get(at);
            if (place != null) {
                return place;
            }
            at = enclosing(at);
        }
        return whole;
    }

    /** The path of what holds an entry; empty for the whole. */
    static String enclosing(String path) {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? "" : path.substring(0, dot);
    }

    /** The path of an entry inside another. */
    static String join(String outer, String name) {
        return outer.isEmpty() ? name : outer + "." + name;
    }
}
