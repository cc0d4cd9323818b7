package lyewright.benchmarks;

import java.util.concurrent.TimeUnit;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** The engine: a whole sheet, and its stages by themselves. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 7, time = 2)
@Fork(2)
public class MakingSheetBenchmark {

    private final double[] masses = TenItems.mouldMasses();
    private final Formula formula = TenItems.formula();
    private final ResolvedFormula resolved = TenItems.resolve(formula);
    private final MakingSheet made = TenItems.sheet(resolved, 1500);
    private int turn;

    private double nextMass() {
        return masses[turn++ & (masses.length - 1)];
    }

    /**
     * A whole sheet: names looked up, lines laid out, fill solved, weighed, cautioned.
     *
     * @return the sheet
     */
    @Benchmark
    public MakingSheet wholeSheet() {
        return TenItems.sheet(TenItems.resolve(formula), nextMass());
    }

    /**
     * Rules checked and names looked up only.
     *
     * @return the resolved formula
     */
    @Benchmark
    public ResolvedFormula resolve() {
        return TenItems.resolve(formula);
    }

    /**
     * All but looking up.
     *
     * @return the sheet
     */
    @Benchmark
    public MakingSheet sheetOfResolved() {
        return TenItems.sheet(resolved, nextMass());
    }

    /**
     * The formula file read, rules included.
     *
     * @return the formula, or what is wrong with it
     */
    @Benchmark
    public FormulaFile.Read readFormulaFile() {
        return FormulaFile.read(TenItems.TEXT);
    }

    /**
     * The sentences of a sheet's cautions put together.
     *
     * @param sink takes them
     */
    @Benchmark
    public void cautionSentences(Blackhole sink) {
        for (Caution caution : made.cautions()) {
            sink.consume(caution.text());
        }
    }
}
