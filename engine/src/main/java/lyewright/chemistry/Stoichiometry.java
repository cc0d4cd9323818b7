package lyewright.chemistry;

import lyewright.material.Alkali;

/** Molar masses and the factors that follow from them. */
public final class Stoichiometry {

    /** Molar mass of water, g/mol (IUPAC abridged atomic weights, from memory). */
    public static final double WATER = 18.015;

    /** Molar mass of glycerol, g/mol (IUPAC abridged atomic weights, from memory). */
    public static final double GLYCEROL = 92.094;

    /** Milligrams of potassium hydroxide in a mole: turns mg KOH/g into mol/g. */
    public static final double MILLIGRAMS_KOH_PER_MOLE = 56_105;

    private Stoichiometry() {}

    /**
     * Moles of alkali that a gram takes.
     *
     * @param milligramsKohPerGram saponification or acid value, mg KOH/g
     * @return mol/g
     */
    public static double molesPerGram(double milligramsKohPerGram) {
        return milligramsKohPerGram / MILLIGRAMS_KOH_PER_MOLE;
    }

    /**
     * Grams of pure alkali that a gram takes.
     *
     * @param milligramsKohPerGram saponification or acid value, mg KOH/g
     * @param alkali which alkali
     * @return g/g
     */
    public static double gramsPerGram(double milligramsKohPerGram, Alkali alkali) {
        return molesPerGram(milligramsKohPerGram) * alkali.molarMass();
    }
}
