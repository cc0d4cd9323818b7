package lyewright.benchmarks;

import java.util.LongSummaryStatistics;
import java.util.stream.DoubleStream;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SheetDraws;
import lyewright.uncertainty.Interval;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;

/** The 95 % interval of a sheet's superfat, drawn anew each time for a new sheet. Making the sheet is part of it. */
public class BandBenchmark extends SheetBenchmark {

    /** Half of the digit shown. */
    private static final double SHOWN = 0.05;

    private static final int ENOUGH = 2_000_000;

    /** Of all mould masses one in so many is checked. */
    private static final int CHECKED = 16;

    private final ResolvedFormula coconut = OtherFormulas.coconut();

    /** Whether both ends are right to the digit shown, by many more draws. */
    @Setup
    public void check() {
        for (ResolvedFormula formula : new ResolvedFormula[] {resolved, coconut}) {
            for (int i = 0; i < masses.length; i += CHECKED) {
                check(TenItems.sheet(formula, masses[i]));
            }
        }
    }

    private static void check(MakingSheet sheet) {
        Interval settled = new SheetDraws(sheet).draw(ENOUGH).interval(0.95);
        if (Math.abs(sheet.band().lowPercent() - settled.low()) > SHOWN
                || Math.abs(sheet.band().highPercent() - settled.high()) > SHOWN) {
            throw new IllegalStateException("from " + sheet.band().lowPercent() + " to "
                    + sheet.band().highPercent() + " %, and by " + ENOUGH + " draws " + settled);
        }
    }

    /**
     * Of the formula that the sheet is measured on.
     *
     * @return the lower end
     */
    @Benchmark
    public double tenItems() {
        return TenItems.sheet(resolved, nextMass()).band().lowPercent();
    }

    /**
     * Of coconut oil alone at 2 %, which may be caustic.
     *
     * @return the lower end
     */
    @Benchmark
    public double coconut() {
        return TenItems.sheet(coconut, nextMass()).band().lowPercent();
    }

    /** How often it is drawn, over all mould masses. */
    static LongSummaryStatistics draws(ResolvedFormula formula) {
        return DoubleStream.of(TenItems.mouldMasses())
                .mapToLong(mass -> TenItems.sheet(formula, mass).band().draws())
                .summaryStatistics();
    }
}
