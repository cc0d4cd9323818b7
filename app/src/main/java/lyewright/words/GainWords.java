package lyewright.words;

import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.SuperfatBand.Gain;

/** What a certificate would gain, where somebody could ask for one. */
public final class GainWords {

    /** Points of superfat by which a band must get narrower to be spoken of; this project's own rule. */
    private static final double WORTH_TELLING = 0.2;

    private GainWords() {}

    /** Whether a certificate would narrow a band by as much as can be seen. */
    public static boolean isWorthTelling(SuperfatBand band, Gain gain) {
        return width(band.lowPercent(), band.highPercent()) - width(gain.lowPercent(), gain.highPercent())
                >= WORTH_TELLING;
    }

    private static double width(double low, double high) {
        return high - low;
    }

    /** From what to what, as in {@code from 2.7 to 7.9 % to 3.8 to 7.0 %}; no full stop. */
    public static String narrowed(SuperfatBand band, Gain gain) {
        return "from between " + between(band.lowPercent(), band.highPercent()) + " to between "
                + between(gain.lowPercent(), gain.highPercent());
    }

    private static String between(double low, double high) {
        return Figures.fixed(low, 1) + " and " + Figures.percent(high, 1);
    }
}
