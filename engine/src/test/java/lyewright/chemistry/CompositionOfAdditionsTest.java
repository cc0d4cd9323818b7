package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lyewright.chemistry.Bench.Made;
import lyewright.chemistry.Composition.Kind;
import lyewright.chemistry.Composition.Substance;
import lyewright.formula.AcidRule;
import lyewright.formula.Process;
import lyewright.formula.Stage;
import lyewright.material.Additive;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of what is neither oil nor alkali, and where water comes from and goes. */
class CompositionOfAdditionsTest {

    private static final double TOLERANCE_MILLIGRAM = 0.001; // g

    private static final Stage LYE = Stage.of(Stage.Kind.LYE);
    private static final Stage TRACE = Stage.of(Stage.Kind.TRACE);
    private static final Stage TOP = Stage.of(Stage.Kind.TOP);

    private static Bench bar() {
        return aFormula()
                .own(Own.oil("fat", "200").material())
                .oil("fat", "100")
                .superfat("10")
                .acids(AcidRule.COMPENSATE);
    }

    private static List<Substance> of(Composition composition, String key) {
        return composition.substances().stream().filter(s -> s.of().equals(key)).toList();
    }

    private static double grams(Composition composition, Kind kind, String key) {
        return of(composition, key).stream()
                .filter(s -> s.kind() == kind)
                .mapToDouble(Substance::grams)
                .sum();
    }

    /** Whatever the tables have, as one twentieth of the oils: its parts come to its mass, and none is under nothing. */
    @Test
    void every_additive_of_the_tables_is_found_again_whole() {
        for (Additive additive : Tables.bundled().additives()) {
            Made made = bar().add(additive.key(), "5", TRACE).made(1000);
            Composition poured = made.poured();
            double parts = of(poured, additive.key()).stream()
                    .mapToDouble(Substance::grams)
                    .sum();
            assertThat(parts).as(additive.key()).isCloseTo(50, within(TOLERANCE_MILLIGRAM));
            balances(additive.key(), made);
        }
    }

    private static void balances(String what, Made made) {
        for (Composition composition : List.of(made.poured(), made.cured())) {
            double sum = composition.substances().stream()
                    .mapToDouble(Substance::grams)
                    .sum();
            assertThat(sum)
                    .as("%s, %s", what, composition.moment())
                    .isCloseTo(composition.totalGrams(), within(TOLERANCE_MILLIGRAM));
        }
        assertThat(made.poured().totalGrams()).as(what).isEqualTo(made.total());
    }

