package lyewright.uncertainty;

/**
 * Mean and standard deviation of values that come one at a time. Sums are of differences from a value near the mean, which
 * keeps the digits that sums of large numbers lose (NIST StRD, NumAcc3 and NumAcc4, are built to show that loss).
 */
final class Moments {

    private final double about;
    private long count;
    private double sum;
    private double squares;

    /** Around a value near the mean: the nearer, the better. */
    Moments(double about) {
        this.about = about;
    }

    void add(double value) {
        double difference = value - about;
        sum += difference;
        squares += difference * difference;
        count++;
    }

    /** The first so many of some values. */
    void add(double[] values, int many) {
        double differences = 0;
        double theirSquares = 0;
        for (int i = 0; i < many; i++) {
            double difference = values[i] - about;
            differences += difference;
            theirSquares += difference * difference;
        }
        sum += differences;
        squares += theirSquares;
        count += many;
    }

    /** Those of another, around the same value. */
    void add(Moments other) {
        sum += other.sum;
        squares += other.squares;
        count += other.count;
    }

    void clear() {
        count = 0;
        sum = 0;
        squares = 0;
    }

    double about() {
        return about;
    }

    double mean() {
        return about + sum / count;
    }

    /** Of the values, as a sample; 0 for one value. */
    double deviation() {
        return count < 2 ? 0 : Math.sqrt(Math.max(0, squares - sum * sum / count) / (count - 1));
    }

    double deviationOfMean() {
        return deviation() / Math.sqrt((double) count);
    }
}
