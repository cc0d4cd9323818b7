package lyewright.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.material.MeasuredFat;
import lyewright.material.Outside;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Indices of oxidation. The acids of four fats are measured (PMC4384276, Table 2); the indices beside them were worked out
 * apart from this engine, with formulas that are memory, so they hold the arithmetic and not the formulas.
 */
class OxidationIndicesTest {

    private static final double TOLERANCE_INDEX = 0.00006; // percent; the table prints four decimals

    static List<CSVRecord> rows() {
        return Outside.rows("oxidation_indices.csv");
    }

    private static OxidationIndices of(CSVRecord row) {
        return new OxidationIndices(
                Outside.number(row, "oleic"),
                Outside.number(row, "linoleic"),
                Outside.number(row, "linolenic"),
                0,
                0,
                0);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void indices_of_measured_and_of_invented_fats(CSVRecord row) {
        OxidationIndices indices = of(row);
        String fat = row.get("fat");
        assertThat(indices.oxidisability()).as(fat).isCloseTo(value(row, "oxidisability"), within(TOLERANCE_INDEX));
        assertThat(indices.cox()).as(fat).isCloseTo(value(row, "cox"), within(TOLERANCE_INDEX));
        assertThat(indices.peroxidisability()).as(fat).isCloseTo(value(row, "pi"), within(TOLERANCE_INDEX));
        assertThat(indices.allylic()).as(fat).isCloseTo(value(row, "ape"), within(TOLERANCE_INDEX));
        assertThat(indices.bisAllylic()).as(fat).isCloseTo(value(row, "bape"), within(TOLERANCE_INDEX));
    }

    private static double value(CSVRecord row, String column) {
        return Outside.number(row, column);
    }

    /** PI weighs an acid of four double bonds 4, of five 6, of six 8 (formula from memory). */
    @ParameterizedTest(name = "{0}, {1}, {2} % of four, five and six: {3}")
    @CsvSource({"10, 0, 0, 40", "0, 10, 0, 60", "0, 0, 10, 80"})
    void only_the_peroxidisability_counts_acids_of_more_than_three_double_bonds(
            double four, double five, double six, double pi) {
        OxidationIndices indices = new OxidationIndices(0, 0, 0, four, five, six);
        assertThat(indices.peroxidisability()).isCloseTo(pi, within(1e-9));
        assertThat(indices.oxidisability() + indices.cox() + indices.allylic() + indices.bisAllylic())
                .isZero();
    }

    @Test
    void the_bundled_measured_fats_are_those_of_the_paper() {
        for (MeasuredFat fat : MeasuredFat.bundled()) {
            CSVRecord row = rows().stream()
                    .filter(r -> r.get("fat").equals(fat.name()))
                    .findFirst()
                    .orElseThrow();
            assertThat(OxidationIndices.of(fat)).as(fat.name()).isEqualTo(of(row));
            assertThat(fat.source()).contains("PMC4384276 Table 2");
        }
        assertThat(MeasuredFat.bundled()).hasSize(4);
    }

    /** PMC4384276, Table 2: peroxide value after slow oxidation, meq/kg. Rapeseed took up more than maize. */
    @Tag("validation")
    @Test
    void an_index_does_not_put_measured_fats_in_the_order_of_their_peroxide() {
        List<Double> peroxide =
                MeasuredFat.bundled().stream().map(MeasuredFat::peroxideValue).toList();
        assertThat(peroxide).containsExactly(151.0, 239.0, 57.0, 29.0);
        List<Double> indices = MeasuredFat.bundled().stream()
                .map(fat -> OxidationIndices.of(fat).oxidisability())
                .toList();
        assertThat(indices).isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }
}
