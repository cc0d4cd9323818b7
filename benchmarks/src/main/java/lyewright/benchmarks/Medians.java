package lyewright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;

/**
 * What the iterations of one benchmark come to.
 *
 * @param microseconds median by the clock
 * @param least of the quickest iteration
 * @param iterations how many there were
 * @param others medians of what else was measured, by its label
 */
record Medians(double microseconds, double least, int iterations, Map<String, Double> others) {

    static Medians of(RunResult run) {
        List<Double> wall = new ArrayList<>();
        Map<String, List<Double>> others = new TreeMap<>();
        for (BenchmarkResult fork : run.getBenchmarkResults()) {
            for (IterationResult iteration : fork.getIterationResults()) {
                wall.add(iteration.getPrimaryResult().getScore());
                iteration
                        .getSecondaryResults()
                        .forEach((label, result) -> others.computeIfAbsent(label, unseen -> new ArrayList<>())
                                .add(result.getScore()));
            }
        }
        Map<String, Double> medians = new TreeMap<>();
        others.forEach((label, values) -> medians.put(label, median(values)));
        return new Medians(median(wall), Collections.min(wall), wall.size(), medians);
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }

    /** Microseconds of processor time. */
    double processor() {
        return other(CpuTimeProfiler.LABEL);
    }

    /** Bytes allocated. */
    double bytes() {
        return other("gc.alloc.rate.norm");
    }

    /** Whatever else was measured; no number where it was not. Some profilers put a dot before their labels. */
    double other(String label) {
        return others.entrySet().stream()
                .filter(other -> other.getKey().endsWith(label))
                .mapToDouble(Map.Entry::getValue)
                .findFirst()
                .orElse(Double.NaN);
    }
}
