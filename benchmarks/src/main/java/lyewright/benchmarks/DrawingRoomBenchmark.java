package lyewright.benchmarks;

import lyewright.makingsheet.SheetDraws;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;

/** More and more draws of a sheet with twelve uncertain inputs: what they allocate is to stay the same. */
public class DrawingRoomBenchmark extends SheetBenchmark {

    static final String FEWEST = "100000";
    static final String MOST = "10000000";

    /** How many. */
    @Param({FEWEST, "1000000", MOST})
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
