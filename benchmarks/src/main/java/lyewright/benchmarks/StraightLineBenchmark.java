package lyewright.benchmarks;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;

/** The same figures from bare arithmetic: the least that a sheet can cost. */
public class StraightLineBenchmark extends SheetBenchmark {

    private final StraightLine line = new StraightLine(new Figures(resolved));

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
        line.make(nextMass());
        return line;
    }
}
