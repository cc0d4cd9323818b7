package lyewright.uncertainty;

/**
 * One uncertain input of a model.
 *
 * @param name what it is, in words a maker reads
 * @param distribution how it may lie
 * @param degreesOfFreedom of its standard uncertainty (JCGM 100, G.3); infinite where the distribution is taken as known
 */
public record Input(String name, Distribution distribution, double degreesOfFreedom) {

    /**
     * An input whose distribution is taken as known.
     *
     * @param name what it is
     * @param distribution how it may lie
     */
    public Input(String name, Distribution distribution) {
        this(name, distribution, Double.POSITIVE_INFINITY);
    }
}
