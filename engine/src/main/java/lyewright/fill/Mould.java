package lyewright.fill;

import java.util.Optional;
import lyewright.chemistry.BatchLines;

/**
 * What is known of a mould; each of its figures is enough by itself. Where several are given the best measured one counts:
 * a usual mass, then its water fill, then its shape.
 *
 * @param shape its inside
 * @param waterFillGrams grams of water at 20 °C that fill it
 * @param usual what it usually takes
 */
public record Mould(Optional<Shape> shape, Optional<Double> waterFillGrams, Optional<Usual> usual) {

    /** Nothing known. */
    public static final Mould UNKNOWN = new Mould(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * What a mould usually takes, with the formula it was measured with.
     *
     * @param grams mass in the mould
     * @param of the formula that was in it
     */
    public record Usual(double grams, BatchLines of) {}

    /**
     * Whether it says how much it holds.
     *
     * @return true if anything is known
     */
    public boolean known() {
        return shape.isPresent() || waterFillGrams.isPresent() || usual.isPresent();
    }
}
