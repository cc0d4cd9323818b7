package lyewright.benchmarks;

import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import lyewright.makingsheet.SheetDraws;
import org.apache.commons.rng.core.source64.SplitMix64;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 7, time = 2)
@Fork(
        value = 2,
        jvmArgs = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m"})
public class DrawingBenchmark {

    private static final String ONE = "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0";
    static final int DRAWS = 1_000_000;
    static final int BLOCK = 10_000;
    static final int NUMBERS = 18;

    private final SheetDraws sheet = OtherFormulas.twelveInputs();

    @Benchmark
    @Fork(value = 2, jvmArgs = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", ONE})
    public double drawnOneThread() {
        return sheet.draw(DRAWS).mean();
    }

    @Benchmark
    public double drawnAllCores() {
        return sheet.draw(DRAWS).mean();
    }

    @Benchmark
    @Fork(value = 2, jvmArgs = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", ONE})
    public double bareOneThread() {
        return IntStream.range(0, DRAWS / BLOCK).parallel().mapToDouble(DrawingBenchmark::bare).sum();
    }

    @Benchmark
    public double bareAllCores() {
        return IntStream.range(0, DRAWS / BLOCK).parallel().mapToDouble(DrawingBenchmark::bare).sum();
    }

    static double bare(int block) {
        SplitMix64 seed = new SplitMix64(block);
        XoShiRo256PlusPlus random = new XoShiRo256PlusPlus(seed.nextLong(), seed.nextLong(), seed.nextLong(), seed.nextLong());
        double sum = 0;
        for (int i = 0; i < BLOCK; i++) {
            for (int j = 0; j < NUMBERS; j++) {
                sum += random.nextDouble();
            }
        }
        return sum;
    }
}
