package lyewright.measure;

/** The units a volume may be typed in. Fluid ounces are not among them: they differ by country. */
public enum VolumeUnit {
    /** Millilitre. */
    MILLILITRE("ml", 1),
    /** Litre. */
    LITRE("l", 1000);

    private final String symbol;
    private final int millilitres;

    VolumeUnit(String symbol, int millilitres) {
        this.symbol = symbol;
        this.millilitres = millilitres;
    }

    /**
     * How it is written.
     *
     * @return ml or l
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Its size.
     *
     * @return millilitres in one unit
     */
    public int millilitres() {
        return millilitres;
    }
}
