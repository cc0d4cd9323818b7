package lyewright.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import lyewright.formula.Formula;
import lyewright.formula.OwnMaterial;
import lyewright.makingsheet.Balance;
import lyewright.measure.Outcome;
import lyewright.measure.WrittenMass;
import lyewright.records.equipment.EquipmentRegister;
import lyewright.records.equipment.JugUse;
import lyewright.records.equipment.KeptJug;
import lyewright.records.equipment.MouldMeasures;
import lyewright.records.recipe.Search;
import lyewright.records.setting.Degrees;
import lyewright.records.setting.Market;
import lyewright.records.setting.Paper;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import org.junit.jupiter.api.Test;

/** What may be a name, at every door; and that of each kind one thing has it. */
@OnBoth
class NamesTest extends Workbench {

    private static final List<String> WELCOME = List.of("صابون الغار", "סבון זית", "🧼", "石鹸", "می\u200cخواهم");

    private static final List<String> UNSEEN = List.of(
            "\u200b", "\u2060\u00ad", "\u00a0", "\u3000", "\u3164", "a\u202eb", "\u2067a", "a\u0007b", "\ufeff");

    private static final WrittenMass MASS = WrittenMass.parse("2 kg").orThrow();

    private static final MouldMeasures WATER =
            new MouldMeasures(Optional.empty(), Optional.of(MASS), Optional.empty(), Optional.empty());

    private static final int THREADS = 6;

    private static Balance balance(String name) {
        return new Balance(name, MASS, WrittenMass.parse("1 g").orThrow(), Optional.empty());
    }

    private static OwnMaterial material(String key) {
        return new OwnMaterial(
                key,
                "clay",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "",
                "",
                "");
    }

    private static Workshop workshop(String name) {
        return new Workshop(
                name,
                Units.GRAMS,
                Degrees.CELSIUS,
                "GBP",
                Market.GB,
                Paper.A4,
                Optional.empty(),
                Optional.empty(),
                Workshop.USUAL_HOLD_BACK);
    }

    private Outcome<KeptJug> addJug(String name) {
        return records.equipment().addJug(name, MASS, JugUse.PORTION_JUG);
    }

    /** Every way a name comes in. */
    private List<Function<String, Outcome<?>>> doors() {
        EquipmentRegister register = records.equipment();
        String recipe =
                records.recipes().add(Formulas.named("Tideline")).orThrow().recipeId();
        String mould = register.addMould("Loaf", WATER).orThrow().id();
        return List.of(
                name -> records.settings().save(workshop(name)),
                name -> records.recipes().importFormula(called(name)),
                name -> records.recipes().add(called(name)),
                name -> records.recipes().save(recipe, 1, called(name), false, ""),
                name -> records.recipes().rename(recipe, name),
                name -> records.recipes().duplicate(recipe, name),
                name -> changedAndBack(mould, name),
                name -> register.addMould(name, WATER),
                name -> register.addBalance(balance(name)),
                this::addJug,
                name -> records.materials().add(material(name)));
    }

    private static Formula called(String name) {
        return Formulas.named("Tideline").as(name, 1);
    }

    private Outcome<?> changedAndBack(String mould, String name) {
        Outcome<?> changed = records.equipment().changeMould(mould, name, WATER);
        records.equipment().changeMould(mould, "Loaf", WATER).orThrow();
        return changed;
    }

    @Test
    void names_of_any_script_come_in_at_every_door() {
        List<Function<String, Outcome<?>>> doors = doors();
        for (String name : WELCOME) {
            for (int i = 0; i < doors.size(); i++) {
                assertThat(doors.get(i).apply(name).problems()).as("door %s", i).isEmpty();
            }
        }
    }

    @Test
    void names_that_nobody_sees_or_that_turn_the_writing_come_in_at_none() {
        List<Function<String, Outcome<?>>> doors = doors();
        for (String name : UNSEEN) {
            for (int i = 0; i < doors.size(); i++) {
                assertThat(doors.get(i).apply(name).problems())
                        .as("door %s, name %s", i, Integer.toHexString(name.charAt(0)))
                        .isNotEmpty();
            }
        }
    }

