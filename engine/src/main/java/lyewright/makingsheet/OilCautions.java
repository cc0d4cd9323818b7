package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Process;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Names;
import lyewright.material.Oil;
import lyewright.material.OilBlend;
import lyewright.material.OilKind;
import lyewright.material.ReckonedValue;

/** What to beware of about the oils. */
final class OilCautions {

    /** More wax than this leaves a bar half unreacted; common practice is a few percent. */
    private static final double MUCH_WAX = 0.1;

    private OilCautions() {}

    private interface Test {
        boolean of(Oil oil);
    }

    /** Names of the oils that a test is true of, joined; empty if none. */
    private static String names(SheetFacts facts, Test test) {
        List<String> names = null;
        for (OilPart part : facts.formula.oils()) {
            for (OilBlend.Part inIt : part.parts()) {
                if (test.of(inIt.oil())) {
                    names = names == null ? new ArrayList<>(2) : names;
                    names.add(Names.inSentence(inIt.oil().name()));
                }
            }
        }
        return names == null ? "" : String.join(", ", names);
    }

    static void waxes(SheetFacts facts, List<Caution> found) {
        String waxes = names(facts, oil -> oil.kind() == OilKind.WAX);
        if (waxes.isEmpty()) {
            return;
        }
        found.add(new Caution(
                "wax",
                facts.waxFraction > MUCH_WAX ? Level.CARE : Level.NOTE,
                "Waxes barely react: of {} only the free acid is counted, so the bar may hold more unreacted than the"
                        + " superfat says.",
                "Keep waxes to a few percent of the oils.",
                "BP/Ph. Eur. White Beeswax, acid value; BPC 1911, wool fat (docs/sources.md)",
                List.of(waxes)));
        double needed = facts.formula.tables().practice("blend-beeswax").low();
        if (!facts.beeswax || facts.oilsCelsius().orElse(0.0) >= needed) {
            return;
        }
        found.add(new Caution(
                "beeswax-needs-heat",
                Level.NOTE,
                "Beeswax sets again under {} °C and leaves streaks.",
                "Blend at 50 to 60 °C, and write that with the recipe as the temperature of its oils.",
                Caution.COMMON_PRACTICE,
                List.of(Caution.whole(needed))));
    }

    static void doubtfulValues(SheetFacts facts, List<Caution> found) {
        String wide = names(facts, oil -> tableValue(oil) && oil.reckoned().wide());
        if (!wide.isEmpty()) {
            found.add(new Caution(
                    "sv-wide",
                    Level.NOTE,
                    "The published saponification value of {} is a wide range; the lower of its middle and what its fatty"
                            + " acids give is used.",
                    "A certificate of analysis for the lot settles it: give its value under materials.",
                    "the range's own source (docs/sources.md); over 10 % of the middle is this project's rule",
                    List.of(wide)));
        }
        String remembered =
                names(facts, oil -> tableValue(oil) && oil.reckoned().remembered());
        if (!remembered.isEmpty()) {
            found.add(new Caution(
                    "sv-remembered",
                    Level.NOTE,
                    "The saponification value of {} comes from memory of a standard, not from reading it; the lower of its"
                            + " middle and what its fatty acids give is used.",
                    "A certificate of analysis for the lot settles it: give its value under materials.",
                    "memory (docs/sources.md)",
                    List.of(remembered)));
        }
    }

    private static boolean tableValue(Oil oil) {
        return oil.reckoned().basis() != ReckonedValue.Basis.CERTIFICATE && oil.kind() != OilKind.WAX;
    }

    static void hardAcidsNeedHeat(SheetFacts facts, List<Caution> found) {
        if (facts.hardAcidFraction <= 0) {
            return;
        }
        double needed = facts.formula.tables().practice("blend-shaving").low();
        boolean hot = facts.formula.formula().process().make() == Process.Make.COOKED
                || facts.oilsCelsius().orElse(0.0) >= needed;
        found.add(new Caution(
                "stearic-needs-heat",
                hot ? Level.NOTE : Level.CARE,
                "Hard fatty acid is {} % of the oils: it turns to soap at once and stiffens the batter.",
                hot
                        ? "Have the mould ready and stir hard: it thickens at once."
                        : "Blend at 70 to 85 °C or cook it, and write that under process.",
                Caution.COMMON_PRACTICE,
                List.of(Caution.tenths(100 * facts.hardAcidFraction))));
    }

    static void densityAssumed(SheetFacts facts, List<Caution> found) {
        String assumed = names(facts, oil -> oil.density().source().startsWith("assumed"));
        if (!assumed.isEmpty()) {
            found.add(new Caution(
                    "density-assumed",
                    Level.NOTE,
                    "No density is known for {}; 0.915 g/ml is assumed.",
                    "Give its density under materials if a volume matters.",
                    Caution.COMMON_PRACTICE,
                    List.of(assumed)));
        }
    }
}
