package lyewright.measure;

/** The units a span of bench time may be typed in. */
public enum TimeUnitWritten {
    /** Minute. */
    MINUTE("min", 1.0 / 60),
    /** Hour. */
    HOUR("h", 1),
    /** Day. */
    DAY("d", 24);

    private final String symbol;
    private final double hours;

    TimeUnitWritten(String symbol, double hours) {
        this.symbol = symbol;
        this.hours = hours;
    }

    /**
     * How it is written.
     *
     * @return min, h or d
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Its size.
     *
     * @return hours in one unit
     */
    public double hours() {
        return hours;
    }
}
