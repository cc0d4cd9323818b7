package lyewright.makingsheet;

import java.util.List;
import lyewright.formula.Amount;
import lyewright.formula.Disperse;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula.AdditionPart;
import lyewright.formula.Stage;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Additive;
import lyewright.material.AdditiveKind;
import lyewright.material.Tables;

/** What to beware of about additions. */
final class AdditionCautions {

    /** Something wet that waits longer than this spoils, hours, even chilled; common practice for clay. */
    private static final double TOO_OLD_HOURS = 24;

    /** Sugar of all kinds that heats a batter noticeably, percent of the oils; common practice. */
    private static final double SUGAR_HEATS_FROM = 0.5;

    private static final double SUGAR_HEATS_MUCH_FROM = 3;

    private AdditionCautions() {}

    static void each(SheetFacts facts, List<Caution> found) {
        for (AdditionPart addition : facts.formula.additions()) {
            dose(facts, addition, found);
            effects(addition, found);
            if (addition.written().amount() instanceof Amount.Bulk
                    && !addition.material().pours()) {
                found.add(new Caution(
                        "volume-of-powder",
                        Level.CARE,
                        "The {} is measured by volume but comes out by the weight of the solid itself: a spoonful, with the"
                                + " air in it, is far less.",
                        "Weigh a spoonful and write its mass.",
                        Caution.COMMON_PRACTICE,
                        List.of(addition.nameInSentence())));
            }
            if (addition.written().disperse().isPresent()) {
                dispersion(addition, addition.written().disperse().get(), found);
            } else if (addition.material().kind() == AdditiveKind.CLAY && addition.stage() != Stage.Kind.TOP) {
                found.add(new Caution(
                        "clay-dry",
                        Level.NOTE,
                        "The {} is added dry and may lump.",
                        "Wet it out first, in twice its mass of water taken from the batch.",
                        Caution.COMMON_PRACTICE,
                        List.of(addition.nameInSentence())));
            }
        }
    }

    private static void dose(SheetFacts facts, AdditionPart addition, List<Caution> found) {
        if (addition.material().usualDose().isEmpty()
                || addition.written().replacesWater()
                || addition.material().kind() == AdditiveKind.SALT) {
            return;
        }
        Additive.UsualDose usual = addition.material().usualDose().get();
        double percent = facts.percentOfItsOils(addition);
        if (percent > usual.high() * 1.005 && percent > usual.high() + 0.005) {
            found.add(new Caution(
                    "over-usual-dose",
                    Level.CARE,
                    "The {} is {} % of the oils it goes into; up to {} % is usual.",
                    "Check that it is meant, and keep to the supplier's limit.",
                    usual.source(),
                    List.of(addition.nameInSentence(), Caution.hundredths(percent), Caution.hundredths(usual.high()))));
        }
    }

    private static void effects(AdditionPart addition, List<Caution> found) {
        Additive material = addition.material();
        if (material.effects().isEmpty()) {
            return;
        }
        String name = addition.nameInSentence();
        if (material.effects().contains("alcohol")) {
            found.add(new Caution(
                    "alcohol",
                    Level.CARE,
                    "The {} carries alcohol and gas: lye on it boils over.",
                    "Simmer it until the alcohol is gone, leave it flat and chill it; weigh it after that.",
                    Caution.COMMON_PRACTICE,
                    List.of(name)));
        }
        if (material.kind() != AdditiveKind.SALT && material.effects().contains("do-not-use")) {
            found.add(new Caution(
                    "do-not-use",
                    Level.CARE,
                    "The {} does not belong in soap. {}",
                    "Leave it out.",
                    material.sources(),
                    List.of(name, material.hazard())));
        } else if (material.effects().contains("restricted")) {
            found.add(new Caution(
                    "restricted",
                    Level.CARE,
                    "The {} is limited by law in cosmetics. {}",
                    "Ask a qualified assessor before selling.",
                    material.sources(),
                    List.of(name, material.hazard())));
        }
    }

