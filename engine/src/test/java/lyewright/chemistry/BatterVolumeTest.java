package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lyewright.chemistry.Bench.Made;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Stage;
import lyewright.material.Alkali;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Volumes are additive: oils, lye as one solution, the rest by its own density. */
class BatterVolumeTest {

    private static final double TOLERANCE_DENSITY = 0.0001; // g/ml
    private static final double TOLERANCE_MILLILITRES = 0.1; // ml
    private static final double TOLERANCE_SAME = 1e-6; // ml

    private static final Stage TRACE = Stage.of(Stage.Kind.TRACE);
    private static final Stage LYE = Stage.of(Stage.Kind.LYE);

    private static Bench plain() {
        return aFormula()
                .own(Own.oil("fat", "190").density("0.9148").material())
                .oil("fat", "100")
                .superfat("5");
    }

    /**
     * By hand: 1000 g of oil of 0.902 g/ml and 400 g of 33 % lye of 1.3464 g/ml, both at 40 °C, are 1405.7 ml, 0.9959 g/ml.
     * The oil is 0.9148 at 20 °C, falling by 0.00064 a kelvin (Lund, JAOCS 76, 1415).
     */
    @Tag("validation")
    @Test
    void oil_and_lye_reckoned_by_hand() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").density("0.9148").material())
                .oilGrams("fat", "1000")
                .naoh("132", AlkaliChoice.As.PURE)
                .waterGrams("268")
                .made(1000);
        assertThat(made.millilitres()).isCloseTo(1405.7, within(TOLERANCE_MILLILITRES));
        assertThat(made.density()).isCloseTo(0.9959, within(TOLERANCE_DENSITY));
    }

    /** Common practice, no source: plain batter is 0.96 to 1.02 g/ml. */
    @Tag("validation")
    @Test
    void plain_batter_weighs_what_makers_find() {
        Made made = aFormula()
                .oil("coconut", "30")
                .oil("olive-virgin", "60")
                .oil("castor", "10")
                .superfat("5")
                .made(1000);
        assertThat(made.density()).isBetween(0.96, 1.02);
    }

    /** Common practice, no source: batter with 45 to 50 % salt is 1.12 to 1.20 g/ml. */
    @Tag("validation")
    @Test
    void batter_of_a_salt_bar_weighs_what_makers_find() {
        Made made = aFormula()
                .oil("coconut", "80")
                .oil("olive-virgin", "20")
                .superfat("18")
                .add("sea-salt", "48", TRACE)
                .made(1000);
        assertThat(made.density()).isBetween(1.12, 1.20);
    }

    @Test
    void an_addition_takes_its_mass_over_its_density() {
        OwnMaterial stone = Own.of("stone", "exfoliant").density("2.5").material();
        Made without = plain().made(1000);
        Made with = plain().own(stone).add("stone", "5", TRACE).made(1000);
        assertThat(with.millilitres() - without.millilitres()).isCloseTo(50 / 2.5, within(TOLERANCE_SAME));
    }

    @Test
    void warmer_oils_and_lye_take_more_room() {
        assertThat(plain().temperatures("60", "60").made(1000).millilitres())
                .isGreaterThan(plain().temperatures("40", "40").made(1000).millilitres());
    }

    @Test
    void forty_degrees_written_is_what_is_taken_unwritten() {
        assertThat(plain().temperatures("40", "40").made(1000).millilitres())
                .isCloseTo(plain().made(1000).millilitres(), within(TOLERANCE_SAME));
    }

    @Test
    void what_sodium_hydroxide_lacks_takes_the_room_of_salt() {
        Made pure = plain().purity(100, 100).made(1000);
        Made product = plain().purity(98, 100).made(1000);
        double rest = product.grams("naoh") * 0.02;
        assertThat(product.millilitres() - pure.millilitres()).isCloseTo(rest / 2.17, within(TOLERANCE_SAME));
    }

    @Test
    void what_potassium_hydroxide_lacks_thins_the_lye() {
        Made product = plain().potassium().purity(98, 90).made(1000);
        double pure = product.grams("koh") * 0.9;
        double water = product.grams("koh") * 0.1 + product.grams("water");
        double lye = (pure + water)
                / Solutions.of(product.batch().formula().tables())
                        .lyeDensity(Alkali.POTASSIUM, 100 * pure / (pure + water), 40);
        assertThat(product.millilitres()).isCloseTo(1000 / 0.902 + lye, within(TOLERANCE_SAME));
    }

    @Test
    void stock_lye_takes_the_room_of_the_lye_it_becomes() {
        Made pellets = plain().made(1000);
        Made stock = plain().own(Own.lye("lye-50", "50", Alkali.SODIUM))
                .stock("lye-50")
                .made(1000);
        assertThat(stock.millilitres()).isCloseTo(pellets.millilitres(), within(TOLERANCE_SAME));
    }

    /** The same lye, whether its potash came as flakes or as stock lye: one mass of alkali in one mass of water. */
    @Test
    void potash_stock_lye_takes_the_room_of_the_lye_it_becomes() {
        Made pellets = plain().potassium().made(1000);
        Made stock = plain().own(Own.lye("potash-45", "45", Alkali.POTASSIUM))
                .stock("potash-45")
                .made(1000);
        assertThat(stock.total()).isCloseTo(pellets.total(), within(TOLERANCE_SAME));
        assertThat(stock.millilitres()).isCloseTo(pellets.millilitres(), within(TOLERANCE_SAME));
    }

    @Test
    void a_liquid_in_the_jug_thins_the_lye_by_its_water_and_adds_the_rest() {
        OwnMaterial brine =
                Own.of("brine", "liquid").water("75").density("1.189").material();
        Made without = plain().made(1000);
        Made with = plain().own(brine).add("brine", "10", LYE).made(1000);
        double pure = without.grams("naoh");
        double water = without.grams("water");
        Solutions solutions = Solutions.of(without.batch().formula().tables());
        double before = (pure + water) / solutions.lyeDensity(Alkali.SODIUM, 100 * pure / (pure + water), 40);
        double after = (pure + water + 75) / solutions.lyeDensity(Alkali.SODIUM, 100 * pure / (pure + water + 75), 40);
        double salt = 100 / 1.189 - 75 / BatterVolume.WATER_DENSITY;
        assertThat(with.millilitres() - without.millilitres()).isCloseTo(after - before + salt, within(TOLERANCE_SAME));
    }

    @Test
    void a_mixture_of_alkalis_lies_between_the_two() {
        double sodium = plain().made(1000).millilitres();
        double potassium = plain().potassium().made(1000).millilitres();
        double both =
                plain().mix("50", "50", AlkaliChoice.Basis.MOLES).made(1000).millilitres();
        assertThat(both).isBetween(Math.min(sodium, potassium), Math.max(sodium, potassium));
    }
}
