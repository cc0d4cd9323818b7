package lyewright.makingsheet;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.makingsheet.SuperfatBand.Verdict;
import lyewright.material.Names;

/** Says how sure a superfat is to somebody who never heard of a distribution. */
final class SuperfatWords {

    /** Percent of the variance from which something is spoken of. */
    private static final double LEAST_SHARE = 0.05;

    private SuperfatWords() {}

    /** Of a batch and its portions: a portion that is worse than the batch comes first. */
    static String of(SuperfatBand batch, List<PortionSheet> leaner) {
        // what is out of the question for the batch may not be for a portion of it
        boolean surely = leaner.stream().allMatch(portion -> portion.band().surelyWithoutAlkali());
        PortionSheet worst = null;
        for (PortionSheet portion : leaner) {
            boolean worse = portion.band().verdict().compareTo(batch.verdict()) > 0;
            if (worse && (worst == null || chance(portion) > chance(worst))) {
                worst = portion;
            }
        }
        return worst == null
                ? of(batch, surely)
                : "Portion " + worst.name() + ": " + verdict(worst.band()) + ", " + chances(chance(worst))
                        + " that alkali is left over in it. The batch as a whole: "
                        + lowerFirst(of(batch, false));
    }

    private static String lowerFirst(String sentence) {
        return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private static double chance(PortionSheet portion) {
        return portion.band().freeAlkaliProbability();
    }

    static String of(SuperfatBand band) {
        return of(band, true);
    }

    private static String of(SuperfatBand band, boolean surely) {
        String verdict = verdict(band);
        return Character.toUpperCase(verdict.charAt(0)) + verdict.substring(1) + ". " + where(band) + " "
                + risk(band, surely) + exact(band);
    }

    private static String verdict(SuperfatBand band) {
        return switch (band.verdict()) {
            case SAFE -> "safe as to alkali";
            case CAUSTIC ->
                band.sheetPercent() < -SuperfatBand.ARITHMETIC
                        ? "caustic by these very figures"
                        : "more likely caustic than not";
            default -> band.verdict().word();
        };
    }

    private static String where(SuperfatBand band) {
        Object sheet = Caution.tenths(band.sheetPercent());
        Object low = Caution.tenths(band.lowPercent());
        Object high = Caution.tenths(band.highPercent());
        return low.toString().equals(high.toString())
                ? "The superfat is " + sheet + " %."
                : "The superfat is reckoned as " + sheet + " %; for all that is known of these oils"
                        + (weighingMatters(band) ? ", alkali and balances" : " and this alkali") + " it lies between "
                        + low
                        + " and " + high + " %, 19 times in 20.";
    }

    private static boolean weighingMatters(SuperfatBand band) {
        return band.contributions().stream()
                .anyMatch(c -> c.input().startsWith("weighing of ") && c.percentOfVariance() >= LEAST_SHARE);
    }

    /** A value typed without a plus or minus hides doubt, so it is named; a purity is read off the tub. */
    private static String exact(SuperfatBand band) {
        String oils = band.takenAsExact().stream()
                .filter(what -> !what.startsWith("purity"))
                .collect(Collectors.joining(", "));
        return oils.isEmpty() ? "" : " Taken as exact, since nothing says how sure it is: " + oils + ".";
    }

    private static String risk(SuperfatBand band, boolean surely) {
        if (band.verdict() == Verdict.SAFE) {
            return surely && band.surelyWithoutAlkali()
                    ? surely(band)
                    : "The chance that alkali is left over is under 1 in 100.";
        }
        String certificate = band.beforeCertificateOf()
                .map(oil -> ", before a certificate says where in its published range your " + Names.inSentence(oil)
                        + " lies")
                .orElse("");
        return "Under 0 alkali is left over and the bars stay caustic: " + chances(band.freeAlkaliProbability())
                + certificate + ".";
    }

    private static String surely(SuperfatBand band) {
        String left = Caution.tenths(band.worstPercent()).toString();
        return "Even with every figure at the bad end of its range "
                + (left.equals("0.0")
                        ? "no alkali is left over."
                        : left + " % of the oils is left over and no alkali.");
    }

    /** A chance in words: practically certain, about 4 chances in 10, about 1 chance in 5. */
    static String chances(double chance) {
        if (chance >= 0.995) {
            return "practically certain";
        }
        if (chance >= 0.95) {
            return "nearly certain";
        }
        if (chance >= 0.35) {
            return "about " + Math.round(10 * chance) + " chances in 10";
        }
        return chance < 0.001 ? "less than 1 chance in 1000" : "about 1 chance in " + Math.round(1 / chance);
    }
}
