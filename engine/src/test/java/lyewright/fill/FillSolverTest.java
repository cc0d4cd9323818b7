package lyewright.fill;

import static lyewright.fill.Moulds.box;
import static lyewright.fill.Moulds.boxOf;
import static lyewright.fill.Moulds.fullOf;
import static lyewright.fill.Moulds.usual;
import static lyewright.fill.Moulds.waterFill;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import lyewright.chemistry.BatchLines;
import lyewright.chemistry.BatterVolume;
import lyewright.chemistry.Reaction;
import lyewright.makingsheet.AFormula;
import lyewright.makingsheet.HouseMaterials;
import lyewright.measure.Outcome;
import org.junit.jupiter.api.Test;

class FillSolverTest {

    /** 1000 g of oil take 5 mol; at 20 % superfat 4 mol, 159.988 g; water 2 to 1, 319.976 g: 1479.964 g in all. */
    private static final double PER_GRAM_OF_OIL = 1.479964;

    private static AFormula plain() {
        return AFormula.ofOils("house-oil", "100 %")
                .own(HouseMaterials.oilOfFive("house-oil"))
                .superfat("20 %")
                .water("2 to 1");
    }

    private static double oils(AFormula formula, Fill fill) {
        return solve(formula, fill).oilsGrams();
    }

    private static Filled solve(AFormula formula, Fill fill) {
        return FillSolver.solve(formula.batch(), fill).orThrow();
    }

    private static Fill cut(Fill.Target target, Mould mould, String cut) {
        return new Fill(target, mould, Optional.of(CutPlan.parse(cut).orThrow()), 0);
    }

    @Test
    void a_mould_mass_is_divided_by_what_a_gram_of_oil_brings() {
        assertThat(oils(plain(), Fill.mouldMass(1479.964))).isEqualTo(1000, within(1e-9));
        assertThat(oils(plain(), Fill.mouldMass(1500))).isEqualTo(1500 / PER_GRAM_OF_OIL, within(1e-9));
    }

    @Test
    void what_is_held_back_is_made_on_top() {
        // 1470 g in the mould are 98 % of 1500 g
        Fill fill = Fill.mouldMass(1470).holdingBack(0.02);

        assertThat(oils(plain(), fill)).isEqualTo(1500 / PER_GRAM_OF_OIL, within(1e-9));
        assertThat(solve(plain(), fill).targetGrams()).contains(1470.0);
    }

    @Test
    void a_mass_of_oils_is_itself_and_asks_for_no_mould_mass() {
        Filled filled = solve(plain(), Fill.oilMass(740).holdingBack(0.05));

        assertThat(filled.oilsGrams()).isEqualTo(740);
        assertThat(filled.targetGrams()).isEmpty();
    }

    @Test
    void bars_without_a_cut_come_to_their_count_times_their_mass() {
        Filled filled =
                solve(plain(), new Fill(new Fill.Bars(10, 147.9964, false), Mould.UNKNOWN, Optional.empty(), 0));

        assertThat(filled.oilsGrams()).isEqualTo(1000, within(1e-9));
        assertThat(filled.targetGrams().orElseThrow()).isEqualTo(1479.964, within(1e-9));
    }

    @Test
    void cured_bars_are_all_that_is_not_water_over_one_less_their_water() {
        // 1479.964 − 319.976 = 1159.988 g dry; with a tenth water 1288.8756 g, ten bars of 128.88756 g
        AFormula formula = plain().curedWater("10 %");
        Fill fill = new Fill(new Fill.Bars(10, 128.8875556, true), Mould.UNKNOWN, Optional.empty(), 0);

        assertThat(oils(formula, fill)).isEqualTo(1000, within(1e-4));
    }

    @Test
    void cured_bars_lose_the_water_that_an_acid_forms_too() {
        // 0.1 mol of citric acid's protons form 0.1 × 18.015 = 1.8015 g of water
        AFormula formula = plain().curedWater("10 %").add("citric-acid-anhydrous", "6.404 g per kg oils", "lye");
        BatchLines batch = formula.batch();
        Reaction reaction = Reaction.of(batch.lines(), batch.massesAt(1000));
        double dry = reaction.totalGrams() - reaction.waterGrams() - 1.8015;

        double oils = oils(formula, new Fill(new Fill.Bars(1, dry / 0.9, true), Mould.UNKNOWN, Optional.empty(), 0));
        assertThat(oils).isEqualTo(1000, within(0.01));
    }

