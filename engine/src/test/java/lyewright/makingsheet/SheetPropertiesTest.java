package lyewright.makingsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import lyewright.chemistry.BatchLine;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.BatterVolume;
import lyewright.chemistry.Reaction;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.fill.Moulds;
import lyewright.formula.AcidRule;
import lyewright.makingsheet.PortionSheet.PortionAddition;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

/** What holds for every sheet, on generated formulas of every shape. A case is its seed. */
class SheetPropertiesTest {

    private static final int CASES = 2000;

    private static final List<Equipment> REGISTERS = List.of(
            Equipment.USUAL,
            register("shop:30kg:5g"),
            register("counter:25lb:0.05oz"),
            register("kitchen:20kg:1g"),
            register("counter:25lb:0.1oz,fine:1lb:0.005oz"),
            register("shop:30kg:5g,kitchen:5kg:1g,fine:200g:0.01g"),
            register("shop:30kg:5g,kitchen:5kg:1g,fine:500g:0.1g")
                    .withVessels("lye jug:312.5g,oil pot:1480g,jug plain:205g,jug kelp:188.25g")
                    .orThrow());

    private static Equipment register(String text) {
        return Equipment.parseBalances(text).orThrow();
    }

    /** One generated case that made a sheet. */
    private record Made(long seed, AFormula formula, Fill fill, MakingSheet sheet) {

        double[] exact() {
            return sheet.batch().massesAt(sheet.filled().oilsGrams());
        }

        @Override
        public String toString() {
            return "case " + seed;
        }
    }

    private static List<Made> made() {
        List<Made> made = new ArrayList<>();
        for (long seed = 0; seed < CASES; seed++) {
            AFormula formula = SomeFormulas.of(seed);
            Random random = new Random(~seed);
            Fill fill = Fill.mouldMass(300 + 40 * random.nextInt(100)).holdingBack(random.nextInt(4) / 100.0);
            Outcome<MakingSheet> sheet = formula.trySheet(fill, REGISTERS.get((int) (seed % REGISTERS.size())));
            if (sheet instanceof Outcome.Ok<MakingSheet> ok) {
                made.add(new Made(seed, formula, fill, ok.value()));
            } else {
                assertThat(sheet.problems()).as("case %d", seed).allSatisfy(problem -> {
                    assertThat(problem.what()).isNotBlank();
                    assertThat(problem.remedy()).isNotBlank();
                });
            }
        }
        assertThat(made).as("most of the generated formulas make a sheet").hasSizeGreaterThan(CASES * 8 / 10);
        return made;
    }

    private static final List<Made> MADE = made();

    @Test
    void mass_in_is_mass_out() {
        for (Made m : MADE) {
            double weighed = Sheets.weighings(m.sheet).stream()
                    .mapToDouble(w -> w.weigh().grams())
                    .sum();
            assertThat(weighed).as(m.toString()).isEqualTo(m.sheet.totals().batch(), within(1e-6));

            double exact = 0;
            for (double grams : m.exact()) {
                exact += grams;
            }
            double batch = m.sheet.batch().batchAt(m.sheet.filled().oilsGrams());
            assertThat(exact).as(m.toString()).isEqualTo(batch, within(1e-9 * batch));
            assertThat(exact * (1 - m.fill.holdBack()))
                    .as("%s: what reaches the mould", m)
                    .isEqualTo(m.sheet.filled().targetGrams().orElseThrow(), within(1e-9 * batch));
        }
    }

    @Test
    void every_line_of_the_batch_is_weighed_once_but_water_of_which_there_is_none() {
        for (Made m : MADE) {
            Set<BatchLine> left = Collections.newSetFromMap(new IdentityHashMap<>());
            double[] exact = m.exact();
            for (int i = 0; i < exact.length; i++) {
                BatchLine line = m.sheet.batch().lines().get(i);
                if (line.kind() != BatchLine.Kind.WATER || exact[i] > 0) {
                    left.add(line);
                }
            }
            for (Weighing w : Sheets.weighings(m.sheet)) {
                assertThat(left.remove(w.line()))
                        .as("%s: %s", m, w.line().key())
                        .isTrue();
            }
            assertThat(left).as(m.toString()).isEmpty();
        }
    }

