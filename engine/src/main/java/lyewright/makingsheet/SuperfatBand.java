package lyewright.makingsheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lyewright.chemistry.BatchLines;
import org.jspecify.annotations.Nullable;

/**
 * How sure the superfat of a sheet or of one portion is: where it lies with 19 chances in 20, what it is at the very worst, how
 * likely alkali is left over, and what all that hangs on. Its figures are drawn when they are first asked for, about a
 * millisecond's work; the same sheet always has the same ones.
 */
public final class SuperfatBand {

    /** What the ends of the interval may still move by when drawing stops, in points of superfat; a fifth of a digit shown. */
    public static final double TOLERANCE = 0.02;

    /** Or by this share of the superfat's standard uncertainty: a band tens of points wide has no use for hundredths. */
    static final double OF_SPREAD = 0.01;

    /** Draws after which the interval is taken as it is. */
    public static final long MOST_DRAWS = 4_000_000;

    /** Chance of alkali left over from which a superfat is called thin; this project's own rule. */
    static final double THIN = 0.01;

    /** Chance from which it is said that the bar may be caustic; this project's own rule. */
    static final double MAY_BE_CAUSTIC = 0.1;

    /** Chance from which a batch is not to be made; this project's own rule. */
    static final double NOT_TO_BE_MADE = 0.5;

    /** Percent of the doubt from which an oil's certificate is worth asking for; this project's own rule. */
    static final double MUCH_OF_DOUBT = 5;

    /** Points of superfat that stand for nothing but the arithmetic of doubles. */
    static final double ARITHMETIC = 1e-9;

    /** Normal inputs this far off have no say: 3 in 100 000. */
    private static final double OUT_OF_REACH = 4;

    private final BatchLines batch;
    private final List<Vessel> vessels;
    private final int portion;
    private final double sheetPercent;
    private volatile @Nullable SuperfatDraws worked;

    SuperfatBand(BatchLines batch, List<Vessel> vessels, int portion, double sheetPercent) {
        this.batch = batch;
        this.vessels = vessels;
        this.portion = portion;
        this.sheetPercent = sheetPercent;
    }

    /** What it comes to in a word, as to alkali and nothing else; each is the worse the later. */
    public enum Verdict {
        /** The chance that alkali is left over is under 1 in 100. */
        SAFE("safe"),
        /** It is 1 to 10 in 100. */
        THIN("thin"),
        /** It is more. */
        MAY_BE_CAUSTIC("may be caustic"),
        /** It is 50 in 100 or more, or the sheet's own superfat is under 0. */
        CAUSTIC("caustic");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * As written.
         *
         * @return safe, thin, may be caustic or caustic
         */
        public String word() {
            return word;
        }
    }

    /**
     * What one input contributes.
     *
     * @param input what it is, in words
     * @param percentOfVariance its share of the variance by linear propagation; all add up to 100
     */
    public record Contribution(String input, double percentOfVariance) {}

    /**
     * What a certificate for one oil would gain.
     *
     * @param key the oil's key
     * @param oil its name
     * @param lowPercent the lower end with it
     * @param highPercent the higher end with it
     */
    public record Gain(String key, String oil, double lowPercent, double highPercent) {}

    private SuperfatDraws worked() {
        SuperfatDraws known = worked;
        if (known == null) {
            known = new SuperfatDraws(model());
            worked = known;
        }
        return known;
    }

    private SuperfatModel model() {
        return new SuperfatModel(batch, vessels, portion);
    }

    /**
     * The superfat of the rounded sheet, in the middle of which the band need not lie.
     *
     * @return percent
     */
    public double sheetPercent() {
        return sheetPercent;
    }

    /**
     * The lower end of the probabilistically symmetric 95 % interval: the chance is 1 in 40 that it lies below. Of a wax only
     * what surely reacts is counted on.
     *
     * @return percent
     */
    public double lowPercent() {
        return worked().interval().low();
    }

