package lyewright.benchmarks;

import java.util.concurrent.ForkJoinPool;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import lyewright.makingsheet.SheetDraws;
import lyewright.uncertainty.MonteCarlo;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * A million draws of a sheet with twelve uncertain inputs, beside a bare loop that draws as many numbers from the same
 * generator and adds them up: the least that drawing can cost. They take turns, so that whatever else the machine does slows
 * both.
 */
public class DrawingBenchmark extends SheetBenchmark {

    private static final int DRAWS = 1_000_000;
    private static final int INPUTS = 12;

    /** The blocks are dealt out as the engine deals out its own. */
    private static final int DEALS = 4;

    private final SheetDraws sheet = OtherFormulas.twelveInputs();
    private final ForkJoinPool oneThread = new ForkJoinPool(1);

    /** Whether there are as many uncertain inputs as numbers in the bare loop: each of them takes one. */
    @Setup
    public void check() {
        long uncertain = sheet.inputs().stream()
                .filter(input -> input.distribution().standardUncertainty() > 0)
                .count();
        if (uncertain != INPUTS) {
            throw new IllegalStateException(uncertain + " uncertain inputs");
        }
    }

    /** Ends the thread. */
    @TearDown
    public void end() {
        oneThread.shutdown();
    }

    /** How long both took in one iteration. Counters of JMH: what is public is reported, and set to 0 for the next one. */
    @AuxCounters(AuxCounters.Type.EVENTS)
    @State(Scope.Thread)
    public static class Turns {

        /** Of the engine. */
        public long drawnNanoseconds;

        /** Of the bare loop. */
        public long bareNanoseconds;

        /**
         * How many times as long the engine took.
         *
         * @return the one divided by the other
         */
        public double timesBare() {
            return (double) drawnNanoseconds / bareNanoseconds;
        }

        private double take(DoubleSupplier drawn, DoubleSupplier bare) {
            long before = System.nanoTime();
            double results = drawn.getAsDouble();
            long between = System.nanoTime();
            results += bare.getAsDouble();
            drawnNanoseconds += between - before;
            bareNanoseconds += System.nanoTime() - between;
            return results;
        }
    }

    /**
     * Both on one thread.
     *
     * @param turns takes the times
     * @return what they came to
     */
    @Benchmark
    public double onOneThread(Turns turns) {
        return turns.take(
                () -> oneThread.submit(() -> drawn()).join(),
                () -> oneThread.submit(() -> bare()).join());
    }

    /**
     * Both on all cores.
     *
     * @param turns takes the times
     * @return what they came to
     */
    @Benchmark
    public double onAllCores(Turns turns) {
        return turns.take(this::drawn, DrawingBenchmark::bare);
    }

    private double drawn() {
        return sheet.draw(DRAWS).mean();
    }

    private static double bare() {
        return IntStream.range(0, DEALS)
                .parallel()
                .mapToDouble(deal -> {
                    double sum = 0;
                    for (int block = deal; block < DRAWS / MonteCarlo.BLOCK; block += DEALS) {
                        sum += bare(block);
                    }
                    return sum;
                })
                .sum();
    }

    private static double bare(int block) {
        SplitMix64 seed = new SplitMix64(block);
        XoShiRo256PlusPlus random =
                new XoShiRo256PlusPlus(seed.nextLong(), seed.nextLong(), seed.nextLong(), seed.nextLong());
        double sum = 0;
        for (int i = 0; i < MonteCarlo.BLOCK; i++) {
            for (int j = 0; j < INPUTS; j++) {
                sum += random.nextDouble();
            }
        }
        return sum;
    }
}
