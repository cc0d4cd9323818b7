package lyewright.benchmarks;

import lyewright.formula.ResolvedFormula;
import org.openjdk.jmh.annotations.Benchmark;

/** The superfat's 95 % interval, drawn anew for a new sheet each time; making the sheet is in it. */
public class BandBenchmark extends SheetBenchmark {

    private final ResolvedFormula oneOil = OtherFormulas.coconut();

    /**
     * Of the formula that the sheet is measured on.
     *
     * @return its lower end
     */
    @Benchmark
    public double tenItems() {
        return TenItems.sheet(resolved, nextMass()).band().lowPercent();
    }

    /**
     * Of coconut oil alone at 2 %: the widest range of all common oils.
     *
     * @return its lower end
     */
    @Benchmark
    public double coconut() {
        return TenItems.sheet(oneOil, nextMass()).band().lowPercent();
    }
}