    @Test
    void bars_that_should_hold_more_water_than_was_poured_are_the_pour() {
        // 1 to 1: 159.988 g of water in 1319.976 g, 12.1 %, so a bar of 30 % water cannot be
        AFormula formula = plain().water("1 to 1").curedWater("30 %");
        Fill cured = new Fill(new Fill.Bars(1, 1319.976, true), Mould.UNKNOWN, Optional.empty(), 0);

        assertThat(oils(formula, cured)).isEqualTo(1000, within(1e-6));
    }

    @Test
    void bars_of_a_cut_mould_are_a_share_of_what_is_in_it() {
        // 300 mm in 26 mm: 11 bars and 14 mm over, so a bar of 100 g asks for 100 × 300 / 26 g in the mould
        Filled filled = solve(plain(), cut(new Fill.Bars(11, 100, false), box(300, 80, 65), "26mm"));

        assertThat(filled.targetGrams().orElseThrow()).isEqualTo(100 * 300 / 26.0, within(1e-9));
        assertThat(filled.cut().orElseThrow().bars()).isEqualTo(11);
    }

    @Test
    void bars_asked_and_bars_cut_must_be_as_many() {
        Outcome<Filled> filled =
                FillSolver.solve(plain().batch(), cut(new Fill.Bars(10, 110, false), box(300, 80, 65), "25mm"));

        assertThat(filled.problems()).hasSize(1);
        assertThat(filled.problems().get(0).sentence())
                .isEqualTo("this mould and cut give 12 bars, not 10; ask for 12 bars, or change the cut");
    }

    @Test
    void a_cut_without_the_moulds_measures_is_refused() {
        Outcome<Filled> filled = FillSolver.solve(plain().batch(), cut(new Fill.FullMould(), waterFill(1450), "25mm"));

        assertThat(filled.problems().get(0).what()).isEqualTo("a cut needs the mould's measures");
    }

    @Test
    void a_cut_that_the_mould_cannot_take_is_refused() {
        Outcome<Filled> filled = FillSolver.solve(
                plain().batch(), cut(new Fill.MouldMass(1500), Moulds.of(new Shape.Cavities(12, 95)), "25mm"));

        assertThat(filled.problems().get(0).what()).isEqualTo("cavities are bars already");
    }

    @Test
    void a_full_box_holds_its_volume_of_batter() {
        AFormula formula = plain();
        BatchLines batch = formula.batch();

        double oils = oils(formula, fullOf(box(300, 80, 65)));
        assertThat(BatterVolume.millilitres(batch, batch.massesAt(oils))).isEqualTo(1560, within(1e-6));
    }

    @Test
    void a_full_box_is_overfilled_by_what_is_held_back() {
        AFormula formula = plain();
        BatchLines batch = formula.batch();
        Fill fill = fullOf(box(300, 80, 65)).holdingBack(0.04);

        double oils = oils(formula, fill);
        assertThat(0.96 * BatterVolume.millilitres(batch, batch.massesAt(oils))).isEqualTo(1560, within(1e-6));
        assertThat(solve(formula, fill).targetGrams().orElseThrow())
                .isEqualTo(0.96 * batch.batchAt(oils), within(1e-9));
    }

    @Test
    void a_water_fill_is_a_volume_by_waters_density() {
        // 998.2 g of water at 20 °C are 1000 ml (density of water 0.9982 g/ml, CRC Handbook)
        assertThat(oils(plain(), fullOf(waterFill(998.2)))).isEqualTo(oils(plain(), fullOf(boxOf(1000))), within(1e-7));
    }

