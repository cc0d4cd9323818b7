package lyewright.chemistry;

import java.util.Map;
import lyewright.material.AcidShare;
import lyewright.material.FattyAcid;
import lyewright.material.FattyAcidProfile;

/**
 * Iodine value computed from fatty acids by AOCS Cd 1c-85 (reapproved 2009): triglycerides and free fatty acids have
 * coefficients of their own. Acids it gives no coefficient for are taken by the same stoichiometry, two atoms of iodine a
 * double bond.
 */
public final class IodineValue {

    /** Coefficients of AOCS Cd 1c-85 for triglycerides, g iodine/100 g for each percent of the acid. */
    private static final Map<String, Double> TRIGLYCERIDES =
            Map.of("C16:1", 0.950, "C18:1", 0.860, "C18:2", 1.732, "C18:3", 2.616, "C20:1", 0.785, "C22:1", 0.723);

    /** Coefficients of AOCS Cd 1c-85 for free fatty acids, g iodine/100 g for each percent of the acid. */
    private static final Map<String, Double> FREE_ACIDS =
            Map.of("C16:1", 0.9976, "C18:1", 0.8986, "C18:2", 1.810, "C18:3", 2.735, "C20:1", 0.8175, "C22:1", 0.7497);

    /** Molar mass of I2 in g/mol (IUPAC abridged atomic weight 126.904, from memory). */
    private static final double IODINE = 2 * 126.90447;

    private IodineValue() {}

    /**
     * Of triglycerides with these acids, middles scaled to 100.
     *
     * @param acids the acids, at least one known
     * @return g iodine/100 g
     */
    public static double ofTriglycerides(FattyAcidProfile acids) {
        double sum = 0;
        for (AcidShare share : acids.acids()) {
            sum += ofTriglyceride(share.acid()) * share.share().middle();
        }
        return 100 * sum / acids.sumOfMiddles();
    }

    /**
     * Of these acids as they are, bound to nothing, middles scaled to 100.
     *
     * @param acids the acids, at least one known
     * @return g iodine/100 g
     */
    public static double ofFreeAcids(FattyAcidProfile acids) {
        double sum = 0;
        for (AcidShare share : acids.acids()) {
            sum += ofFreeAcid(share.acid()) * share.share().middle();
        }
        return 100 * sum / acids.sumOfMiddles();
    }

    private static double ofTriglyceride(FattyAcid acid) {
        Double published = TRIGLYCERIDES.get(acid.code());
        if (published != null) {
            return published;
        }
        double triglyceride = 3 * acid.molarMass() + Stoichiometry.GLYCEROL - 3 * Stoichiometry.WATER;
        return 3 * acid.doubleBonds() * IODINE / triglyceride;
    }

    private static double ofFreeAcid(FattyAcid acid) {
        Double published = FREE_ACIDS.get(acid.code());
        return published != null ? published : acid.doubleBonds() * IODINE / acid.molarMass();
    }
}