    /**
     * Its higher end: the chance is 1 in 40 that it lies above. All of a wax may react.
     *
     * @return percent
     */
    public double highPercent() {
        return worked().interval().high();
    }

    /**
     * The superfat with everything at its worst at once: saponification values lowest, nothing of a wax reacting but its
     * surest acid, alkali purest and heaviest, oils lightest; of a certificate the end of its 95 % interval.
     *
     * @return percent
     */
    public double worstPercent() {
        return worked().worst();
    }

    /**
     * The chance that alkali is left over, nothing of a wax reacting but what surely does.
     *
     * @return 0 to 1
     */
    public double freeAlkaliProbability() {
        return worked().chance();
    }

    /**
     * How often each superfat was drawn. It is drawn anew when it is asked for.
     *
     * @return shares of the draws
     */
    public SuperfatShape shape() {
        return worked().shape();
    }

    /**
     * How many times it was drawn; where there is wax, for the higher end.
     *
     * @return draws
     */
    public long draws() {
        return worked().draws();
    }

    /**
     * What the width of the band hangs on, by linear propagation.
     *
     * @return greatest share first; they add up to 100
     */
    public List<Contribution> contributions() {
        return worked().shares();
    }

    /**
     * What it comes to.
     *
     * @return in a word
     */
    public Verdict verdict() {
        double chance = freeAlkaliProbability();
        if (chance >= NOT_TO_BE_MADE || sheetPercent < -ARITHMETIC) {
            return Verdict.CAUSTIC;
        }
        if (chance >= MAY_BE_CAUSTIC) {
            return Verdict.MAY_BE_CAUSTIC;
        }
        return chance >= THIN ? Verdict.THIN : Verdict.SAFE;
    }

    /**
     * The oil whose published range makes it less than safe, so that a certificate may settle it.
     *
     * @return its name, of several the one that matters most; empty where it is safe, or would not be with certificates that
     *     say of the oils just what the sheet takes them for
     */
    public Optional<String> beforeCertificateOf() {
        return worked().publishedRange();
    }

    /**
     * Which oil's certificate would narrow the band most, and to what. The certificate is taken to say just what the sheet
     * computes with, as exactly as certificates do (common practice).
     *
     * @return the oil and the band with it; empty where no oil's range comes from tables
     */
    public Optional<Gain> certificateGain() {
        return worked().certificateGain();
    }

    /**
     * What a certificate for one oil would gain, taken as in {@link #certificateGain()}.
     *
     * @param key the oil's key
     * @return the band with it; empty where the sheet has no such oil, or its range does not come from tables
     */
    public Optional<Gain> certificateGain(String key) {
        return worked().certificateGain(key);
    }

    /**
     * What certificates would gain, each for itself, of the oils that a good part of the doubt hangs on.
     *
     * @param most how many at most, for each is drawn for itself
     * @return the oils and the band with each, the most first
     */
    public List<Gain> certificateGains(int most) {
        return worked().certificateGains(most);
    }

    /**
     * What is taken as exact because nobody says how sure it is: a purity, a strength or a saponification value given without a
     * plus or minus, a single published value.
     *
     * @return what, in words
     */
    public List<String> takenAsExact() {
        return worked().takenAsExact();
    }

    /** What most of the doubt is about that may leave alkali over. */
    SuperfatModel.About leading() {
        return worked().leading();
    }

    /**
     * What a maker should know of it, without statistics.
     *
     * @return one to three plain sentences, the first of them the verdict
     */
    public String sentence() {
        return SuperfatWords.of(this);
    }

    /**
     * Whether free alkali is out of the question, which takes no drawing to know.
     *
     * @return true if not even the worst of everything leaves any
     */
    boolean surelyWithoutAlkali() {
        return model().worstCorner(OUT_OF_REACH) >= 0;
    }

    /** Bands of equal sheets are equal. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SuperfatBand that
                && portion == that.portion
                && batch.equals(that.batch)
                && vessels.equals(that.vessels);
    }

    @Override
    public int hashCode() {
        return Objects.hash(batch, vessels, portion);
    }
}
