package lyewright.benchmarks;

import lyewright.makingsheet.SheetDraws;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Warmup;

/** More and more draws of a sheet with twelve uncertain inputs: the room they take is to stay the same. */
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(
        value = 1,
        jvmArgs = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m"})
public class DrawingRoomBenchmark extends SheetBenchmark {

    static final int FEWEST = 100_000;
    static final int MOST = 10_000_000;

    /** How many. */
    @Param({"" + FEWEST, "1000000", "" + MOST})
    int draws;

    private final SheetDraws sheet = OtherFormulas.twelveInputs();

    /**
     * Draws.
     *
     * @return the mean
     */
    @Benchmark
    public double drawn() {
        return sheet.draw(draws).mean();
    }
}
