package lyewright.makingsheet;

import lyewright.fill.Shape;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Oil;

/**
 * Which figures of common practice fit a sheet, as ids of the tables' practices: bars, salt bars, milk, beeswax and shaving
 * soap are made differently.
 *
 * @param blend temperature for blending
 * @param window how long there is to work
 * @param cut when to cut, or to take it out of cavities
 * @param cure how long to cure
 */
public record UsualPractice(String blend, String window, String cut, String cure) {

    /** Salt in percent of oils from which a salt bar is cut sooner, and from which soonest; common practice. */
    private static final double MUCH_SALT = 50;

    private static final double MOST_SALT = 80;

    /** From this fraction of olive a bar takes an olive bar's cure; common practice. */
    private static final double MOSTLY_OLIVE = 0.7;

    static UsualPractice of(SheetFacts facts) {
        return new UsualPractice(
                blend(facts), facts.saltBar() ? "window-salt" : "window-plain", cut(facts), cure(facts));
    }

    private static String blend(SheetFacts facts) {
        if (facts.shavingSoap()) {
            return "blend-shaving";
        }
        if (facts.milk) {
            return "blend-milk";
        }
        if (facts.beeswax) {
            return "blend-beeswax";
        }
        return facts.saltBar() ? "blend-salt" : "blend-plain";
    }

    private static String cut(SheetFacts facts) {
        if (facts.fill.mould().shape().orElse(null) instanceof Shape.Cavities) {
            return facts.saltBar() ? "out-of-cavities-salt" : "out-of-cavities-plain";
        }
        Process process = facts.formula.formula().process();
        boolean gels = (process.make() != Process.Make.COLD || process.oven().isPresent()) && !facts.milk;
        if (!facts.saltBar()) {
            return gels ? "cut-plain-gelled" : "cut-plain-ungelled";
        }
        if (!gels) {
            return "cut-salt-ungelled";
        }
        double salt = facts.saltPercent();
        return salt < MUCH_SALT ? "cut-salt-25-50" : salt <= MOST_SALT ? "cut-salt-50-80" : "cut-salt-100";
    }

    private static String cure(SheetFacts facts) {
        if (facts.saltBar()) {
            return "cure-salt";
        }
        double olive = 0;
        for (OilPart part : facts.formula.oils()) {
            olive += olive(part) ? part.fraction() : 0;
        }
        return olive >= MOSTLY_OLIVE ? "cure-olive" : "cure-plain";
    }

    /** An oil of the maker's own is known for olive by its INCI name, or by its key. */
    private static boolean olive(OilPart part) {
        Oil oil = part.parts().get(0).oil();
        return part.key().contains("olive") || oil.names().inci().startsWith("Olea Europaea");
    }
}
