package lyewright.benchmarks;

import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.MakingSheet;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.infra.Blackhole;

/** The engine: a whole sheet, and its stages by themselves. */
public class MakingSheetBenchmark extends SheetBenchmark {

    private final Formula formula = TenItems.formula();
    private final MakingSheet made = TenItems.sheet(resolved, 1500);

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
