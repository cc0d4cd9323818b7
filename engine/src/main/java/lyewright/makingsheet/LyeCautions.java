package lyewright.makingsheet;

import java.util.List;
import lyewright.chemistry.Solutions;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.Stage;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.AdditiveKind;
import lyewright.material.Alkali;

/** What to beware of about the lye. */
final class LyeCautions {

    /** Lye stronger than this in its jug is unusual, percent; common practice gives 28 to 33, salt bars to 38. */
    private static final double STRONG = 40;

    /** Weaker than this traces slowly and shrinks, percent; common practice. */
    private static final double WEAK = 22;

    /** So far under what is sold a purity is asked about, points; KOH of 80 % and over is met. */
    private static final double BELOW_USUAL = 8;

    /** Oils and lye are kept this near each other, kelvin; common practice. */
    private static final double APART = 10;

    private LyeCautions() {}

    static void tooStrong(SheetFacts facts, List<Caution> found) {
        LyeSheet lye = facts.lye;
        // a stock lye is dissolved already, however strong
        boolean stock = facts.formula.alkali().stock().isPresent();
        if (!stock && lye.waterInJugGrams() < lye.pureGrams()) {
            found.add(new Caution(
                    "less-water-than-alkali",
                    Level.STOP,
                    "The lye jug has {} of water for {} of alkali: it will not dissolve, and boils and spits.",
                    "Bring the water in the jug to at least the alkali's mass: move water out of dispersions, or raise the"
                            + " water rule.",
                    "CRC Handbook, 98th edition, solubility of NaOH (docs/sources.md)",
                    List.of(Caution.tenthsOfGram(lye.waterInJugGrams()), Caution.tenthsOfGram(lye.pureGrams()))));
        } else if (lye.concentrationPercent() > STRONG) {
            double holds = Solutions.of(facts.formula.tables())
                    .solubilityPercent(lye.potassiumMolesPercent() > 50 ? "KOH" : "NaOH", 20);
            found.add(new Caution(
                    "lye-too-strong",
                    Level.CARE,
                    "The lye in its jug is {} % strong; 28 to 38 % is usual, and water at 20 °C holds {} %.",
                    "Put more of the water into the jug, or ask for a weaker lye.",
                    Caution.COMMON_PRACTICE + "; CRC Handbook, 98th edition, solubility (docs/sources.md)",
                    List.of(Caution.tenths(lye.concentrationPercent()), Caution.whole(holds))));
        }
    }

    static void tooWeak(SheetFacts facts, List<Caution> found) {
        if (facts.lye.concentrationPercent() < WEAK) {
            found.add(new Caution(
                    "lye-weak",
                    Level.NOTE,
                    "The lye is only {} % strong: it traces slowly and the bars shrink as they dry.",
                    "Ask for a lye of 28 to 33 % unless the slowness is wanted.",
                    Caution.COMMON_PRACTICE,
                    List.of(Caution.tenths(facts.lye.concentrationPercent()))));
        }
    }

    static void purityAssumed(SheetFacts facts, List<Caution> found) {
        if (facts.formula.alkali().stock().isPresent()) {
            return;
        }
        boolean sodium = facts.lye.naohGrams() > 0 && facts.formula.purities().assumed(Alkali.SODIUM);
        boolean potassium = facts.lye.kohGrams() > 0 && facts.formula.purities().assumed(Alkali.POTASSIUM);
        if (sodium || potassium) {
            String what = sodium ? (potassium ? "NaOH 98 % and KOH 90 %" : "NaOH 98 %") : "KOH 90 %";
            found.add(new Caution(
                    "purity-assumed",
                    Level.NOTE,
                    "The alkali's purity is not given; taken as {}.",
                    "Read it off the tub or its certificate and give it.",
                    Caution.COMMON_PRACTICE,
                    List.of(what)));
        }
    }

    static void purityUnusual(SheetFacts facts, List<Caution> found) {
        for (Alkali alkali : Alkali.values()) {
            boolean used = alkali == Alkali.SODIUM ? facts.lye.naohGrams() > 0 : facts.lye.kohGrams() > 0;
            if (!used || facts.formula.purities().assumed(alkali)) {
                continue;
            }
            double percent = 100 * facts.formula.purities().fraction(alkali);
            double unusual = alkali.assumedPurity().low() - BELOW_USUAL;
            if (facts.formula.alkali().stock().isPresent()) {
                continue;
            }
            if (percent < Purities.LEAST_SOLD) {
                found.add(new Caution(
                        "purity-impossible",
                        Level.STOP,
                        "A purity of {} % is no {} that is sold as such: if it is purer, this weighs far too much of it.",
                        "Read it off the tub again, in percent; a solution is written as a stock lye.",
                        "INRS sheet 20; Simmons and Appleton 1908 (docs/sources.md)",
                        List.of(Caution.tenths(percent), name(alkali))));
            } else if (percent < unusual) {
                found.add(new Caution(
                        "purity-unusual",
                        Level.CARE,
                        "A purity of {} % is low for {}; {} to {} % is sold.",
                        "Check the tub: if it is purer than you say, the bar gets too much alkali.",
                        "INRS sheet 20; Simmons and Appleton 1908 (docs/sources.md)",
                        List.of(
                                Caution.tenths(percent),
                                name(alkali),
                                Caution.whole(alkali.assumedPurity().low()),
                                Caution.whole(alkali.assumedPurity().high()))));
            }
        }
    }

    private static String name(Alkali alkali) {
        return alkali == Alkali.SODIUM ? "sodium hydroxide" : "potassium hydroxide";
    }

    static void alkaliTakenAsWeighed(SheetFacts facts, List<Caution> found) {
        if (facts.formula.formula().alkali() instanceof AlkaliChoice.Given given
                && given.as().isEmpty()) {
            found.add(new Caution(
                    "alkali-as-weighed",
                    Level.NOTE,
                    "The alkali's mass is taken as what goes on the balance, not as pure alkali.",
                    "Write as: weighed, or as: pure, to say which.",
                    Caution.COMMON_PRACTICE,
                    List.of()));
        }
    }

    static void jugHoldsTooMuch(SheetFacts facts, List<Caution> found) {
        for (AdditionPart addition : facts.formula.additions()) {
            if (addition.stage() != Stage.Kind.LYE
                    || addition.material().kind() == AdditiveKind.SALT
                    || addition.material().solubility().isEmpty()) {
                continue;
            }
            double grams = facts.additionGrams[addition.place()];
            double holds = addition.material().solubility().get() / 100 * facts.lye.waterInJugGrams();
            if (holds > 0 && grams > holds) {
                found.add(new Caution(
                        "jug-undissolved",
                        Level.CARE,
                        "The jug has {} of {}, but its water at 20 °C dissolves only {}, before any alkali.",
                        "Put less of it in, or put more of the water into the jug.",
                        addition.material().sources(),
                        List.of(Caution.tenthsOfGram(grams), addition.nameInSentence(), Caution.tenthsOfGram(holds))));
            }
        }
    }

    static void temperaturesApart(SheetFacts facts, List<Caution> found) {
        if (facts.oilsCelsius().isPresent() && facts.lyeCelsius().isPresent()) {
            double apart =
                    Math.abs(facts.oilsCelsius().get() - facts.lyeCelsius().get());
            if (apart > APART + 0.01) {
                found.add(new Caution(
                        "temperatures-apart",
                        Level.NOTE,
                        "Oils and lye are {} K apart; within 10 K is usual.",
                        "Let the hotter of the two cool before blending.",
                        Caution.COMMON_PRACTICE,
                        List.of(Caution.whole(apart))));
            }
        }
    }
}
