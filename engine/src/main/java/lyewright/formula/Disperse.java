package lyewright.formula;

import java.math.BigDecimal;
import java.util.Optional;
import lyewright.measure.TimeSpan;

/**
 * How an addition is wetted out before it goes in.
 *
 * @param in {@code water}, {@code oil} (the sheet chooses the most plentiful oil that pours), {@code glycerin}, or the key
 *     of one of the formula's oils
 * @param liquid parts of liquid, by mass
 * @param toSolid to so many parts of the addition
 * @param ahead how long before it is used, if written
 */
public record Disperse(String in, BigDecimal liquid, BigDecimal toSolid, Optional<TimeSpan> ahead) {

    /** Liquid taken from the batch's water. */
    public static final String WATER = "water";

    /** Liquid taken from the batch's oils, which one the sheet chooses. */
    public static final String OIL = "oil";

    /** Glycerin, which comes on top. */
    public static final String GLYCERIN = "glycerin";

    /**
     * Liquid to addition.
     *
     * @return grams of liquid per gram
     */
    public double ratio() {
        return liquid.doubleValue() / toSolid.doubleValue();
    }

    /**
     * The ratio as written.
     *
     * @return such as {@code 3 to 1}
     */
    public String ratioText() {
        return liquid.toPlainString() + " to " + toSolid.toPlainString();
    }
}
