package lyewright.uncertainty;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/**
 * Carries distributions through a model by drawing them (JCGM 101, clause 7). Draws come in blocks of {@value #BLOCK}, each
 * with a seed of its own that follows from its number. Blocks are dealt out to a fixed number of strands, and strands are put
 * together in their order: one processor and many give the same result to the last digit, and so does every run. Neither
 * what is kept nor the room to work in grows with the number of draws.
 */
public final class MonteCarlo {

    /** Draws of one block: what JCGM 101, 7.9.4 asks for at 95 %. */
    public static final int BLOCK = 10_000;

    /** How many blocks may be drawn at the same time, and how many are between looks at whether they are enough. */
    static final int WAVE = 4;

    /** Draws that show where the output lies, before anything is counted. */
    private static final int PILOT = 4 * Strand.SETS;

    /** The histogram goes on beyond the pilot's range for so many times that range, on either side. */
    private static final double REACH = 1;

    private static final long SEED = 0x4C79_6577_7269_6768L;

    /**
     * Four steps of the generator of seeds (0x9E3779B97F4A7C15 each, in 64 bits), so that no block shares a word of its seed
     * with another.
     */
    private static final long BETWEEN_SEEDS = 0x78DD_E6E5_FD29_F054L;

    private final Strand[] strands = new Strand[WAVE];
    private final Drawn[] counted = new Drawn[WAVE];
    private final Drawn all;

    private MonteCarlo(List<Input> inputs, Model model) {
        Arrays.setAll(strands, strand -> new Strand(inputs, model));
        all = frame(strands[0]);
        Arrays.setAll(counted, strand -> all.empty());
    }

    /** Nothing counted yet, but room where a pilot says that the output lies. */
    private static Drawn frame(Strand pilot) {
        XoShiRo256PlusPlus random = random(-1);
        DoubleSummaryStatistics seen = new DoubleSummaryStatistics();
        for (int draws = 0; draws < PILOT; draws += Strand.SETS) {
            DoubleStream.of(pilot.next(random, Strand.SETS)).forEach(seen);
        }
        // where nothing varies the range is one of arithmetic
        double range = Math.max(seen.getMax() - seen.getMin(), 1e-9 * Math.max(1, Math.abs(seen.getMax())));
        Histogram histogram = new Histogram(seen.getMin() - REACH * range, seen.getMax() + REACH * range);
        return new Drawn(histogram, seen.getAverage());
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
        return new MonteCarlo(inputs, model).draw(draws);
    }

    private Drawn draw(long draws) {
        long blocks = (draws + BLOCK - 1) / BLOCK;
        atOnce(strand -> {
            for (long block = strand; block < blocks; block += WAVE) {
                strands[strand].draw(random(block), (int) Math.min(BLOCK, draws - block * BLOCK), counted[strand]);
            }
        });
        for (Drawn strand : counted) {
            all.add(strand);
        }
        return all;
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
        return drawUntil(inputs, model, tolerance, 0, most);
    }

    /**
     * Draws until the ends of the 95 % interval have settled, as above, where the tolerance may grow with the output's
     * spread: nobody asks for hundredths of what is unsure by tens.
     *
     * @param inputs the model's inputs
     * @param model what is computed from them
     * @param tolerance what the ends may still move by, in the output's unit, over 0
     * @param ofSpread or by this share of the output's standard uncertainty, whichever is more; 0 for the tolerance alone
     * @param most draws after which it stops even so
     * @return what came out
     */
    public static Drawn drawUntil(List<Input> inputs, Model model, double tolerance, double ofSpread, long most) {
        return new MonteCarlo(inputs, model).drawUntil(tolerance, ofSpread, most);
    }

    private Drawn drawUntil(double tolerance, double ofSpread, long most) {
        Moments lows = new Moments(all.about());
        Moments highs = new Moments(all.about());
        long blocks = 0;
        double allowed;
        do {
            drawWave(blocks);
            for (Drawn block : counted) {
                Interval ends = block.interval(0.95);
                lows.add(ends.low());
                highs.add(ends.high());
                all.add(block);
            }
            blocks += WAVE;
            allowed = Math.max(tolerance, ofSpread * all.standardUncertainty());
        } while (blocks * BLOCK < most && 2 * Math.max(lows.deviationOfMean(), highs.deviationOfMean()) > allowed);
        return all;
    }

    /** Each strand draws one block, and nothing else is in its count. */
    private void drawWave(long first) {
        atOnce(strand -> {
            counted[strand].clear();
            strands[strand].draw(random(first + strand), BLOCK, counted[strand]);
        });
    }

    private static void atOnce(IntConsumer work) {
        IntStream.range(0, WAVE).parallel().forEach(work);
    }

    /** A block's own source of random numbers: the next four words of one row of seeds, so that no two have one in common. */
    static XoShiRo256PlusPlus random(long block) {
        SplitMix64 seed = new SplitMix64(SEED + block * BETWEEN_SEEDS);
        return new XoShiRo256PlusPlus(seed.nextLong(), seed.nextLong(), seed.nextLong(), seed.nextLong());
    }
}
