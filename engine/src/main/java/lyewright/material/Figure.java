package lyewright.material;

/**
 * A figure with how uncertain it is and where it comes from. Its unit is that of the property it stands for.
 *
 * @param low the least it may be; for {@link Spread#NORMAL} the low end of its 95 % interval
 * @param high the most it may be, at least {@code low}; for {@link Spread#NORMAL} the high end of its 95 % interval
 * @param spread how it is spread between them
 * @param source where it was published, or that it is memory
 */
public record Figure(double low, double high, Spread spread, String source) {

    /** How a figure may lie between its ends. */
    public enum Spread {
        /** Known: low and high are the same. */
        EXACT,
        /** Anywhere between, equally: what a published range says. */
        RECTANGULAR,
        /** Bell-shaped, the ends being the 95 % interval: what a certificate says. */
        NORMAL
    }

    /** Refuses ends in the wrong order: that is a broken promise of the caller. */
    public Figure {
        if (!(low <= high)) {
            throw new IllegalArgumentException("low end " + low + " over high end " + high);
        }
    }

    /**
     * A published range.
     *
     * @param low least
     * @param high most
     * @param source where published
     * @return the figure, exact when both ends are one
     */
    public static Figure range(double low, double high, String source) {
        return new Figure(low, high, low == high ? Spread.EXACT : Spread.RECTANGULAR, source);
    }

    /**
     * A figure taken as it stands.
     *
     * @param value the value
     * @param source where published
     * @return the figure
     */
    public static Figure exact(double value, String source) {
        return new Figure(value, value, Spread.EXACT, source);
    }

    /**
     * The middle, which is what a sheet computes with unless it says otherwise.
     *
     * @return halfway between the ends
     */
    public double middle() {
        return (low + high) / 2;
    }

    /**
     * Whether the range is wide: over a tenth of its middle, this project's own rule.
     *
     * @return true if high less low is more than 10 % of the middle
     */
    public boolean wide() {
        return high - low > middle() / 10;
    }

    /**
     * Whether nothing published stands behind it.
     *
     * @return true if its source says memory
     */
    public boolean remembered() {
        return source.contains("memory");
    }
}
