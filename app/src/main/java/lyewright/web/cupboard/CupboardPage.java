package lyewright.web.cupboard;

import java.util.List;
import lyewright.web.Frame;

/**
 * All that is in the cupboard.
 *
 * @param frame around it
 * @param calls what asks for attention, the most pressing first
 * @param shelves what is there, a shelf for each kind
 */
public record CupboardPage(Frame frame, List<Call> calls, List<Shelf> shelves) {

    /** Copies its lists. */
    public CupboardPage {
        calls = List.copyOf(calls);
        shelves = List.copyOf(shelves);
    }

    /** Whether nothing was ever put in. */
    public boolean isEmpty() {
        return shelves.isEmpty();
    }

    /**
     * Something that asks for attention.
     *
     * @param what of which material or lot
     * @param address where that is
     * @param says what about it, going on from its name
     * @param pressing whether it stands in the way of making
     */
    public record Call(String what, String address, String says, boolean pressing) {}

    /**
     * Materials of one kind.
     *
     * @param name of the kind, in the plural
     * @param things by name
     */
    public record Shelf(String name, List<Thing> things) {
        /** Copies its list. */
        public Shelf {
            things = List.copyOf(things);
        }
    }

    /**
     * A material.
     *
     * @param name what it is called
     * @param address its page
     * @param left how much of it may be used; where none may, how much lies there
     * @param level that as a share of what came in its lots, percent; below 0 where there is none to show
     * @param low whether it should be bought
     * @param says how many lots, and which is used up first
     */
    public record Thing(String name, String address, String left, int level, boolean low, String says) {}
}
