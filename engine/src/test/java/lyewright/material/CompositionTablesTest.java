package lyewright.material;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of acids and their salts, and published grades of soap. */
class CompositionTablesTest {

    private final Tables tables = Tables.bundled();

    /** IS 2888:2004 (read on a secondary page, grade 2 from memory) and IS 13498:1997 (secondary page). */
    @ParameterizedTest(name = "{0}, {1}: {2} %")
    @CsvSource({
        "IS 2888:2004, toilet soap grade 1, 76",
        "IS 2888:2004, toilet soap grade 2, 70",
        "IS 2888:2004, toilet soap grade 3, 60",
        "IS 13498:1997, bathing bar, 40"
    })
    void least_fatty_matter_of_published_grades(String standard, String product, String percent) {
        assertThat(tables.soapGrades())
                .filteredOn(g -> g.parameter().equals(SoapGrade.LEAST_FATTY_MATTER)
                        && g.standard().equals(standard)
                        && g.product().equals(product))
                .singleElement()
                .satisfies(g -> assertThat(g.limit()).isEqualTo(percent));
    }

    @Test
    void every_grade_says_how_it_was_read_and_how_sure_that_is() {
        assertThat(tables.soapGrades()).hasSizeGreaterThan(10).allSatisfy(grade -> {
            assertThat(grade.status()).matches(".*(memory|opened).*");
            assertThat(grade.confidence()).isIn("high", "medium", "low");
            assertThat(grade.unit()).isNotEmpty();
        });
        assertThat(tables.soapGrades()).anyMatch(g -> g.parameter().equals(SoapGrade.MOST_CHLORIDE));
    }

    @Test
    void every_acid_of_the_tables_has_the_names_of_its_salts() {
        for (Additive additive : tables.additives()) {
            String acid = additive.makeup().acidName();
            assertThat(acid.isEmpty() || tables.acidSalt(acid).isPresent())
                    .as(additive.key() + ": " + acid)
                    .isTrue();
        }
        assertThat(tables.acidNames())
                .allSatisfy(name -> assertThat(tables.acidSalt(name)).as(name).isPresent());
        assertThat(tables.acidSalt("")).isEmpty();
        assertThat(tables.acidSalt("moonic acid")).isEmpty();
    }

    @Test
    void the_longest_name_that_fits_is_meant() {
        assertThat(tables.acidSalt("ricinoleic acid")).map(AcidSalt::sodiumSalt).contains("Sodium ricinoleate");
        assertThat(tables.acidSalt("oleic acid")).map(AcidSalt::sodiumSalt).contains("Sodium oleate");
        assertThat(tables.acidSalt("citric acid monohydrate"))
                .map(AcidSalt::potassiumInci)
                .contains("Potassium Citrate");
    }

    @Test
    void what_an_acid_is_weighed_as_is_an_acid_of_the_tables() {
        List<String> sources = CsvTable.rows("acid_salts.csv").stream()
                .map(row -> row.text("source"))
                .toList();
        assertThat(sources).isNotEmpty().allMatch(source -> source.contains("memory") || source.contains("S-COS"));
        Set<String> unweighed = Set.of("aluminium", "boric", "resin");
        for (CsvTable.Row row : CsvTable.rows("acid_salts.csv")) {
            assertThat(tables.acidCalled(row.text("weighed_as")).isPresent())
                    .as(row.text("acid"))
                    .isEqualTo(!unweighed.contains(row.text("acid")));
        }
    }
}
