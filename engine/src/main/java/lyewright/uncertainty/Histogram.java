package lyewright.uncertainty;

import java.util.Arrays;

/**
 * Counts of drawn values in bins of one width. Its size does not grow with the draws. What lies beyond its ends is counted in
 * the outermost bins, whose outer edges are the least and the greatest value seen. What lies below zero is counted by itself,
 * not read off the bins.
 */
final class Histogram {

    /** Bins: against the three-fold range of a pilot they make a bin a few thousandths of the spread. */
    static final int BINS = 4096;

    private final double first;
    private final double width;
    private final double perWidth;
    private final long[] counts = new long[BINS];
    private long total;
    private long below;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    /** Over the given range; {@code low} is under {@code high}. */
    Histogram(double low, double high) {
        this.first = low;
        this.width = (high - low) / BINS;
        this.perWidth = 1 / width;
    }

    /** An empty one with the same bins. */
    private Histogram(Histogram like) {
        this.first = like.first;
        this.width = like.width;
        this.perWidth = like.perWidth;
    }

    Histogram empty() {
        return new Histogram(this);
    }

    void clear() {
        Arrays.fill(counts, 0);
        total = 0;
        below = 0;
        least = Double.POSITIVE_INFINITY;
        greatest = Double.NEGATIVE_INFINITY;
    }

    /** Counts the first so many of some values. */
    void count(double[] values, int many) {
        double lowest = least;
        double highest = greatest;
        int negative = 0;
        for (int i = 0; i < many; i++) {
            double value = values[i];
            counts[bin(value)]++;
            lowest = Math.min(lowest, value);
            highest = Math.max(highest, value);
            negative += value < 0 ? 1 : 0;
        }
        least = lowest;
        greatest = highest;
        below += negative;
        total += many;
    }

    private int bin(double value) {
        return Math.max(0, Math.min(BINS - 1, (int) ((value - first) * perWidth)));
    }

    /** Those of another with the same bins. */
    void add(Histogram other) {
        for (int i = bin(other.least), last = bin(other.greatest); i <= last; i++) {
            counts[i] += other.counts[i];
        }
        total += other.total;
        below += other.below;
        least = Math.min(least, other.least);
        greatest = Math.max(greatest, other.greatest);
    }

    long total() {
        return total;
    }

    /** The value that a share of all lies below, straight lines within a bin. */
    double quantile(double share) {
        return new Climb().to(share * total);
    }

    /** From the value that one share of all lies below to that of another, which is no less. */
    Interval between(double share, double another) {
        Climb climb = new Climb();
        double low = climb.to(share * total);
        return new Interval(low, climb.to(another * total));
    }

    /** The share of all that lies below zero. */
    double shareBelowZero() {
        return (double) below / total;
    }

    /** The least value seen. */
    double least() {
        return least;
    }

    /** The greatest value seen. */
    double greatest() {
        return greatest;
    }

    /** The share of all that lies below a value, straight lines within a bin; below zero it is counted. */
    double shareBelow(double value) {
        if (value == 0) {
            return shareBelowZero();
        }
        if (value <= least || value >= greatest) {
            return value <= least ? 0 : 1;
        }
        int in = bin(value);
        long under = 0;
        for (int bin = bin(least); bin < in; bin++) {
            under += counts[bin];
        }
        double from = edge(in);
        double to = edge(in + 1);
        double within = to > from ? Math.max(0, Math.min(1, (value - from) / (to - from))) : 0;
        return (under + within * counts[in]) / total;
    }

    /** The shortest interval that holds a share of all: the best of those that begin or end at the edge of a bin. */
    Interval shortest(double share) {
        double held = share * total;
        Interval best = new Interval(least, greatest);
        Climb low = new Climb();
        Climb high = new Climb();
        long under = 0;
        for (int bin = 0; bin < BINS; bin++) {
            if (counts[bin] > 0) {
                if (under + held <= total) {
                    best = shorter(best, new Interval(edge(bin), high.to(under + held)));
                }
                under += counts[bin];
                if (under >= held) {
                    best = shorter(best, new Interval(low.to(under - held), edge(bin + 1)));
                }
            }
        }
        return best;
    }

    private static Interval shorter(Interval one, Interval other) {
        return other.width() < one.width() ? other : one;
    }

    /** Goes up through the bins; what is asked of it never falls. */
    private final class Climb {
        private int bin = bin(least);
        private long under;

        /** The value that so many draws lie below. */
        double to(double wanted) {
            while (bin < BINS - 1 && under + counts[bin] < wanted) {
                under += counts[bin++];
            }
            double inBin = counts[bin] == 0 ? 0 : (wanted - under) / counts[bin];
            return edge(bin) + inBin * (edge(bin + 1) - edge(bin));
        }
    }

    private double edge(int bin) {
        if (bin == 0) {
            return least;
        }
        return bin == BINS ? greatest : Math.max(least, Math.min(greatest, first + bin * width));
    }
}
