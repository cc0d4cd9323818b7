package lyewright.records.equipment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Equipment;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;
import lyewright.records.people.Deed;
import lyewright.records.people.Signed;
import lyewright.records.setting.Units;
import lyewright.records.setting.WorkshopSettings;
import lyewright.records.store.Database;
import org.jdbi.v3.core.Handle;

/**
 * The moulds, balances and jugs of the workshop. What is removed leaves the lists and can be put back.
 */
public final class EquipmentRegister {

    private final Database database;

    /** The register of a database; the records open it. */
    public EquipmentRegister(Database database) {
        this.database = database;
    }

    // Moulds

    /** The moulds by name. */
    public List<KeptMould> moulds() {
        return database.read(handle -> new MouldRows(handle).list());
    }

    /** A mould, removed or not. */
    public Optional<KeptMould> mould(String id) {
        return database.read(handle -> new MouldRows(handle).find(id));
    }

    /** Adds a mould. */
    public Outcome<KeptMould> addMould(String name, MouldMeasures measures) {
        return checked(
                Deed.Thing.MOULD,
                KeptMould::id,
                MouldRules.check(name, measures),
                handle -> put(handle, database.newId(), name, measures, true));
    }

    /** Changes a mould. */
    public Outcome<KeptMould> changeMould(String id, String name, MouldMeasures measures) {
        return checked(
                Deed.Thing.MOULD,
                KeptMould::id,
                MouldRules.check(name, measures),
                handle -> put(handle, id, name, measures, false));
    }

    /** Takes a mould out of the list. */
    public Outcome<KeptMould> removeMould(String id) {
        return Signed.decide(
                database,
                Deed.removed(Deed.Thing.MOULD),
                kept -> of(kept.id()),
                handle -> Shelf.MOULD
                        .remove(handle, id, database.now())
                        .then(done -> Shelf.MOULD.found(new MouldRows(handle).find(id))));
    }

