package lyewright.chemistry;

import static lyewright.chemistry.Bench.aFormula;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lyewright.chemistry.BatchLine.Kind;
import lyewright.chemistry.Bench.Made;
import lyewright.formula.AcidRule;
import lyewright.formula.Addition;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Amount;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Stage;
import lyewright.formula.WaterRule;
import lyewright.material.Alkali;
import lyewright.measure.Share;
import lyewright.measure.WrittenMass;
import org.junit.jupiter.api.Test;

/** The lines of a batch: their order, where each goes, and what holds for every batch. */
class BatchLinesTest {

    private static final double TOLERANCE_GRAMS = 1e-6; // g
    private static final double TOLERANCE_SUPERFAT = 1e-7; // percent

    private static final Stage EVERY = Stage.of(Stage.Kind.EVERY_PORTION);
    private static final Stage TOP = Stage.of(Stage.Kind.TOP);

    private static Bench twoPortions() {
        return aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "100")
                .superfat("5")
                .portion("plain", "60")
                .portion("kelp", "40");
    }

    @Test
    void oils_come_first_then_additions_each_with_its_liquid_then_water_then_alkali() {
        BatchLines batch = twoPortions()
                .disperse("green-clay", "1", Stage.portion("kelp"), "water", "3")
                .add("sea-salt-coarse", "1", TOP)
                .mix("50", "50", AlkaliChoice.Basis.MOLES)
                .laidOut()
                .orThrow();
        assertThat(batch.lines())
                .extracting(BatchLine::key)
                .containsExactly("fat", "green-clay", "water", "sea-salt-coarse", "water", "naoh", "koh");
        assertThat(batch.lines())
                .extracting(BatchLine::kind)
                .containsExactly(
                        Kind.OIL,
                        Kind.ADDITION,
                        Kind.DISPERSING_LIQUID,
                        Kind.ADDITION,
                        Kind.WATER,
                        Kind.ALKALI,
                        Kind.ALKALI);
    }

    @Test
    void an_addition_to_every_portion_is_shared_by_the_portions_shares() {
        Made made = twoPortions().disperse("kaolin", "5", EVERY, "water", "2").made(1000);
        List<BatchLine> lines = made.batch().lines();
        for (int i = 0; i < lines.size(); i++) {
            BatchLine line = lines.get(i);
            double share = line.portion() == 0 ? 0.6 : 0.4;
            if (line.key().equals("kaolin")) {
                assertThat(made.masses()[i]).isCloseTo(50 * share, within(TOLERANCE_GRAMS));
            }
            if (line.kind() == Kind.DISPERSING_LIQUID) {
                assertThat(made.masses()[i]).isCloseTo(100 * share, within(TOLERANCE_GRAMS));
            }
        }
        assertThat(made.grams("kaolin")).isCloseTo(50, within(TOLERANCE_GRAMS));
        assertThat(lines)
                .filteredOn(line -> line.key().equals("kaolin"))
                .extracting(BatchLine::portion)
                .containsExactly(0, 1);
    }

    @Test
    void without_portions_every_portion_is_the_whole_batter() {
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .oil("fat", "100")
                .superfat("5")
                .add("kaolin", "5", EVERY)
                .made(1000);
        assertThat(made.batch().lines())
                .filteredOn(line -> line.key().equals("kaolin"))
                .singleElement()
                .satisfies(line -> assertThat(line.portion()).isEqualTo(-1));
        assertThat(made.grams("kaolin")).isCloseTo(50, within(TOLERANCE_GRAMS));
    }

    @Test
    void an_addition_to_one_portion_knows_which() {
        BatchLines batch = twoPortions()
                .add("green-clay", "1", Stage.portion("kelp"))
                .laidOut()
                .orThrow();
        assertThat(batch.lines())
                .filteredOn(line -> line.key().equals("green-clay"))
                .singleElement()
                .satisfies(line -> assertThat(line.portion()).isEqualTo(1));
    }

    @Test
    void percent_of_portion_oils_is_of_the_portions_share_of_the_oils() {
        Addition clay = new Addition(
                "green-clay",
                new Amount.Percent(Share.ofPercent("1"), Amount.Base.PORTION_OILS),
                Stage.portion("kelp"),
                Optional.empty(),
                false);
        assertThat(twoPortions().add(clay).made(1000).grams("green-clay")).isCloseTo(4, within(TOLERANCE_GRAMS));
    }

    @Test
    void the_base_batter_is_all_that_goes_neither_into_portions_nor_on_top() {
        BatchLines batch = twoPortions()
                .add("sugar", "1", Stage.of(Stage.Kind.LYE))
                .add("tocopherol", "1", Stage.of(Stage.Kind.OILS))
                .add("kaolin", "1", Stage.of(Stage.Kind.TRACE))
                .disperse("green-clay", "1", Stage.portion("kelp"), "water", "3")
                .add("sea-salt", "20", EVERY)
                .add("lavender-buds", "1", TOP)
                .laidOut()
                .orThrow();
        assertThat(batch.lines())
                .filteredOn(BatchLine::inBaseBatter)
                .extracting(BatchLine::key)
                .containsExactly("fat", "sugar", "tocopherol", "kaolin", "water", "naoh");
        assertThat(batch.lines())
                .filteredOn(BatchLine::onTop)
                .extracting(BatchLine::key)
                .containsExactly("lavender-buds");
        assertThat(batch.lines())
                .filteredOn(BatchLine::inLyeJug)
                .extracting(BatchLine::key)
                .containsExactly("sugar", "water", "naoh");
    }

    /** 500 batches at random, seed 2026: what goes in comes out, and what is asked is made. */
    @Test
    void whatever_the_formula_mass_in_is_mass_out_and_the_superfat_is_as_asked() {
        Random random = new Random(2026L);
        for (int i = 0; i < 500; i++) {
            int superfat = random.nextInt(25);
            Bench bench = generated(random).superfat(String.valueOf(superfat));
            double oils = 100 + random.nextInt(5000);
            Made made = bench.made(oils);
            String told = "case %d: %s".formatted(i, bench.formula());
            assertThat(made.total()).as(told).isCloseTo(made.batch().batchAt(oils), within(1e-6));
            assertThat(made.batch().oilsFor(made.total())).as(told).isCloseTo(oils, within(1e-6));
            assertThat(made.superfat()).as(told).isCloseTo(superfat, within(TOLERANCE_SUPERFAT));
            double oilsFound = made.grams(Kind.OIL)
                    + made.grams(Kind.DISPERSING_LIQUID, "coconut")
                    + made.grams(Kind.DISPERSING_LIQUID, "castor");
            assertThat(oilsFound).as(told).isCloseTo(oils, within(1e-6));
            double cured = made.reaction().curedGrams(0);
            assertThat(cured + made.reaction().waterGrams() + made.reaction().waterFormedGrams())
                    .as(told)
                    .isCloseTo(made.total(), within(1e-6));
        }
    }

    private static Bench generated(Random random) {
        int coconut = 1 + random.nextInt(98);
        OwnMaterial milk = Own.of("milk", "milk").water("88").fat("4", "230").material();
        Bench bench = aFormula()
                .own(milk)
                .oil("coconut", String.valueOf(coconut))
                .oil("castor", String.valueOf(100 - coconut))
                .acids(AcidRule.COMPENSATE)
                .purity(97 + 2 * random.nextDouble(), 88 + 4 * random.nextDouble())
                .lye(String.valueOf(25 + random.nextInt(10)));
        if (random.nextBoolean()) {
            bench.mix("50", "50", AlkaliChoice.Basis.AS_WEIGHED);
        }
        if (random.nextBoolean()) {
            bench.portion("one", "35").portion("two", "65");
        }
        if (random.nextBoolean()) {
            bench.disperse("kaolin", "2", EVERY, random.nextBoolean() ? "water" : "glycerin", "2");
        }
        if (random.nextBoolean()) {
            bench.disperse("mica-white", "0.5", Stage.of(Stage.Kind.TRACE), coconut > 50 ? "coconut" : "castor", "3");
        }
        if (random.nextBoolean()) {
            bench.add("citric-acid-anhydrous", "1", Stage.of(Stage.Kind.LYE));
        }
        if (random.nextBoolean()) {
            bench.replaceWater("milk", "10");
        }
        if (random.nextBoolean()) {
            bench.add(new Addition(
                    "sea-salt",
                    new Amount.Percent(Share.ofPercent("20"), Amount.Base.BATCH),
                    EVERY,
                    Optional.empty(),
                    false));
        }
        if (random.nextBoolean()) {
            bench.add(new Addition(
                    "kaolin", new Amount.Weight(WrittenMass.ofGrams("7"), true), TOP, Optional.empty(), false));
        }
        return bench;
    }

    @Test
    void twice_the_oils_is_twice_of_everything_that_is_not_fixed() {
        Bench bench = twoPortions()
                .disperse("green-clay", "1", Stage.portion("kelp"), "water", "3")
                .add("sea-salt", "30", EVERY);
        double[] once = bench.made(1000).masses();
        double[] twice = bench.made(2000).masses();
        for (int i = 0; i < once.length; i++) {
            assertThat(twice[i]).isCloseTo(2 * once[i], within(TOLERANCE_GRAMS));
        }
    }

    @Test
    void fixed_additions_make_the_oils_for_a_batch_fewer_by_what_the_line_says() {
        Addition fixed = new Addition(
                "kaolin",
                new Amount.Weight(WrittenMass.ofGrams("30"), true),
                Stage.of(Stage.Kind.TRACE),
                Optional.empty(),
                false);
        BatchLines without =
                aFormula().oil("coconut", "100").superfat("5").laidOut().orThrow();
        BatchLines with = aFormula()
                .oil("coconut", "100")
                .superfat("5")
                .add(fixed)
                .laidOut()
                .orThrow();
        double fewer = without.oilsFor(1500) - with.oilsFor(1500);
        assertThat(fewer).isCloseTo(30 / without.total().perOils(), within(TOLERANCE_GRAMS));
        assertThat(with.oilsFor(20)).isNegative();
    }

    @Test
    void alkali_and_water_follow_the_fixed_milk_of_a_batch() {
        OwnMaterial milk = Own.of("milk", "milk").water("88").fat("4", "230").material();
        Addition fixed = new Addition(
                "milk",
                new Amount.Weight(WrittenMass.ofGrams("100"), true),
                Stage.of(Stage.Kind.LYE),
                Optional.empty(),
                true);
        Made made = aFormula()
                .own(Own.oil("fat", "190").material())
                .own(milk)
                .oil("fat", "100")
                .superfat("5")
                .water(new WaterRule.Ratio(new BigDecimal("2"), BigDecimal.ONE, false))
                .add(fixed)
                .made(500);
        double alkali = 0.95 * (500 * 190 + 100 * 0.04 * 230) / 56_105;
        assertThat(made.reaction().alkali()).isCloseTo(alkali, within(1e-9));
        assertThat(made.grams("water"))
                .isCloseTo(2 * alkali * Alkali.SODIUM.molarMass() - 100, within(TOLERANCE_GRAMS));
    }
}
