package lyewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import lyewright.material.Outside;
import lyewright.uncertainty.Distribution.Normal;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is read off a fitted line has an uncertainty of its own, in which intercept and slope hang together. */
@Tag("validation")
class StraightLineTest {

    /** Temperature in °C and correction in °C of the thermometer of JCGM 100:2008, Table H.6; from memory. */
    private static final double[] TEMPERATURE = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };

    private static final double[] CORRECTION = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    private static StraightLine thermometer() {
        return StraightLine.through(
                DoubleStream.of(TEMPERATURE).map(t -> t - 20).toArray(), CORRECTION);
    }

    private static List<Input> inputsOf(StraightLine line) {
        return List.of(
                new Input("y1", new Normal(line.intercept(), line.interceptDeviation())),
                new Input("y2", new Normal(line.slope(), line.slopeDeviation())));
    }

    /** NIST StRD, Norris, certified values (data and values by way of third parties' tests). */
    @Test
    void the_fit_agrees_with_a_certified_one() {
        List<CSVRecord> rows = Outside.rows("strd_norris.csv");
        StraightLine line = StraightLine.through(
                rows.stream().mapToDouble(r -> Outside.number(r, "x")).toArray(),
                rows.stream().mapToDouble(r -> Outside.number(r, "y")).toArray());

        assertThat(rows).hasSize(36);
        assertThat(line.intercept()).isEqualTo(-0.262323073774029, within(1e-12));
        assertThat(line.slope()).isEqualTo(1.00211681802045, within(1e-14));
    }

    /** JCGM 100:2008, H.3.3; to the digits printed there, from memory, and those worked out again. */
    @Test
    void the_thermometers_line_is_the_published_one() {
        StraightLine line = thermometer();

        assertThat(line.intercept()).isEqualTo(-0.1712, within(0.00005)).isEqualTo(-0.171204, within(5e-7));
        assertThat(line.interceptDeviation()).isEqualTo(0.0029, within(0.00005)).isEqualTo(0.002878, within(5e-7));
        assertThat(line.slope()).isEqualTo(0.00218, within(0.000005)).isEqualTo(0.0021827, within(5e-8));
        assertThat(line.slopeDeviation()).isEqualTo(0.00067, within(0.000005)).isEqualTo(0.0006679, within(5e-8));
        assertThat(line.correlation()).isEqualTo(-0.930, within(0.0005)).isEqualTo(-0.93043, within(5e-6));
        assertThat(line.residualDeviation()).isEqualTo(0.0035, within(0.00005)).isEqualTo(0.0034976, within(5e-8));
    }

    /** JCGM 100:2008, H.3.4: b(30 °C) = -0.1494 °C, u 0.0041 °C. */
    @Test
    void a_correction_read_off_the_line_needs_the_correlation_of_its_two_figures() {
        StraightLine line = thermometer();
        Model at30 = y -> y[0] + y[1] * (30 - 20);
        double[][] correlations = {{1, line.correlation()}, {line.correlation(), 1}};

        LinearPropagation correlated = LinearPropagation.of(inputsOf(line), at30, correlations);
        LinearPropagation uncorrelated = LinearPropagation.of(inputsOf(line), at30);

        assertThat(correlated.value()).isEqualTo(-0.1494, within(0.00005)).isEqualTo(-0.149377, within(5e-7));
        assertThat(correlated.standardUncertainty())
                .isEqualTo(0.0041, within(0.00005))
                .isEqualTo(0.004139, within(5e-7));
        assertThat(uncorrelated.value()).isEqualTo(correlated.value());
        assertThat(uncorrelated.standardUncertainty())
                .as("without it the answer is wrong by three quarters: √(0.002878² + 0.006679²)")
                .isEqualTo(0.007273, within(2e-6));
    }

    /** A property of least squares, not of the guide: what is read off in the middle of the points is surest, s ÷ √n. */
    @Test
    void a_correction_in_the_middle_of_the_points_is_surest() {
        StraightLine line = thermometer();
        double middle = DoubleStream.of(TEMPERATURE).average().orElseThrow();
        double[][] correlations = {{1, line.correlation()}, {line.correlation(), 1}};

        LinearPropagation there = LinearPropagation.of(inputsOf(line), y -> y[0] + y[1] * (middle - 20), correlations);

        assertThat(there.standardUncertainty())
                .isEqualTo(line.residualDeviation() / Math.sqrt(TEMPERATURE.length), within(1e-9));
    }
}
