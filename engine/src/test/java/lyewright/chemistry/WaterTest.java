package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.Bench.Made;
import lyewright.formula.Addition;
import lyewright.formula.Amount;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Stage;
import lyewright.formula.WaterRule;
import lyewright.material.Alkali;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whose water is whose: what the rule asks for, what dispersions and liquids take of it, what is brought beside it. */
class WaterTest {

    private static final double TOLERANCE_GRAMS = 1e-6; // g
    private static final double TOLERANCE_SUPERFAT = 1e-9; // percent

    private static final Stage TRACE = Stage.of(Stage.Kind.TRACE);
    private static final Stage TOP = Stage.of(Stage.Kind.TOP);

    /** Pure NaOH for 1000 g of a fat of saponification value 190 at 5 % superfat, g. */
    private static final double NAOH = 0.95 * 190_000 / 56_105 * 39.997;

    private static Bench plain() {
        return aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "100")
                .superfat("5");
    }

    private static Bench inGrams() {
        return aFormula()
                .own(Own.oil("fat", "190").material())
                .oilGrams("fat", "1000")
                .superfat("5");
    }

    static Stream<Arguments> rules() {
        return Stream.of(
                Arguments.of("33 % lye", new WaterRule.LyeStrength(Share.ofPercent("33"), false), NAOH * 67 / 33),
                Arguments.of(
                        "33 % lye as weighed",
                        new WaterRule.LyeStrength(Share.ofPercent("33"), true), NAOH / 0.98 * 67 / 33),
                Arguments.of("26 % of oils", new WaterRule.OfOils(Share.ofPercent("26")), 260.0),
                Arguments.of("2 to 1", new WaterRule.Ratio(new BigDecimal("2"), BigDecimal.ONE, false), 2 * NAOH),
                Arguments.of(
                        "2.2 to 1.1 as weighed",
                        new WaterRule.Ratio(new BigDecimal("2.2"), new BigDecimal("1.1"), true),
                        2 * NAOH / 0.98),
                Arguments.of("265 g", new WaterRule.Weight(WrittenMass.ofGrams("265"), false), 265.0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void every_rule_gives_its_water(String told, WaterRule rule, double grams) {
        Made made = plain().water(rule).purity(98, 90).made(1000);
        assertThat(made.grams(Kind.WATER)).as(told).isCloseTo(grams, within(TOLERANCE_GRAMS));
        assertThat(made.waterByRule()).isCloseTo(grams, within(TOLERANCE_GRAMS));
    }

    @Test
    void potash_by_weighed_strength_counts_the_product() {
        Made made = plain().potassium()
                .water(new WaterRule.LyeStrength(Share.ofPercent("40"), true))
                .purity(98, 90)
                .made(1000);
        assertThat(made.grams("koh") / (made.grams("koh") + made.grams(Kind.WATER)))
                .isCloseTo(0.40, within(1e-9));
    }

    @Test
    void water_in_grams_goes_with_oils_in_grams_unless_it_is_fixed() {
        assertThat(inGrams().waterGrams("260").made(2000).grams(Kind.WATER)).isCloseTo(520, within(TOLERANCE_GRAMS));
        Made fixed = inGrams()
                .water(new WaterRule.Weight(WrittenMass.ofGrams("260"), true))
                .made(2000);
        assertThat(fixed.grams(Kind.WATER)).isCloseTo(260, within(TOLERANCE_GRAMS));
    }

    @Test
    void water_in_grams_beside_oils_in_percent_stays_as_it_is() {
        assertThat(plain().waterGrams("260").made(2000).grams(Kind.WATER)).isCloseTo(260, within(TOLERANCE_GRAMS));
    }

    @Test
    void a_clays_water_comes_out_of_the_batchs_water() {
        Made made = plain().disperse("kaolin", "2", TRACE, "water", "3").made(1000);
        assertThat(made.grams(Kind.DISPERSING_LIQUID, "water")).isCloseTo(60, within(TOLERANCE_GRAMS));
        assertThat(made.grams(Kind.WATER)).isCloseTo(NAOH * 67 / 33 - 60, within(TOLERANCE_GRAMS));
        assertThat(made.waterByRule()).isCloseTo(NAOH * 67 / 33, within(TOLERANCE_GRAMS));
        assertThat(made.reaction().waterGrams()).isCloseTo(NAOH * 67 / 33, within(TOLERANCE_GRAMS));
    }

    @Test
    void a_colours_oil_comes_out_of_the_batchs_oils() {
        Bench bench = aFormula()
                .own(Own.oil("fat", "250").material())
                .own(Own.oil("other", "190").material())
                .oil("fat", "70")
                .oil("other", "30")
                .superfat("5");
        Made without = bench.made(1000);
        Made with =
                bench.disperse("activated-charcoal", "1", TRACE, "other", "4").made(1000);
        assertThat(with.grams(Kind.DISPERSING_LIQUID, "other")).isCloseTo(40, within(TOLERANCE_GRAMS));
        assertThat(with.grams(Kind.OIL, "other")).isCloseTo(260, within(TOLERANCE_GRAMS));
        assertThat(with.grams("other")).isCloseTo(300, within(TOLERANCE_GRAMS));
        assertThat(with.reaction().equivalents()).isCloseTo(without.reaction().equivalents(), within(TOLERANCE_GRAMS));
        assertThat(with.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
        assertThat(with.total()).isCloseTo(without.total() + 10, within(TOLERANCE_GRAMS));
    }

    @Test
    void oil_without_a_name_is_the_most_plentiful_that_pours() {
        Made made = aFormula()
                .oil("coconut", "60")
                .oil("sunflower", "15")
                .oil("castor", "25")
                .superfat("5")
                .disperse("mica-white", "1", TRACE, "oil", "3")
                .made(1000);
        assertThat(made.grams(Kind.DISPERSING_LIQUID, "castor")).isCloseTo(30, within(TOLERANCE_GRAMS));
    }

    @Test
    void where_no_oil_pours_the_most_plentiful_is_taken() {
        Made made = aFormula()
                .oil("coconut", "40")
                .oil("palm", "60")
                .superfat("5")
                .disperse("mica-white", "1", TRACE, "oil", "3")
                .made(1000);
        assertThat(made.grams(Kind.DISPERSING_LIQUID, "palm")).isCloseTo(30, within(TOLERANCE_GRAMS));
    }

    @Test
    void glycerin_for_a_colour_comes_on_top_of_everything() {
        Made without = plain().made(1000);
        Made with = plain().disperse("mica-white", "1", TRACE, "glycerin", "3").made(1000);
        assertThat(with.grams(Kind.DISPERSING_LIQUID, "glycerin")).isCloseTo(30, within(TOLERANCE_GRAMS));
        assertThat(with.grams(Kind.WATER)).isCloseTo(without.grams(Kind.WATER), within(TOLERANCE_GRAMS));
        assertThat(with.total()).isCloseTo(without.total() + 40, within(TOLERANCE_GRAMS));
        assertThat(with.superfat()).isCloseTo(5, within(TOLERANCE_SUPERFAT));
    }

    @Test
    void a_liquid_that_replaces_water_does_so_mass_for_mass() {
        OwnMaterial tea = Own.of("tea", "liquid").water("99").material();
        Made made = plain().own(tea)
                .water(new WaterRule.OfOils(Share.ofPercent("26")))
                .replaceWater("tea", "10")
                .made(1000);
        assertThat(made.grams(Kind.WATER)).isCloseTo(160, within(TOLERANCE_GRAMS));
        assertThat(made.waterByRule()).isCloseTo(260, within(TOLERANCE_GRAMS));
        // the rule counts the liquid's whole mass, but only 99 % of it is water
        assertThat(made.reaction().waterGrams()).isCloseTo(160 + 99, within(TOLERANCE_GRAMS));
    }

    @Test
    void a_liquid_may_replace_all_water() {
        OwnMaterial tea = Own.of("tea", "liquid").water("99").material();
        Made made = plain().own(tea)
                .water(new WaterRule.OfOils(Share.ofPercent("26")))
                .replaceWater("tea", "26")
                .made(1000);
        assertThat(made.grams(Kind.WATER)).isCloseTo(0, within(TOLERANCE_GRAMS));
        assertThat(made.batch().lines()).anyMatch(line -> line.key().equals("tea") && line.inLyeJug());
    }

    @Test
    void a_liquid_that_replaces_nothing_brings_its_water_beside_the_rules() {
        OwnMaterial tea = Own.of("tea", "liquid").water("99").material();
        Made without = plain().made(1000);
        Made with = plain().own(tea).add("tea", "5", TRACE).made(1000);
        assertThat(with.grams(Kind.WATER)).isCloseTo(without.grams(Kind.WATER), within(TOLERANCE_GRAMS));
        assertThat(with.reaction().waterGrams())
                .isCloseTo(without.reaction().waterGrams() + 50 * 0.99, within(TOLERANCE_GRAMS));
    }

    /** Published: 100 g of 5 % vinegar takes 3.330 g NaOH and brings 95 g water; M(acetic acid) 60.052, M(NaOH) 39.997. */
    @Test
    void vinegar_takes_alkali_and_brings_water() {
        Made without = plain().made(1000);
        Made with = plain().add("vinegar-5", "10", Stage.of(Stage.Kind.LYE)).made(1000);
        double more = with.grams("naoh") - without.grams("naoh");
        assertThat(more).isCloseTo(3.330, within(0.001));
        assertThat(with.reaction().waterGrams() - without.reaction().waterGrams())
                .isCloseTo(95 + more * 67 / 33, within(0.01));
    }

    @Test
    void a_liquid_that_replaces_water_under_stock_lye_comes_off_the_same_rule() {
        OwnMaterial tea = Own.of("tea", "liquid").water("99").material();
        Made made = plain().own(tea)
                .own(Own.lye("lye-50", "50", Alkali.SODIUM))
                .stock("lye-50")
                .water(new WaterRule.OfOils(Share.ofPercent("30")))
                .replaceWater("tea", "10")
                .made(1000);
        assertThat(made.grams(Kind.WATER)).isCloseTo(300 - 100 - NAOH, within(TOLERANCE_GRAMS));
    }

    @Test
    void toppings_stay_out_of_the_chemistry_and_the_volume() {
        OwnMaterial sour = Own.of("sour-milk", "milk")
                .water("80")
                .fat("10", "230")
                .acid("2", "citric acid anhydrous")
                .material();
        Made without = plain().made(1000);
        Made with = plain().own(sour).add("sour-milk", "3", TOP).made(1000);
        assertThat(with.superfat()).isCloseTo(without.superfat(), within(TOLERANCE_SUPERFAT));
        assertThat(with.reaction().equivalents()).isCloseTo(without.reaction().equivalents(), within(TOLERANCE_GRAMS));
        assertThat(with.reaction().taken()).isZero();
        assertThat(with.grams("naoh")).isCloseTo(without.grams("naoh"), within(TOLERANCE_GRAMS));
        assertThat(with.millilitres()).isCloseTo(without.millilitres(), within(TOLERANCE_GRAMS));
        assertThat(with.density()).isCloseTo(without.density(), within(1e-12));
        assertThat(with.total()).isCloseTo(without.total() + 30, within(TOLERANCE_GRAMS));
    }

    /** The oil that wets a powder belongs to the batter and its alkali; on top it would leave the batter with too much. */
    @Test
    void a_topping_is_not_wetted_with_the_batters_oil() {
        assertThat(plain().disperse("mica-white", "1", TOP, "fat", "3").lookedUp())
                .isInstanceOf(Outcome.Refused.class);
        assertThat(plain().disperse("mica-white", "1", TRACE, "fat", "3").lookedUp())
                .isInstanceOf(Outcome.Ok.class);
    }

    @Test
    void premixed_oils_are_the_same_as_their_parts() {
        OwnMaterial premix = Own.blend("premix", Own.part("coconut", "60"), Own.part("olive-virgin", "40"));
        Made mixed = aFormula()
                .own(premix)
                .oil("premix", "50")
                .oil("castor", "50")
                .superfat("5")
                .made(1000);
        Made apart = aFormula()
                .oil("coconut", "30")
                .oil("olive-virgin", "20")
                .oil("castor", "50")
                .superfat("5")
                .made(1000);
        assertThat(mixed.grams("naoh")).isCloseTo(apart.grams("naoh"), within(TOLERANCE_GRAMS));
        assertThat(mixed.total()).isCloseTo(apart.total(), within(TOLERANCE_GRAMS));
        assertThat(mixed.millilitres()).isCloseTo(apart.millilitres(), within(TOLERANCE_GRAMS));
        assertThat(mixed.reaction().equivalents()).isCloseTo(apart.reaction().equivalents(), within(1e-9));
    }

    @Test
    void premixed_oils_are_the_same_as_their_parts_at_any_temperature() {
        OwnMaterial premix = Own.blend("premix", Own.part("coconut", "60"), Own.part("olive-virgin", "40"));
        UnaryOperator<Bench> warm = bench -> bench.superfat("5").temperatures("55", "50");
        Made mixed = warm.apply(aFormula().own(premix).oil("premix", "100")).made(1000);
        Made apart = warm.apply(aFormula().oil("coconut", "60").oil("olive-virgin", "40"))
                .made(1000);
        assertThat(mixed.millilitres()).isCloseTo(apart.millilitres(), within(TOLERANCE_GRAMS));
    }

    private static Addition ofBatch(String key, String percent) {
        Amount amount = new Amount.Percent(Share.ofPercent(percent), Amount.Base.BATCH);
        return new Addition(key, amount, TRACE, Optional.empty(), false);
    }

    @Test
    void additions_of_all_the_batch_are_refused() {
        Outcome<BatchLines> laidOut = plain().add(ofBatch("sea-salt", "60"))
                .add(ofBatch("kaolin", "40"))
                .laidOut();
        assertThat(laidOut).isInstanceOf(Outcome.Refused.class);
        assertThat(laidOut.problems().get(0).what()).contains("% of batch");
    }

    @Test
    void a_share_of_the_batch_is_a_share_of_everything_weighed() {
        Addition five = ofBatch("kaolin", "5");
        Made made = plain().add(five).made(1000);
        assertThat(made.grams("kaolin") / made.total()).isCloseTo(0.05, within(1e-12));
        assertThat(made.batch().batchAt(1000)).isCloseTo(made.total(), within(TOLERANCE_GRAMS));
        assertThat(made.batch().oilsFor(made.total())).isCloseTo(1000, within(TOLERANCE_GRAMS));
    }
}
