package lyewright.material;

import java.util.List;

/**
 * The fatty acids of one oil, as published: each acid with its own range. The ranges are independent, so their middles
 * seldom add up to 100; whatever is computed from them scales the middles to 100 first.
 *
 * @param acids the acids, in the order published; may be empty where nothing was found
 * @param lauricAndMyristic C12:0 and C14:0 together, middles scaled to 100, percent; 0 if unknown
 */
public record FattyAcidProfile(List<AcidShare> acids, double lauricAndMyristic) {

    /** No acids known. */
    public static final FattyAcidProfile UNKNOWN = new FattyAcidProfile(List.of());

    /** Glycerol backbone left in a triglyceride per three acids: M(glycerol) 92.094 less three M(water) 18.015. */
    private static final double BACKBONE = 92.094 - 3 * 18.015;

    private static final double MILLIGRAMS_KOH_PER_MOLE = 56_105;

    /** Copies its list. */
    public FattyAcidProfile {
        acids = List.copyOf(acids);
    }

    /**
     * A profile of acids. What every sheet asks of it is reckoned here, once.
     *
     * @param acids the acids, in the order published; may be empty where nothing was found
     */
    public FattyAcidProfile(List<AcidShare> acids) {
        this(acids, scaledMiddle(acids, "C12:0") + scaledMiddle(acids, "C14:0"));
    }

    /**
     * Whether anything is known.
     *
     * @return true if there is at least one acid
     */
    public boolean known() {
        return !acids.isEmpty();
    }

    /**
     * The middles' sum, which the scaling divides by.
     *
     * @return percent, near 100 for a full profile, 0 if unknown
     */
    public double sumOfMiddles() {
        return sumOfMiddles(acids);
    }

    private static double sumOfMiddles(List<AcidShare> acids) {
        double sum = 0;
        for (AcidShare a : acids) {
            sum += a.share().middle();
        }
        return sum;
    }

    /**
     * One acid's share, middles scaled to 100.
     *
     * @param code the acid's code
     * @return percent of the known acids, 0 if it is not among them
     */
    public double scaledMiddle(String code) {
        return scaledMiddle(acids, code);
    }

    private static double scaledMiddle(List<AcidShare> acids, String code) {
        double part = 0;
        for (AcidShare a : acids) {
            if (a.acid().code().equals(code)) {
                part += a.share().middle();
            }
        }
        return part == 0 ? 0 : 100 * part / sumOfMiddles(acids);
    }

    /**
     * The number-average molar mass of the acids: total mass over total moles, which is exact stoichiometry for a
     * mixture given by mass.
     *
     * @return g/mol
     * @throws IllegalStateException if nothing is known
     */
    public double numberAverageMolarMass() {
        double mass = 0;
        double moles = 0;
        for (AcidShare a : acids) {
            double m = a.share().middle();
            mass += m;
            moles += m / a.acid().molarMass();
        }
        requireKnown(mass);
        return mass / moles;
    }

    /**
     * The weight-average molar mass, as AOCS Cd 3a-94 takes it (formula from memory). It overstates the mean where chain
     * lengths are mixed, and is here to show by how much.
     *
     * @return g/mol
     * @throws IllegalStateException if nothing is known
     */
    public double weightAverageMolarMass() {
        double mass = 0;
        double weighted = 0;
        for (AcidShare a : acids) {
            double m = a.share().middle();
            mass += m;
            weighted += m * a.acid().molarMass();
        }
        requireKnown(mass);
        return weighted / mass;
    }

    /**
     * Saponification value of the triglycerides of these acids, number-average form. Unsaponifiable matter is not taken
     * off.
     *
     * @return mg KOH/g
     * @throws IllegalStateException if nothing is known
     */
    public double saponificationValue() {
        return ofTriglyceride(numberAverageMolarMass());
    }

    /**
     * Saponification value by AOCS Cd 3a-94 (weight-average form, from memory).
     *
     * @return mg KOH/g
     * @throws IllegalStateException if nothing is known
     */
    public double saponificationValueCd3a94() {
        return ofTriglyceride(weightAverageMolarMass());
    }

    private static double ofTriglyceride(double acidMolarMass) {
        return 3 * MILLIGRAMS_KOH_PER_MOLE / (3 * acidMolarMass + BACKBONE);
    }

    private static void requireKnown(double mass) {
        if (mass == 0) {
            throw new IllegalStateException("no fatty acids are known");
        }
    }
}
