package lyewright.benchmarks;

import java.util.Collection;
import java.util.Locale;
import java.util.TreeMap;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks by JMH's own options, then shows each one's medians and holds them against the targets. */
public final class Main {

    private final TreeMap<String, Medians> all = new TreeMap<>();

    private Main() {}

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
            all.put(name(result.getParams()), Medians.of(result));
        }
        show();
    }

    /** Such as {@code SomeBenchmark.method}, and the parameters that it has. */
    private static String name(BenchmarkParams params) {
        String full = params.getBenchmark();
        StringBuilder name = new StringBuilder(full.substring(full.lastIndexOf('.', full.lastIndexOf('.') - 1) + 1));
        params.getParamsKeys()
                .forEach(key -> name.append(' ').append(key).append('=').append(params.getParam(key)));
        return name.toString();
    }

    private void show() {
        print(
                "%n%-46s %11s %11s %11s %10s %4s%n",
                "median of iterations", "us, wall", "least", "us, cpu", "bytes", "of");
        all.forEach((name, m) -> print(
                "%-46s %11.3f %11.3f %11.3f %10.0f %4d%n",
                name, m.microseconds(), m.least(), m.processor(), m.bytes(), m.iterations()));
        new Targets(all).show();
    }

    static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
