package lyewright.makingsheet;

import java.util.List;
import lyewright.formula.AcidRule;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Tables;

/** What to beware of about the superfat. */
final class SuperfatCautions {

    /** So far under or over the usual range it is more than a matter of taste; this project's own rule, in points. */
    private static final double FAR_UNDER = 3;

    private static final double FAR_OVER = 7;

    static final String EVEN_THEM_OUT =
            "Wet things out in water or glycerin instead of oil, put acid and milk into the whole batch, or ask for more"
                    + " superfat.";

    /** A portion this much leaner than the batch is said; this project's own rule, in points. */
    private static final double NOTEWORTHY = 0.5;

    /** Alkali taken by additions matters from this many points of superfat; this project's own rule. */
    private static final double MUCH = 5;

    private SuperfatCautions() {}

    static void unusual(SheetFacts facts, List<Caution> found) {
        double superfat = facts.reaction.superfatPercent();
        Tables.Practice usual = usual(facts);
        if (superfat < -1e-9 || (superfat > usual.low() - 0.05 && superfat < usual.high() + 0.05)) {
            return;
        }
        boolean far = superfat < usual.low() - FAR_UNDER || superfat > usual.high() + FAR_OVER;
        found.add(new Caution(
                "superfat-unusual",
                far ? Level.CARE : Level.NOTE,
                "The superfat is {} %; {} to {} % is usual for {}.",
                superfat < usual.low()
                        ? "Check that it is meant: a saponification value is a range, and so little may leave alkali over."
                        : "Check that it is meant: so much oil left over softens the bar and goes rancid sooner.",
                Caution.COMMON_PRACTICE,
                List.of(
                        Caution.tenths(superfat),
                        Caution.whole(usual.low()),
                        Caution.whole(usual.high()),
                        facts.saltBar() ? "salt bars" : facts.shavingSoap() ? "shaving soap" : "bars")));
    }

    /** Portions are poured from one base batter, but what goes into one of them only changes that one's superfat. */
    static void portions(SheetFacts facts, List<Caution> found) {
        double sheet = facts.reaction.superfatPercent();
        double thin = usual(facts).low() - FAR_UNDER;
        for (PortionSheet portion : facts.portions) {
            double own = portion.superfatPercent();
            List<Object> figures = List.of(portion.name(), Caution.tenths(own), Caution.tenths(sheet));
            if (own >= -SuperfatBand.ARITHMETIC && own < sheet - NOTEWORTHY) {
                found.add(new Caution(
                        "portion-superfat",
                        own < thin ? Level.CARE : Level.NOTE,
                        "Portion {} has a superfat of {} %, less than the {} % of the whole batch.",
                        EVEN_THEM_OUT,
                        "mass balance",
                        figures));
            }
        }
    }

    private static Tables.Practice usual(SheetFacts facts) {
        Tables tables = facts.formula.tables();
        if (facts.saltBar()) {
            return tables.practice("superfat-salt-bar");
        }
        return tables.practice(facts.shavingSoap() ? "superfat-shaving" : "superfat-bar");
    }

    static void curedAsPoured(SheetFacts facts, List<Caution> found) {
        double curedWater = facts.formula.curedWater();
        if (facts.reaction.curedGramsUnlimited(curedWater) > facts.reaction.totalGrams() * (1 + 1e-9)) {
            found.add(new Caution(
                    "cured-as-poured",
                    Level.NOTE,
                    "A cured bar of {} % water holds more water than was poured: the cured mass is that of the pour.",
                    "Write a lower cured water, or more water.",
                    "mass balance",
                    List.of(Caution.tenths(100 * curedWater))));
        }
    }

    static void acidTakesAlkali(SheetFacts facts, List<Caution> found) {
        double taken = Math.min(facts.reaction.taken(), facts.reaction.alkali());
        double points = 100 * taken / facts.reaction.equivalents();
        if (facts.reaction.reaching() <= 0) {
            found.add(new Caution(
                    "acid-takes-all",
                    Level.STOP,
                    "Acid or bicarbonate among the additions takes all {} of alkali: nothing turns to soap.",
                    "Use less of it, or choose to add alkali for what takes it.",
                    "neutralisation equivalents, IUPAC atomic weights (docs/sources.md)",
                    List.of(Caution.tenthsOfGram(facts.lye.pureGrams()))));
            return;
        }
        if (points < 0.05) {
            return;
        }
        if (facts.askedSuperfat.isPresent() && facts.formula.formula().acidRule() == AcidRule.COMPENSATE) {
            found.add(new Caution(
                    "acid-takes-alkali",
                    Level.NOTE,
                    "Acid or bicarbonate among the additions takes alkali worth {} points of superfat; the alkali was"
                            + " raised by as much.",
                    "Weigh those additions as carefully as the alkali: leave one out and the alkali for it stays in the bar.",
                    "neutralisation equivalents, IUPAC atomic weights (docs/sources.md)",
                    List.of(Caution.tenths(points))));
            return;
        }
        found.add(new Caution(
                "acid-takes-alkali",
                points > MUCH ? Level.CARE : Level.NOTE,
                "Acid or bicarbonate among the additions takes alkali worth {} points of superfat, which is counted in the"
                        + " sheet's superfat.",
                facts.askedSuperfat.isPresent()
                        ? "If the superfat should stay as asked, choose to add alkali for what takes it."
                        : "Give more alkali if the superfat is more than you want.",
                "neutralisation equivalents, IUPAC atomic weights (docs/sources.md)",
                List.of(Caution.tenths(points))));
    }
}
