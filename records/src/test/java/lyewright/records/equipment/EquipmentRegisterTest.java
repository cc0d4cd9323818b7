package lyewright.records.equipment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.fill.CutPlan;
import lyewright.fill.Mould;
import lyewright.fill.Shape;
import lyewright.formula.Purities;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Equipment;
import lyewright.material.Tables;
import lyewright.measure.Length;
import lyewright.measure.Problem;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;
import lyewright.records.Formulas;
import lyewright.records.OnBoth;
import lyewright.records.Workbench;
import lyewright.records.equipment.MouldMeasures.Cavities;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.equipment.MouldMeasures.Loaf;
import lyewright.records.equipment.MouldMeasures.Slab;
import lyewright.records.equipment.MouldMeasures.Tube;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

@OnBoth
class EquipmentRegisterTest extends Workbench {

    private static final Offset<Double> A_MICROMETRE = Offset.offset(0.001);

    private EquipmentRegister register() {
        return records.equipment();
    }

    private static Length length(String text) {
        return Length.parse(text).orThrow();
    }

    private static WrittenMass mass(String text) {
        return WrittenMass.parse(text).orThrow();
    }

    private static MouldMeasures only(Inside inside) {
        return new MouldMeasures(Optional.of(inside), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private KeptMould kept(MouldMeasures measures) {
        String name = "Mould " + register().moulds().size();
        KeptMould added = register().addMould(name, measures).orThrow();
        restart();
        return register().mould(added.id()).orElseThrow();
    }

    // Moulds

    @Test
    void every_kind_of_mould_comes_back_in_the_units_it_was_typed_in() {
        List<Inside> insides = List.of(
                new Loaf(length("300 mm"), length("8 cm"), length("2.5625 in")),
                new Slab(length("16.5 in"), length("300 mm"), length("35 mm")),
                new Tube(length("30 cm"), length("76.2 mm")),
                new Cavities(12, Volume.parse("95.5 ml").orThrow()));

        for (Inside inside : insides) {
            assertThat(kept(only(inside)).measures()).isEqualTo(only(inside));
        }
    }

    @Test
    void a_mould_gives_its_shape_and_cut_plan_to_compute_with() {
        Cut cut = new Cut(
                length("1 in"),
                Optional.of(length("60 mm")),
                Optional.of(length("1 mm")),
                Optional.of(length("0.5 cm")),
                Optional.empty());
        KeptMould slab = kept(new MouldMeasures(
                Optional.of(new Slab(length("40 cm"), length("30 cm"), length("3.5 cm"))),
                Optional.empty(),
                Optional.empty(),
                Optional.of(cut)));

        assertThat(slab.shape()).contains(new Shape.Slab(400, 300, 35));
        CutPlan plan = slab.cutPlan().orElseThrow();
        assertThat(plan.thickness()).isEqualTo(25.4, A_MICROMETRE);
        assertThat(plan.across()).contains(60.0);
        assertThat(List.of(plan.blade(), plan.ends(), plan.trim())).containsExactly(1.0, 5.0, 0.0);
        assertThat(slab.measures().cut()).contains(cut);
    }

    @Test
    void a_mould_may_be_known_by_its_water_alone() {
        KeptMould pot = kept(
                new MouldMeasures(Optional.empty(), Optional.of(mass("3.25 lb")), Optional.empty(), Optional.empty()));

        Mould mould = pot.mould(Tables.bundled(), Purities.ASSUMED).orThrow();

        assertThat(pot.measures().waterFill()).contains(mass("3.25 lb"));
        assertThat(mould.shape()).isEmpty();
        assertThat(mould.waterFillGrams().orElseThrow()).isEqualTo(1474.175, Offset.offset(0.001));
    }

    @Test
    void a_usual_mass_remembers_the_very_formula_it_was_measured_with() {
        String recipe =
                records.recipes().add(Formulas.named("Plain Castile")).orThrow().recipeId();
        UsualMass usual = new UsualMass(mass("1520 g"), recipe, 1);

        KeptMould loaf =
                kept(new MouldMeasures(Optional.empty(), Optional.empty(), Optional.of(usual), Optional.empty()));
        Mould mould = loaf.mould(Tables.bundled(), Purities.ASSUMED).orThrow();

        assertThat(loaf.measures().usual()).contains(usual);
        assertThat(mould.usual().orElseThrow().grams()).isEqualTo(1520);
        assertThat(mould.usual().orElseThrow().of().formula().formula().recipe())
                .isEqualTo("Plain Castile");
        UsualMass unknown = new UsualMass(mass("1520 g"), recipe, 9);
        assertThat(register()
                        .addMould(
                                "Other",
                                new MouldMeasures(
                                        Optional.empty(), Optional.empty(), Optional.of(unknown), Optional.empty()))
                        .problems())
                .extracting(Problem::path)
                .containsExactly("usual");
    }

    @Test
    void a_mould_of_nothing_is_refused_field_by_field() {
        MouldMeasures nothing =
                new MouldMeasures(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        MouldMeasures flat = new MouldMeasures(
                Optional.of(new Loaf(length("300 mm"), length("0 mm"), length("9999999 mm"))),
                Optional.of(mass("0 g")),
                Optional.empty(),
                Optional.of(new Cut(
                        length("0 mm"),
                        Optional.of(length("5 mm")),
                        Optional.of(length("0 mm")),
                        Optional.empty(),
                        Optional.empty())));

        assertThat(register().addMould("", nothing).problems())
                .extracting(Problem::path)
                .containsExactly("name", "inside");
        assertThat(register().addMould("Flat", flat).problems())
                .extracting(Problem::path)
                .containsExactly("width", "height", "waterFill", "thickness", "across");
        assertThat(register()
                        .addMould(
                                "None",
                                only(new Cavities(0, Volume.parse("95 ml").orThrow())))
                        .problems())
                .extracting(Problem::path)
                .containsExactly("count");
        assertThat(register().moulds()).isEmpty();
    }

    @Test
    void a_mould_is_changed_removed_and_put_back() {
        KeptMould mould = kept(only(new Loaf(length("300 mm"), length("80 mm"), length("65 mm"))));
        Tube tube = new Tube(length("300 mm"), length("76 mm"));

        KeptMould changed =
                register().changeMould(mould.id(), "Drain pipe", only(tube)).orThrow();

        assertThat(changed.measures()).isEqualTo(only(tube));
        assertThat(register().moulds()).containsExactly(changed);
        register().removeMould(mould.id()).orThrow();
        assertThat(register().moulds()).isEmpty();
        assertThat(register().mould(mould.id())).contains(changed);
        register().putBackMould(mould.id()).orThrow();
        assertThat(register().moulds()).containsExactly(changed);
        assertThat(register().changeMould("no such id", "x", only(tube)).problems())
                .isNotEmpty();
        assertThat(register().removeMould("no such id").problems()).isNotEmpty();
    }

    // Balances

    @Test
    void balances_come_back_as_they_were_typed() {
        for (String typed : List.of("kitchen:5kg:1g", "fine:200g:0.01g:II", "post:11lb:0.05oz", "coarse:30kg:5g:III")) {
            Balance balance = Balance.parse(typed).orThrow();

            KeptBalance added = register().addBalance(balance).orThrow();

            assertThat(register().balance(added.id()).orElseThrow().balance()).isEqualTo(balance);
        }
        assertThat(register().balances())
                .extracting(KeptBalance::name)
                .containsExactly("coarse", "fine", "kitchen", "post");
    }

    @Test
    void a_balance_is_changed_removed_and_put_back() {
        String id = register()
                .addBalance(Balance.parse("kitchen:5kg:1g").orThrow())
                .orThrow()
                .id();
        Balance other = Balance.parse("kitchen:2kg:0.5g").orThrow();

        assertThat(register().changeBalance(id, other).orThrow().balance()).isEqualTo(other);
        register().removeBalance(id).orThrow();
        assertThat(register().balances()).isEmpty();
        register().putBackBalance(id).orThrow();
        assertThat(register().balances()).hasSize(1);
        assertThat(register().changeBalance("no such id", other).problems()).isNotEmpty();
        Balance absurd = new Balance("", mass("99999 kg"), mass("1 g"), Optional.empty());
        assertThat(register().addBalance(absurd).problems())
                .extracting(Problem::path)
                .containsExactly("name", "capacity");
    }

    // Jugs, and what a sheet is given

    @Test
    void without_a_balance_the_usual_two_are_taken() {
        assertThat(register().equipment()).isEqualTo(Equipment.USUAL);
    }

    @Test
    void a_workshop_that_weighs_in_ounces_is_given_balances_that_do() {
        Workshop ounces = new Workshop(
                "Quay Lane Soap",
                Units.OUNCES,
                Degrees.FAHRENHEIT,
                "USD",
                Market.US,
                Paper.LETTER,
                Optional.empty(),
                Optional.empty(),
                Workshop.USUAL_HOLD_BACK);
        records.settings().save(ounces).orThrow();

        assertThat(register().equipment()).isEqualTo(Equipment.USUAL_IN_OUNCES);
        assertThat(register().usualBalances()).isEqualTo(Equipment.USUAL_IN_OUNCES.balances());
        register().addBalance(Balance.parse("kitchen:5kg:1g").orThrow()).orThrow();
        assertThat(register().equipment().balances()).hasSize(1);
    }

    @Test
    void the_only_lye_jug_and_oil_pot_go_onto_the_sheet() {
        register().addJug("white jug", mass("312 g"), JugUse.LYE_JUG).orThrow();
        register().addJug("big pot", mass("3 lb"), JugUse.OIL_POT).orThrow();
        register().addBalance(Balance.parse("kitchen:5kg:1g").orThrow()).orThrow();

        Equipment equipment = register().equipment();

        assertThat(equipment.balances())
                .containsExactly(Balance.parse("kitchen:5kg:1g").orThrow());
        assertThat(equipment.vesselGrams())
                .containsOnlyKeys("lye jug", "oil pot")
                .containsEntry("lye jug", 312.0);
        assertThat(equipment.vesselGrams().get("oil pot")).isEqualTo(1360.77711, Offset.offset(0.001));
    }

    @Test
    void of_two_lye_jugs_none_is_taken_until_one_is_chosen() {
        register().addJug("white jug", mass("312 g"), JugUse.LYE_JUG).orThrow();
        KeptJug blue =
                register().addJug("blue jug", mass("298 g"), JugUse.LYE_JUG).orThrow();
        KeptJug small =
                register().addJug("small", mass("80 g"), JugUse.PORTION_JUG).orThrow();

        assertThat(register().equipment().vesselGrams()).isEmpty();
        assertThat(register()
                        .equipment(Map.of("lye jug", blue.id(), "jug kelp", small.id(), "oil pot", "no such id"))
                        .vesselGrams())
                .containsOnly(Map.entry("lye jug", 298.0), Map.entry("jug kelp", 80.0));
    }

    @Test
    void a_jug_is_changed_removed_and_put_back() {
        KeptJug jug =
                register().addJug("white jug", mass("11 oz"), JugUse.LYE_JUG).orThrow();

        assertThat(jug.emptyWeight()).isEqualTo(mass("11 oz"));
        KeptJug changed = register()
                .changeJug(jug.id(), "weiß", mass("0.3 kg"), JugUse.OIL_POT)
                .orThrow();
        assertThat(register().jugs()).containsExactly(changed);
        register().removeJug(jug.id()).orThrow();
        assertThat(register().jugs()).isEmpty();
        assertThat(register().equipment().vesselGrams()).isEmpty();
        register().putBackJug(jug.id()).orThrow();
        assertThat(register().jugs()).containsExactly(changed);
        assertThat(register().addJug("x", mass("0 g"), JugUse.LYE_JUG).problems())
                .extracting(Problem::path)
                .containsExactly("emptyWeight");
    }
}
