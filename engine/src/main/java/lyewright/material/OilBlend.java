package lyewright.material;

import java.util.List;

/**
 * Oils mixed ahead and weighed as one.
 *
 * @param key its key in formulas
 * @param name what it is called
 * @param parts which oils at which fraction of its mass; fractions add up to 1
 */
public record OilBlend(String key, String name, List<Part> parts) {

    /** Copies its list. */
    public OilBlend {
        parts = List.copyOf(parts);
    }

    /**
     * One oil of a blend.
     *
     * @param oil the oil
     * @param fraction its fraction of the blend's mass, 0 to 1
     */
    public record Part(Oil oil, double fraction) {}
}