    @Test
    void every_weighed_mass_is_a_whole_number_of_steps_of_its_balance_to_the_milligram() {
        for (Made m : MADE) {
            for (Weighing w : Sheets.weighings(m.sheet)) {
                double step = w.balance().stepGrams();
                double steps = Math.rint(w.weigh().grams() / step);
                assertThat(w.weigh().milligrams())
                        .as("%s: %s on %s", m, w.weigh(), w.balance())
                        .isEqualTo(Math.round(steps * step * 1000));
            }
        }
    }

    @Test
    void what_is_weighed_is_within_half_a_step_of_what_is_meant_but_for_alkali() {
        for (Made m : MADE) {
            for (Weighing w : Sheets.weighings(m.sheet)) {
                if (w.line().kind() != BatchLine.Kind.ALKALI) {
                    assertThat(w.weigh().grams())
                            .as("%s: %s", m, w.line().key())
                            .isEqualTo(w.exactGrams(), within(w.balance().stepGrams() / 2 + 0.0005 + 1e-9));
                }
            }
        }
    }

    @Test
    void readings_are_running_sums_with_the_vessels_weight() {
        for (Made m : MADE) {
            for (Vessel vessel : m.sheet.vessels()) {
                double reading = vessel.emptyGrams();
                for (Weighing w : vessel.weighings()) {
                    reading += w.weigh().grams();
                    assertThat(w.reading().grams())
                            .as("%s: %s in the %s", m, w.line().key(), vessel.name())
                            .isEqualTo(reading, within(0.0006));
                }
            }
        }
    }

    @Test
    void alkali_comes_last() {
        for (Made m : MADE) {
            List<Weighing> weighings = Sheets.weighings(m.sheet);
            boolean alkali = false;
            for (Weighing w : weighings) {
                assertThat(alkali && w.line().kind() != BatchLine.Kind.ALKALI)
                        .as("%s: %s after the alkali", m, w.line().key())
                        .isFalse();
                alkali |= w.line().kind() == BatchLine.Kind.ALKALI;
            }
            assertThat(alkali).as(m.toString()).isTrue();
        }
    }

    @Test
    void the_balance_carries_what_stands_on_it_wherever_one_does() {
        for (Made m : MADE) {
            for (Vessel vessel : m.sheet.vessels()) {
                double load = load(m.sheet, vessel);
                Balance balance = vessel.weighings().get(0).balance();
                boolean carried = m.sheet.equipment().balances().stream().anyMatch(b -> b.capacityGrams() >= load);
                assertThat(vessel.weighings())
                        .as("%s: one vessel, one balance", m)
                        .allSatisfy(w -> assertThat(w.balance()).isEqualTo(balance));
                if (carried) {
                    assertThat(load)
                            .as("%s: the %s on %s", m, vessel.name(), balance)
                            .isLessThanOrEqualTo(balance.capacityGrams());
                }
            }
        }
    }

    @Test
    void no_finer_balance_would_carry_what_stands_on_one() {
        for (Made m : MADE) {
            for (Vessel vessel : m.sheet.vessels()) {
                double load = load(m.sheet, vessel);
                Balance balance = vessel.weighings().get(0).balance();
                assertThat(m.sheet.equipment().balances())
                        .as("%s: the %s of %s g stands on %s", m, vessel.name(), load, balance)
                        .noneMatch(b -> b.stepGrams() < balance.stepGrams()
                                && b.capacityGrams()
                                        >= load
                                                + b.stepGrams()
                                                        * vessel.weighings().size());
            }
        }
    }

    /** What stands on the balance at last, with the vessel as it usually is where that is tared. */
    private static double load(MakingSheet sheet, Vessel vessel) {
        double reading =
                vessel.weighings().get(vessel.weighings().size() - 1).reading().grams();
        return vessel.emptyGrams() > 0
                ? reading
                : reading + vessel.kind().usualGrams(sheet.formula().tables());
    }

    @Test
    void the_sheets_superfat_is_never_under_the_one_asked() {
        int asked = 0;
        for (long seed = 0; seed < 3 * CASES; seed++) {
            AFormula formula = SomeFormulas.of(seed);
            for (Equipment register : REGISTERS.subList(1, 4)) {
                Outcome<MakingSheet> sheet = formula.trySheet(Fill.mouldMass(900.0 + seed % 500), register);
                if (sheet instanceof Outcome.Ok<MakingSheet> ok
                        && ok.value().askedSuperfatPercent().isPresent()) {
                    asked++;
                    assertThat(ok.value().sheetSuperfatPercent())
                            .as("case %d on %s", seed, register.balances())
                            .isGreaterThanOrEqualTo(
                                    ok.value().askedSuperfatPercent().get() - 1e-9);
                }
            }
        }
        assertThat(asked).isGreaterThan(4 * CASES);
    }

