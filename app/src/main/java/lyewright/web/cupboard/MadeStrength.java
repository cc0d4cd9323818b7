package lyewright.web.cupboard;

import java.util.Optional;
import lyewright.chemistry.Solutions;
import lyewright.formula.OwnMaterial;
import lyewright.formula.OwnMaterial.Strength;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.words.Figures;

/**
 * Whether a stock lye can be as strong as it comes to. With less water than alkali it boils and spits, as sheets say too; what is
 * stronger than water at 20 °C holds is asked about once, for many keep theirs warm.
 */
final class MadeStrength {

    private static final double ROOM = 20;
    private static final double HALF = 50;

    /** The strength that a weaker lye is proposed at: what water holds even in a cool room. */
    private static final double KEEPS = 33;

    private static final double MILLIGRAMS = 1000;

    /** Strengths are written to six decimals. */
    private static final double ROUNDING = 1e-3;

    private MadeStrength() {}

    /**
     * What is wrong with it.
     *
     * @param lye the lye
     * @param water milligrams of water in it
     * @param whole its mass, milligrams
     * @param sure whether it was asked about before
     */
    static Optional<Problem> wrong(OwnMaterial lye, long water, long whole, boolean sure) {
        return lye.strength().flatMap(strength -> wrong(strength, water, whole, sure));
    }

    private static Optional<Problem> wrong(Strength strength, long water, long whole, boolean sure) {
        double percent = strength.pure().figure("").middle();
        double holds = Solutions.of(Tables.bundled())
                .solubilityPercent(strength.alkali() == Alkali.SODIUM ? "NaOH" : "KOH", ROOM);
        String told = "that would be " + Figures.upTo(percent, 1) + " % " + MadeName.name(strength.alkali());
        double pure = percent / 100 * whole;
        if (percent > HALF + ROUNDING) {
            return Optional.of(new Problem(
                    "water",
                    told + ", and with less water than alkali it does not dissolve, and boils and spits",
                    "take at least " + more(pure, HALF, water, whole) + " of water; " + more(pure, KEEPS, water, whole)
                            + " makes a lye of " + Figures.upTo(KEEPS, 0) + " %, which stays clear in a cool room"));
        }
        return percent > holds && !sure
                ? Optional.of(new Problem(
                        "sure",
                        told + ", about what water at 20 °C holds (" + held(strength.alkali(), holds)
                                + "): in a cool room some may come out, and what you pour is weaker",
                        "take " + more(pure, KEEPS, water, whole) + " of water for a lye of " + Figures.upTo(KEEPS, 0)
                                + " %; if yours stays clear, tick below that it is right"))
                : Optional.empty();
    }

    /** For soda two tables differ, the CRC Handbook's 98th edition and an encyclopedia (docs/sources.md). */
    private static String held(Alkali alkali, double percent) {
        String one = Figures.upTo(percent, 0);
        return alkali == Alkali.SODIUM ? one + " to 52 % by source, and 50 % freezes at about 14 °C" : one + " %";
    }

    /** How much water brings it to a strength, in whole grams, never too little. */
    private static String more(double pure, double percent, long water, long whole) {
        double needed = water + pure / percent * 100 - whole;
        return Figures.upTo(Math.ceil(needed / MILLIGRAMS - ROUNDING), 0) + " g";
    }
}
