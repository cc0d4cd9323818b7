package lyewright.picture;

import java.util.Arrays;

/**
 * A scale of superfats with zero on it. Each side of zero is as wide as its words need, however narrow the values make it, so that
 * nothing written of one side reaches over into the other.
 */
final class SuperfatScale {

    /** Below this, percent, nobody asks where exactly: the scale ends and an arrow says that it goes on. */
    private static final double LEAST = -100;

    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};
    private static final int MOST_TICKS = 7;

    /** What a whole number of steps may be off by. */
    private static final double ALMOST = 1e-9;

    private final double left;
    private final double right;
    private final double step;
    private final double from;
    private final double to;

    /**
     * What has to have room at least.
     *
     * @param before zero, in units of the drawing
     * @param after zero
     */
    record Rooms(double before, double after) {

        Rooms and(Rooms other) {
            return new Rooms(Math.max(before, other.before), Math.max(after, other.after));
        }
    }

    private SuperfatScale(double left, double right, double least, double most, Rooms rooms) {
        this.left = left;
        this.right = right;
        this.step = Arrays.stream(STEPS)
                .filter(s -> Math.ceil(most / s) - Math.min(-1, Math.floor(least / s)) <= MOST_TICKS)
                .findFirst()
                .orElse(STEPS[STEPS.length - 1]);
        double below = -step * Math.min(-1, Math.floor(least / step));
        double above = step * Math.max(1, Math.ceil(most / step));
        this.from = -wide(below, above, rooms.before / (right - left));
        this.to = wide(above, below, rooms.after / (right - left));
    }

    /** A side as it is, or so wide that it is no less than a share of both. */
    private static double wide(double side, double other, double share) {
        return Math.max(side, other * share / (1 - share));
    }

    /** A scale that all of some values have a place on, drawn between two places; the rooms together are less than lies between these. */
    static SuperfatScale over(double left, double right, Rooms rooms, double... values) {
        double least = Math.max(LEAST, Arrays.stream(values).min().orElse(0));
        double most = Math.min(-LEAST, Arrays.stream(values).max().orElse(0));
        return new SuperfatScale(left, right, Math.min(0, least), Math.max(0, most), rooms);
    }

    /** Where a value is drawn; beyond an end, at the end. */
    double at(double percent) {
        double within = Math.max(from, Math.min(to, percent));
        return left + (within - from) / (to - from) * (right - left);
    }

    /** Whether it lies left of the scale. */
    boolean before(double percent) {
        return percent < from;
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    /** The values with a tick. */
    double[] ticks() {
        int first = (int) Math.ceil(from / step - ALMOST);
        int last = (int) Math.floor(to / step + ALMOST);
        double[] ticks = new double[last - first + 1];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = (first + i) * step;
        }
        return ticks;
    }
}
