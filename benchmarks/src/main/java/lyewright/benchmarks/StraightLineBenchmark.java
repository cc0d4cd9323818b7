package lyewright.benchmarks;

import java.util.concurrent.TimeUnit;
import lyewright.formula.ResolvedFormula;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The same figures from bare arithmetic: the least that a sheet can cost. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 7, time = 2)
@Fork(2)
public class StraightLineBenchmark {

    private final double[] masses = TenItems.mouldMasses();
    private final ResolvedFormula resolved = TenItems.resolved();
    private final StraightLine line = new StraightLine(new Figures(resolved));
    private int turn;

    /** Whether it gives the engine's figures, for every mould mass. */
    @Setup
    public void check() {
        for (double mass : masses) {
            line.make(mass);
            Answers.of(TenItems.sheet(resolved, mass)).check("the bare arithmetic", line::get);
        }
    }

    /**
     * One sheet.
     *
     * @return what was computed, in fields
     */
    @Benchmark
    public Object bareArithmetic() {
        line.make(masses[turn++ & (masses.length - 1)]);
        return line;
    }
}