    @Test
    void toppings_take_no_room_in_the_mould() {
        AFormula topped = plain().add("rose-petals", "20 g per kg oils", "top");

        assertThat(oils(topped, fullOf(boxOf(1000)))).isEqualTo(oils(plain(), fullOf(boxOf(1000))), within(1e-7));
    }

    @Test
    void a_usual_mass_of_the_same_formula_is_a_mould_mass() {
        BatchLines batch = plain().batch();

        assertThat(oils(plain(), fullOf(usual(1479.964, batch)))).isEqualTo(1000, within(1e-6));
    }

    @Test
    void a_usual_mass_of_another_formula_fills_the_same_volume() {
        BatchLines salty = plain().add("sea-salt", "60 % of oils", "trace").batch();
        double volume = BatterVolume.millilitres(salty, salty.massesAt(salty.oilsFor(1700)));

        double oils = oils(plain(), fullOf(usual(1700, salty)));
        BatchLines batch = plain().batch();
        assertThat(BatterVolume.millilitres(batch, batch.massesAt(oils))).isEqualTo(volume, within(1e-6));
        assertThat(batch.batchAt(oils))
                .as("salt is heavy, so without it less goes in")
                .isLessThan(1700);
    }

    @Test
    void a_usual_mass_goes_before_a_water_fill_and_that_before_the_measures() {
        BatchLines batch = plain().batch();
        Optional<Shape> box = Optional.of(new Shape.Loaf(1000, 100, 10));
        Optional<Double> water = Optional.of(1200.0);
        Optional<Mould.Usual> usual = Optional.of(new Mould.Usual(1479.964, batch));

        assertThat(oils(plain(), fullOf(new Mould(box, water, usual)))).isEqualTo(1000, within(1e-6));
        assertThat(oils(plain(), fullOf(new Mould(box, water, Optional.empty()))))
                .isEqualTo(oils(plain(), fullOf(waterFill(1200))), within(1e-9));
    }

    @Test
    void each_figure_of_a_mould_says_what_it_would_take() {
        AFormula formula = plain();
        BatchLines batch = formula.batch();
        Mould mould = new Mould(
                Optional.of(new Shape.Loaf(1000, 100, 10)),
                Optional.of(998.2 * 1.01),
                Optional.of(new Mould.Usual(1000, batch)));

        Filled filled = solve(formula, new Fill(new Fill.OilMass(500), mould, Optional.empty(), 0));
        double density = BatterVolume.density(batch, batch.massesAt(500));
        assertThat(filled.mouldSays())
                .extracting(Filled.MouldSays::figure)
                .containsExactly("usual mass", "water fill", "measures");
        assertThat(filled.mouldSays().get(0).grams()).isEqualTo(1000, within(1e-6));
        assertThat(filled.mouldSays().get(1).grams()).isEqualTo(1010 * density, within(1e-6));
        assertThat(filled.mouldSays().get(2).grams()).isEqualTo(1000 * density, within(1e-6));
    }

    @Test
    void a_mould_that_is_unknown_cannot_be_filled() {
        Outcome<Filled> filled = FillSolver.solve(plain().batch(), fullOf(Mould.UNKNOWN));

        assertThat(filled.problems().get(0).what()).isEqualTo("nothing says what the mould holds");
    }

    @Test
    void a_formula_in_percent_cannot_be_made_as_written() {
        Outcome<Filled> filled = FillSolver.solve(plain().batch(), Fill.AS_WRITTEN);

        assertThat(filled.problems().get(0).what())
                .isEqualTo("the formula is in percent, so it does not say how much to make");
        assertThat(filled.problems().get(0).remedy()).contains("mould mass");
    }

    @Test
    void a_fixed_addition_takes_its_own_room_from_the_oils() {
        AFormula formula = plain().add("titanium-dioxide", "30 g", "trace");

        // 1500 g less 30 g, over 1.479964
        assertThat(oils(formula, Fill.mouldMass(1500))).isEqualTo(1470 / PER_GRAM_OF_OIL, within(1e-9));
    }