    @Test
    void a_given_alkali_never_makes_less_superfat_by_rounding() {
        int given = 0;
        for (Made m : MADE) {
            if (m.sheet.askedSuperfatPercent().isEmpty()) {
                given++;
                double written = Reaction.of(m.sheet.batch().lines(), m.exact()).superfatPercent();
                assertThat(m.sheet.sheetSuperfatPercent()).as(m.toString()).isGreaterThanOrEqualTo(written - 1e-9);
            }
        }
        assertThat(given).isGreaterThan(CASES / 50);
    }

    @Test
    void the_superfat_asked_is_what_the_unrounded_masses_have() {
        for (Made m : MADE) {
            if (m.sheet.askedSuperfatPercent().isPresent()
                    && m.sheet.formula().formula().acidRule() == AcidRule.COMPENSATE) {
                assertThat(Reaction.of(m.sheet.batch().lines(), m.exact()).superfatPercent())
                        .as(m.toString())
                        .isEqualTo(m.sheet.askedSuperfatPercent().get(), within(1e-9));
            }
        }
    }

    @Test
    void the_target_is_met_within_what_rounding_may_move() {
        for (Made m : MADE) {
            double may = 0;
            for (Weighing w : Sheets.weighings(m.sheet)) {
                double step = w.balance().stepGrams() + 0.001;
                // alkali may lose a whole step, and what other masses lose or gain changes it by under half of that
                may += w.line().kind() == BatchLine.Kind.ALKALI ? step : 0.75 * step;
            }
            assertThat(Math.abs(m.sheet.totals().offTarget().orElseThrow()))
                    .as(m.toString())
                    .isLessThanOrEqualTo(may);
            assertThat(m.sheet.totals().mould())
                    .as(m.toString())
                    .isEqualTo(m.sheet.totals().batch() * (1 - m.fill.holdBack()), within(1e-9));
        }
    }

    @Test
    void one_batch_told_six_ways_is_one_sheet() {
        for (Made m : MADE) {
            BatchLines batch = m.sheet.batch();
            double reaching = 1 - m.fill.holdBack();
            double mouldMass = m.sheet.filled().targetGrams().orElseThrow();
            double[] exact = m.exact();
            double volume = reaching * BatterVolume.millilitres(batch, exact);
            double cured = reaching
                    * Reaction.of(batch.lines(), exact)
                            .curedGrams(m.sheet.formula().curedWater());
            int bars = 2 + (int) (m.seed % 11);

            assertSame(m, "oils", told(m, new Fill.OilMass(m.sheet.filled().oilsGrams()), Mould.UNKNOWN));
            assertSame(m, "bars as cut", told(m, new Fill.Bars(bars, mouldMass / bars, false), Mould.UNKNOWN));
            assertSame(m, "bars cured", told(m, new Fill.Bars(bars, cured / bars, true), Mould.UNKNOWN));
            assertSame(m, "box", told(m, new Fill.FullMould(), Moulds.boxOf(volume)));
            assertSame(m, "water fill", told(m, new Fill.FullMould(), Moulds.waterFill(volume * 0.9982)));
            assertSame(m, "usual mass", told(m, new Fill.FullMould(), Moulds.usual(mouldMass, batch)));
        }
    }

    private static MakingSheet told(Made m, Fill.Target target, Mould mould) {
        Fill fill = new Fill(target, mould, Optional.empty(), m.fill.holdBack());
        return m.formula.sheet(fill, m.sheet.equipment());
    }

    private static void assertSame(Made m, String way, MakingSheet other) {
        assertThat(other.filled().oilsGrams())
                .as("%s by %s", m, way)
                .isEqualTo(
                        m.sheet.filled().oilsGrams(),
                        within(1e-9 * m.sheet.filled().oilsGrams()));
        assertThat(weights(other)).as("%s by %s", m, way).isEqualTo(weights(m.sheet));
        assertThat(other.sheetSuperfatPercent()).as("%s by %s", m, way).isEqualTo(m.sheet.sheetSuperfatPercent());
    }

    private static List<String> weights(MakingSheet sheet) {
        return Sheets.weighings(sheet).stream()
                .map(w -> w.line().key() + " " + w.portion() + " " + w.weigh() + " " + w.reading() + " " + w.balance())
                .toList();
    }

