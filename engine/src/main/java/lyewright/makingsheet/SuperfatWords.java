package lyewright.makingsheet;

import lyewright.makingsheet.SuperfatBand.Verdict;

/** Says how sure a superfat is to somebody who never heard of a distribution. */
final class SuperfatWords {

    private SuperfatWords() {}

    static String of(SuperfatBand band) {
        String verdict = band.verdict().word();
        return Character.toUpperCase(verdict.charAt(0)) + verdict.substring(1) + ". " + where(band) + " " + risk(band);
    }

    private static String where(SuperfatBand band) {
        Object sheet = Caution.tenths(band.sheetPercent());
        Object low = Caution.tenths(band.lowPercent());
        Object high = Caution.tenths(band.highPercent());
        return low.toString().equals(high.toString())
                ? "The superfat is " + sheet + " %."
                : "The superfat is " + sheet + " % by the sheet's figures; in 19 batches of 20 it is really between "
                        + low + " and " + high + " %.";
    }

    private static String risk(SuperfatBand band) {
        if (band.verdict() == Verdict.SAFE) {
            return band.worstPercent() >= 0
                    ? "Even with everything at its worst at once, " + Caution.tenths(band.worstPercent())
                            + " % of the oils is left over and no alkali."
                    : "Alkali is left over in fewer than 1 batch of 100.";
        }
        String chance =
                "In " + batches(band.freeAlkaliProbability()) + " alkali is left over and the bar stays caustic";
        return band.beforeCertificateOf()
                .map(oil -> chance + ", before a certificate: most of the doubt is the published range of "
                        + SuperfatModel.inSentence(oil) + ".")
                .orElse(chance + ".");
    }

    /** A chance as batches: 1 of 5, 3 of 4. */
    static String batches(double chance) {
        if (chance >= 0.995) {
            return "practically every batch";
        }
        if (chance >= 0.35) {
            return "about " + Math.round(10 * chance) + " batches of 10";
        }
        return chance < 0.001 ? "fewer than 1 batch of 1000" : "about 1 batch of " + Math.round(1 / chance);
    }
}