    @Test
    void a_share_of_the_batch_takes_its_share_of_the_mould() {
        AFormula formula = plain().add("titanium-dioxide", "1 % of batch", "trace");

        // 99 % of 1500 g are oils, lye and water
        assertThat(oils(formula, Fill.mouldMass(1500))).isEqualTo(0.99 * 1500 / PER_GRAM_OF_OIL, within(1e-9));
    }

    @Test
    void fixed_amounts_heavier_than_the_batch_are_refused() {
        AFormula formula = plain().add("titanium-dioxide", "600 g", "trace");

        Outcome<Filled> filled = FillSolver.solve(formula.batch(), Fill.mouldMass(500));
        assertThat(filled.problems()).hasSize(1);
        assertThat(filled.problems().get(0).path()).isEqualTo("additions");
        assertThat(filled.problems().get(0).what()).contains("600.0 g");
        assertThat(FillSolver.solve(formula.batch(), Fill.mouldMass(600)).problems())
                .as("nothing is left for oils")
                .hasSize(1);
        assertThat(FillSolver.solve(formula.batch(), Fill.mouldMass(601)).problems())
                .isEmpty();
    }

    @Test
    void fixed_amounts_fuller_than_the_mould_are_refused() {
        // 600 g of titanium dioxide of 4.17 g/ml are 144 ml
        AFormula formula = plain().add("titanium-dioxide", "600 g", "trace");

        assertThat(FillSolver.solve(formula.batch(), fullOf(boxOf(140))).problems())
                .hasSize(1);
        assertThat(FillSolver.solve(formula.batch(), fullOf(boxOf(150))).problems())
                .isEmpty();
    }

    @Test
    void a_mould_mass_of_nothing_is_refused_for_being_nothing() {
        Outcome<Filled> filled = FillSolver.solve(plain().batch(), Fill.mouldMass(0));

        assertThat(filled.problems()).hasSize(1);
        assertThat(filled.problems().get(0).what())
                .as("nothing in this formula is fixed")
                .doesNotContain("what is fixed");
    }

    /** Seen on a generated formula: the secant wandered, and half a kilogram of oils was made with 165 kg of water. */
    @Test
    void a_mould_that_no_mass_of_oils_fills_is_refused_and_never_half_solved() {
        AFormula formula = plain().water("165 kg fixed")
                .add("citric-acid-anhydrous", "46 % of oils", "oils")
                .dispersed("water", "4.12 to 1");

        Outcome<Filled> filled = FillSolver.solve(formula.batch(), fullOf(box(300, 240, 30)));

        assertThat(filled.problems()).hasSize(1);
        assertThat(filled.problems().get(0).what()).contains("more than there is room for");
    }

    @Test
    void a_usual_mass_lighter_than_what_was_fixed_in_it_is_refused() {
        BatchLines heavy = plain().add("titanium-dioxide", "600 g", "trace").batch();

        assertThat(FillSolver.solve(plain().batch(), fullOf(usual(580, heavy))).problems())
                .as("the formula it was measured with weighs 600 g before any oil")
                .hasSize(1);
    }

    @Test
    void bars_that_are_not_as_many_as_the_cavities_are_refused() {
        Mould twelve = new Mould(Optional.of(new Shape.Cavities(12, 95)), Optional.empty(), Optional.empty());

        assertThat(FillSolver.solve(
                                plain().batch(), new Fill(new Fill.Bars(10, 100, false), twelve, Optional.empty(), 0))
                        .problems()
                        .get(0)
                        .what())
                .contains("12 cavities, not 10");
        assertThat(FillSolver.solve(
                                plain().batch(), new Fill(new Fill.Bars(12, 100, false), twelve, Optional.empty(), 0))
                        .problems())
                .isEmpty();
    }

    @Test
    void holding_back_everything_is_a_broken_promise() {
        assertThatThrownBy(() -> Fill.mouldMass(1000).holdingBack(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fill.mouldMass(1000).holdingBack(-0.01)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void the_sign_of_multiplication_does_for_counts_too() {
        assertThat(Shape.parseCavities("12×95ml").orThrow()).isEqualTo(new Shape.Cavities(12, 95));
        assertThat(Fill.parseBars("10×110g", false).orThrow().count()).isEqualTo(10);
    }
}
