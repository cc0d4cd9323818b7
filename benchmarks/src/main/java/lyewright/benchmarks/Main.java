package lyewright.benchmarks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks by JMH's own options, then shows each one's medians and holds them against the targets. */
public final class Main {

    private static final double MOST_MICROSECONDS = 5;
    private static final double MOST_BYTES = 40 * 1024;
    private static final double LEAST_TIMES = 80;

    private static final String WHOLE_SHEET = "MakingSheetBenchmark.wholeSheet";
    private static final String WHOLE_WORKBOOK = "SpreadsheetBenchmark.wholeWorkbook";

    private final TreeMap<String, Medians> all = new TreeMap<>();

    private Main() {}

    private record Medians(double microseconds, double least, double processor, double bytes, int iterations) {}

    /**
     * Runs.
     *
     * @param arguments JMH's; {@code -h} shows them
     * @throws Exception what JMH throws
     */
    public static void main(String[] arguments) throws Exception {
        CommandLineOptions options = new CommandLineOptions(arguments);
        if (options.shouldHelp() || options.shouldList() || options.shouldListProfilers()) {
            org.openjdk.jmh.Main.main(arguments);
            return;
        }
        new Main().run(options);
    }

    private void run(CommandLineOptions options) throws RunnerException, CommandLineOptionException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .parent(options)
                        .addProfiler(GCProfiler.class)
                        .addProfiler(CpuTimeProfiler.class)
                        .shouldFailOnError(true)
                        .build())
                .run();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark();
            all.put(name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1), mediansOf(result));
        }
        show();
    }

    private static Medians mediansOf(RunResult run) {
        List<Double> wall = new ArrayList<>();
        List<Double> processor = new ArrayList<>();
        List<Double> bytes = new ArrayList<>();
        for (BenchmarkResult fork : run.getBenchmarkResults()) {
            for (IterationResult iteration : fork.getIterationResults()) {
                wall.add(iteration.getPrimaryResult().getScore());
                iteration.getSecondaryResults().forEach((label, result) -> {
                    keep(label, CpuTimeProfiler.LABEL, result, processor);
                    keep(label, "gc.alloc.rate.norm", result, bytes);
                });
            }
        }
        return new Medians(median(wall), Collections.min(wall), median(processor), median(bytes), wall.size());
    }

    private static void keep(String label, String wanted, Result<?> result, List<Double> values) {
        if (label.endsWith(wanted)) {
            values.add(result.getScore());
        }
    }

    private static double median(List<Double> values) {
        if (values.isEmpty()) {
            return Double.NaN;
        }
        List<Double> sorted = values.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }

    private void show() {
        print(
                "%n%-40s %11s %11s %11s %10s %4s%n",
                "median of iterations", "us, wall", "least", "us, cpu", "bytes", "of");
        all.forEach((name, m) -> print(
                "%-40s %11.3f %11.3f %11.3f %10.0f %4d%n",
                name, m.microseconds, m.least, m.processor, m.bytes, m.iterations));
        Medians sheet = all.get(WHOLE_SHEET);
        if (sheet != null) {
            print(
                    "%nwhole sheet: %.2f us, asked %.0f or less: %s%n",
                    sheet.microseconds, MOST_MICROSECONDS, metOrMissed(sheet.microseconds <= MOST_MICROSECONDS));
            print(
                    "whole sheet: %.1f KB, asked %.0f or less: %s%n",
                    sheet.bytes / 1024, MOST_BYTES / 1024, metOrMissed(sheet.bytes <= MOST_BYTES));
            showTimes(sheet);
        }
    }

    /** By medians and by the quickest iterations: on a machine that others use, one of the two may have been in luck. */
    private void showTimes(Medians sheet) {
        all.forEach((name, other) -> {
            if (!name.startsWith("MakingSheetBenchmark")) {
                double byMedian = other.microseconds / sheet.microseconds;
                double byLeast = other.least / sheet.least;
                print("%s takes %.3g times as long as the whole sheet, by the least %.3g", name, byMedian, byLeast);
                print(
                        name.equals(WHOLE_WORKBOOK) ? ", asked %.0f or more: %s%n" : "%n",
                        LEAST_TIMES,
                        metOrMissed(Math.min(byMedian, byLeast) >= LEAST_TIMES));
            }
        });
    }

    private static String metOrMissed(boolean met) {
        return met ? "met" : "MISSED";
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
