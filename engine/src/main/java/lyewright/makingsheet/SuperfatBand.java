package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lyewright.chemistry.BatchLines;
import lyewright.makingsheet.SuperfatModel.OilInput;
import lyewright.uncertainty.Distribution;
import lyewright.uncertainty.Drawn;
import lyewright.uncertainty.Input;
import lyewright.uncertainty.Interval;
import lyewright.uncertainty.LinearPropagation;
import lyewright.uncertainty.MonteCarlo;
import org.jspecify.annotations.Nullable;

/**
 * How sure the superfat of a sheet or of one portion is: where it lies in 19 batches of 20, what it is at the very worst, how
 * likely alkali is left over, and what all that hangs on. Its figures are drawn when they are first asked for, about a
 * millisecond's work; the same sheet always has the same ones.
 */
public final class SuperfatBand {

    /** What the ends of the interval may still move by when drawing stops, in points of superfat; a fifth of a digit shown. */
    public static final double TOLERANCE = 0.02;

    /** Draws after which the interval is taken as it is. */
    public static final long MOST_DRAWS = 4_000_000;

    /** Chance of alkali left over from which a superfat is called thin; this project's own rule. */
    static final double THIN = 0.01;

    /** Chance from which it is said that the bar may be caustic; this project's own rule. */
    static final double MAY_BE_CAUSTIC = 0.1;

    /** Chance from which a batch is not to be made; this project's own rule. */
    static final double NOT_TO_BE_MADE = 0.5;

    /** Normal inputs this far off have no say: 3 in 100 000. */
    private static final double OUT_OF_REACH = 4;

    private final BatchLines batch;
    private final List<Vessel> vessels;
    private final int portion;
    private final double sheetPercent;
    private volatile @Nullable Worked worked;

    SuperfatBand(BatchLines batch, List<Vessel> vessels, int portion, double sheetPercent) {
        this.batch = batch;
        this.vessels = vessels;
        this.portion = portion;
        this.sheetPercent = sheetPercent;
    }

    /** What it comes to in a word; each is the worse the later. */
    public enum Verdict {
        /** Alkali is left over in fewer than 1 batch of 100. */
        SAFE("safe"),
        /** In 1 to 10 of 100. */
        THIN("thin"),
        /** In more. */
        MAY_BE_CAUSTIC("may be caustic");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * As written.
         *
         * @return safe, thin or may be caustic
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
     * @param oil its name
     * @param lowPercent the lower end with it
     * @param highPercent the higher end with it
     */
    public record Gain(String oil, double lowPercent, double highPercent) {}

    /** All that is worked out together. */
    private record Worked(
            Interval interval,
            double chance,
            long draws,
            double worst,
            Optional<String> publishedRange,
            List<Contribution> shares) {}

    private Worked worked() {
        Worked known = worked;
        if (known == null) {
            known = work();
            worked = known;
        }
        return known;
    }

    private Worked work() {
        SuperfatModel model = model();
        Drawn drawn = draw(model.inputs(), model);
        LinearPropagation linear = LinearPropagation.of(model.inputs(), model);
        List<Contribution> shares = linear.contributions().stream()
                .filter(c -> c.percentOfVariance() > 0)
                .map(c -> new Contribution(c.input().name(), c.percentOfVariance()))
                .sorted(Comparator.comparingDouble(Contribution::percentOfVariance)
                        .reversed())
                .toList();
        return new Worked(
                drawn.interval(0.95),
                drawn.chanceBelowZero(),
                drawn.draws(),
                model.worstCorner(Distribution.NORMAL_95),
                drawn.chanceBelowZero() < THIN ? Optional.empty() : rangeBehindIt(model, linear),
                shares);
    }

    private static Drawn draw(List<Input> inputs, SuperfatModel model) {
        return MonteCarlo.drawUntil(inputs, model, TOLERANCE, MOST_DRAWS);
    }

    /**
     * The oil whose published range is most of the oils' doubt; none unless it would be safe if all oils with such ranges had
     * certificates that say what the sheet computes with.
     */
    private Optional<String> rangeBehindIt(SuperfatModel model, LinearPropagation linear) {
        List<OilInput> doubtful =
                model.oils().stream().filter(OilInput::wantsCertificate).toList();
        return !doubtful.isEmpty() && draw(certified(model, doubtful), model).chanceBelowZero() < THIN
                ? widest(model, linear).map(o -> o.oil().name())
                : Optional.empty();
    }

    /** The inputs with certificates for some oils, which say just what the sheet computes with, as exactly as they do. */
    private List<Input> certified(SuperfatModel model, List<OilInput> oils) {
        double reach =
                batch.formula().tables().practice("certificate-exactness").high();
        List<Input> inputs = new ArrayList<>(model.inputs());
        for (OilInput oil : oils) {
            double value = oil.oil().reckoned().milligramsKohPerGram();
            inputs.set(
                    oil.place(),
                    new Input(
                            inputs.get(oil.place()).name(),
                            Distribution.fromCertificate(value, reach, Distribution.NORMAL_95)));
        }
        return inputs;
    }

    private static Optional<OilInput> widest(SuperfatModel model, LinearPropagation linear) {
        return model.oils().stream()
                .filter(OilInput::wantsCertificate)
                .max(Comparator.comparingDouble(o -> share(linear, o)));
    }

    private static double share(LinearPropagation linear, OilInput oil) {
        return linear.contributions().get(oil.place()).percentOfVariance();
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
     * The lower end of the probabilistically symmetric 95 % interval: 1 batch in 40 lies below it.
     *
     * @return percent
     */
    public double lowPercent() {
        return worked().interval.low();
    }

    /**
     * Its higher end: 1 batch in 40 lies above it.
     *
     * @return percent
     */
    public double highPercent() {
        return worked().interval.high();
    }

    /**
     * The superfat with everything at its worst at once: saponification values lowest, nothing of a wax reacting but its
     * surest acid, alkali purest and heaviest, oils lightest; of a certificate the end of its 95 % interval.
     *
     * @return percent
     */
    public double worstPercent() {
        return worked().worst;
    }

    /**
     * The chance that alkali is left over.
     *
     * @return 0 to 1
     */
    public double freeAlkaliProbability() {
        return worked().chance;
    }

    /**
     * How many times it was drawn.
     *
     * @return draws
     */
    public long draws() {
        return worked().draws;
    }

    /**
     * What the width of the band hangs on, by linear propagation.
     *
     * @return greatest share first; they add up to 100
     */
    public List<Contribution> contributions() {
        return worked().shares;
    }

    /**
     * What it comes to.
     *
     * @return in a word
     */
    public Verdict verdict() {
        double chance = freeAlkaliProbability();
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
        return worked().publishedRange;
    }

    /**
     * Which oil's certificate would narrow the band most, and to what. The certificate is taken to say just what the sheet
     * computes with, as exactly as certificates do (common practice).
     *
     * @return the oil and the band with it; empty where no oil's range comes from tables
     */
    public Optional<Gain> certificateGain() {
        SuperfatModel model = model();
        LinearPropagation linear = LinearPropagation.of(model.inputs(), model);
        return widest(model, linear).map(o -> gain(model, o));
    }

    private Gain gain(SuperfatModel model, OilInput oil) {
        Interval with = draw(certified(model, List.of(oil)), model).interval(0.95);
        return new Gain(oil.oil().name(), with.low(), with.high());
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
