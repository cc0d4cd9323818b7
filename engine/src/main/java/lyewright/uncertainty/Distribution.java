package lyewright.uncertainty;

import lyewright.material.Figure;

/** How an input may lie. Immutable. Its unit is that of the input it stands for. */
public sealed interface Distribution {

    /** Standard deviations that hold the middle 95 % of a normal distribution (0.975 quantile, any table of it). */
    double NORMAL_95 = 1.959963984540054;

    /**
     * Its mean.
     *
     * @return in the input's unit
     */
    double mean();

    /**
     * Its standard deviation, which JCGM 100 calls standard uncertainty.
     *
     * @return in the input's unit, 0 or more
     */
    double standardUncertainty();

    /**
     * The least it may be.
     *
     * @param deviations how many standard deviations a normal distribution is taken to reach; the others end by themselves
     * @return in the input's unit
     */
    double least(double deviations);

    /**
     * The most it may be.
     *
     * @param deviations how many standard deviations a normal distribution is taken to reach; the others end by themselves
     * @return in the input's unit
     */
    double most(double deviations);

    /**
     * Known.
     *
     * @param value its value
     */
    record Exact(double value) implements Distribution {
        @Override
        public double mean() {
            return value;
        }

        @Override
        public double standardUncertainty() {
            return 0;
        }

        @Override
        public double least(double deviations) {
            return value;
        }

        @Override
        public double most(double deviations) {
            return value;
        }
    }

    /**
     * Anywhere between two ends, equally likely (JCGM 101, 6.4.2).
     *
     * @param low least
     * @param high most, over {@code low}
     */
    record Rectangular(double low, double high) implements Distribution {

        /** Refuses ends in the wrong order: a broken promise of the caller. */
        public Rectangular {
            requireOrder(low, high);
        }

        @Override
        public double mean() {
            return (low + high) / 2;
        }

        @Override
        public double standardUncertainty() {
            return (high - low) / Math.sqrt(12);
        }

        @Override
        public double least(double deviations) {
            return low;
        }

        @Override
        public double most(double deviations) {
            return high;
        }
    }

    /**
     * The sum of two rectangular ones around a middle (JCGM 101, 6.4.4): flat in the middle, falling in straight lines to
     * both ends. A weighing is one: what the balance may err, and what its step does not show.
     *
     * @param middle its middle
     * @param oneHalf half the width of the one
     * @param otherHalf half the width of the other
     */
    record Trapezoidal(double middle, double oneHalf, double otherHalf) implements Distribution {

        /** Refuses negative widths: a broken promise of the caller. */
        public Trapezoidal {
            requireOrder(0, oneHalf);
            requireOrder(0, otherHalf);
        }

        @Override
        public double mean() {
            return middle;
        }

        @Override
        public double standardUncertainty() {
            return Math.sqrt((oneHalf * oneHalf + otherHalf * otherHalf) / 3);
        }

        @Override
        public double least(double deviations) {
            return middle - oneHalf - otherHalf;
        }

        @Override
        public double most(double deviations) {
            return middle + oneHalf + otherHalf;
        }
    }

    /**
     * Most likely at one value and falling in straight lines to both ends (JCGM 101, 6.4.5, there with the value in the
     * middle).
     *
     * @param low least
     * @param mode the likeliest
     * @param high most
     */
    record Triangular(double low, double mode, double high) implements Distribution {

        /** Refuses values in the wrong order: a broken promise of the caller. */
        public Triangular {
            requireOrder(low, mode);
            requireOrder(mode, high);
        }

        @Override
        public double mean() {
            return (low + mode + high) / 3;
        }

        @Override
        public double standardUncertainty() {
            double below = mode - low;
            double above = high - mode;
            return Math.sqrt((below * below + below * above + above * above) / 18);
        }

        @Override
        public double least(double deviations) {
            return low;
        }

        @Override
        public double most(double deviations) {
            return high;
        }
    }

    /**
     * Bell-shaped (JCGM 101, 6.4.7).
     *
     * @param mean its mean
     * @param standardUncertainty its standard deviation, 0 or more
     */
    record Normal(double mean, double standardUncertainty) implements Distribution {

        /** Refuses a negative deviation: a broken promise of the caller. */
        public Normal {
            requireOrder(0, standardUncertainty);
        }

        @Override
        public double least(double deviations) {
            return mean - deviations * standardUncertainty;
        }

        @Override
        public double most(double deviations) {
            return mean + deviations * standardUncertainty;
        }
    }

    private static void requireOrder(double low, double high) {
        if (!(low <= high)) {
            throw new IllegalArgumentException(low + " is over " + high);
        }
    }

    /**
     * What a certificate says: a value, its expanded uncertainty and the coverage factor of that (JCGM 100, 4.3.3).
     *
     * @param value the certified value
     * @param expanded its expanded uncertainty, 0 or more
     * @param coverageFactor what the standard uncertainty was multiplied by, mostly 2
     * @return normal around the value
     */
    static Distribution fromCertificate(double value, double expanded, double coverageFactor) {
        return new Normal(value, expanded / coverageFactor);
    }

    /**
     * Of a figure of the tables or of a maker's certificate, whose ends are a range or a 95 % interval.
     *
     * @param figure the figure
     * @return exact, rectangular or normal as the figure is spread
     */
    static Distribution of(Figure figure) {
        return switch (figure.spread()) {
            case EXACT -> new Exact(figure.middle());
            case RECTANGULAR -> new Rectangular(figure.low(), figure.high());
            case NORMAL -> new Normal(figure.middle(), (figure.high() - figure.low()) / 2 / NORMAL_95);
        };
    }
}
