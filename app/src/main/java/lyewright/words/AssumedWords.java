package lyewright.words;

import java.util.ArrayList;
import java.util.List;
import lyewright.formula.Purities;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Alkali;

/** What of the workshop a sheet's figures hang on: its balances and how pure its alkali is. */
public final class AssumedWords {

    private AssumedWords() {}

    /**
     * In sentences.
     *
     * @param sheet any sheet
     * @return the balances first
     */
    public static List<String> of(MakingSheet sheet) {
        List<String> sentences = new ArrayList<>(List.of(WeighPlan.of(sheet).balances()));
        Purities purities = sheet.formula().purities();
        if (sheet.lye().naohGrams() > 0) {
            sentences.add("Sodium hydroxide: " + pure(purities, Alkali.SODIUM));
        }
        if (sheet.lye().kohGrams() > 0) {
            sentences.add("Potassium hydroxide: " + pure(purities, Alkali.POTASSIUM));
        }
        return sentences;
    }

    private static String pure(Purities purities, Alkali alkali) {
        return Figures.upTo(100 * purities.fraction(alkali), 2) + " % pure"
                + (purities.assumed(alkali) ? " (assumed)." : " (as set).");
    }
}
