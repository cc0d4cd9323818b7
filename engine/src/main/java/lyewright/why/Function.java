package lyewright.why;

/** The functions of a formula, as docs/guide/why.md tells them. */
enum Function {
    /** The larger or largest. */
    MAX,
    /** The smaller or smallest. */
    MIN,
    /** x to the nearest whole number of steps, halves up, then to the nearest thousandth. */
    NEAREST,
    /** The most whole steps, to the nearest thousandth, that are not over x; a billionth of a step is forgiven. */
    DOWN,
    /** The whole number not over x; a billionth is forgiven. */
    WHOLE,
    /** y at x on the straight line through two points: between(x, x1, y1, x2, y2). */
    BETWEEN;

    private static final double FORGIVEN = 1e-9;

    String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    double of(double... x) {
        return switch (this) {
            case MAX -> java.util.Arrays.stream(x).max().orElse(0);
            case MIN -> java.util.Arrays.stream(x).min().orElse(0);
            case NEAREST -> thousandth(Math.round(x[0] / x[1]) * x[1]);
            case DOWN -> down(x[0], x[1]);
            case WHOLE -> Math.floor(x[0] + FORGIVEN);
            case BETWEEN -> x[2] + (x[4] - x[2]) * (x[0] - x[1]) / (x[3] - x[1]);
        };
    }

    private static double down(double x, double step) {
        double steps = Math.floor(x / step + FORGIVEN);
        double below = thousandth(steps * step);
        boolean whole = x / step - steps < FORGIVEN;
        return whole || below <= x + FORGIVEN * step ? below : thousandth((steps - 1) * step);
    }

    private static double thousandth(double x) {
        return Math.round(x * 1000) / 1000.0;
    }
}
