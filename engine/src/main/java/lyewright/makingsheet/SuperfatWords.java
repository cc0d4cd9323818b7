package lyewright.makingsheet;

import lyewright.makingsheet.SuperfatBand.Verdict;
import lyewright.material.Names;

/** Says how sure a superfat is to somebody who never heard of a distribution. */
final class SuperfatWords {

    private static final String COUNT_OF_A_WAX = ", which count of a wax only what surely reacts";

    private SuperfatWords() {}

    static String of(SuperfatBand band) {
        String verdict = band.verdict().word();
        return Character.toUpperCase(verdict.charAt(0)) + verdict.substring(1) + ". " + where(band) + " " + risk(band);
    }

    private static String where(SuperfatBand band) {
        Object sheet = Caution.tenths(band.sheetPercent());
        Object low = Caution.tenths(band.lowPercent());
        Object high = Caution.tenths(band.highPercent());
        if (low.toString().equals(high.toString())) {
            return "The superfat is " + sheet + " %.";
        }
        return "The superfat is " + sheet + " % by the sheet's figures" + (underItsBand(band) ? COUNT_OF_A_WAX : "")
                + "; in 19 batches of 20 it is really between " + low + " and " + high + " %.";
    }

    private static boolean underItsBand(SuperfatBand band) {
        return band.hasWax() && band.sheetPercent() < band.lowPercent();
    }

    private static String risk(SuperfatBand band) {
        if (band.verdict() == Verdict.SAFE) {
            return band.worstPercent() >= 0
                    ? "Even with everything at its worst at once, " + Caution.tenths(band.worstPercent())
                            + " % of the oils is left over and no alkali."
                    : "Alkali is left over in fewer than 1 batch of 100.";
        }
        String certificate = band.beforeCertificateOf()
                .map(oil -> ", before a certificate says where in its published range your " + Names.inSentence(oil)
                        + " lies")
                .orElse("");
        return "Under 0 alkali is left over and the bar stays caustic: " + batches(band.freeAlkaliProbability())
                + certificate + ".";
    }

    /** A chance as batches: 1 of 5, 4 of 10. */
    static String batches(double chance) {
        if (chance >= 0.995) {
            return "practically every batch";
        }
        if (chance >= 0.95) {
            return "nearly every batch";
        }
        if (chance >= 0.35) {
            return "about " + Math.round(10 * chance) + " batches of 10";
        }
        return chance < 0.001 ? "fewer than 1 batch of 1000" : "about 1 batch of " + Math.round(1 / chance);
    }
}
