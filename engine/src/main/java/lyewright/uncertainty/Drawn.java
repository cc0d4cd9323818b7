package lyewright.uncertainty;

/** What came out of a number of draws. Filled by {@link MonteCarlo}, and not changed once it is handed out. */
public final class Drawn {

    private final Histogram histogram;
    private final Moments moments;

    Drawn(Histogram histogram, double about) {
        this.histogram = histogram;
        this.moments = new Moments(about);
    }

    /** With the same bins, and nothing in them. */
    Drawn empty() {
        return new Drawn(histogram.empty(), about());
    }

    /** A value near the mean. */
    double about() {
        return moments.about();
    }

    void clear() {
        histogram.clear();
        moments.clear();
    }

    /** The first so many of some outputs. */
    void add(double[] outputs, int many) {
        histogram.count(outputs, many);
        moments.add(outputs, many);
    }

    void add(Drawn other) {
        histogram.add(other.histogram);
        moments.add(other.moments);
    }

    /**
     * How many draws there were.
     *
     * @return at least 1
     */
    public long draws() {
        return histogram.total();
    }

    /**
     * The mean of the output, its estimate by JCGM 101, 7.6.
     *
     * @return in the output's unit
     */
    public double mean() {
        return moments.mean();
    }

    /**
     * The standard deviation of the output, its standard uncertainty by JCGM 101, 7.6.
     *
     * @return in the output's unit, 0 for a single draw
     */
    public double standardUncertainty() {
        return moments.deviation();
    }

    /**
     * The output that a share of the draws lies below.
     *
     * @param share 0 to 1
     * @return in the output's unit, to a few thousandths of its spread
     */
    public double quantile(double share) {
        return histogram.quantile(share);
    }

    /**
     * The probabilistically symmetric interval (JCGM 101, 7.7): as much of the output lies below it as above.
     *
     * @param coverage the share it holds, such as 0.95
     * @return the interval
     */
    public Interval interval(double coverage) {
        double outside = (1 - coverage) / 2;
        return histogram.between(outside, 1 - outside);
    }

    /**
     * The shortest interval (JCGM 101, 7.7): no other holds as much and is shorter. Its ends are less settled than those of
     * the symmetric one.
     *
     * @param coverage the share it holds, such as 0.95
     * @return the interval
     */
    public Interval shortest(double coverage) {
        return histogram.shortest(coverage);
    }

    /**
     * The chance that the output is under zero.
     *
     * @return counted, 0 to 1
     */
    public double chanceBelowZero() {
        return histogram.shareBelowZero();
    }

    /**
     * The least and the greatest output that was drawn.
     *
     * @return the range
     */
    public Interval range() {
        return new Interval(histogram.least(), histogram.greatest());
    }

    /**
     * The share of the draws that lies below a value; below zero it is counted, else read off to a few thousandths of the spread.
     *
     * @param value in the output's unit
     * @return 0 to 1
     */
    public double shareBelow(double value) {
        return histogram.shareBelow(value);
    }
}
