package lyewright.chemistry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.material.MeasuredFat;

/** Says in words what keeping figures mean, beside fats that were measured. */
final class KeepingWords {

    /** From so many percent of the acids, what the indices leave out is worth a sentence; this project's own rule. */
    private static final double MUCH_UNCOUNTED = 5;

    private static final double OF_EACH_UNCOUNTED = 1;

    /** All measured fats, lowest oxidisability first; the table holds one paper's. */
    private static final List<MeasuredFat> FATS = MeasuredFat.bundled().stream()
            .sorted(Comparator.comparingDouble(KeepingWords::oxidisability))
            .toList();

    private static final String SOURCE = "[PMC4384276, Table 2]";

    private KeepingWords() {}

    static List<String> of(Keeping keeping) {
        List<String> sentences = new ArrayList<>();
        if (keeping.patchy()) {
            sentences.add(muchUnknown(keeping.unknown()));
        }
        sentences.add(index(keeping.indices()));
        if (!keeping.patchy()) {
            sentences.add(place(keeping.indices().oxidisability()));
        }
        if (muchUncounted(keeping)) {
            sentences.add(uncounted(keeping.uncounted()));
        }
        if (!keeping.unknown().isEmpty() && !keeping.patchy()) {
            sentences.add(unknown(keeping.unknown()));
        }
        sentences.add(
                "The oil left over, the superfat, goes first. Usual against it: fresh oils, and bars kept cool, dry and"
                        + " dark; antioxidants act unevenly (alpha-tocopherol even hastened it in almond oil already oxidised)."
                        + " [common practice; Auezova 2012, abstract]");
        return List.copyOf(sentences);
    }

    static String brief(Keeping keeping) {
        OxidationIndices indices = keeping.indices();
        String index = "Air reaches linolenic and linoleic acid soonest (" + tenths(indices.linolenic()) + " and "
                + tenths(indices.linoleic()) + " % here): oxidisability " + tenths(indices.oxidisability()) + ".";
        if (keeping.patchy()) {
            return muchUnknown(keeping.unknown()) + " " + index;
        }
        String place = where(indices.oxidisability());
        return index + " "
                + (muchUncounted(keeping)
                        ? place + " " + SOURCE + " " + uncounted(keeping.uncounted())
                        : place + " " + notEverything() + " " + SOURCE);
    }

    private static boolean muchUncounted(Keeping keeping) {
        return keeping.uncounted().stream().mapToDouble(Share::percent).sum() >= MUCH_UNCOUNTED;
    }

    private static String index(OxidationIndices indices) {
        return "Air turns oils rancid at the double bonds of their acids, soonest at those of linolenic and linoleic acid ("
                + tenths(indices.linolenic()) + " and " + tenths(indices.linoleic()) + " % here): oxidisability "
                + tenths(indices.oxidisability()) + ".";
    }

    private static String place(double oxidisability) {
        return where(oxidisability) + " " + notEverything() + " " + SOURCE;
    }

    private static String where(double oxidisability) {
        int below = (int)
                FATS.stream().filter(fat -> oxidisability(fat) <= oxidisability).count();
        if (below == 0) {
            return "That is under the lowest of " + FATS.size() + " fats measured in one paper, " + named(FATS.get(0))
                    + ", which slow oxidation brought to a peroxide value of " + peroxide(FATS.get(0)) + " meq/kg.";
        }
        if (below == FATS.size()) {
            MeasuredFat highest = FATS.get(below - 1);
            return "That is not under the highest of " + FATS.size() + " fats measured in one paper, " + named(highest)
                    + ", which slow oxidation brought to a peroxide value of " + peroxide(highest) + " meq/kg.";
        }
        MeasuredFat lower = FATS.get(below - 1);
        MeasuredFat upper = FATS.get(below);
        return "That lies between " + named(lower) + " and " + named(upper)
                + ", which slow oxidation brought to peroxide values of " + peroxide(lower) + " and " + peroxide(upper)
                + " meq/kg.";
    }

    /** Two neighbours that stand in one order by index and in the other by what was measured. */
    private static String notEverything() {
        for (int i = 1; i < FATS.size(); i++) {
            MeasuredFat lower = FATS.get(i - 1);
            MeasuredFat upper = FATS.get(i);
            if (lower.peroxideValue() > upper.peroxideValue()) {
                return "An index does not rank everything: " + named(lower) + " then had more peroxide than "
                        + named(upper) + ", " + peroxide(lower) + " against " + peroxide(upper) + ".";
            }
        }
        throw new IllegalStateException("measured_fats.csv no longer holds the pair that the index puts the other way");
    }

    private static String uncounted(List<Share> uncounted) {
        String named = uncounted.stream()
                .filter(share -> share.percent() >= OF_EACH_UNCOUNTED)
                .map(share -> share.acid().commonName() + " (" + tenths(share.percent()) + " %)")
                .collect(Collectors.joining(", "));
        return "Not in the index, though they have double bonds: " + named + ".";
    }

    private static String unknown(List<Gap> unknown) {
        return "Not in the index, since their acids are not known here: " + gaps(unknown, "% of the oils") + ".";
    }

    private static String muchUnknown(List<Gap> unknown) {
        double all = unknown.stream().mapToDouble(Gap::percent).sum();
        return "So much is of acids that are not known here, " + tenths(all)
                + " % of the oils' mass, that the index speaks only for the rest: " + gaps(unknown, "%") + ".";
    }

    private static String gaps(List<Gap> gaps, String unit) {
        return gaps.stream()
                .map(gap -> gap.name() + " (" + tenths(gap.percent()) + " " + unit + ")")
                .collect(Collectors.joining(", "));
    }

    private static String named(MeasuredFat fat) {
        return fat.name() + " (" + tenths(oxidisability(fat)) + ")";
    }

    private static double oxidisability(MeasuredFat fat) {
        return OxidationIndices.of(fat).oxidisability();
    }

    private static String peroxide(MeasuredFat fat) {
        return String.format(Locale.ROOT, "%.0f", fat.peroxideValue());
    }

    private static String tenths(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
