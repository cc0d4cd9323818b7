package lyewright.web.start;

import java.util.NavigableMap;
import java.util.TreeMap;
import lyewright.words.Figures;

/** How much of a recipe something takes, as one maker says it to another. */
final class Takes {

    private static final double RIGHT_FROM = 0.97;
    private static final double RIGHT_TO = 1.03;
    /** Under this a tenth is too coarse. */
    private static final double CLOSE_TO = 1.25;

    private static final double PLAIN_FROM = 1.05;
    private static final double WHOLE_FROM = 9.95;

    /** From which share of a recipe on it is called so. */
    private static final NavigableMap<Double, String> PARTS = new TreeMap<>();

    static {
        PARTS.put(0.09, "about a tenth of it");
        PARTS.put(0.115, "about an eighth of it");
        PARTS.put(0.15, "about a sixth of it");
        PARTS.put(0.185, "about a fifth of it");
        PARTS.put(0.22, "about a quarter of it");
        PARTS.put(0.29, "about a third of it");
        PARTS.put(0.365, "about two fifths of it");
        PARTS.put(0.43, "a little less than half of it");
        PARTS.put(0.485, "half of it");
        PARTS.put(0.515, "a little more than half of it");
        PARTS.put(0.6, "not quite two thirds of it");
        PARTS.put(0.645, "about two thirds of it");
        PARTS.put(0.7, "about three quarters of it");
        PARTS.put(0.785, "about four fifths of it");
        PARTS.put(0.85, "nearly nine tenths of it");
        PARTS.put(0.89, "about nine tenths of it");
        PARTS.put(0.93, "nearly all of it");
    }

    private Takes() {}

    /**
     * Of a recipe in masses.
     *
     * @param ratio how often it takes the recipe
     * @param mass what that is in the mould
     */
    static String times(AskedMould.Called called, double ratio, String mass) {
        if (ratio >= RIGHT_FROM && ratio <= RIGHT_TO) {
            return called.fills() + (called.amount() && !called.many() ? "." : ": " + mass + ".");
        }
        return called.takes() + (ratio < 1 ? part(ratio) : multiple(ratio)) + ".";
    }

    private static String part(double ratio) {
        return ratio < PARTS.firstKey()
                ? Figures.upTo(100 * ratio, ratio < 0.01 ? 2 : 0) + " % of it"
                : PARTS.floorEntry(ratio).getValue();
    }

    private static String multiple(double ratio) {
        if (ratio < PLAIN_FROM) {
            return "a little more than this recipe";
        }
        if (ratio < CLOSE_TO) {
            // a tenth of a recipe more than it takes runs over
            return Figures.upTo(ratio, 2) + " times this recipe";
        }
        String times = Figures.fixed(ratio, ratio < WHOLE_FROM ? 1 : 0);
        return switch (times) {
            case "2.0" -> "twice this recipe";
            case "3.0" -> "three times this recipe";
            case "1.5" -> "one and a half times this recipe";
            default -> times + " times this recipe";
        };
    }

    /** Of a recipe in shares, which has no size of its own. */
    static String ofShares(AskedMould.Called called, String mass) {
        if (!called.amount()) {
            return called.takes() + mass + " of it.";
        }
        return "Worked out for " + called.name() + (called.many() ? ": " + mass : "") + ".";
    }
}
