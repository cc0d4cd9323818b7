package lyewright.material;

import java.util.Arrays;
import java.util.Optional;

/**
 * The two alkalis of soap. Molar masses are those of the design: NaOH 39.997 and KOH 56.105 g/mol (IUPAC abridged atomic
 * weights, from memory).
 */
public enum Alkali {
    /** Sodium hydroxide, NaOH: hard soap. What its purity leaves out is inert solid. */
    SODIUM("naoh", "sodium", 39.997, 97, 98, 99, 0),
    /** Potassium hydroxide, KOH: soft soap. What its purity leaves out is water. */
    POTASSIUM("koh", "potassium", 56.105, 88, 90, 92, 1);

    private final String key;
    private final String word;
    private final double molarMass;
    private final double assumedLow;
    private final double assumedPercent;
    private final double assumedHigh;
    private final double waterInRest;

    Alkali(
            String key,
            String word,
            double molarMass,
            double assumedLow,
            double assumedPercent,
            double assumedHigh,
            double waterInRest) {
        this.key = key;
        this.word = word;
        this.molarMass = molarMass;
        this.assumedLow = assumedLow;
        this.assumedPercent = assumedPercent;
        this.assumedHigh = assumedHigh;
        this.waterInRest = waterInRest;
    }

    /**
     * Its key on sheets.
     *
     * @return naoh or koh
     */
    public String key() {
        return key;
    }

    /**
     * The one of a key.
     *
     * @param key naoh or koh
     * @return none for any other
     */
    public static Optional<Alkali> ofKey(String key) {
        return Arrays.stream(values()).filter(it -> it.key.equals(key)).findFirst();
    }

    /**
     * Its word in formulas.
     *
     * @return sodium or potassium
     */
    public String word() {
        return word;
    }

    /**
     * Its molar mass.
     *
     * @return g/mol
     */
    public double molarMass() {
        return molarMass;
    }

    /**
     * The purity taken where none is given: INRS sheet 20 for NaOH's 97 to 99 %, a 1908 handbook for KOH's 88 to 92 %.
     *
     * @return percent, between assumed low and high
     */
    public Figure assumedPurity() {
        return Figure.range(assumedLow, assumedHigh, "assumed");
    }

    /**
     * The middle of the assumed purity.
     *
     * @return percent
     */
    public double assumedPercent() {
        return assumedPercent;
    }

    /**
     * How much of what purity leaves out is water.
     *
     * @return 1 for KOH, 0 for NaOH
     */
    public double waterInRest() {
        return waterInRest;
    }
}
