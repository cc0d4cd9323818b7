package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;

import lyewright.fill.Fill;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a band to somebody who never heard of a distribution. */
class SuperfatBandWordsTest {

    private static final Fill KILOGRAM = Fill.oilMass(1000);

    private static String words(AFormula formula) {
        return formula.sheet(KILOGRAM, Sheets.LABORATORY).band().sentence();
    }

    private static AFormula coconut(String superfat) {
        return AFormula.ofOils("coconut", "100 %").superfat(superfat);
    }

    private static AFormula house() {
        return AFormula.ofOils("house-oil", "1000 g")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .water("300 g");
    }

    @Test
    void out_of_the_question_is_said_with_what_is_left_at_the_worst() {
        // 1 - 0.95 × 256.5 ÷ 248 = 1.74 % at the worst, 1.91 and 7.90 % at the ends
        assertThat(words(coconut("5 %")))
                .isEqualTo("Safe as to alkali. The superfat is reckoned as 5.0 %; for all that is known of these"
                        + " oils and this alkali it lies between 1.9 and 7.9 %, 19 times in 20. Even with every"
                        + " figure at the bad end of its range 1.7 % of the oils is left over and no alkali.");
    }

    @Test
    void hardly_ever_is_said_as_fewer_than_one_of_a_hundred() {
        assertThat(words(coconut("3.28 %")))
                .startsWith("Safe as to alkali. ")
                .endsWith(" The chance that alkali is left over is under 1 in 100.");
    }

    @Test
    void thin_is_said_with_its_chance_and_with_what_under_zero_means() {
        assertThat(words(coconut("3 %")))
                .startsWith("Thin. The superfat is reckoned as 3.0 %; for all that is known of these oils and this"
                        + " alkali it lies between -0.2 and 6.0 %, 19 times in 20. Under 0 alkali is left over"
                        + " and the bars stay caustic: about 1 chance in 2")
                .endsWith(", before a certificate says where in its published range your coconut oil lies.");
    }

    @Test
    void may_be_caustic_is_said_before_a_certificate_where_one_would_settle_it() {
        assertThat(words(coconut("2 %")))
                .startsWith("May be caustic. ")
                .endsWith(" Under 0 alkali is left over and the bars stay caustic: about 1 chance in 5, before a"
                        + " certificate says where in its published range your coconut oil lies.");
    }

    @Test
    void no_certificate_is_spoken_of_where_none_would_settle_it() {
        assertThat(words(house().naoh("199 g").puritiesAssumed()))
                .startsWith("Safe as to alkali. The superfat is reckoned as 2.5 %;")
                .doesNotContain("certificate");
        assertThat(words(house().naohPure("199.98 g").puritiesAssumed()))
                .startsWith("May be caustic. The superfat is reckoned as 0.0 %;")
                .contains("the bars stay caustic: about 5 chances in 10.");
    }

    /** Zero that the arithmetic of doubles puts a hair lower is no superfat under 0. */
    @Test
    void a_superfat_of_zero_is_not_called_caustic_by_its_figures() {
        MakingSheet sheet = AFormula.ofOils("olive-virgin", "100 %")
                .superfat("0 %")
                .puritiesAssumed()
                .sheet(KILOGRAM, Equipment.USUAL.withVessels("lye jug:60g").orThrow());
        SuperfatBand hair = new SuperfatBand(sheet.batch(), sheet.vessels(), -1, -1e-12);

        assertThat(hair.freeAlkaliProbability()).isGreaterThanOrEqualTo(0.5);
        assertThat(hair.sentence()).startsWith("More likely caustic than not. The superfat is reckoned as 0.0 %");
    }

    @Test
    void a_superfat_that_is_as_good_as_known_has_no_between() {
        assertThat(words(house().naohPure("190 g")))
                .startsWith("Safe as to alkali. The superfat is 5.0 %. Even with every figure");
        assertThat(words(house().naohPure("205 g")))
                .startsWith("Caustic by these very figures. The superfat is -2.5 %. Under 0 alkali is left over and the"
                        + " bars stay caustic: practically certain.");
    }

    @Test
    void a_makers_own_name_is_kept_and_a_common_one_made_small() {
        assertThat(words(AFormula.ofOils("shea-butter", "100 %").superfat("5 %")))
                .contains("your shea butter (unrefined) lies");
    }

    @ParameterizedTest
    @CsvSource({
        "0.0005, less than 1 chance in 1000",
        "0.01, about 1 chance in 100",
        "0.017, about 1 chance in 59",
        "0.1, about 1 chance in 10",
        "0.198, about 1 chance in 5",
        "0.34, about 1 chance in 3",
        "0.36, about 4 chances in 10",
        "0.5, about 5 chances in 10",
        "0.949, about 9 chances in 10",
        "0.96, nearly certain",
        "0.994, nearly certain",
        "0.995, practically certain",
        "1, practically certain"
    })
    void a_chance_is_said_in_chances(double chance, String words) {
        assertThat(SuperfatWords.chances(chance)).isEqualTo(words);
    }
}
