package lyewright.uncertainty;

import java.util.Arrays;
import java.util.List;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Distribution.Triangular;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws many sets of inputs at once, input by input: what is asked of a distribution is asked once for all of them, and what
 * is left is a short loop over one column of numbers. Serves one thread.
 */
final class Sampler {

    private static final double PER_HALF_WORD = 0x1p-32;

    private final Distribution[] distributions;
    private final double[][] columns;

    /** Of so many sets at most at once. */
    Sampler(List<Input> inputs, int most) {
        distributions = inputs.stream().map(Input::distribution).toArray(Distribution[]::new);
        columns = new double[distributions.length][most];
        for (int i = 0; i < columns.length; i++) {
            if (distributions[i] instanceof Exact exact) {
                Arrays.fill(columns[i], exact.value());
            }
        }
    }

    /** What was drawn last: a column for each input. */
    double[][] columns() {
        return columns;
    }

    /** Draws the next so many sets from one source of random numbers. */
    void draw(XoShiRo256PlusPlus random, int sets) {
        for (int i = 0; i < columns.length; i++) {
            Distribution distribution = distributions[i];
            if (distribution instanceof Rectangular rectangular) {
                fill(columns[i], sets, rectangular, random);
            } else if (distribution instanceof Trapezoidal trapezoidal) {
                fill(columns[i], sets, trapezoidal, random);
            } else if (distribution instanceof Triangular triangular) {
                fill(columns[i], sets, triangular, random);
            } else if (distribution instanceof Normal normal) {
                fill(columns[i], sets, normal, random);
            }
        }
    }

    private static void fill(double[] column, int sets, Rectangular d, XoShiRo256PlusPlus random) {
        double low = d.low();
        double width = d.high() - low;
        for (int i = 0; i < sets; i++) {
            column[i] = low + width * random.nextDouble();
        }
    }

    /** The two halves of one drawn word stand for the two that are added: 32 bits of each are plenty. */
    private static void fill(double[] column, int sets, Trapezoidal d, XoShiRo256PlusPlus random) {
        double corner = d.least(0);
        double onePerBit = 2 * d.oneHalf() * PER_HALF_WORD;
        double otherPerBit = 2 * d.otherHalf() * PER_HALF_WORD;
        for (int i = 0; i < sets; i++) {
            long word = random.nextLong();
            column[i] = corner + onePerBit * (word >>> 32) + otherPerBit * (word & 0xFFFF_FFFFL);
        }
    }

    /** Each is the value that a drawn share of the triangle's area lies below. */
    private static void fill(double[] column, int sets, Triangular d, XoShiRo256PlusPlus random) {
        double below = d.mode() - d.low();
        double above = d.high() - d.mode();
        double all = below + above;
        for (int i = 0; i < sets; i++) {
            double share = random.nextDouble();
            column[i] = share * all < below
                    ? d.low() + Math.sqrt(share * all * below)
                    : d.high() - Math.sqrt((1 - share) * all * above);
        }
    }

    private static void fill(double[] column, int sets, Normal d, XoShiRo256PlusPlus random) {
        ZigguratSampler.NormalizedGaussian gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        double mean = d.mean();
        double deviation = d.standardUncertainty();
        for (int i = 0; i < sets; i++) {
            column[i] = mean + deviation * gaussian.sample();
        }
    }
}
