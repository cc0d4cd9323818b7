package lyewright.web.start;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.makingsheet.Balance;
import lyewright.measure.Length;
import lyewright.measure.Volume;
import lyewright.measure.WrittenMass;
import lyewright.records.Records;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.KeptBalance;
import lyewright.records.equipment.KeptJug;
import lyewright.records.equipment.KeptMould;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.equipment.MouldMeasures.Cut;
import lyewright.records.equipment.MouldMeasures.Inside;
import lyewright.records.equipment.MouldMeasures.UsualMass;
import lyewright.records.recipe.RecipeBook;
import lyewright.records.recipe.Search;
import org.jspecify.annotations.Nullable;

/** The demo workshop's moulds, one of every kind, its balances and its jugs; what is there already is left alone. */
final class DemoEquipment {

    private final EquipmentRegister register;
    private final RecipeBook recipes;

    DemoEquipment(Records records) {
        this.register = records.equipment();
        this.recipes = records.recipes();
    }

    void fill() {
        moulds();
        balances();
        jugs();
    }

    private void moulds() {
        Cut bars = new Cut(
                length("25 mm"), Optional.empty(), Optional.of(length("1 mm")), Optional.empty(), Optional.empty());
        Cut grid = new Cut(
                length("80 mm"),
                Optional.of(length("60 mm")),
                Optional.of(length("1 mm")),
                Optional.of(length("4 mm")),
                Optional.of(length("2 mm")));
        mould("Ash loaf", inside(new MouldMeasures.Loaf(length("300 mm"), length("80 mm"), length("65 mm")), bars));
        mould("Birch slab", inside(new MouldMeasures.Slab(length("410 mm"), length("245 mm"), length("32 mm")), grid));
        mould("Drain pipe", inside(new MouldMeasures.Tube(length("300 mm"), length("76 mm")), bars));
        mould("Twelve rounds", inside(new MouldMeasures.Cavities(12, volume("95 ml")), null));
        mould(
                "Bread tin, lined",
                new MouldMeasures(Optional.empty(), Optional.of(mass("1450 g")), Optional.empty(), Optional.empty()));
        mould(
                "Chapel box",
                new MouldMeasures(Optional.empty(), Optional.empty(), Optional.of(usual()), Optional.empty()));
    }

    private static MouldMeasures inside(Inside inside, @Nullable Cut cut) {
        return new MouldMeasures(Optional.of(inside), Optional.empty(), Optional.empty(), Optional.ofNullable(cut));
    }

    /** What a box took of a recipe, which is all that is known of it. */
    private UsualMass usual() {
        String castile = DemoRecipes.PLAIN_CASTILE.newest().recipe();
        return recipes.list(new Search(castile, 1, 1)).items().stream()
                .findFirst()
                .map(recipe -> new UsualMass(mass("2150 g"), recipe.id(), recipe.newestVersion()))
                .orElseThrow(() -> new IllegalStateException("the demo workshop has no " + castile));
    }

    private void mould(String name, MouldMeasures measures) {
        Set<String> there = register.moulds().stream().map(KeptMould::name).collect(Collectors.toSet());
        if (!there.contains(name)) {
            register.addMould(name, measures).orThrow();
        }
    }

    private void balances() {
        balance("Kitchen balance:5kg:1g:III");
        balance("Fine balance:500g:0.1g");
        balance("Platform balance:30kg:5g");
    }

    private void balance(String text) {
        Balance balance = Balance.parse(text).orThrow();
        Set<String> there = register.balances().stream().map(KeptBalance::name).collect(Collectors.toSet());
        if (!there.contains(balance.name())) {
            register.addBalance(balance).orThrow();
        }
    }

    private void jugs() {
        jug("Blue lye jug, 2 l", "182 g", JugUse.LYE_JUG);
        jug("Steel pot, 8 l", "1480 g", JugUse.OIL_POT);
        jug("Jug A, 1 l", "96 g", JugUse.PORTION_JUG);
        jug("Jug B, 1 l", "98 g", JugUse.PORTION_JUG);
    }

    private void jug(String name, String empty, JugUse use) {
        Set<String> there = register.jugs().stream().map(KeptJug::name).collect(Collectors.toSet());
        if (!there.contains(name)) {
            register.addJug(name, mass(empty), use).orThrow();
        }
    }

    private static Length length(String text) {
        return Length.parse(text).orThrow();
    }

    private static Volume volume(String text) {
        return Volume.parse(text).orThrow();
    }

    private static WrittenMass mass(String text) {
        return WrittenMass.parse(text).orThrow();
    }
}