    @Test
    void without_fixed_amounts_all_masses_scale_together() {
        int scaled = 0;
        for (long seed = 0; seed < CASES; seed++) {
            Outcome<BatchLines> laidOut = SomeFormulas.withoutFixedAmounts(seed).laidOut();
            if (!(laidOut instanceof Outcome.Ok<BatchLines> ok)) {
                continue;
            }
            scaled++;
            double factor = 0.1 + (seed % 97) / 10.0;
            double[] once = ok.value().massesAt(640);
            double[] times = ok.value().massesAt(640 * factor);
            for (int i = 0; i < once.length; i++) {
                assertThat(times[i])
                        .as("case %d, %s", seed, ok.value().lines().get(i).key())
                        .isEqualTo(once[i] * factor, within(1e-9 * (1 + Math.abs(once[i] * factor))));
            }
            assertThat(ok.value().total().fixed()).as("case %d", seed).isZero();
        }
        assertThat(scaled).isGreaterThan(CASES * 9 / 10);
    }

    @Test
    void a_fixed_addition_shifts_the_oils_by_what_its_line_says() {
        int shifted = 0;
        for (long seed = 0; seed < CASES; seed++) {
            BatchLines without = SomeFormulas.withoutFixedAmounts(seed).batch();
            AFormula formula = SomeFormulas.withoutFixedAmounts(seed).add("kaolin", "30 g fixed", "trace");
            boolean inGlycerin = seed % 2 == 0;
            if (inGlycerin) {
                formula.dispersed("glycerin", "2 to 1");
            }
            BatchLines with = formula.batch();

            // 30 g, and 60 g of glycerin with it, take their place in the mould from everything else
            double takes = inGlycerin ? 90 : 30;
            double oils = without.oilsFor(2000);
            if (oils > 0) {
                shifted++;
                double share = oils / 2000;
                assertThat(with.oilsFor(2000))
                        .as("case %d", seed)
                        .isEqualTo(expectedOils(without, 2000 - takes, share), within(1e-9 * oils));
            }
        }
        assertThat(shifted).isGreaterThan(CASES * 9 / 10);
    }

    /** A share of the batch counts the fixed addition too, so what it takes is of all 2000 g, not of what is left. */
    private static double expectedOils(BatchLines without, double left, double share) {
        double ofBatch = 2000 * without.total().perBatch();
        return share * 2000 * (left - ofBatch) / (2000 - ofBatch);
    }

    @Test
    void a_fixed_acid_shifts_the_oils_by_its_alkali_and_water_too() {
        // 30 g of citric acid take 30 × 0.015615 mol: 18.736 g of NaOH and, 2 to 1, 37.473 g of water
        AFormula without = AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("20 %")
                .water("2 to 1");
        double perGram = 1.479964;
        assertThat(without.batch().oilsFor(1500)).isEqualTo(1500 / perGram, within(1e-6));

        double taken = 30 * 0.0156150 * 39.997;
        assertThat(without.add("citric-acid-anhydrous", "30 g", "lye").batch().oilsFor(1500))
                .isEqualTo((1500 - 30 - 3 * taken) / perGram, within(1e-3));
    }

    @Test
    void portions_add_up() {
        int portioned = 0;
        for (Made m : MADE) {
            if (m.sheet.portions().isEmpty()) {
                continue;
            }
            portioned++;
            double top = weighed(m, BatchLine::onTop);
            double base = weighed(m, BatchLine::inBaseBatter);
            double baseOfPortions = 0;
            double all = 0;
            double shares = 0;
            double oils = 0;
            for (PortionSheet portion : m.sheet.portions()) {
                baseOfPortions += portion.baseBatterGrams();
                all += portion.totalGrams();
                shares += portion.sharePercent();
                oils += portion.oilsGrams();
                assertPortion(m, portion);
            }
            assertThat(shares).as(m.toString()).isEqualTo(100, within(1e-9));
            assertThat(baseOfPortions).as(m.toString()).isEqualTo(base, within(1e-6));
            assertThat(all).as(m.toString()).isEqualTo(m.sheet.totals().batch() - top, within(1e-6));
            assertThat(oils).as(m.toString()).isEqualTo(m.sheet.totals().oils(), within(1e-6));
        }
        assertThat(portioned).isGreaterThan(CASES / 3);
    }