    private static void dispersion(AdditionPart addition, Disperse disperse, List<Caution> found) {
        String name = addition.nameInSentence();
        double ahead = disperse.ahead().isPresent() ? disperse.ahead().get().hours() : Double.NaN;
        boolean wet = disperse.in().equals(Disperse.WATER);
        if (wet && ahead > TOO_OLD_HOURS) {
            found.add(new Caution(
                    "dispersion-too-old",
                    Level.CARE,
                    "The {} stands wet for {} h: it spoils.",
                    "Wet it out on the day, or chill it and use it within 24 h.",
                    Caution.COMMON_PRACTICE,
                    List.of(name, Caution.whole(ahead))));
        }
        if (addition.material().dispersing().isEmpty()) {
            return;
        }
        Additive.Dispersing usual = addition.material().dispersing().get();
        boolean usualLiquid = wet == usual.liquid().equals(Disperse.WATER);
        if (usualLiquid && disperse.ratio() < usual.lowRatio() - 1e-9) {
            found.add(new Caution(
                    "dispersion-too-dry",
                    Level.CARE,
                    "The {} is wetted out with {} times its mass; it wants {} to {}, or it lumps and drinks from the batter.",
                    "Use more liquid.",
                    Caution.COMMON_PRACTICE,
                    List.of(
                            name,
                            Caution.tenths(disperse.ratio()),
                            Caution.whole(usual.lowRatio()),
                            Caution.whole(usual.highRatio()))));
        }
        if (ahead < usual.hours() - 1e-9) {
            found.add(new Caution(
                    "dispersion-too-short",
                    Level.NOTE,
                    "The {} stands wet for {} h; it wants {} h to swell.",
                    "Wet it out earlier.",
                    Caution.COMMON_PRACTICE,
                    List.of(name, Caution.hundredths(ahead), Caution.hundredths(usual.hours()))));
        }
    }

    static void milk(SheetFacts facts, List<Caution> found) {
        if (!facts.milk) {
            return;
        }
        Tables.Practice usual = facts.formula.tables().practice("blend-milk");
        boolean warm = facts.oilsCelsius().orElse(0.0) > usual.high() + 0.01
                || facts.lyeCelsius().orElse(0.0) > usual.high() + 0.01;
        if (warm) {
            found.add(new Caution(
                    "milk-warm",
                    Level.CARE,
                    "The batter holds milk and is blended over {} °C: the milk sugar scorches and smells of ammonia.",
                    "Blend milk at 20 to 32 °C.",
                    Caution.COMMON_PRACTICE,
                    List.of(Caution.whole(usual.high()))));
        } else if (facts.milkInJug) {
            found.add(new Caution(
                    "milk-cold",
                    Level.NOTE,
                    "The alkali dissolves in milk, which scorches when it is warm.",
                    "Freeze the milk, stand the jug in ice, and give the alkali a spoon at a time.",
                    Caution.COMMON_PRACTICE,
                    List.of()));
        }
        if (oven(facts)) {
            found.add(new Caution(
                    "milk-oven",
                    Level.CARE,
                    "The batter holds milk and the mould goes into an oven: it overheats, cracks and browns.",
                    "Leave milk soap cool, uncovered.",
                    Caution.COMMON_PRACTICE,
                    List.of()));
        }
    }

    private static boolean oven(SheetFacts facts) {
        Process process = facts.formula.formula().process();
        return process.make() == Process.Make.OVEN || process.oven().isPresent();
    }

    static void sugar(SheetFacts facts, List<Caution> found) {
        double percent = facts.sugarPercent();
        if (percent < SUGAR_HEATS_FROM) {
            return;
        }
        boolean hot = percent > SUGAR_HEATS_MUCH_FROM || (oven(facts) && !facts.milk);
        found.add(new Caution(
                "sugar-heats",
                hot ? Level.CARE : Level.NOTE,
                "Sugar is {} % of the oils: the batter heats up by itself.",
                "Keep the mould cool and uncovered, out of the oven; dissolve sugar in water first.",
                Caution.COMMON_PRACTICE,
                List.of(Caution.hundredths(percent))));
    }

    static void fragrance(SheetFacts facts, List<Caution> found) {
        double percent = facts.fragrancePercent();
        double usual = facts.formula.tables().practice("fragrance").high();
        // a single one is judged by its own usual dose
        if (facts.fragrances > 1 && percent > usual + 0.05) {
            found.add(new Caution(
                    "fragrance-much",
                    Level.CARE,
                    "Fragrance is {} % of the oils in all; 2 to 3 % is usual.",
                    "Keep to the supplier's limit for soap: essential oils can sensitise.",
                    Caution.COMMON_PRACTICE,
                    List.of(Caution.tenths(percent))));
        }
    }

    static void acidOnUltramarine(SheetFacts facts, List<Caution> found) {
        if (facts.ultramarine && facts.freeAcidAddition) {
            found.add(new Caution(
                    "acid-on-ultramarine",
                    Level.CARE,
                    "Acid frees hydrogen sulfide, a poison, from ultramarine.",
                    "Never let the two meet: the acid goes into the lye jug, the colour into the batter.",
                    "memory (pigment handbooks)",
                    List.of()));
        }
    }
}
