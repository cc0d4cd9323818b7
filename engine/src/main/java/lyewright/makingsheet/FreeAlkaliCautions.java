package lyewright.makingsheet;

import java.util.List;
import lyewright.makingsheet.Caution.Level;
import lyewright.material.Names;

/** What to beware of because of how sure, or unsure, the superfat is: of the batch, and of each portion by itself. */
final class FreeAlkaliCautions {

    /** A portion this much leaner than the batch is looked at by itself; this project's own rule, in points. */
    private static final double LEANER = 0.05;

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
                    "A superfat of {} % may really be anything from {} to {} %, and under 0 alkali is left over and the bars"
                            + " stay caustic: {}{}.",
                    "Ask for more superfat, " + whatElseHelps(band),
                    OWN_RULE,
                    List.of(
                            Caution.tenths(band.sheetPercent()),
                            Caution.tenths(band.lowPercent()),
                            Caution.tenths(band.highPercent()),
                            SuperfatWords.chances(chance),
                            band.beforeCertificateOf()
                                    .map(oil -> ", before a certificate for " + Names.inSentence(oil))
                                    .orElse(""))));
        }
    }

    /** Goes by what most of the doubt hangs on. */
    private static String whatElseHelps(SuperfatBand band) {
        if (band.beforeCertificateOf().isPresent()) {
            return "or get the certificate of analysis of your lot of "
                    + Names.inSentence(band.beforeCertificateOf().get()) + " and give its value under materials.";
        }
        return switch (band.leading()) {
            case WEIGHING -> "use a finer balance, or make a larger batch.";
            case PURITY -> "or read the alkali's purity off its certificate and give it.";
            case STRENGTH -> "or have the strength of the stock lye certified, and give it more closely.";
            case ACID -> "or leave the acid to a pure one, which is known better than a juice's or a milk's.";
            case OIL, WAX -> "or give the saponification value of your oils more closely.";
        };
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
                    "Portion {} is leaner than the batch: {} that alkali is left over in it.",
                    SuperfatCautions.EVEN_THEM_OUT,
                    OWN_RULE,
                    List.of(portion.name(), SuperfatWords.chances(chance))));
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