    @ParameterizedTest(name = "{0}: {1}, {2}, {3} g of 50")
    @CsvSource(
            delimiter = '|',
            value = {
                "sea-salt        | SALT     | Maris Sal                   | 49",
                "table-salt      | SALT     | Sodium Chloride             | 49.9",
                "brine-25        | SALT     | Sodium Chloride             | 12.5",
                "green-clay      | INERT    | Illite                      | 50",
                "mica-white      | INERT    | Mica; CI 77891              | 50",
                "pumice          | INERT    | Pumice                      | 50",
                "lavender-buds   | OTHER    | Lavandula Angustifolia Flower | 50",
                "epsom-salt      | OTHER    | Magnesium Sulfate           | 24.4",
                "honey           | OTHER    | Mel                         | 41.445",
                "glycerin        | GLYCEROL | Glycerin                    | 49.75"
            })
    void what_a_thing_is(String key, Kind kind, String inci, double grams) {
        Composition cured = bar().add(key, "5", TRACE).made(1000).cured();
        assertThat(of(cured, key))
                .filteredOn(s -> s.kind() == kind)
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.inci()).isEqualTo(inci);
                    assertThat(s.grams()).isCloseTo(grams, within(TOLERANCE_MILLIGRAM));
                    assertThat(s.percent()).isCloseTo(100 * grams / cured.totalGrams(), within(1e-6));
                });
    }

    /** 100 g of goat milk: 87.03 % water, 4.14 % fat of value 232, 0.13 % salt (USDA SR28), so 8.7 g of other solids. */
    @Test
    void the_fat_of_milk_turns_to_soap_as_the_oils_do() {
        Made made = bar().add("goat-milk", "10", LYE).made(1000);
        Composition cured = made.cured();
        double moles = 4.14 * 232 / 56_105;
        assertThat(grams(cured, Kind.OIL_LEFT, "goat-milk")).isCloseTo(0.414, within(TOLERANCE_MILLIGRAM));
        assertThat(grams(cured, Kind.SOAP, "goat-milk"))
                .isCloseTo(0.9 * (4.14 + moles * (39.997 - 92.094 / 3)), within(TOLERANCE_MILLIGRAM));
        assertThat(grams(cured, Kind.GLYCEROL, "goat-milk"))
                .isCloseTo(0.9 * moles * 92.094 / 3, within(TOLERANCE_MILLIGRAM));
        assertThat(grams(cured, Kind.SALT, "goat-milk")).isCloseTo(0.13, within(TOLERANCE_MILLIGRAM));
        assertThat(of(cured, "goat-milk"))
                .filteredOn(s -> s.kind() == Kind.OTHER)
                .singleElement()
                .satisfies(s -> assertThat(s.name()).isEqualTo("Solids of goat milk"))
                .satisfies(s -> assertThat(s.grams()).isCloseTo(8.7, within(TOLERANCE_MILLIGRAM)));
        assertThat(of(made.poured(), "goat-milk"))
                .extracting(Substance::name)
                .contains("Fat of goat milk", "Water brought by materials");
    }

    @Test
    void toppings_lie_on_top_as_they_are() {
        Composition with = bar().add("citric-acid-anhydrous", "1", TOP)
                .add("goat-milk-powder", "1", TOP)
                .add("sea-salt", "2", TOP)
                .made(1000)
                .cured();
        Composition without = bar().made(1000).cured();
        assertThat(grams(with, Kind.ACID_LEFT, "citric-acid-anhydrous")).isCloseTo(10, within(1e-9));
        assertThat(grams(with, Kind.OIL_LEFT, "goat-milk-powder")).isCloseTo(3.06, within(1e-9));
        assertThat(grams(with, Kind.SALT, "sea-salt")).isCloseTo(19.6, within(1e-9));
        assertThat(with.grams(Kind.SOAP)).isCloseTo(without.grams(Kind.SOAP), within(1e-9));
        assertThat(with.grams(Kind.ACID_SALT)).isZero();
    }

    /** Salt of 98 % sodium chloride, 600 g to 1000 g of oils, and the salt that milk brings. */
    @Test
    void chloride_is_the_common_salt_of_everything() {
        Made made =
                bar().add("sea-salt", "60", TRACE).add("goat-milk", "10", LYE).made(1000);
        double salt = 588 + 0.13;
        assertThat(made.poured().chloridePercent().orElseThrow()).isCloseTo(100 * salt / made.total(), within(1e-9));
        assertThat(made.cured().chloridePercent().orElseThrow())
                .isCloseTo(100 * salt / made.cured().totalGrams(), within(1e-9));
        assertThat(made.cured().grams(Kind.SALT)).isCloseTo(salt, within(1e-9));
    }

    /** Rosin counts as fatty matter (ISO 685), sodium citrate does not. */
    @Test
    void acids_of_rosin_are_fatty_matter_and_other_acids_are_not() {
        Made rosin = bar().add("rosin", "5", TRACE).made(1000);
        assertThat(fattyGrams(rosin.poured())).isCloseTo(1050, within(1e-6));
        // what alkali frees is a third of a glycerol less a water for each mole of alkali on the fat
        double bound = 0.9 * 1000 * 200 / 56_105 * (92.094 / 3 - 18.015);
        Made plain = bar().made(1000);
        assertThat(fattyGrams(plain.cured())).isCloseTo(1000 - bound, within(1e-6));
        double rosinTakesNone = fattyGrams(rosin.cured()) - fattyGrams(plain.cured());
        assertThat(rosinTakesNone).isCloseTo(50, within(1e-6));
        assertThat(of(rosin.cured(), "rosin"))
                .extracting(Substance::kind, Substance::inci)
                .containsExactly(tuple(Kind.SOAP, "Sodium Rosinate"));
        assertThat(fattyGrams(
                        bar().add("citric-acid-anhydrous", "5", LYE).made(1000).poured()))
                .isCloseTo(1000, within(1e-6));
    }

    private static double fattyGrams(Composition composition) {
        return composition.totalFattyMatterPercent().orElseThrow() * composition.totalGrams() / 100;
    }

    /** An acid of the tables by its molar mass: 20 % of it in a syrup of 60 % water leaves 20 % of solids. */
    @Test
    void an_acid_of_the_makers_own_leaves_the_rest_as_it_is() {
        Made made = bar().own(Own.of("sour-syrup", "liquid")
                        .water("60")
                        .acid("20", "citric acid anhydrous")
                        .material())
                .add("sour-syrup", "10", LYE)
                .made(1000);
        assertThat(grams(made.poured(), Kind.ACID_LEFT, "sour-syrup")).isCloseTo(20, within(1e-9));
        assertThat(grams(made.poured(), Kind.OTHER, "sour-syrup")).isCloseTo(20, within(1e-9));
        assertThat(grams(made.cured(), Kind.ACID_SALT, "sour-syrup")).isCloseTo(20 * 258.07 / 192.123, within(0.005));
    }

    /** Goat milk said to be all water still has the fat and salt of the tables: the water stays, the rest gives way. */
    @Test
    void a_material_that_is_said_to_be_more_than_itself_still_balances() {
        Made made = bar().own(Own.of("goat-milk", "").water("99").material())
                .add("goat-milk", "10", LYE)
                .made(1000);
        balances("goat milk of 99 % water", made);
        assertThat(grams(made.poured(), Kind.OIL_LEFT, "goat-milk")).isBetween(0.5, 1.0);
        assertThat(made.cured().water().broughtGrams()).isCloseTo(99, within(1e-9));
    }

    /** Beads of 97 %: what is not soda is inert. Potash of 90 %: what is not potash is water. */
    @Test
    void what_purity_leaves_out_is_inert_in_soda_and_water_in_potash() {
        Made soda = bar().purity(97, 90).made(1000);
        assertThat(of(soda.cured(), "naoh")).singleElement().satisfies(s -> {
            assertThat(s.kind()).isEqualTo(Kind.INERT);
            assertThat(s.name()).isEqualTo("Impurities of the sodium hydroxide");
            assertThat(s.grams()).isCloseTo(0.03 * soda.grams("naoh"), within(1e-9));
        });
        Made potash = bar().purity(97, 90).potassium().made(1000);
        assertThat(of(potash.cured(), "koh")).isEmpty();
        assertThat(potash.cured().water().broughtGrams()).isCloseTo(0.1 * potash.grams("koh"), within(1e-9));
    }

    @Test
    void added_and_brought_water_are_told_apart() {
        Made made = bar().lye("30")
                .own(Own.lye("stock", "50", Alkali.SODIUM))
                .stock("stock")
                .replaceWater("goat-milk", "10")
                .add("vinegar-5", "2", LYE)
                .disperse("green-clay", "1", TRACE, "water", "3")
                .disperse("mica-white", "1", TRACE, "glycerin", "2")
                .made(1000);
        Composition.Water water = made.cured().water();
        double stock = made.grams("stock") / 2;
        double added = made.grams("water") + stock + 87.03;
        assertThat(water.addedGrams()).isCloseTo(added, within(1e-9));
        assertThat(water.broughtGrams()).isCloseTo(19 + 0.005 * 20, within(1e-9));
        assertThat(water.formedGrams()).isEqualTo(made.reaction().waterFormedGrams());
        assertThat(water.leftGrams()).isCloseTo(0.1 * made.cured().totalGrams(), within(1e-9));
        assertThat(made.poured().water().lostGrams()).isZero();
        assertThat(made.poured().grams(Kind.WATER)).isCloseTo(water.addedGrams() + water.broughtGrams(), within(1e-9));
        assertThat(made.cut().water())
                .isEqualTo(new Composition.Water(
                        water.addedGrams(), water.countedGrams(), water.broughtGrams(), water.formedGrams(), 0));
        assertThat(grams(made.cured(), Kind.GLYCEROL, "glycerin")).isCloseTo(20 * 0.995, within(1e-9));
    }

    /** Common practice; no measurement was found. */
    @ParameterizedTest(name = "{0}: {1} to {2} %")
    @CsvSource({"COLD, 60, 100", "OVEN, 80, 100", "COOKED, 95, 100"})
    void when_cut_it_is_not_settled(Process.Make make, double low, double high) {
        Made made = bar().made(make).made(1000);
        Composition cut = made.cut();
        assertThat(cut.settled()).isFalse();
        assertThat(cut.substances()).isEmpty();
        assertThat(cut.totalFattyMatterPercent()).isEmpty();
        assertThat(cut.chloridePercent()).isEmpty();
        assertThat(cut.totalGrams()).isEqualTo(made.total());
        assertThat(List.of(cut.reactedLowPercent(), cut.reactedHighPercent())).containsExactly(low, high);
    }

    @Test
    void poured_nothing_has_reacted_and_cured_everything() {
        Made made = bar().made(1000);
        assertThat(made.composition()).extracting(Composition::moment).containsExactly(Composition.Moment.values());
        assertThat(made.poured().settled() && made.cured().settled()).isTrue();
        assertThat(List.of(made.poured().reactedHighPercent(), made.cured().reactedLowPercent()))
                .containsExactly(0.0, 100.0);
        assertThat(made.cured().totalGrams()).isEqualTo(made.reaction().curedGrams(0.10));
    }

    /** The kind comes first, then the heaviest. */
    @Test
    void substances_come_by_kind_and_the_heaviest_first() {
        Composition cured = aFormula()
                .oil("coconut", "20")
                .oil("olive-virgin", "70")
                .oil("castor", "10")
                .superfat("5")
                .made(1000)
                .cured();
        assertThat(cured.substances()).extracting(Substance::kind).isSorted();
        assertThat(cured.substances())
                .filteredOn(s -> s.kind() == Kind.SOAP)
                .extracting(Substance::inci)
                .containsExactly("Sodium Olivate", "Sodium Cocoate", "Sodium Castorate");
        assertThat(cured.substances()).filteredOn(s -> s.kind() == Kind.WATER).hasSize(1);
        double percent = 0;
        for (Kind kind : Kind.values()) {
            percent += cured.percent(kind);
        }
        assertThat(percent).isCloseTo(100, within(1e-9));
    }

    /** A premix is one line of the formula; its oils make soap each by itself. */
    @Test
    void the_oils_of_a_premix_make_their_own_soaps() {
        Composition cured = aFormula()
                .own(Own.blend("winter-mix", Own.part("coconut", "40"), Own.part("olive-virgin", "60")))
                .oil("winter-mix", "100")
                .superfat("5")
                .made(1000)
                .cured();
        assertThat(cured.substances())
                .filteredOn(s -> s.kind() == Kind.SOAP)
                .extracting(Substance::name, Substance::of)
                .containsExactly(
                        tuple("Sodium soap of olive oil (virgin)", "winter-mix"),
                        tuple("Sodium soap of coconut oil", "winter-mix"));
    }

    /** A maker's own oil is the oil of its INCI name, whose soap has a name; one that no table knows has none. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"Cocos Nucifera Oil, Sodium Cocoate", "Moon Seed Oil, ''", "'', ''"})
    void an_oil_of_the_makers_own_has_the_soap_name_of_its_inci_name(String inci, String soap) {
        Composition cured = aFormula()
                .own(Own.oil("house-oil", "250").inci(inci).material())
                .oil("house-oil", "100")
                .superfat("5")
                .made(1000)
                .cured();
        assertThat(of(cured, "house-oil"))
                .filteredOn(s -> s.kind() == Kind.SOAP)
                .extracting(Substance::inci)
                .containsExactly(soap);
        assertThat(of(cured, "house-oil"))
                .filteredOn(s -> s.kind() == Kind.OIL_LEFT)
                .extracting(Substance::inci)
                .containsExactly(inci);
    }

    /** An oil whose acid value is its saponification value is all free acid, however it is called. */
    @Test
    void an_oil_that_is_all_free_acid_gives_no_glycerol() {
        Made made = aFormula()
                .own(Own.oil("split-oil", "200").acidValue("200").material())
                .oil("split-oil", "100")
                .superfat("0")
                .made(1000);
        balances("split oil", made);
        assertThat(made.cured().grams(Kind.GLYCEROL)).isZero();
        assertThat(made.cured().grams(Kind.SOAP)).isGreaterThan(950);
    }

    /** Oil that a colour is wetted out with is the same oil. */
    @Test
    void oil_that_wets_out_a_colour_counts_with_its_oil() {
        Bench bench = aFormula().oil("coconut", "30").oil("olive-virgin", "70").superfat("5");
        Composition plain = bench.made(1000).cured();
        Composition coloured = bench.disperse("activated-charcoal", "1", TRACE, "olive-virgin", "4")
                .made(1000)
                .cured();
        assertThat(coloured.grams(Kind.SOAP)).isCloseTo(plain.grams(Kind.SOAP), within(1e-9));
        assertThat(of(coloured, "olive-virgin")).hasSameSizeAs(of(plain, "olive-virgin"));
    }

    /** KAl(SO4)2 and 3 NaOH give Al(OH)3, half a K2SO4 and one and a half Na2SO4; with potash no sodium is there. */
    @Test
    void what_alum_forms_is_called_after_both_alkalis() {
        Substance soda = of(bar().add("potassium-alum", "1", TRACE).made(1000).cured(), "potassium-alum").stream()
                .filter(s -> s.kind() == Kind.ACID_SALT)
                .findFirst()
                .orElseThrow();
        assertThat(soda.name()).isEqualTo("Aluminium hydroxide and sulphates");
        assertThat(soda.inci()).isEqualTo("Aluminum Hydroxide; Potassium Sulfate; Sodium Sulfate");
        assertThat(of(
                        bar().potassium()
                                .add("potassium-alum", "1", TRACE)
                                .made(1000)
                                .cured(),
                        "potassium-alum"))
                .filteredOn(s -> s.kind() == Kind.ACID_SALT)
                .noneMatch(s -> s.inci().contains("Sodium"));
    }

    /** Goat milk is nearly nine tenths water; the rule counts the other tenth as water too. */
    @Test
    void what_is_no_water_in_a_liquid_that_replaces_it_is_told_apart() {
        Made made = bar().waterGrams("300").replaceWater("goat-milk", "10").made(1000);
        double water =
                Tables.bundled().additive("goat-milk").orElseThrow().makeup().water();
        for (Composition composition : made.composition()) {
            assertThat(composition.water().countedGrams()).isCloseTo(100 * (1 - water), within(1e-9));
            assertThat(composition.water().addedGrams() + composition.water().countedGrams())
                    .isCloseTo(300, within(1e-9));
        }
        assertThat(bar().add("goat-milk", "10", LYE).made(1000).cured().water().countedGrams())
                .isZero();
    }
}
