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

    private KeepingWords() {}

    static List<String> of(Keeping keeping) {
        List<String> sentences = new ArrayList<>();
        sentences.add(index(keeping.indices()));
        sentences.add(place(keeping.indices().oxidisability()));
        if (keeping.uncounted().stream().mapToDouble(Share::percent).sum() >= MUCH_UNCOUNTED) {
            sentences.add(uncounted(keeping.uncounted()));
        }
        if (!keeping.unknown().isEmpty()) {
            sentences.add(unknown(keeping.unknown()));
        }
        sentences.add(
                "The oil left over, the superfat, goes first. Usual against it: fresh oils, and bars kept cool, dry and"
                        + " dark; antioxidants act unevenly (alpha-tocopherol even hastened it in almond oil already oxidised)."
                        + " [common practice; Auezova 2012, abstract]");
        return List.copyOf(sentences);
    }

    private static String index(OxidationIndices indices) {
        return "Air turns oils rancid at the double bonds of their acids, soonest at those of linolenic and linoleic acid ("
                + tenths(indices.linolenic()) + " and " + tenths(indices.linoleic()) + " % here): oxidisability "
                + tenths(indices.oxidisability()) + ".";
    }

    private static String place(double oxidisability) {
        int below = (int)
                FATS.stream().filter(fat -> oxidisability(fat) <= oxidisability).count();
        return where(below) + " " + notEverything() + " [PMC4384276, Table 2]";
    }

    private static String where(int below) {
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
        String named = unknown.stream()
                .map(gap -> gap.name() + " (" + tenths(gap.percent()) + " % of the oils)")
                .collect(Collectors.joining(", "));
        return "Not in it either, since their acids are not known here: " + named + ".";
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
