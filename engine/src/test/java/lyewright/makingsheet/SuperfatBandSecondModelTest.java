package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.fill.Fill;
import lyewright.formula.AlkaliChoice;
import org.junit.jupiter.api.Test;

/**
 * The band against 100,000 truths of a second model that shares nothing with the first: 95 of 100 of them lie in it, its ends
 * and its chance are theirs.
 */
class SuperfatBandSecondModelTest {

    private static final int TRUTHS = 100_000;

    /** Points of superfat: 100,000 truths leave their own ends unsure by 0.02 to 0.03, the band's by 0.02. */
    private static final double END = 0.1;

    private static final double CHANCE = 0.004;

    private static void assertHolds(String what, SuperfatBand band, PlainTruths model) {
        double[] truths = model.superfats(TRUTHS, 20_08);

        assertThat(PlainTruths.held(truths, band.lowPercent(), band.highPercent()))
                .as("%s: share held", what)
                .isBetween(0.945, 0.955);
        assertLow(what, band, truths);
        assertHigh(what, band, truths);
    }

    /** With wax the lower end and the chance are of wax of which only its acid reacts, the higher end of wax that may all react. */
    private static void assertHolds(String what, SuperfatBand band, PlainTruths careful, PlainTruths all) {
        assertLow(what, band, careful.superfats(TRUTHS, 20_08));
        double[] truths = all.superfats(TRUTHS, 20_08);
        assertHigh(what, band, truths);
        assertThat(PlainTruths.held(truths, band.lowPercent(), band.highPercent()))
                .as("%s: share held, and more the further wax lifts the rest", what)
                .isBetween(0.945, 0.976);
    }

    private static void assertHigh(String what, SuperfatBand band, double[] truths) {
        assertThat(band.highPercent()).as("%s: high", what).isEqualTo(PlainTruths.quantile(truths, 0.975), within(END));
    }

    private static void assertLow(String what, SuperfatBand band, double[] truths) {
        assertThat(band.lowPercent()).as("%s: low", what).isEqualTo(PlainTruths.quantile(truths, 0.025), within(END));
        assertThat(band.freeAlkaliProbability())
                .as("%s: chance", what)
                .isEqualTo(PlainTruths.held(truths, Double.NEGATIVE_INFINITY, 0), within(CHANCE));
        // a certificate's interval has no end, so that a few of a hundred thousand may lie under what is called the
        // worst
        assertThat(PlainTruths.held(truths, Double.NEGATIVE_INFINITY, band.worstPercent()))
                .as("%s: share under the worst", what)
                .isLessThan(0.0002);
    }

    /** Both alkalis, a wax, an acid, and clay wetted out with oil that is missing in the other portion. */
    private static MakingSheet manifold() {
        return AFormula.ofOils("coconut", "40 %", "olive-virgin", "50 %", "beeswax", "10 %")
                .mixed("80 %", "20 %", AlkaliChoice.Basis.MOLES)
                .puritiesAssumed()
                .superfat("1.5 %")
                .add("vinegar-5", "5 % of oils", "lye")
                .portions("plain", "60 %", "clay", "rest")
                .add("kaolin", "20 g per kg portion oils", "portion clay")
                .dispersed("olive-virgin", "2 to 1")
                .sheet(Fill.oilMass(1000), Equipment.USUAL);
    }

    /** Of the wax only its free acid reacts: Ph. Eur., acid value. */
    private static PlainTruths careful(MakingSheet sheet) {
        return truthsOf(sheet).range("beeswax", 17, 24);
    }

    /** Its figures: Codex, memory of Codex, Ph. Eur. (acid value to saponification value), INRS, a figure of 1908. */
    private static PlainTruths truthsOf(MakingSheet sheet) {
        return new PlainTruths(sheet)
                .range("coconut", 248, 265)
                .range("olive-virgin", 184, 196)
                .range("beeswax", 17, 104)
                .range("naoh", 97, 99)
                .range("koh", 88, 92)
                // 5 % of acetic acid, 60.052 g/mol
                .acid("vinegar-5", 0.05 / 60.052);
    }

    @Test
    void a_batch_of_two_alkalis_wax_and_vinegar_agrees_with_a_second_model() {
        MakingSheet sheet = manifold();

        assertHolds("batch", sheet.band(), careful(sheet), truthsOf(sheet));
    }

    @Test
    void its_portions_agree_with_a_second_model() {
        MakingSheet sheet = manifold();

        assertHolds(
                "plain",
                sheet.portions().get(0).band(),
                careful(sheet).portion("plain", 0.6),
                truthsOf(sheet).portion("plain", 0.6));
        assertHolds(
                "clay",
                sheet.portions().get(1).band(),
                careful(sheet).portion("clay", 0.4),
                truthsOf(sheet).portion("clay", 0.4));
        assertThat(sheet.portions().get(0).band().freeAlkaliProbability())
                .as("the portion without the oil of the clay is the riskier one")
                .isGreaterThan(sheet.portions().get(1).band().freeAlkaliProbability() + 0.05);
    }

    @Test
    void a_plain_kitchen_recipe_agrees_with_a_second_model() {
        MakingSheet sheet = AFormula.ofOils("olive-virgin", "70 %", "coconut", "25 %", "castor", "5 %")
                .superfat("3 %")
                .puritiesAssumed()
                .sheet(Fill.mouldMass(1500), Equipment.USUAL);

        assertHolds(
                "kitchen",
                sheet.band(),
                new PlainTruths(sheet)
                        .range("olive-virgin", 184, 196)
                        .range("coconut", 248, 265)
                        // BP 1993
                        .range("castor", 176, 187)
                        .range("naoh", 97, 99));
    }

    @Test
    void certificates_with_plus_or_minus_agree_with_a_second_model() {
        MakingSheet sheet = AFormula.ofOils("olive-virgin", "60 %", "coconut", "40 %")
                .own(HouseMaterials.certificate("olive-virgin", "189.5 ± 1.5"))
                .own(HouseMaterials.certificate("coconut", "252 to 259"))
                .purities("naoh=98.5±0.5")
                .superfat("1 %")
                .sheet(Fill.oilMass(500), Equipment.USUAL);

        assertHolds(
                "certificates",
                sheet.band(),
                new PlainTruths(sheet)
                        .certificate("olive-virgin", 189.5, 1.5)
                        .range("coconut", 252, 259)
                        .certificate("naoh", 98.5, 0.5));
    }

    @Test
    void a_small_batch_on_a_kitchen_balance_agrees_with_a_second_model() {
        MakingSheet sheet = AFormula.ofOils("coconut", "100 %")
                .own(HouseMaterials.certificate("coconut", "256.5"))
                .superfat("4 %")
                .sheet(
                        Fill.oilMass(200),
                        Equipment.parseBalances("kitchen:5kg:1g").orThrow());

        assertHolds(
                "small",
                sheet.band(),
                new PlainTruths(sheet).range("coconut", 256.5, 256.5).range("naoh", 100, 100));
    }
}
