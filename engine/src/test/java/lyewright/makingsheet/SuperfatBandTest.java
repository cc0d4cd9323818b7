package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import lyewright.fill.Fill;
import lyewright.formula.AcidRule;
import lyewright.makingsheet.SuperfatBand.Contribution;
import lyewright.makingsheet.SuperfatBand.Gain;
import lyewright.makingsheet.SuperfatBand.Verdict;
import lyewright.material.Alkali;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SuperfatBandTest {

    /** Points of superfat: what the ends of an interval may still move by. */
    private static final double SETTLED = 0.03;

    private static final Fill KILOGRAM = Fill.oilMass(1000);

    private static final String COCONUT = "saponification value of coconut oil";
    private static final String SODA = "purity of sodium hydroxide";

    private static SuperfatBand band(AFormula formula) {
        return formula.sheet(KILOGRAM, Sheets.LABORATORY).band();
    }

    private static AFormula coconut(String superfat) {
        return AFormula.ofOils("coconut", "100 %").superfat(superfat);
    }

    private static AFormula house(String superfat) {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat(superfat);
    }

    private static double width(SuperfatBand band) {
        return band.highPercent() - band.lowPercent();
    }

    private static double share(SuperfatBand band, String input) {
        return band.contributions().stream()
                .filter(c -> c.input().equals(input))
                .mapToDouble(Contribution::percentOfVariance)
                .sum();
    }

    /**
     * One oil, known but for its saponification value: superfat = 100 × (1 − a ÷ SV) with a = 0.98 × 256.5, SV anywhere from
     * 248 to 265 (Codex CXS 210-1999, Table 2). Ends at 2.5 and 97.5 % of that range, chance of SV under a: by hand.
     */
    @Test
    @Tag("validation")
    void coconut_alone_agrees_with_the_closed_form() {
        Equipment fine = Equipment.parseBalances("laboratory:2kg:0.001g").orThrow();
        SuperfatBand band = coconut("2 %").sheet(KILOGRAM, fine).band();

        assertThat(band.lowPercent()).isCloseTo(100 * (1 - 0.98 * 256.5 / 248.425), within(SETTLED));
        assertThat(band.lowPercent()).isEqualTo(-1.19, within(SETTLED));
        assertThat(band.highPercent()).isCloseTo(100 * (1 - 0.98 * 256.5 / 264.575), within(SETTLED));
        assertThat(band.highPercent()).isEqualTo(4.99, within(SETTLED));
        assertThat(band.worstPercent()).isCloseTo(-1.36, within(0.005));
        assertThat(band.freeAlkaliProbability())
                .isCloseTo((0.98 * 256.5 - 248) / 17, within(0.005))
                .isCloseTo(0.198, within(0.005));
        // the straight line through the middle, as far as a normal distribution would reach, is no answer
        double u = 98 * 17 / Math.sqrt(12) / 256.5;
        assertThat(2 - 1.96 * u).isEqualTo(-1.67, within(0.01));
        assertThat(2 + 1.96 * u).isEqualTo(5.67, within(0.01));
        assertThat(band.lowPercent()).isGreaterThan(-1.67 + 0.3);
        assertThat(band.highPercent()).isLessThan(5.67 - 0.3);
    }

    /** The same closed form over the superfats that makers ask for; the ends scale with what the alkali leaves. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 5, 8, 20})
    void coconut_at_any_superfat_agrees_with_the_closed_form(int superfat) {
        SuperfatBand band = band(coconut(superfat + " %"));
        double alkali = (1 - superfat / 100.0) * 256.5;

        assertThat(band.lowPercent()).isCloseTo(100 * (1 - alkali / 248.425), within(SETTLED));
        assertThat(band.highPercent()).isCloseTo(100 * (1 - alkali / 264.575), within(SETTLED));
        assertThat(band.freeAlkaliProbability())
                .isCloseTo(Math.max(0, Math.min(1, (alkali - 248) / 17)), within(0.006));
        assertThat(band.sheetPercent()).isEqualTo(superfat, within(0.01));
    }

    /** Alkali of assumed purity alone: 100 × (1 − 0.98 × p ÷ 98) with p from 97 to 99 %. */
    @Test
    void soda_of_assumed_purity_alone_agrees_with_the_closed_form() {
        SuperfatBand band = band(house("2 %").puritiesAssumed());

        assertThat(band.lowPercent()).isCloseTo(100 * (1 - 0.98 * 98.95 / 98), within(SETTLED));
        assertThat(band.highPercent()).isCloseTo(100 * (1 - 0.98 * 97.05 / 98), within(SETTLED));
        assertThat(band.worstPercent()).isCloseTo(100 * (1 - 0.98 * 99 / 98), within(0.02));
        assertThat(band.freeAlkaliProbability()).isZero();
    }

    @Test
    void potash_is_less_sure_than_soda() {
        SuperfatBand soda = band(house("5 %").puritiesAssumed());
        SuperfatBand potash = band(house("5 %").potassium().puritiesAssumed());

        // 88 to 92 of 90 are 4.4 %, 97 to 99 of 98 are 2.04 %
        assertThat(width(potash)).isEqualTo(0.95 * 95 * 4 / 90, within(0.06));
        assertThat(width(soda)).isEqualTo(0.95 * 95 * 2 / 98, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({"beeswax, 20.5", "jojoba, 0", "lanolin, 0"})
    void a_wax_widens_the_band_upward_and_not_down(String wax, double surely) {
        SuperfatBand without = band(AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %"));
        SuperfatBand with = band(AFormula.ofOils("house-oil", "92 %", wax, "8 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %"));

        assertThat(width(without)).isLessThan(0.03);
        // 8 % of a wax, of which 80 to 100 mg KOH/g may react beside 92 % of 280.5: up to 2.5 points more
        assertThat(with.highPercent() - with.sheetPercent()).isGreaterThan(1.9);
        assertThat(with.sheetPercent() - with.lowPercent()).isLessThan(surely > 0 ? 0.1 : 0.03);
        assertThat(with.contributions().get(0).input()).startsWith("how much reacts of " + wax);
    }

    @Test
    void more_room_for_a_wax_to_react_raises_the_high_end_and_leaves_the_low_one() {
        SuperfatBand some = waxOf("30");
        SuperfatBand more = waxOf("60");
        SuperfatBand most = waxOf("120");

        assertThat(more.highPercent()).isGreaterThan(some.highPercent() + 0.5);
        assertThat(most.highPercent()).isGreaterThan(more.highPercent() + 1);
        // which counts on none of it
        assertThat(more.lowPercent()).isEqualTo(some.lowPercent(), within(1e-9));
        assertThat(most.lowPercent()).isEqualTo(some.lowPercent(), within(1e-9));
        assertThat(most.worstPercent()).isEqualTo(some.worstPercent(), within(1e-9));
        assertThat(most.sheetPercent()).isEqualTo(some.sheetPercent(), within(1e-9));
    }

    private static SuperfatBand waxOf(String saponificationValue) {
        return band(AFormula.ofOils("house-oil", "92 %", "house-wax", "8 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .own(HouseMaterials.wax("house-wax", saponificationValue))
                .superfat("5 %"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"wheat-germ", "lard", "hazelnut", "illipe-butter"})
    void an_oil_reckoned_from_its_fatty_acids_lies_low_in_its_band(String oil) {
        SuperfatBand band = band(AFormula.ofOils(oil, "100 %").superfat("5 %"));

        double below = band.sheetPercent() - band.lowPercent();
        double above = band.highPercent() - band.sheetPercent();
        assertThat(above).as("above %s against below %s", above, below).isGreaterThan(1.2 * below);
        assertThat(band.sheetPercent()).isLessThan((band.lowPercent() + band.highPercent()) / 2);
    }

    @Test
    void an_oil_reckoned_from_its_middle_lies_in_the_middle_of_its_band() {
        SuperfatBand band = band(coconut("5 %"));

        assertThat(band.highPercent() - band.sheetPercent())
                .isEqualTo(band.sheetPercent() - band.lowPercent(), within(0.25));
    }

    @Test
    void bands_nest_as_a_certificate_narrows() {
        SuperfatBand wider = band(coconut("5 %"));
        for (String exactly : new String[] {"4", "2", "1", "0.5"}) {
            SuperfatBand here = band(coconut("5 %").own(HouseMaterials.certificate("coconut", "256.5 ± " + exactly)));

            assertThat(here.lowPercent()).as("± %s", exactly).isGreaterThan(wider.lowPercent());
            assertThat(here.highPercent()).as("± %s", exactly).isLessThan(wider.highPercent());
            assertThat(here.worstPercent()).as("± %s", exactly).isGreaterThan(wider.worstPercent());
            wider = here;
        }
    }

    @Test
    void an_oil_with_a_certificate_leads_no_longer() {
        AFormula formula =
                AFormula.ofOils("coconut", "60 %", "olive-virgin", "40 %").superfat("5 %");
        SuperfatBand before = band(formula);
        SuperfatBand after = band(formula.own(HouseMaterials.certificate("coconut", "256.5 ± 1")));

        assertThat(before.contributions().get(0).input()).isEqualTo(COCONUT);
        assertThat(after.contributions().get(0).input()).isEqualTo("saponification value of olive oil (virgin)");
        assertThat(share(after, COCONUT)).isPositive().isLessThan(10);
        assertThat(width(after)).isLessThan(0.6 * width(before));
    }

    @Test
    void an_oil_known_exactly_is_no_longer_among_what_it_hangs_on() {
        SuperfatBand band = band(coconut("5 %").own(HouseMaterials.certificate("coconut", "256.5")));

        assertThat(band.contributions()).extracting(Contribution::input).doesNotContain(COCONUT);
    }

    @Test
    void a_purity_given_exactly_takes_its_share_away() {
        SuperfatBand assumed = band(coconut("5 %").puritiesAssumed());
        SuperfatBand given = band(coconut("5 %").purities("naoh=98"));

        assertThat(share(assumed, SODA)).isBetween(5.0, 15.0);
        assertThat(given.contributions()).extracting(Contribution::input).doesNotContain(SODA);
        assertThat(width(given)).isLessThan(width(assumed));
    }

    @Test
    void a_purity_given_with_plus_or_minus_keeps_a_share() {
        SuperfatBand loose = band(coconut("5 %").purities("naoh=98±1"));
        SuperfatBand close = band(coconut("5 %").purities("naoh=98±0.2"));

        assertThat(share(loose, SODA)).isGreaterThan(5);
        assertThat(share(close, SODA)).isPositive().isLessThan(1);
        assertThat(width(close)).isLessThan(width(loose));
        assertThat(loose.worstPercent()).isLessThan(close.worstPercent());
    }

    @Test
    void contributions_come_greatest_first_and_add_up_to_a_hundred() {
        List<Contribution> contributions = AFormula.ofOils(
                        "olive-virgin", "60 %", "coconut", "25 %", "castor", "10 %", "beeswax", "5 %")
                .superfat("5 %")
                .puritiesAssumed()
                .add("citric-acid-anhydrous", "10 g per kg oils", "lye")
                .sheet(KILOGRAM)
                .band()
                .contributions();

        assertThat(contributions)
                .hasSizeGreaterThanOrEqualTo(9)
                .isSortedAccordingTo(Comparator.comparingDouble(Contribution::percentOfVariance)
                        .reversed());
        assertThat(contributions.stream()
                        .mapToDouble(Contribution::percentOfVariance)
                        .sum())
                .isEqualTo(100, within(1e-9));
    }

    @Test
    void no_alkali_can_be_left_over_exactly_where_the_worst_leaves_none() {
        // the worst of coconut alone is 0 at 1 - 248 ÷ 256.5 = 3.314 %, a little more for the balances
        SuperfatBand under = band(coconut("3.25 %"));
        SuperfatBand over = band(coconut("3.4 %"));

        assertThat(under.worstPercent()).isNegative();
        assertThat(under.freeAlkaliProbability()).isPositive();
        assertThat(under.surelyWithoutAlkali()).isFalse();
        assertThat(over.worstPercent()).isNotNegative();
        assertThat(over.freeAlkaliProbability()).isZero();
        assertThat(over.surelyWithoutAlkali()).isTrue();
    }

    @Test
    void a_certificate_never_makes_it_quite_out_of_the_question_within_four_deviations() {
        // ± 1 of 256.5 is 0.4 points; 0.5 % is 2.5 deviations, 1 % is 5
        SuperfatBand near = band(coconut("0.5 %").own(HouseMaterials.certificate("coconut", "256.5 ± 1")));
        SuperfatBand far = band(coconut("1 %").own(HouseMaterials.certificate("coconut", "256.5 ± 1")));

        assertThat(near.worstPercent()).as("at the ends of its interval").isPositive();
        assertThat(near.surelyWithoutAlkali()).isFalse();
        assertThat(near.freeAlkaliProbability()).isBetween(0.001, 0.02);
        assertThat(far.surelyWithoutAlkali()).isTrue();
    }

    @Test
    void a_stock_lye_is_as_sure_as_its_strength() {
        SuperfatBand loose = band(house("5 %")
                .own(HouseMaterials.stockLye("jug", "49 to 51 %", Alkali.SODIUM))
                .stockLye("jug"));
        SuperfatBand exact = band(house("5 %")
                .own(HouseMaterials.stockLye("jug", "50 %", Alkali.SODIUM))
                .stockLye("jug"));

        // 100 × (1 − 0.95 × s ÷ 50), s from 49 to 51
        assertThat(loose.lowPercent()).isCloseTo(100 * (1 - 0.95 * 50.95 / 50), within(SETTLED));
        assertThat(loose.highPercent()).isCloseTo(100 * (1 - 0.95 * 49.05 / 50), within(SETTLED));
        assertThat(loose.contributions().get(0).input()).isEqualTo("strength of jug");
        assertThat(width(exact)).isLessThan(0.05);
    }

    @Test
    void acid_that_takes_alkali_moves_the_whole_band() {
        SuperfatBand without = band(coconut("5 %"));
        SuperfatBand with = band(coconut("5 %").acids(AcidRule.AS_WRITTEN).add("citric-acid-anhydrous", "10 g", "lye"));

        // 10 g take 0.156 mol of 4.572: 3.4 points
        assertThat(with.lowPercent() - without.lowPercent()).isEqualTo(3.4, within(0.15));
        assertThat(with.highPercent() - without.highPercent()).isEqualTo(3.4, within(0.15));
        assertThat(with.worstPercent() - without.worstPercent()).isEqualTo(3.4, within(0.15));
    }

    @Test
    void where_acid_takes_all_alkali_nothing_is_unsure() {
        SuperfatBand band = band(house("6 %").acids(AcidRule.AS_WRITTEN).add("citric-acid-anhydrous", "310 g", "lye"));

        assertThat(band.lowPercent()).isEqualTo(100);
        assertThat(band.highPercent()).isEqualTo(100);
        assertThat(band.worstPercent()).isEqualTo(100);
        assertThat(band.freeAlkaliProbability()).isZero();
        assertThat(band.contributions()).isEmpty();
    }

    @Test
    void where_nothing_differs_a_portions_band_is_the_batchs() {
        MakingSheet sheet = AFormula.ofOils("coconut", "50 %", "olive-virgin", "50 %")
                .superfat("5 %")
                .puritiesAssumed()
                .portions("plain", "30 %", "green", "rest")
                .add("green-clay", "10 g per kg portion oils", "portion green")
                .dispersed("water", "2 to 1")
                .add("lavender-oil", "2 % of oils", "every portion")
                .sheet(KILOGRAM);

        for (PortionSheet portion : sheet.portions()) {
            assertThat(portion.band().sheetPercent()).isEqualTo(sheet.sheetSuperfatPercent(), within(1e-9));
            assertThat(portion.band().lowPercent()).isEqualTo(sheet.band().lowPercent(), within(1e-9));
            assertThat(portion.band().highPercent()).isEqualTo(sheet.band().highPercent(), within(1e-9));
            assertThat(portion.band().worstPercent()).isEqualTo(sheet.band().worstPercent(), within(1e-9));
        }
    }

    @Test
    void a_coarser_balance_makes_it_less_sure() {
        AFormula formula = coconut("5 %").own(HouseMaterials.certificate("coconut", "256.5"));
        double before = 0;
        for (String balance : List.of("a:5kg:0.1g", "b:5kg:1g", "c:10kg:2g", "d:20kg:5g")) {
            SuperfatBand band = formula.sheet(
                            Fill.oilMass(500), Equipment.parseBalances(balance).orThrow())
                    .band();

            assertThat(width(band)).as(balance).isGreaterThan(1.5 * before);
            assertThat(band.contributions().get(0).input()).as(balance).startsWith("weighing of sodium hydroxide");
            before = width(band);
        }
    }

    @ParameterizedTest
    @CsvSource({
        // (256.5 × (1 − superfat) − 248) ÷ 17 is 0.01 at 3.248 % and 0.1 at 2.651 %
        "3.5 %, SAFE",
        "3.3 %, SAFE",
        "3.2 %, THIN",
        "2.75 %, THIN",
        "2.55 %, MAY_BE_CAUSTIC",
        "0 %, MAY_BE_CAUSTIC"
    })
    void the_verdict_turns_at_one_batch_of_a_hundred_and_at_one_of_ten(String superfat, Verdict verdict) {
        assertThat(band(coconut(superfat)).verdict()).isEqualTo(verdict);
    }

    @Test
    void a_certificate_is_asked_for_the_oil_that_most_hangs_on() {
        SuperfatBand band = AFormula.ofOils("olive-virgin", "70 %", "coconut", "25 %", "castor", "5 %")
                .superfat("5 %")
                .puritiesAssumed()
                .sheet(KILOGRAM)
                .band();
        Gain gain = band.certificateGain().orElseThrow();

        assertThat(gain.oil()).isEqualTo("Olive oil (virgin)");
        assertThat(band.contributions().get(0).input()).isEqualTo("saponification value of olive oil (virgin)");
        assertThat(gain.lowPercent()).isGreaterThan(band.lowPercent() + 0.5);
        assertThat(gain.highPercent()).isLessThan(band.highPercent() - 0.5);
    }

    @Test
    void what_a_certificate_would_gain_is_what_it_gains() {
        AFormula formula = AFormula.ofOils("olive-virgin", "40 %", "coconut", "60 %")
                .superfat("5 %")
                .puritiesAssumed();
        Gain gain = band(formula).certificateGain().orElseThrow();
        // coconut's 256.5 is what the sheet computes with, ± 1 mg KOH/g is how exactly certificates say it
        SuperfatBand with = band(formula.own(HouseMaterials.certificate("coconut", "256.5 ± 1")));

        assertThat(gain.oil()).isEqualTo("Coconut oil");
        assertThat(gain.lowPercent()).isEqualTo(with.lowPercent(), within(SETTLED));
        assertThat(gain.highPercent()).isEqualTo(with.highPercent(), within(SETTLED));
    }

    @Test
    void what_a_certificate_of_another_oil_would_gain_is_what_it_gains() {
        AFormula formula = AFormula.ofOils("olive-virgin", "40 %", "coconut", "60 %")
                .superfat("5 %")
                .puritiesAssumed();
        SuperfatBand band = band(formula);
        Gain gain = band.certificateGain("olive-virgin").orElseThrow();
        // olive oil's 189.5 is what the sheet computes with; without that the superfat would move as well
        SuperfatBand with = band(formula.own(HouseMaterials.certificate("olive-virgin", "189.5 ± 1")));

        assertThat(with.sheetPercent()).isEqualTo(band.sheetPercent(), within(0.02));
        assertThat(gain.lowPercent()).isEqualTo(with.lowPercent(), within(SETTLED));
        assertThat(gain.highPercent()).isEqualTo(with.highPercent(), within(SETTLED));
        assertThat(band.certificateGains(5)).extracting(Gain::key).containsExactly("coconut", "olive-virgin");
        assertThat(band.certificateGains(1))
                .containsExactly(band.certificateGain().orElseThrow());
        assertThat(band.certificateGain("castor")).isEmpty();
    }

    @Test
    void no_certificate_is_asked_for_where_no_range_comes_from_tables() {
        assertThat(band(house("5 %").puritiesAssumed()).certificateGain()).isEmpty();
        assertThat(band(coconut("5 %").own(HouseMaterials.certificate("coconut", "250 to 260")))
                        .certificateGain())
                .isEmpty();
        assertThat(band(AFormula.ofOils("house-oil", "95 %", "beeswax", "5 %")
                                .own(HouseMaterials.oilOfFive("house-oil"))
                                .superfat("5 %"))
                        .certificateGain())
                .as("a wax's doubt is what reacts of it, which no certificate says")
                .isEmpty();
    }

    @Test
    void certificates_are_said_to_settle_it_only_where_they_would() {
        assertThat(band(coconut("2 %")).beforeCertificateOf()).contains("Coconut oil");
        assertThat(band(coconut("5 %")).beforeCertificateOf())
                .as("safe as it is")
                .isEmpty();
        assertThat(band(coconut("1 %").puritiesAssumed()).beforeCertificateOf())
                .as("soda of 97 to 99 % and a certificate's own ± 1 leave 1 batch of 25")
                .isEmpty();
        assertThat(band(coconut("0.1 %")).beforeCertificateOf())
                .as("a certificate is sure to 0.4 points")
                .isEmpty();
        assertThat(band(house("0 %").puritiesAssumed()).beforeCertificateOf())
                .as("no oil of the tables in it")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0.2 %, 0 %",
        "0.6 %, 0 %",
        "1 %, 0 %",
        "1.4 %, 0 %",
        "2 %, 0 %",
        "2.5 %, 0 %",
        "3.5 %, 0 %",
        "0.6 %, 8 %",
        "1.4 %, 8 %",
        "2 %, 8 %",
        "3 %, 8 %"
    })
    void what_is_said_of_certificates_is_what_they_do(String superfat, String beeswax) {
        AFormula formula = AFormula.ofOils(
                        "coconut",
                        "50 %",
                        "olive-virgin",
                        "rest",
                        "beeswax",
                        beeswax.equals("0 %") ? "0.01 %" : beeswax)
                .superfat(superfat)
                .puritiesAssumed();
        SuperfatBand before = band(formula);
        // the middles, which the sheet computes with, as exactly as certificates say them
        SuperfatBand after = band(formula.own(HouseMaterials.certificate("coconut", "256.5 ± 1"))
                .own(HouseMaterials.certificate("olive-virgin", "190 ± 1")));

        assertThat(before.beforeCertificateOf().isPresent())
                .isEqualTo(before.verdict() != Verdict.SAFE && after.verdict() == Verdict.SAFE);
    }

    @Test
    void a_wax_does_not_hide_that_a_certificate_would_settle_it() {
        // the wax can only make it milder: without the coconut's range it is 2 % and more
        SuperfatBand band =
                band(AFormula.ofOils("coconut", "90 %", "beeswax", "10 %").superfat("2 %"));

        assertThat(band.verdict()).isNotEqualTo(Verdict.SAFE);
        assertThat(band.certificateGain().orElseThrow().lowPercent()).isGreaterThan(1.5);
        assertThat(band.beforeCertificateOf()).contains("Coconut oil");
    }

    @Test
    void equal_sheets_have_equal_bands_and_other_portions_other_ones() {
        AFormula formula = house("5 %").portions("plain", "50 %", "kelp", "rest");
        MakingSheet one = formula.sheet(KILOGRAM);
        MakingSheet same = formula.sheet(KILOGRAM);

        assertThat(one.band()).isEqualTo(same.band()).hasSameHashCodeAs(same.band());
        assertThat(one.band().lowPercent()).isEqualTo(same.band().lowPercent());
        assertThat(one.portions().get(0).band())
                .isNotEqualTo(one.portions().get(1).band())
                .isNotEqualTo(one.band());
        assertThat(one.band()).isNotEqualTo(formula.sheet(Fill.oilMass(900)).band());
        assertThat(one.band()).isNotEqualTo("a band");
    }

    @Test
    void it_is_drawn_until_its_ends_have_settled_but_for_no_hundredths_of_a_wide_band() {
        assertThat(band(coconut("5 %")).draws()).isBetween(40_000L, 200_000L);
        // a gram in the soda of 60 g of oils is ten points
        SuperfatBand coarse = coconut("5 %")
                .sheet(
                        Fill.oilMass(60),
                        Equipment.parseBalances("kitchen:5kg:1g").orThrow())
                .band();
        assertThat(width(coarse)).isGreaterThan(20);
        assertThat(coarse.draws()).isLessThan(700_000);
        SuperfatBand waxen = band(AFormula.ofOils("house-oil", "20 %", "beeswax", "80 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("5 %"));
        assertThat(width(waxen)).isGreaterThan(30);
        assertThat(waxen.draws()).isLessThan(700_000);
    }

    /** Half of the oils may take nothing at all, so all the alkali for them has to be counted on staying. */
    @Test
    void wax_never_makes_a_caustic_bar_safe() {
        MakingSheet sheet = AFormula.ofOils("coconut", "500 g", "jojoba", "500 g")
                .naohPure("91.7 g")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // 500 g of coconut at the middle take 500 x 256.5 / 56105 mol, 91.43 g
        assertThat(sheet.sheetSuperfatPercent()).isNegative();
        assertThat(sheet.band().highPercent()).isGreaterThan(20);
        assertThat(sheet.band().lowPercent()).isLessThan(sheet.sheetSuperfatPercent());
        assertThat(sheet.band().freeAlkaliProbability()).isGreaterThan(0.5);
        assertThat(sheet.verdict()).isEqualTo(SuperfatBand.Verdict.CAUSTIC);
        assertThat(sheet.howSure()).startsWith("Caustic by these very figures.");
    }

    @Test
    void more_jojoba_never_lowers_the_chance() {
        double before = 0;
        for (String jojoba : List.of("0.001 %", "5 %", "10 %", "20 %")) {
            double chance = band(AFormula.ofOils("coconut", "rest", "jojoba", jojoba)
                            .superfat("2 %"))
                    .freeAlkaliProbability();
            assertThat(chance).as(jojoba).isGreaterThan(before - 0.005);
            before = chance;
        }
        assertThat(before).isGreaterThan(0.15);
    }

    @Test
    void a_lean_portion_rules_the_sentence_and_the_verdict() {
        MakingSheet sheet = house("1 %")
                .portions("plain", "50 %", "clay", "rest")
                .add("kaolin", "10 g per kg oils", "portion clay")
                .dispersed("house-oil", "1 to 1")
                .sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        // 1 % of the oils is gone from the plain half: nothing of its superfat is left
        assertThat(sheet.band().verdict()).isEqualTo(SuperfatBand.Verdict.SAFE);
        assertThat(sheet.verdict()).isGreaterThanOrEqualTo(SuperfatBand.Verdict.MAY_BE_CAUSTIC);
        assertThat(sheet.howSure()).startsWith("Portion plain: ").contains("The batch as a whole: safe");
    }

    @Test
    void a_sheet_that_something_else_stops_is_called_safe_in_nothing() {
        MakingSheet sheet = house("5 %").water("0.5 to 1").sheet(Fill.oilMass(1000), Sheets.LABORATORY);

        assertThat(sheet.stopped()).isTrue();
        assertThat(sheet.band().verdict()).isEqualTo(SuperfatBand.Verdict.SAFE);
        assertThat(sheet.howSure()).startsWith("Not to be made as it stands. The superfat is");
    }

    @Test
    void the_acid_of_juices_is_not_taken_as_exact() {
        AFormula formula = house("4 %").water("300 g").acids(AcidRule.COMPENSATE);
        SuperfatBand pure = band(formula.add("citric-acid-anhydrous", "10 g per kg oils", "lye"));
        SuperfatBand juice = band(house("4 %")
                .water("300 g")
                .acids(AcidRule.COMPENSATE)
                .add("lemon-juice", "20 % of oils", "lye")
                .replacingWater());

        assertThat(pure.contributions()).extracting(Contribution::input).noneMatch(i -> i.startsWith("acid of"));
        assertThat(juice.contributions().get(0).input()).startsWith("acid of lemon juice");
        assertThat(width(juice)).isGreaterThan(10 * width(pure));
    }

    @Test
    void a_value_without_plus_or_minus_is_named_as_taken_for_exact() {
        SuperfatBand typed = band(house("1 %"));
        SuperfatBand certified = band(AFormula.ofOils("coconut", "100 %").superfat("5 %"));

        assertThat(typed.takenAsExact()).contains("saponification value of house-oil", "purity of sodium hydroxide");
        assertThat(typed.sentence())
                .contains("Taken as exact")
                .contains("house-oil")
                .doesNotContain("purity");
        assertThat(certified.sentence()).doesNotContain("Taken as exact");
    }

    @Test
    void an_acid_that_nobody_measured_is_named_as_taken_for_exact() {
        SuperfatBand rosin = band(house("5 %").acids(AcidRule.COMPENSATE).add("rosin", "5 % of oils", "oils"));
        SuperfatBand citric =
                band(house("5 %").acids(AcidRule.COMPENSATE).add("citric-acid-anhydrous", "1 % of oils", "lye"));

        assertThat(rosin.takenAsExact()).anyMatch(what -> what.startsWith("acid of rosin"));
        assertThat(rosin.sentence()).contains("Taken as exact").contains("acid of rosin");
        assertThat(citric.takenAsExact()).noneMatch(what -> what.startsWith("acid of"));
    }

    @Test
    void one_acid_in_two_places_is_weighed_under_two_names() {
        SuperfatBand band = AFormula.ofOils("coconut", "100 %")
                .superfat("5 %")
                .add("citric-acid-anhydrous", "2 % of oils", "lye")
                .add("citric-acid-anhydrous", "1 % of oils", "trace")
                .sheet(Fill.oilMass(100), Equipment.USUAL)
                .band();

        assertThat(band.contributions()).extracting(Contribution::input).doesNotHaveDuplicates();
        assertThat(band.contributions())
                .extracting(Contribution::input)
                .contains("weighing of citric acid, anhydrous at stage lye");
    }
}
