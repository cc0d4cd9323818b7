package lyewright.records.equipment;

import java.util.Optional;
import lyewright.measure.Length;
import lyewright.measure.Problem;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;

/** Bounds of what a workshop's equipment can be. */
final class Measures {

    /** Ten tonnes: what no bench holds, and far from where whole figures end. */
    private static final double MOST_GRAMS = 1e7;

    /** A hundred metres. */
    private static final double MOST_MILLIMETRES = 1e5;

    private static final double MOST_MILLILITRES = 1e7;
    private static final double LEAST = 0.001;

    private Measures() {}

    static Optional<Problem> check(String path, WrittenMass mass) {
        return check(path, mass.toString(), mass.grams(), MOST_GRAMS, "250 g");
    }

    static Optional<Problem> check(String path, Length length) {
        return check(path, length.toString(), length.millimetres(), MOST_MILLIMETRES, "25 mm");
    }

    static Optional<Problem> check(String path, Volume volume) {
        return check(path, volume.toString(), volume.millilitres(), MOST_MILLILITRES, "95 ml");
    }

    /** What may be nothing, such as a blade that takes nothing away. */
    static Optional<Problem> atMost(String path, Length length) {
        return length.value().signum() == 0 ? Optional.empty() : check(path, length);
    }

    private static Optional<Problem> check(String path, String typed, double size, double most, String example) {
        if (size < LEAST) {
            return Optional.of(new Problem(path, typed + " is nothing", "write more than that, as in " + example));
        }
        return size <= most
                ? Optional.empty()
                : Optional.of(new Problem(path, typed + " is more than any workshop has", "check the unit"));
    }
}