    /** Puts a removed mould back. */
    public Outcome<KeptMould> putBackMould(String id) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.MOULD),
                kept -> of(kept.id()),
                handle -> Shelf.MOULD
                        .putBack(handle, id)
                        .then(done -> Shelf.MOULD.found(new MouldRows(handle).find(id))));
    }

    // Balances

    /** The balances by name. */
    public List<KeptBalance> balances() {
        return database.read(handle -> new BalanceRows(handle).list());
    }

    /** A balance, removed or not. */
    public Optional<KeptBalance> balance(String id) {
        return database.read(handle -> new BalanceRows(handle).find(id));
    }

    /** Adds a balance. */
    public Outcome<KeptBalance> addBalance(Balance balance) {
        return checked(
                Deed.Thing.BALANCE,
                KeptBalance::id,
                BalanceRows.check(balance),
                handle -> put(handle, database.newId(), balance, true));
    }

    /** Changes a balance. */
    public Outcome<KeptBalance> changeBalance(String id, Balance balance) {
        return checked(
                Deed.Thing.BALANCE,
                KeptBalance::id,
                BalanceRows.check(balance),
                handle -> put(handle, id, balance, false));
    }

    /** Takes a balance out of the list. */
    public Outcome<KeptBalance> removeBalance(String id) {
        return Signed.decide(
                database,
                Deed.removed(Deed.Thing.BALANCE),
                kept -> of(kept.id()),
                handle -> Shelf.BALANCE
                        .remove(handle, id, database.now())
                        .then(done -> Shelf.BALANCE.found(new BalanceRows(handle).find(id))));
    }

    /** Puts a removed balance back. */
    public Outcome<KeptBalance> putBackBalance(String id) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.BALANCE),
                kept -> of(kept.id()),
                handle -> Shelf.BALANCE
                        .putBack(handle, id)
                        .then(done -> Shelf.BALANCE.found(new BalanceRows(handle).find(id))));
    }

    // Jugs and pots

    /** The jugs and pots by name. */
    public List<KeptJug> jugs() {
        return database.read(handle -> new JugRows(handle).list());
    }

    /** A jug, removed or not. */
    public Optional<KeptJug> jug(String id) {
        return database.read(handle -> new JugRows(handle).find(id));
    }

    /** Adds a jug. */
    public Outcome<KeptJug> addJug(String name, WrittenMass emptyWeight, JugUse use) {
        return checked(
                Deed.Thing.JUG,
                KeptJug::id,
                JugRows.check(name, emptyWeight),
                handle -> put(handle, new KeptJug(database.newId(), name, emptyWeight, use), true));
    }

    /** Changes a jug. */
    public Outcome<KeptJug> changeJug(String id, String name, WrittenMass emptyWeight, JugUse use) {
        return checked(
                Deed.Thing.JUG,
                KeptJug::id,
                JugRows.check(name, emptyWeight),
                handle -> put(handle, new KeptJug(id, name, emptyWeight, use), false));
    }

    /** Takes a jug out of the list. */
    public Outcome<KeptJug> removeJug(String id) {
        return Signed.decide(
                database,
                Deed.removed(Deed.Thing.JUG),
                kept -> of(kept.id()),
                handle -> Shelf.JUG
                        .remove(handle, id, database.now())
                        .then(done -> Shelf.JUG.found(new JugRows(handle).find(id))));
    }

    /** Puts a removed jug back. */
    public Outcome<KeptJug> putBackJug(String id) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.JUG),
                kept -> of(kept.id()),
                handle -> Shelf.JUG.putBack(handle, id).then(done -> Shelf.JUG.found(new JugRows(handle).find(id))));
    }

    // For a sheet

    /**
     * What there is to weigh with, for a sheet. Without a balance of the workshop's own it is the usual two of its units. A lye jug or an oil pot
     * counts where there is exactly one; of two nobody knows which will be taken, and a wrong empty weight would be a wrong weighing, so
     * the vessel is tared.
     */
    public Equipment equipment() {
        return equipment(Map.of());
    }

    /**
     * The same, with jugs that were chosen.
     *
     * @param chosen ids of jugs by the sheet's vessel: {@code lye jug}, {@code oil pot}, {@code jug NAME} of a portion
     */
    public Equipment equipment(Map<String, String> chosen) {
        return database.read(handle -> {
            List<Balance> balances = new BalanceRows(handle)
                    .list().stream().map(KeptBalance::balance).toList();
            Map<String, Double> vessels = vessels(new JugRows(handle).list(), chosen);
            return new Equipment(balances.isEmpty() ? usualBalances(handle) : balances, vessels);
        });
    }

    /** The balances that a sheet takes for granted while none is entered: those of the workshop's units. */
    public List<Balance> usualBalances() {
        return database.read(EquipmentRegister::usualBalances);
    }

    private static List<Balance> usualBalances(Handle handle) {
        boolean ounces = WorkshopSettings.units(handle)
                .filter(units -> units == Units.OUNCES)
                .isPresent();
        return (ounces ? Equipment.USUAL_IN_OUNCES : Equipment.USUAL).balances();
    }

    private static Map<String, Double> vessels(List<KeptJug> jugs, Map<String, String> chosen) {
        Map<String, Double> vessels = new HashMap<>();
        for (JugUse use : List.of(JugUse.LYE_JUG, JugUse.OIL_POT)) {
            List<KeptJug> forIt = jugs.stream().filter(jug -> jug.use() == use).toList();
            if (forIt.size() == 1) {
                vessels.put(use.word(), forIt.get(0).emptyWeight().grams());
            }
        }
        chosen.forEach((vessel, id) -> jugs.stream()
                .filter(jug -> jug.id().equals(id))
                .forEach(jug -> vessels.put(vessel, jug.emptyWeight().grams())));
        return vessels;
    }

    private Outcome<KeptMould> put(Handle handle, String id, String name, MouldMeasures measures, boolean isNew) {
        return Shelf.MOULD
                .free(handle, name, id)
                .then(free -> new MouldRows(handle).put(id, name, measures, database.now(), isNew));
    }

    private Outcome<KeptBalance> put(Handle handle, String id, Balance balance, boolean isNew) {
        return Shelf.BALANCE
                .free(handle, balance.name(), id)
                .then(free -> new BalanceRows(handle).put(id, balance, database.now(), isNew));
    }

    private Outcome<KeptJug> put(Handle handle, KeptJug jug, boolean isNew) {
        return Shelf.JUG
                .free(handle, jug.name(), jug.id())
                .then(free -> new JugRows(handle).put(jug, database.now(), isNew));
    }

    private <T> Outcome<T> checked(
            Deed.Thing thing, Function<T, String> id, List<Problem> problems, Function<Handle, Outcome<T>> work) {
        return problems.isEmpty()
                ? Signed.decide(database, Deed.kept(thing), kept -> of(id.apply(kept)), work)
                : new Outcome.Refused<>(new ArrayList<>(problems));
    }

    private static Signed.Subject of(String id) {
        return Signed.Subject.of(id);
    }
}