    @Test
    void what_was_kept_under_such_a_name_before_stays_and_is_restored() throws Exception {
        String recipe =
                records.recipes().add(Formulas.named("Tideline")).orThrow().recipeId();
        String mould = records.equipment().addMould("Loaf", WATER).orThrow().id();
        Tinkering.with(place, "UPDATE recipe SET name = '\u200b'");
        Tinkering.with(
                place, "UPDATE recipe_version SET formula_text = replace(formula_text, 'Tideline', '\"\\u200B\"')");
        Tinkering.with(place, "UPDATE mould SET name = '\u202eoaf'");
        Path backup = folder.resolve("old.lyewright");
        records.backups().write(backup).orThrow();

        records.backups().restore(backup).orThrow();

        assertThat(records.recipes()
                        .find(recipe)
                        .orElseThrow()
                        .newest()
                        .formula()
                        .recipe())
                .isEqualTo("\u200b");
        assertThat(records.equipment().mould(mould).orElseThrow().name()).isEqualTo("\u202eoaf");
        assertThat(records.recipes().rename(recipe, "Tideline").problems()).isEmpty();
        assertThat(records.equipment().changeMould(mould, "Loaf", WATER).problems())
                .isEmpty();
        assertThat(records.recipes().list(Search.all(1, 5)).items()).hasSize(1);
    }

    @Test
    void of_each_kind_one_thing_has_a_name() {
        EquipmentRegister register = records.equipment();
        register.addMould("Big loaf", WATER).orThrow();
        register.addBalance(balance("Kitchen")).orThrow();
        addJug("White").orThrow();
        records.materials().add(material("Rose clay")).orThrow();

        assertThat(register.addMould("big  LOAF\u200b", WATER).problems().get(0).sentence())
                .isEqualTo("there is a mould 'Big loaf' already; give this one another name, or change that one");
        assertThat(register.addBalance(balance("kitchen")).problems().get(0).path())
                .isEqualTo("name");
        assertThat(addJug("WHITE").problems()).isNotEmpty();
        assertThat(records.materials()
                        .add(material("rose clay"))
                        .problems()
                        .get(0)
                        .path())
                .isEqualTo("key");
    }

    @Test
    void a_thing_keeps_its_own_name_and_does_not_take_anothers() {
        String one = addJug("White").orThrow().id();
        String other = addJug("Blue").orThrow().id();
        EquipmentRegister register = records.equipment();

        assertThat(register.changeJug(one, "WHITE", MASS, JugUse.LYE_JUG).problems())
                .isEmpty();
        assertThat(register.changeJug(other, "white", MASS, JugUse.LYE_JUG).problems())
                .isNotEmpty();
        register.removeJug(one).orThrow();
        assertThat(register.changeJug(other, "white", MASS, JugUse.LYE_JUG).problems())
                .isEmpty();
        assertThat(register.putBackJug(one).problems().get(0).what()).isEqualTo("there is a jug 'white' already");
    }

    @Test
    void two_of_one_name_that_are_there_already_may_be_changed() {
        String one = addJug("White").orThrow().id();
        String other = addJug("Blue").orThrow().id();
        Tinkering.with(place, "UPDATE jug SET name = 'White'");

        assertThat(records.equipment()
                        .changeJug(one, "White", WrittenMass.parse("312 g").orThrow(), JugUse.LYE_JUG)
                        .problems())
                .isEmpty();
        assertThat(records.equipment()
                        .changeJug(other, "Blue", MASS, JugUse.LYE_JUG)
                        .problems())
                .isEmpty();
    }

    @Test
    void of_many_who_save_one_name_at_once_one_succeeds() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Callable<Outcome<?>>> saves = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                String name = i % 2 == 0 ? "White" : "white";
                saves.add(() -> addJug(name));
                saves.add(() -> records.materials().add(material(name)));
            }
            int kept = 0;
            for (Future<Outcome<?>> saved : threads.invokeAll(saves)) {
                kept += saved.get().problems().isEmpty() ? 1 : 0;
            }

            assertThat(kept).isEqualTo(2);
            assertThat(records.equipment().jugs()).hasSize(1);
            assertThat(records.materials().list()).hasSize(1);
        } finally {
            threads.shutdownNow();
        }
    }
}
