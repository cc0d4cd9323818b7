package lyewright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Processor time for each operation, garbage collector and compiler included. On a machine that others use too it says what
 * the wall clock cannot: how much work it was. Use it with one benchmark thread.
 */
public final class CpuTimeProfiler implements InternalProfiler {

    static final String LABEL = "cpu.time.norm";

    private static final double NANOSECONDS = 1000;

    private final OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private long before;

    @Override
    public String getDescription() {
        return "Processor time of the whole process for each operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        long spent = system.getProcessCpuTime() - before;
        long operations = result.getMetadata().getAllOps();
        return operations == 0
                ? List.of()
                : List.of(new ScalarResult(LABEL, spent / NANOSECONDS / operations, "us/op", AggregationPolicy.AVG));
    }
}
