package lyewright.uncertainty;

import java.util.List;
import java.util.stream.IntStream;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Distribution.Triangular;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws all inputs at once. They are sorted by kind beforehand, so that the million-fold loop asks no questions: whatever is
 * rectangular is one line of arithmetic, and a trapezoidal one is two of them.
 */
final class Sampler {

    private final double[] start;
    private final int[] rectangular;
    private final double[] low;
    private final double[] width;
    private final int[] trapezoidal;
    private final double[] corner;
    private final double[] oneWidth;
    private final double[] otherWidth;
    private final int[] triangular;
    private final Triangular[] triangles;
    private final int[] normal;
    private final double[] mean;
    private final double[] deviation;

    Sampler(List<Input> inputs) {
        List<Distribution> all = inputs.stream().map(Input::distribution).toList();
        start = all.stream()
                .mapToDouble(d -> d instanceof Exact exact ? exact.value() : 0)
                .toArray();
        rectangular = places(all, Rectangular.class);
        low = IntStream.of(rectangular).mapToDouble(i -> all.get(i).least(0)).toArray();
        width = IntStream.of(rectangular)
                .mapToDouble(i -> all.get(i).most(0) - all.get(i).least(0))
                .toArray();
        trapezoidal = places(all, Trapezoidal.class);
        corner = IntStream.of(trapezoidal).mapToDouble(i -> all.get(i).least(0)).toArray();
        oneWidth = IntStream.of(trapezoidal)
                .mapToDouble(i -> 2 * ((Trapezoidal) all.get(i)).oneHalf())
                .toArray();
        otherWidth = IntStream.of(trapezoidal)
                .mapToDouble(i -> 2 * ((Trapezoidal) all.get(i)).otherHalf())
                .toArray();
        triangular = places(all, Triangular.class);
        triangles =
                IntStream.of(triangular).mapToObj(i -> (Triangular) all.get(i)).toArray(Triangular[]::new);
        normal = places(all, Normal.class);
        mean = IntStream.of(normal).mapToDouble(i -> all.get(i).mean()).toArray();
        deviation = IntStream.of(normal)
                .mapToDouble(i -> all.get(i).standardUncertainty())
                .toArray();
    }

    private static int[] places(List<Distribution> all, Class<? extends Distribution> kind) {
        return IntStream.range(0, all.size())
                .filter(i -> kind.isInstance(all.get(i)))
                .toArray();
    }

    /** Room for one set of inputs; what is exact stands in it already. */
    double[] room() {
        return start.clone();
    }

    /** Starts drawing from one source of random numbers. */
    Drawing from(UniformRandomProvider random) {
        return new Drawing(random);
    }

    /** One source's draws, one set of inputs after the other. */
    final class Drawing {
        private final UniformRandomProvider random;
        private final ZigguratSampler.NormalizedGaussian gaussian;

        private Drawing(UniformRandomProvider random) {
            this.random = random;
            this.gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        }

        /** Draws the next set into its room. */
        void next(double[] inputs) {
            for (int i = 0; i < rectangular.length; i++) {
                inputs[rectangular[i]] = low[i] + width[i] * random.nextDouble();
            }
            for (int i = 0; i < trapezoidal.length; i++) {
                inputs[trapezoidal[i]] =
                        corner[i] + oneWidth[i] * random.nextDouble() + otherWidth[i] * random.nextDouble();
            }
            for (int i = 0; i < triangular.length; i++) {
                inputs[triangular[i]] = triangular(triangles[i], random.nextDouble());
            }
            for (int i = 0; i < normal.length; i++) {
                inputs[normal[i]] = mean[i] + deviation[i] * gaussian.sample();
            }
        }
    }

    /** The value that has a share of the triangle's area below it. */
    private static double triangular(Triangular triangle, double share) {
        double below = triangle.mode() - triangle.low();
        double above = triangle.high() - triangle.mode();
        double all = below + above;
        return share * all < below
                ? triangle.low() + Math.sqrt(share * all * below)
                : triangle.high() - Math.sqrt((1 - share) * all * above);
    }
}
