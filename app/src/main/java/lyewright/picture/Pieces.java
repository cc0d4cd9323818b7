package lyewright.picture;

import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Shape;
import lyewright.measure.Outcome;

/**
 * Where pieces lie along one side of what is cut, all in the side's own unit.
 *
 * @param side how long the side is
 * @param first where the first piece begins: after what is cut off the end
 * @param piece how long one is
 * @param blade what a cut between two takes
 * @param count how many there are, as the engine counts them
 */
record Pieces(double side, double first, double piece, double blade, int count) {

    /** Along a side, or nothing where no piece comes out. */
    static Optional<Pieces> along(double side, double piece, double blade, double ends) {
        // a loaf of that length asks the engine how many
        CutPlan plan = new CutPlan(piece, Optional.empty(), blade, ends, 0);
        return plan.of(new Shape.Loaf(side, 1, 1)) instanceof Outcome.Ok<CutPlan.Cut> cut
                ? Optional.of(new Pieces(side, ends, piece, blade, cut.value().bars()))
                : Optional.empty();
    }

    double from(int i) {
        return first + i * (piece + blade);
    }

    double to(int i) {
        return from(i) + piece;
    }

    /** Where the last one ends. */
    double end() {
        return Math.min(side, to(count - 1));
    }

    /** What lies behind the last one and is not the end that is cut off anyway. */
    double leftOver() {
        return Math.max(0, side - first - end());
    }

    /** The middle of the cut behind a piece. */
    double cut(int i) {
        return to(i) + blade / 2;
    }

    /** So many cuts are drawn as one, so that lines stay apart. */
    int step(double unitsPerLength, double apart) {
        return Math.max(1, (int) Math.ceil(apart / ((piece + blade) * unitsPerLength)));
    }
}
