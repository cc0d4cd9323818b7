package lyewright.makingsheet;

import java.util.List;
import lyewright.makingsheet.Caution.Level;

/** What to beware of because of how sure, or unsure, the superfat is: of the batch, and of each portion by itself. */
final class FreeAlkaliCautions {

    /** A portion this much leaner than the batch is looked at by itself; this project's own rule, in points. */
    private static final double LEANER = 0.05;

    private static final String MORE_OR_BETTER =
            "Ask for more superfat, or give what is known better: a certificate for an oil, the alkali's purity.";

    private static final String OWN_RULE = "this project's own rule, on a chance drawn by JCGM 101";

    private FreeAlkaliCautions() {}

    static void look(SuperfatBand batch, List<PortionSheet> portions, List<Caution> found) {
        batch(batch, found);
        for (PortionSheet portion : leaner(batch, portions)) {
            portion(portion, batch, found);
        }
    }

    /** Portions that have less superfat than the batch. */
    static List<PortionSheet> leaner(SuperfatBand batch, List<PortionSheet> portions) {
        return portions.stream()
                .filter(portion -> portion.superfatPercent() < batch.sheetPercent() - LEANER)
                .toList();
    }

    private static void batch(SuperfatBand band, List<Caution> found) {
        if (band.sheetPercent() < -SuperfatBand.ARITHMETIC) {
            found.add(new Caution(
                    "free-alkali",
                    Level.STOP,
                    "The superfat is {} %: there is more alkali than the oils can take, and the bar stays caustic.",
                    "Weigh less alkali. With the superfat left to the sheet it is never under what is asked.",
                    "mass balance",
                    List.of(Caution.hundredths(band.sheetPercent()))));
            return;
        }
        double chance = chance(band);
        if (chance >= SuperfatBand.THIN) {
            found.add(new Caution(
                    "free-alkali",
                    level(chance),
                    "{} and the bars stay caustic{}: a superfat of {} % may really be anything from {} to {} %.",
                    MORE_OR_BETTER,
                    OWN_RULE,
                    List.of(
                            SuperfatWords.thatAlkaliIsLeft(chance),
                            band.beforeCertificateOf().isPresent() ? ", before a certificate" : "",
                            Caution.tenths(band.sheetPercent()),
                            Caution.tenths(band.lowPercent()),
                            Caution.tenths(band.highPercent()))));
        }
    }

    private static void portion(PortionSheet portion, SuperfatBand batch, List<Caution> found) {
        if (portion.superfatPercent() < -SuperfatBand.ARITHMETIC) {
            found.add(new Caution(
                    "portion-free-alkali",
                    Level.STOP,
                    "Portion {} has a superfat of {} %, though the whole batch has {} %: it stays caustic.",
                    SuperfatCautions.EVEN_THEM_OUT,
                    "mass balance",
                    List.of(
                            portion.name(),
                            Caution.tenths(portion.superfatPercent()),
                            Caution.tenths(batch.sheetPercent()))));
            return;
        }
        double chance = chance(portion.band());
        if (chance >= SuperfatBand.THIN) {
            found.add(new Caution(
                    "portion-free-alkali",
                    level(chance),
                    "Portion {} is leaner than the batch. {} in it.",
                    SuperfatCautions.EVEN_THEM_OUT,
                    OWN_RULE,
                    List.of(portion.name(), SuperfatWords.thatAlkaliIsLeft(chance))));
        }
    }

    private static Level level(double chance) {
        return chance >= SuperfatBand.NOT_TO_BE_MADE ? Level.STOP : Level.CARE;
    }

    /** Nothing is drawn where even the worst of everything leaves no alkali over. */
    private static double chance(SuperfatBand band) {
        return band.surelyWithoutAlkali() ? 0 : band.freeAlkaliProbability();
    }
}
