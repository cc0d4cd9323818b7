package lyewright.uncertainty;

/**
 * An interval that holds a stated share of what a figure may be.
 *
 * @param low its lower end
 * @param high its upper end
 */
public record Interval(double low, double high) {

    /**
     * How wide it is.
     *
     * @return high less low
     */
    public double width() {
        return high - low;
    }
}
