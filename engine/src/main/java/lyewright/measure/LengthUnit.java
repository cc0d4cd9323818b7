package lyewright.measure;

/** The units a length may be typed in. The inch is 25.4 mm exactly (1959 agreement). */
public enum LengthUnit {
    /** Millimetre. */
    MILLIMETRE("mm", 1),
    /** Centimetre. */
    CENTIMETRE("cm", 10),
    /** Inch. */
    INCH("in", 25.4);

    private final String symbol;
    private final double millimetres;

    LengthUnit(String symbol, double millimetres) {
        this.symbol = symbol;
        this.millimetres = millimetres;
    }

    /**
     * How it is written.
     *
     * @return mm, cm or in
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Its size.
     *
     * @return millimetres in one unit
     */
    public double millimetres() {
        return millimetres;
    }
}
