package lyewright.makingsheet;

import java.util.List;
import lyewright.chemistry.Solutions;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.Stage;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.AdditiveKind;

/** What to beware of about salt. */
final class SaltCautions {

    /** Over this salt only hardens lather away without making a salt bar, percent of oils; common practice. */
    private static final double MORE_THAN_HARDENING = 5;

    private static final double UNUSUAL_OVER = 100;
    private static final double STOP_FROM = 150;
    private static final double LATHER_MATTERS_FROM = 50;

    private SaltCautions() {}

    static void amount(SheetFacts facts, List<Caution> found) {
        double percent = facts.saltPercent();
        if (percent >= STOP_FROM) {
            found.add(new Caution(
                    "salt-too-much",
                    Level.STOP,
                    "Salt is {} % of the oils: the batter will not hold together.",
                    "Keep salt under 100 % of the oils; 50 % is the usual salt bar.",
                    Caution.COMMON_PRACTICE,
                    List.of(Caution.tenths(percent))));
        } else if (percent > UNUSUAL_OVER + 0.05) {
            found.add(new Caution(
                    "salt-unusual",
                    Level.CARE,
                    "Salt is {} % of the oils; salt bars take 25 to 100 %, mostly 50.",
                    "Check that it is meant.",
                    Caution.COMMON_PRACTICE,
                    List.of(Caution.tenths(percent))));
        } else if (percent > MORE_THAN_HARDENING && !facts.saltBar()) {
            found.add(new Caution(
                    "salt-unusual",
                    Level.NOTE,
                    "Salt is {} % of the oils: too much to harden a bar, too little for a salt bar of 25 to 100 %.",
                    "Check that it is meant.",
                    Caution.COMMON_PRACTICE,
                    List.of(Caution.tenths(percent))));
        }
    }

    static void wrongKind(SheetFacts facts, List<Caution> found) {
        for (AdditionPart addition : facts.formula.additions()) {
            String key = addition.written().of();
            if (addition.material().kind() != AdditiveKind.SALT) {
                continue;
            }
            if (addition.material().effects().contains("do-not-use")) {
                found.add(new Caution(
                        "salt-anticaking",
                        Level.CARE,
                        "The salt {} carries an anti-caking agent that can leave blue specks.",
                        "Take salt whose label names nothing but salt.",
                        Caution.COMMON_PRACTICE,
                        List.of(addition.nameInSentence())));
            } else if (key.equals("dead-sea-salt") || key.equals("epsom-salt")) {
                found.add(new Caution(
                        "salt-magnesium",
                        Level.CARE,
                        "The salt {} is a magnesium salt: it turns soap into scum and the bar sweats.",
                        "Take sea salt, rock salt or table salt.",
                        Caution.COMMON_PRACTICE,
                        List.of(addition.nameInSentence())));
            }
        }
    }

    static void lather(SheetFacts facts, List<Caution> found) {
        double needed =
                facts.formula.tables().practice("lather-fat-from-salt-50").low();
        if (facts.saltPercent() >= LATHER_MATTERS_FROM - 0.05 && 100 * facts.latherFraction < needed - 0.05) {
            found.add(new Caution(
                    "salt-little-lather",
                    Level.CARE,
                    "Salt is {} % of the oils, but only {} % of the oils lather in salt water.",
                    "Bring coconut, palm kernel or babassu to at least 70 % of the oils.",
                    Caution.COMMON_PRACTICE + "; Simmons and Appleton 1908 on marine soap",
                    List.of(Caution.tenths(facts.saltPercent()), Caution.tenths(100 * facts.latherFraction))));
        }
    }

    static void undissolved(SheetFacts facts, List<Caution> found) {
        double saltInJug = 0;
        for (AdditionPart addition : facts.formula.additions()) {
            if (addition.stage() == Stage.Kind.LYE) {
                saltInJug += addition.material().makeup().salt() * facts.additionGrams[addition.place()];
            }
        }
        LyeSheet lye = facts.lye;
        double held = Solutions.of(facts.formula.tables())
                        .saltPerWater(lye.pureGrams() / Math.max(1e-9, lye.waterInJugGrams()))
                * lye.waterInJugGrams();
        if (saltInJug > held) {
            found.add(new Caution(
                    "salt-undissolved",
                    Level.CARE,
                    "The lye jug holds {} of salt, but so strong a lye keeps only about {} dissolved.",
                    "Put the salt in at trace, or expect to pour it in as grains.",
                    "ACS Omega 2020, PMC7081322, Table 8, at 90 °C (docs/sources.md)",
                    List.of(Caution.tenthsOfGram(saltInJug), Caution.tenthsOfGram(held))));
        } else if (facts.saltBar() && lye.saltUndissolvedPercent() > 0) {
            found.add(new Caution(
                    "salt-undissolved",
                    Level.NOTE,
                    "About {} % of the salt stays as grains: the water in the batter cannot hold more.",
                    "Take fine salt; grains over 1 mm scratch.",
                    "CRC Handbook, 98th edition; ACS Omega 2020, PMC7081322, Table 8 (docs/sources.md)",
                    List.of(Caution.whole(lye.saltUndissolvedPercent()))));
        }
    }
}