    private static double weighed(Made m, Predicate<BatchLine> which) {
        return Sheets.weighings(m.sheet).stream()
                .filter(w -> which.test(w.line()))
                .mapToDouble(w -> w.weigh().grams())
                .sum();
    }

    private static void assertPortion(Made m, PortionSheet portion) {
        String as = m + ", portion " + portion.name();
        assertThat(portion.waterPercentOfOils())
                .as(as)
                .isEqualTo(100 * portion.waterGrams() / portion.oilsGrams(), within(1e-9));
        assertThat(portion.emptyGrams()).as(as).isEqualTo(m.sheet.equipment().vesselGrams("jug " + portion.name()));
        double reading = portion.emptyGrams() + portion.baseBatterGrams();
        for (PortionAddition addition : portion.additions()) {
            reading += addition.grams() + addition.liquidGrams();
            assertThat(addition.readingGrams()).as("%s, %s", as, addition.of()).isEqualTo(reading, within(1e-6));
            assertThat(addition.gramsPerKilogramPortionOils() * portion.sharePercent() / 100)
                    .as("%s, %s on either base", as, addition.of())
                    .isEqualTo(addition.gramsPerKilogramOils(), within(1e-9));
            assertThat(addition.gramsPerKilogramOils() * m.sheet.totals().oils() / 1000)
                    .as("%s, %s", as, addition.of())
                    .isEqualTo(addition.grams(), within(1e-6));
        }
        assertThat(portion.totalGrams() + portion.emptyGrams()).as(as).isEqualTo(reading, within(1e-6));
    }

    @Test
    void water_of_all_portions_is_all_water_less_what_lies_on_top() {
        for (Made m : MADE) {
            if (!m.sheet.portions().isEmpty()) {
                double water = m.sheet.portions().stream()
                        .mapToDouble(PortionSheet::waterGrams)
                        .sum();
                double expected = Sheets.weighings(m.sheet).stream()
                        .filter(w -> !w.line().onTop())
                        .mapToDouble(w -> w.weigh().grams() * w.line().water())
                        .sum();
                assertThat(water).as(m.toString()).isEqualTo(expected, within(1e-6));
            }
        }
    }

    @Test
    void water_by_the_rule_and_water_brought_are_never_one() {
        for (Made m : MADE) {
            double rule = m.sheet
                    .batch()
                    .waterByRule()
                    .at(
                            m.sheet.filled().oilsGrams(),
                            m.sheet.batch().batchAt(m.sheet.filled().oilsGrams()));
            double may = Sheets.weighings(m.sheet).stream()
                    .mapToDouble(w -> w.balance().stepGrams())
                    .sum();
            assertThat(m.sheet.totals().water()).as(m.toString()).isEqualTo(rule, within(may));
        }
    }

    @Test
    void every_figure_of_a_sheet_is_a_number() {
        for (Made m : MADE) {
            LyeSheet lye = m.sheet.lye();
            assertThat(new double[] {
                        lye.naohGrams(),
                        lye.kohGrams(),
                        lye.potassiumMolesPercent(),
                        lye.potassiumPurePercent(),
                        lye.potassiumWeighedPercent(),
                        lye.waterInJugGrams(),
                        lye.concentrationPercent(),
                        lye.pureStrengthPercent(),
                        lye.weighedStrengthPercent(),
                        lye.waterLeftGrams(),
                        lye.saltPerWaterPercent(),
                        lye.saltHeldPercent(),
                        lye.saltUndissolvedPercent(),
                        m.sheet.batterDensity(),
                        m.sheet.sheetSuperfatPercent(),
                        m.sheet.totals().water(),
                        m.sheet.totals().waterBrought()
                    })
                    .as(m.toString())
                    .doesNotContain(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
            assertThat(m.sheet.batterDensity()).as(m.toString()).isBetween(0.85, 1.6);
        }
    }

    @Test
    void cautions_are_whole_and_stand_gravest_first() {
        for (Made m : MADE) {
            assertThat(m.sheet.cautions())
                    .as(m.toString())
                    .extracting(Caution::level)
                    .isSortedAccordingTo(Comparator.reverseOrder());
            assertThat(m.sheet.cautions()).as(m.toString()).allSatisfy(caution -> {
                assertThat(caution.text()).endsWith(".").doesNotContain("{}", "NaN");
                assertThat(caution.remedy()).endsWith(".");
                assertThat(caution.source()).isNotBlank();
            });
        }
    }
}
