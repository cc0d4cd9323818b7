package lyewright.benchmarks;

import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.ResolvedFormula;
import lyewright.uncertainty.MonteCarlo;

/** Holds what was measured against the targets in docs/performance.md. What was not measured is not spoken of. */
final class Targets {

    private static final double MOST_MICROSECONDS = 5;
    private static final double MOST_BYTES = 40 * 1024;
    private static final double LEAST_TIMES = 80;
    private static final double MOST_BAND_MICROSECONDS = 2000;
    private static final double MOST_TIMES_BARE = 2;

    /** A block of draws may leave behind its source of random numbers, and nothing that it counted. */
    private static final double MOST_BYTES_OF_BLOCK = 100;

    private static final String WHOLE_WORKBOOK = "SpreadsheetBenchmark.wholeWorkbook";

    private final Map<String, Medians> all;

    Targets(Map<String, Medians> all) {
        this.all = all;
    }

    void show() {
        of("MakingSheetBenchmark.wholeSheet").ifPresent(this::showSheet);
        showBand("tenItems", TenItems.resolved());
        showBand("coconut", OtherFormulas.coconut());
        showDrawing("on one thread", "onOneThread");
        showDrawing("on all cores", "onAllCores");
        showRoom();
    }

    private Optional<Medians> of(String name) {
        return Optional.ofNullable(all.get(name));
    }

    private void showSheet(Medians sheet) {
        Main.print(
                "%nwhole sheet: %.2f us, asked %.0f or less: %s%n",
                sheet.microseconds(), MOST_MICROSECONDS, metOrMissed(sheet.microseconds() <= MOST_MICROSECONDS));
        Main.print(
                "whole sheet: %.1f KB, asked %.0f or less: %s%n",
                sheet.bytes() / 1024, MOST_BYTES / 1024, metOrMissed(sheet.bytes() <= MOST_BYTES));
        all.forEach((name, other) -> {
            if (name.startsWith("Spreadsheet") || name.startsWith("StraightLine")) {
                showTimes(sheet, name, other);
            }
        });
    }

    /** By medians and by the quickest iterations: on a machine that others use, one of the two may have been in luck. */
    private static void showTimes(Medians sheet, String name, Medians other) {
        double byMedian = other.microseconds() / sheet.microseconds();
        double byLeast = other.least() / sheet.least();
        Main.print("%s takes %.3g times as long as the whole sheet, by the least %.3g", name, byMedian, byLeast);
        Main.print(
                name.equals(WHOLE_WORKBOOK) ? ", asked %.0f or more: %s%n" : "%n",
                LEAST_TIMES,
                metOrMissed(Math.min(byMedian, byLeast) >= LEAST_TIMES));
    }

    private void showBand(String name, ResolvedFormula formula) {
        of("BandBenchmark." + name).ifPresent(band -> {
            LongSummaryStatistics draws = BandBenchmark.draws(formula);
            Main.print(
                    "%ninterval of %s: %.2f ms, least %.2f, by processor time %.2f, asked %.0f or less: %s;"
                            + " %d to %d draws, %.0f on average%n",
                    name,
                    band.microseconds() / 1000,
                    band.least() / 1000,
                    band.processor() / 1000,
                    MOST_BAND_MICROSECONDS / 1000,
                    metOrMissed(band.microseconds() <= MOST_BAND_MICROSECONDS),
                    draws.getMin(),
                    draws.getMax(),
                    draws.getAverage());
        });
    }

    private void showDrawing(String where, String name) {
        of("DrawingBenchmark." + name).ifPresent(turns -> {
            double times = turns.other("timesBare");
            Main.print(
                    "%n%s drawing takes %.2f times as long as the bare loop, asked %.0f or less: %s%n",
                    where, times, MOST_TIMES_BARE, metOrMissed(times <= MOST_TIMES_BARE));
        });
    }

    private void showRoom() {
        String name = "DrawingRoomBenchmark.drawn draws=";
        of(name + DrawingRoomBenchmark.FEWEST)
                .ifPresent(few -> of(name + DrawingRoomBenchmark.MOST).ifPresent(many -> showRoom(few, many)));
    }

    private static void showRoom(Medians few, Medians many) {
        int blocks = (DrawingRoomBenchmark.MOST - DrawingRoomBenchmark.FEWEST) / MonteCarlo.BLOCK;
        double ofBlock = (many.bytes() - few.bytes()) / blocks;
        Main.print(
                "%n%d draws allocate %.0f KB, %d draws %.0f KB, which is %.0f bytes a block, asked %.0f or less: %s%n",
                DrawingRoomBenchmark.FEWEST,
                few.bytes() / 1024,
                DrawingRoomBenchmark.MOST,
                many.bytes() / 1024,
                ofBlock,
                MOST_BYTES_OF_BLOCK,
                metOrMissed(ofBlock <= MOST_BYTES_OF_BLOCK));
    }

    private static String metOrMissed(boolean met) {
        return met ? "met" : "MISSED";
    }
}
