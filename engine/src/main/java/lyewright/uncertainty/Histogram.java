package lyewright.uncertainty;

/**
 * Counts of drawn values in bins of one width. Its size does not grow with the draws. Edges of bins are whole multiples of
 * the width, so zero is an edge and the share below zero is counted, not interpolated. What lies beyond its ends is counted
 * in the outermost bins, whose outer edges are the least and the greatest value seen.
 */
final class Histogram {

    /** Bins: against the five-fold range of a pilot they make a bin a few thousandths of the spread. */
    static final int BINS = 8192;

    private final double width;
    private final double perWidth;
    private final double first;
    private final long[] counts = new long[BINS];
    private long total;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    /** Over the given range and a little more; {@code low} is under {@code high}. */
    Histogram(double low, double high) {
        // two bins more than the range needs, since its ends move to multiples of the width
        this.width = (high - low) / (BINS - 2);
        this.perWidth = 1 / width;
        this.first = Math.floor(low * perWidth);
    }

    /** An empty one with the same bins. */
    private Histogram(Histogram like) {
        this.width = like.width;
        this.perWidth = like.perWidth;
        this.first = like.first;
    }

    Histogram empty() {
        return new Histogram(this);
    }

    void count(double value) {
        int bin = (int) (value * perWidth - first);
        counts[Math.max(0, Math.min(BINS - 1, bin))]++;
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
        total++;
    }

    void add(Histogram other) {
        for (int i = 0; i < BINS; i++) {
            counts[i] += other.counts[i];
        }
        total += other.total;
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

    /** The share of all that lies below zero. */
    double shareBelowZero() {
        // bin b reaches from (first + b) widths to the next
        int bins = (int) Math.max(0, Math.min(BINS, -first));
        long below = 0;
        for (int i = 0; i < bins; i++) {
            below += counts[i];
        }
        return (double) below / total;
    }

    /** The shortest interval that holds a share of all, its lower end an edge of a bin. */
    Interval shortest(double share) {
        Interval best = new Interval(least, greatest);
        Climb climb = new Climb();
        long under = 0;
        for (int bin = 0; bin < BINS && under + share * total <= total; bin++) {
            if (counts[bin] > 0) {
                Interval here = new Interval(edge(bin), climb.to(under + share * total));
                best = here.width() < best.width() ? here : best;
                under += counts[bin];
            }
        }
        return best;
    }

    /** Goes up through the bins; what is asked of it never falls. */
    private final class Climb {
        private int bin;
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
        double edge = (first + bin) * width;
        return Math.max(least, Math.min(greatest, edge));
    }
}
