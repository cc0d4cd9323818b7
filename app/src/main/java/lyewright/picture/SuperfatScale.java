package lyewright.picture;

import java.util.Arrays;

/** A scale of superfats with zero on it and something of the side below, where alkali is left over. */
final class SuperfatScale {

    /** Below this, percent, nobody asks where exactly: the scale ends and an arrow says that it goes on. */
    private static final double LEAST = -100;

    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};
    private static final int MOST_TICKS = 7;

    private final double left;
    private final double right;
    private final double step;
    private final double from;
    private final double to;

    private SuperfatScale(double left, double right, double least, double most) {
        this.left = left;
        this.right = right;
        this.step = Arrays.stream(STEPS)
                .filter(s -> Math.ceil(most / s) - Math.min(-1, Math.floor(least / s)) <= MOST_TICKS)
                .findFirst()
                .orElse(STEPS[STEPS.length - 1]);
        this.from = step * Math.min(-1, Math.floor(least / step));
        this.to = step * Math.max(1, Math.ceil(most / step));
    }

    /** A scale that all of some values have a place on, drawn between two places. */
    static SuperfatScale over(double left, double right, double... values) {
        double least = Math.max(LEAST, Arrays.stream(values).min().orElse(0));
        double most = Math.min(-LEAST, Arrays.stream(values).max().orElse(0));
        return new SuperfatScale(left, right, Math.min(0, least), Math.max(0, most));
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
        int first = (int) Math.round(from / step);
        int last = (int) Math.round(to / step);
        double[] ticks = new double[last - first + 1];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = (first + i) * step;
        }
        return ticks;
    }
}
