package lyewright.benchmarks;

import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFFormulaEvaluator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/** A general spreadsheet engine that recalculates the same sheet from an xls workbook in memory. */
@Warmup(iterations = 3, time = 5)
public class SpreadsheetBenchmark extends SheetBenchmark {

    private final NamedCells cells = SheetCells.of(new Figures(resolved));
    private final HSSFCell target = cells.cell("target");
    private final HSSFCell[] formulas = cells.formulas().toArray(new HSSFCell[0]);
    private final HSSFFormulaEvaluator evaluator = new HSSFFormulaEvaluator(cells.workbook());

    /** Whether the workbook gives the engine's figures, for every mould mass, in both ways of recalculating. */
    @Setup
    public void check() {
        for (double mass : masses) {
            Answers answers = Answers.of(TenItems.sheet(resolved, mass));
            target.setCellValue(mass);
            recalculateAll();
            answers.check("the workbook", name -> cells.cell(name).getNumericCellValue());
        }
        for (double mass : masses) {
            Answers answers = Answers.of(TenItems.sheet(resolved, mass));
            target.setCellValue(mass);
            recalculateDependents();
            answers.check("the workbook in part", name -> cells.cell(name).getNumericCellValue());
        }
    }

    private void recalculateAll() {
        evaluator.clearAllCachedResultValues();
        evaluate();
    }

    private void recalculateDependents() {
        evaluator.notifyUpdateCell(target);
        evaluate();
    }

    private void evaluate() {
        for (HSSFCell cell : formulas) {
            evaluator.evaluateFormulaCell(cell);
        }
    }

    /**
     * Another mould mass, and every cell recalculated.
     *
     * @return what the last cell holds
     */
    @Benchmark
    public double wholeWorkbook() {
        target.setCellValue(nextMass());
        recalculateAll();
        return formulas[formulas.length - 1].getNumericCellValue();
    }

    /**
     * Another mould mass, and those cells recalculated that hang on it.
     *
     * @return what the last cell holds
     */
    @Benchmark
    public double dependentCells() {
        target.setCellValue(nextMass());
        recalculateDependents();
        return formulas[formulas.length - 1].getNumericCellValue();
    }
}
