package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.material.ReckonedValue.Basis;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The bundled oils against the published ranges of Codex Alimentarius, and their values from fatty acids. */
@Tag("validation")
class PublishedOilsTest {

    private static final double TOLERANCE_SV = 0.06; // mg KOH/g; the values beside are printed to 0.1

    /** mg KOH/g; the method rounds its molar masses to 56.1, 92.09 and 18, the engine does not. */
    private static final double TOLERANCE_CD_3A_94 = 0.1;

    private final Tables tables = Tables.bundled();

    static List<CSVRecord> codexSaponification() {
        return Outside.rows("codex_saponification.csv");
    }

    static List<CSVRecord> codexIodine() {
        return Outside.rows("codex_iodine.csv");
    }

    static List<CSVRecord> computed() {
        return Outside.rows("computed_sv.csv");
    }

    /** Codex CXS 210-1999 Table 2 and CXS 325R-2017; each row has its source. mg KOH/g. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("codexSaponification")
    void our_saponification_range_is_the_published_one_and_our_value_lies_inside(CSVRecord row) {
        Oil oil = tables.oil(row.get("oil")).orElseThrow();
        double low = Outside.number(row, "low");
        double high = Outside.number(row, "high");
        assertThat(oil.saponificationValue().low()).isEqualTo(low);
        assertThat(oil.saponificationValue().high()).isEqualTo(high);
        assertThat(oil.reckoned().milligramsKohPerGram()).isBetween(low, high).isLessThanOrEqualTo((low + high) / 2);
        if (oil.reckoned().basis() == Basis.MIDDLE) {
            assertThat(oil.reckoned().milligramsKohPerGram()).isEqualTo((low + high) / 2);
        }
    }

    /** The same documents, g iodine/100 g. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("codexIodine")
    void our_iodine_range_is_the_published_one(CSVRecord row) {
        Oil oil = tables.oil(row.get("oil")).orElseThrow();
        assertThat(oil.iodineValue().orElseThrow().low()).isEqualTo(Outside.number(row, "low"));
        assertThat(oil.iodineValue().orElseThrow().high()).isEqualTo(Outside.number(row, "high"));
    }

    /** Whatever our table says is of Codex is checked against Codex: nothing claims that source unchecked. */
    @Test
    void every_oil_that_names_codex_as_its_source_is_checked_against_it() {
        Set<String> checked =
                codexSaponification().stream().map(row -> row.get("oil")).collect(Collectors.toSet());
        Set<String> claimed = tables.oils().stream()
                .filter(oil -> oil.saponificationValue().source().contains("CXS"))
                .map(Oil::key)
                .collect(Collectors.toSet());
        assertThat(claimed).containsExactlyInAnyOrderElementsOf(checked);
        Set<String> checkedIodine =
                codexIodine().stream().map(row -> row.get("oil")).collect(Collectors.toSet());
        Set<String> claimedIodine = tables.oils().stream()
                .filter(oil -> oil.iodineValue()
                        .filter(iv -> iv.source().contains("CXS"))
                        .isPresent())
                .map(Oil::key)
                .collect(Collectors.toSet());
        assertThat(claimedIodine).containsExactlyInAnyOrderElementsOf(checkedIodine);
    }

    /** Values from the middles of the published fatty acids, worked out apart from this project by the same two methods;
     * free acids by their acid value. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("computed")
    void saponification_values_from_fatty_acids_by_both_methods(CSVRecord row) {
        Oil oil = tables.oil(row.get("oil")).orElseThrow();
        FattyAcidProfile acids = oil.acids();
        boolean free = oil.kind() == OilKind.FATTY_ACID;
        double exact = free ? 56_105 / acids.numberAverageMolarMass() : acids.saponificationValue();
        double byWeight = free ? 56_105 / acids.weightAverageMolarMass() : acids.saponificationValueCd3a94();
        assertThat(exact).isCloseTo(Outside.number(row, "sap_calc_exact"), within(TOLERANCE_SV));
        assertThat(byWeight).isCloseTo(Outside.number(row, "sap_calc_cd3a94"), within(TOLERANCE_CD_3A_94));
    }

    @Test
    void every_oil_with_fatty_acids_was_worked_out_apart() {
        Set<String> there = computed().stream().map(row -> row.get("oil")).collect(Collectors.toSet());
        Set<String> ours = tables.oils().stream()
                .filter(oil -> oil.acids().known())
                .map(Oil::key)
                .collect(Collectors.toSet());
        assertThat(ours).containsExactlyInAnyOrderElementsOf(there);
    }
}
