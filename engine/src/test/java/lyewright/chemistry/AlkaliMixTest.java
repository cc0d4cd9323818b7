package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.Random;
import lyewright.chemistry.Bench.Made;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.AlkaliChoice.Basis;
import lyewright.formula.WaterRule;
import lyewright.material.Alkali;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;

/** Sodium and potassium hydroxide together, and what their purity leaves out. */
class AlkaliMixTest {

    private static final double TOLERANCE_GRAMS = 1e-6; // g
    private static final double TOLERANCE_MOLES = 1e-9; // mol
    private static final double TOLERANCE_SUPERFAT = 1e-9; // percent

    private static final double ALL_OF_190 = 190_000 / 56_105.0;

    private static Bench plain() {
        return aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "100")
                .superfat("5");
    }

    @Test
    void by_moles_each_takes_its_share_of_the_equivalents() {
        Made made = plain().mix("40", "60", Basis.MOLES).made(1000);
        double moles = 0.95 * ALL_OF_190;
        assertThat(made.grams("naoh")).isCloseTo(0.4 * moles * 39.997, within(TOLERANCE_GRAMS));
        assertThat(made.grams("koh")).isCloseTo(0.6 * moles * 56.105, within(TOLERANCE_GRAMS));
        assertThat(made.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void by_pure_mass_the_masses_stand_as_written() {
        Made made = plain().mix("40", "60", Basis.PURE_MASS).made(1000);
        assertThat(made.grams("koh") / made.grams("naoh")).isCloseTo(1.5, within(1e-9));
        assertThat(made.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void as_weighed_the_products_stand_as_written() {
        Made made = plain().mix("40", "60", Basis.AS_WEIGHED).purity(98, 88).made(1000);
        assertThat(made.grams("koh") / made.grams("naoh")).isCloseTo(1.5, within(1e-9));
        assertThat(made.reaction().alkali())
                .isCloseTo(
                        made.grams("naoh") * 0.98 / 39.997 + made.grams("koh") * 0.88 / 56.105,
                        within(TOLERANCE_MOLES));
        assertThat(made.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    /** One batch told in three ways is one batch: 200 mixtures with purities at random, seed 56105. */
    @Test
    void moles_pure_mass_and_as_weighed_tell_the_same_batch() {
        Random random = new Random(56_105L);
        for (int i = 0; i < 200; i++) {
            String sodium = String.valueOf(1 + random.nextInt(98));
            String potassium =
                    new BigDecimal(100).subtract(new BigDecimal(sodium)).toPlainString();
            double naoh = 97 + 2 * random.nextDouble();
            double koh = 85 + 7 * random.nextDouble();
            Made moles = plain().mix(sodium, potassium, Basis.MOLES)
                    .purity(naoh, koh)
                    .made(1000);
            Made pure = sameByMass(moles, Basis.PURE_MASS, naoh, koh, naoh / 100, koh / 100);
            Made weighed = sameByMass(moles, Basis.AS_WEIGHED, naoh, koh, 1, 1);
            String told = "case %d: %s to %s at %.3f and %.3f %%".formatted(i, sodium, potassium, naoh, koh);
            for (String key : new String[] {"naoh", "koh", "water"}) {
                assertThat(pure.grams(key)).as(told).isCloseTo(moles.grams(key), within(1e-6));
                assertThat(weighed.grams(key)).as(told).isCloseTo(moles.grams(key), within(1e-6));
            }
        }
    }

    private static Made sameByMass(
            Made moles, Basis basis, double naoh, double koh, double sodiumFactor, double potassiumFactor) {
        double sodiumMass = moles.grams("naoh") * sodiumFactor;
        double potassiumMass = moles.grams("koh") * potassiumFactor;
        BigDecimal share = BigDecimal.valueOf(100 * sodiumMass / (sodiumMass + potassiumMass))
                .setScale(12, RoundingMode.HALF_UP);
        return plain().mix(
                        share.toPlainString(),
                        new BigDecimal(100).subtract(share).toPlainString(),
                        basis)
                .purity(naoh, koh)
                .made(1000);
    }

    @Test
    void one_alkali_alone_leaves_the_other_out() {
        Made sodium = plain().made(1000);
        Made potassium = plain().potassium().made(1000);
        assertThat(sodium.batch().lines()).noneMatch(line -> line.key().equals("koh"));
        assertThat(potassium.batch().lines()).noneMatch(line -> line.key().equals("naoh"));
    }

    @Test
    void what_potassium_hydroxide_lacks_is_water_beside_the_rules() {
        Made pure = plain().potassium().purity(100, 100).made(1000);
        Made product = plain().potassium().purity(100, 90).made(1000);
        assertThat(product.grams("water")).isCloseTo(pure.grams("water"), within(TOLERANCE_GRAMS));
        double brought = product.grams("koh") * 0.10;
        assertThat(product.reaction().waterGrams())
                .isCloseTo(pure.reaction().waterGrams() + brought, within(TOLERANCE_GRAMS));
    }

    @Test
    void what_sodium_hydroxide_lacks_is_inert_and_no_water() {
        Made pure = plain().purity(100, 100).made(1000);
        Made product = plain().purity(98, 100).made(1000);
        assertThat(product.reaction().waterGrams()).isCloseTo(pure.reaction().waterGrams(), within(TOLERANCE_GRAMS));
        assertThat(product.total()).isCloseTo(pure.total() + product.grams("naoh") * 0.02, within(TOLERANCE_GRAMS));
        assertThat(product.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void masses_of_both_alkalis_give_the_superfat() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .alkali(new AlkaliChoice.Given(
                        Optional.of(WrittenMass.ofGrams("60")),
                        Optional.of(WrittenMass.ofGrams("90")),
                        Optional.of(AlkaliChoice.As.WEIGHED),
                        false))
                .purity(98, 90)
                .made(1000);
        double moles = 60 * 0.98 / 39.997 + 90 * 0.90 / 56.105;
        assertThat(made.superfat()).isCloseTo(100 * (1 - moles / ALL_OF_190), within(TOLERANCE_SUPERFAT));
        assertThat(made.grams("naoh")).isCloseTo(60, within(TOLERANCE_GRAMS));
        assertThat(made.grams("koh")).isCloseTo(90, within(TOLERANCE_GRAMS));
    }

    @Test
    void stock_lye_is_the_same_batch_as_pellets_in_the_same_water() {
        Made pellets = plain().made(1000);
        Made stock = plain().own(Own.lye("lye-50", "50", Alkali.SODIUM))
                .stock("lye-50")
                .made(1000);
        double pure = pellets.grams("naoh");
        assertThat(stock.grams("lye-50")).isCloseTo(2 * pure, within(TOLERANCE_GRAMS));
        // half of the stock lye is water, and that is part of what the rule asks for
        assertThat(stock.grams("water")).isCloseTo(pellets.grams("water") - pure, within(TOLERANCE_GRAMS));
        assertThat(stock.reaction().waterGrams()).isCloseTo(pellets.reaction().waterGrams(), within(TOLERANCE_GRAMS));
        assertThat(stock.total()).isCloseTo(pellets.total(), within(TOLERANCE_GRAMS));
        assertThat(stock.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void stock_lye_is_not_made_weaker_by_a_purity_that_belongs_to_pellets() {
        Made pure = plain().own(Own.lye("lye-50", "50", Alkali.SODIUM))
                .stock("lye-50")
                .made(1000);
        Made assumed = plain().own(Own.lye("lye-50", "50", Alkali.SODIUM))
                .stock("lye-50")
                .purityAssumed()
                .made(1000);
        assertThat(assumed.grams("lye-50")).isCloseTo(pure.grams("lye-50"), within(TOLERANCE_GRAMS));
    }

    @Test
    void a_mass_of_stock_lye_gives_the_superfat() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .own(Own.lye("lye-50", "50", Alkali.SODIUM))
                .oilGrams("fat", "1000")
                .stockGrams("lye-50", "250")
                .made(1000);
        assertThat(made.superfat()).isCloseTo(100 * (1 - 125 / 39.997 / ALL_OF_190), within(TOLERANCE_SUPERFAT));
        assertThat(made.grams("lye-50")).isCloseTo(250, within(TOLERANCE_GRAMS));
    }

    @Test
    void potassium_stock_lye_is_potassium() {
        Made made = plain().own(Own.lye("potash-45", "45", Alkali.POTASSIUM))
                .stock("potash-45")
                .made(1000);
        assertThat(made.grams("potash-45")).isCloseTo(0.95 * ALL_OF_190 * 56.105 / 0.45, within(TOLERANCE_GRAMS));
        assertThat(made.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
        assertThat(made.batch().formula().alkali().pureGramsPerMole(Alkali.POTASSIUM))
                .isCloseTo(56.105, within(1e-12));
        assertThat(made.batch().formula().alkali().pureGramsPerMole(Alkali.SODIUM))
                .isZero();
    }

    @Test
    void a_mole_of_a_mixture_weighs_what_its_parts_weigh() {
        Made made = plain().mix("25", "75", Basis.MOLES).made(1000);
        assertThat(made.batch().formula().alkali().pureGramsPerMole(Alkali.SODIUM))
                .isCloseTo(0.25 * 39.997, within(1e-12));
        assertThat(made.batch().formula().alkali().pureGramsPerMole(Alkali.POTASSIUM))
                .isCloseTo(0.75 * 56.105, within(1e-12));
    }

    @Test
    void lye_strength_of_a_mixture_is_of_both_alkalis_together() {
        Made made = plain().mix("25", "75", Basis.MOLES)
                .water(new WaterRule.LyeStrength(Share.ofPercent("30"), false))
                .purity(98, 90)
                .made(1000);
        double pure = made.grams("naoh") * 0.98 + made.grams("koh") * 0.90;
        assertThat(made.grams("water")).isCloseTo(pure * 70 / 30, within(TOLERANCE_GRAMS));
    }
}
