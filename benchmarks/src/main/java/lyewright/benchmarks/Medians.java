package lyewright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;

/**
 * What the iterations of one benchmark come to.
 *
 * @param microseconds median by the clock
 * @param least of the quickest iteration
 * @param processor median of processor time, microseconds
 * @param bytes median of bytes allocated
 * @param iterations how many there were
 */
record Medians(double microseconds, double least, double processor, double bytes, int iterations) {

    static Medians of(RunResult run) {
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
}
