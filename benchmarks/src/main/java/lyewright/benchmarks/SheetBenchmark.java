package lyewright.benchmarks;

import java.util.concurrent.TimeUnit;
import lyewright.formula.ResolvedFormula;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What all have in common: one thread, the garbage collector that ./lyewright uses, and another mould mass each time, so that
 * nothing can be computed once for all.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 7, time = 2)
@Fork(
        value = 2,
        jvmArgs = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m"})
public abstract class SheetBenchmark {

    final double[] masses = TenItems.mouldMasses();
    final ResolvedFormula resolved = TenItems.resolved();
    private int turn;

    final double nextMass() {
        return masses[turn++ & (masses.length - 1)];
    }
}
