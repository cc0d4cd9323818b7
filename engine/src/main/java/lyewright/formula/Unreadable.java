package lyewright.formula;

import lyewright.formula.Places.Place;
import lyewright.measure.Problem;

/** Ends the reading of a text that cannot be taken apart. Never leaves this package: it becomes a problem. */
final class Unreadable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Place place;
    private final transient Problem problem;

    Unreadable(Place place, String what, String remedy) {
        super(what, null, false, false);
        this.place = place;
        this.problem = new Problem("", what, remedy);
    }

    Place place() {
        return place;
    }

    Problem problem() {
        return problem;
    }
}
