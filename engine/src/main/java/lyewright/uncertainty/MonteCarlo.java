package lyewright.uncertainty;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/**
 * Carries distributions through a model by drawing them (JCGM 101, clause 7). Draws come in blocks of {@value #BLOCK}, each
 * with a seed of its own that follows from its number, and blocks are put together in their order: one processor and many
 * give the same result to the last digit, and so does every run. What is kept does not grow with the number of draws.
 */
public final class MonteCarlo {

    /** Draws of one block: what JCGM 101, 7.9.4 asks for at 95 %. */
    public static final int BLOCK = 10_000;

    /** Blocks drawn before the first look at whether they are enough, and between looks. */
    static final int WAVE = 4;

    /** Draws that show where the output lies, before anything is counted. */
    private static final int PILOT = 1024;

    /** The histogram reaches this many ranges of the pilot beyond it, on either side. */
    private static final double REACH = 2;

    private static final long SEED = 0x4C79_6577_7269_6768L;
    private static final long BETWEEN_SEEDS = 0x9E37_79B9_7F4A_7C15L;

    private final Sampler sampler;
    private final Model model;
    private final Histogram frame;
    private final double about;

    private MonteCarlo(List<Input> inputs, Model model) {
        this.sampler = new Sampler(inputs);
        this.model = model;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double sum = 0;
        double[] room = sampler.room();
        Sampler.Drawing pilot = sampler.from(random(-1));
        for (int i = 0; i < PILOT; i++) {
            pilot.next(room);
            double output = model.at(room);
            low = Math.min(low, output);
            high = Math.max(high, output);
            sum += output;
        }
        // where nothing varies the range is one of arithmetic
        double range = Math.max(high - low, 1e-9 * Math.max(1, Math.abs(high)));
        this.frame = new Histogram(low - REACH * range, high + REACH * range);
        this.about = sum / PILOT;
    }

    /**
     * Draws a fixed number of times.
     *
     * @param inputs the model's inputs
     * @param model what is computed from them
     * @param draws how often, at least 1
     * @return what came out
     */
    public static Drawn draw(List<Input> inputs, Model model, long draws) {
        MonteCarlo run = new MonteCarlo(inputs, model);
        Drawn drawn = new Drawn(run.frame.empty(), run.about);
        long blocks = (draws + BLOCK - 1) / BLOCK;
        for (long next = 0; next < blocks; next += WAVE) {
            int wave = (int) Math.min(WAVE, blocks - next);
            for (Drawn block : run.wave(next, wave, draws)) {
                drawn.add(block);
            }
        }
        return drawn;
    }

    /**
     * Draws until the ends of the 95 % interval have settled (JCGM 101, 7.9.4): until twice the standard deviation of their
     * mean over the blocks is under the tolerance.
     *
     * @param inputs the model's inputs
     * @param model what is computed from them
     * @param tolerance what the ends may still move by, in the output's unit, over 0
     * @param most draws after which it stops even so
     * @return what came out
     */
    public static Drawn drawUntil(List<Input> inputs, Model model, double tolerance, long most) {
        MonteCarlo run = new MonteCarlo(inputs, model);
        Drawn drawn = new Drawn(run.frame.empty(), run.about);
        Moments lows = new Moments(run.about);
        Moments highs = new Moments(run.about);
        long blocks = 0;
        do {
            for (Drawn block : run.wave(blocks, WAVE, Long.MAX_VALUE)) {
                Interval ends = block.interval(0.95);
                lows.add(ends.low());
                highs.add(ends.high());
                drawn.add(block);
            }
            blocks += WAVE;
        } while (blocks * BLOCK < most && 2 * Math.max(lows.deviationOfMean(), highs.deviationOfMean()) > tolerance);
        return drawn;
    }

    /** Some blocks at once; each holds the draws up to {@code draws} that fall to it. */
    private List<Drawn> wave(long first, int blocks, long draws) {
        return IntStream.range(0, blocks)
                .parallel()
                .mapToObj(i -> block(first + i, (int) Math.min(BLOCK, draws - (first + i) * BLOCK)))
                .toList();
    }

    private Drawn block(long number, int draws) {
        Drawn drawn = new Drawn(frame.empty(), about);
        Sampler.Drawing drawing = sampler.from(random(number));
        double[] room = sampler.room();
        for (int i = 0; i < draws; i++) {
            drawing.next(room);
            drawn.add(model.at(room));
        }
        return drawn;
    }

    /** A block's own source of random numbers. */
    static UniformRandomProvider random(long block) {
        SplitMix64 seed = new SplitMix64(SEED + block * BETWEEN_SEEDS);
        return new XoShiRo256PlusPlus(seed.nextLong(), seed.nextLong(), seed.nextLong(), seed.nextLong());
    }
}
