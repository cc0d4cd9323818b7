package lyewright.formula;

import lyewright.measure.Share;
import lyewright.measure.WrittenMass;

/**
 * One oil of the oil phase.
 *
 * @param key its key in the tables or among the formula's own materials
 * @param amount how much
 */
public record OilLine(String key, Amount amount) {

    /** How much of an oil. */
    public sealed interface Amount {}

    /**
     * Percent of the oils.
     *
     * @param share percent by mass
     */
    public record Percent(Share share) implements Amount {}

    /**
     * A mass.
     *
     * @param mass as typed
     */
    public record Weight(WrittenMass mass) implements Amount {}

    /** What the other oils leave of 100 %. */
    public record Rest() implements Amount {}
}
