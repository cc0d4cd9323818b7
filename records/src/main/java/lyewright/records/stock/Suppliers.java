package lyewright.records.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Deed;
import lyewright.records.people.Signed;
import lyewright.records.store.Database;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Namesakes;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/** Who sells materials. What is removed leaves the list, and lots go on naming it. */
public final class Suppliers {

    private static final String TABLE = "supplier";
    static final int LONGEST_CONTACT = 2_000;
    static final int LONGEST_NOTES = 10_000;

    private static final String ADD = """
            INSERT INTO supplier (id, name, name_sort, contact, notes, changed_epoch_ms)
            VALUES (:id, :name, :sort, :contact, :notes, :now)
            """;

    private final Database database;

    /** The suppliers of a database; the records open it. */
    public Suppliers(Database database) {
        this.database = database;
    }

    /** By name. */
    public List<Supplier> list() {
        return database.read(Suppliers::listed);
    }

    static List<Supplier> listed(Handle handle) {
        return handle.createQuery("SELECT * FROM supplier WHERE removed_epoch_ms IS NULL ORDER BY name_sort, id")
                .map((row, context) -> supplier(row))
                .list();
    }

    /** One, removed or not. */
    public Optional<Supplier> find(String id) {
        return database.read(handle -> byId(handle, id));
    }

    /** Adds one. */
    public Outcome<Supplier> add(String name, String contact, String notes) {
        Supplier supplier = new Supplier(database.newId(), name, contact, notes);
        return checked(supplier, handle -> put(handle, supplier, database.now(), ADD));
    }

    /** Changes one. */
    public Outcome<Supplier> change(Supplier supplier) {
        return checked(supplier, handle -> put(handle, supplier, database.now(), """
                UPDATE supplier SET name = :name, name_sort = :sort, contact = :contact, notes = :notes, changed_epoch_ms = :now
                WHERE id = :id
                """));
    }

    /** Takes one out of the list. */
    public Outcome<Supplier> remove(String id) {
        return Signed.decide(database, Deed.removed(Deed.Thing.SUPPLIER), Suppliers::subject, handle -> {
            handle.createUpdate("UPDATE supplier SET removed_epoch_ms = :now WHERE id = :id")
                    .bind("now", database.now())
                    .bind("id", id)
                    .execute();
            return found(handle, id);
        });
    }

    /** Puts one back. */
    public Outcome<Supplier> putBack(String id) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.SUPPLIER),
                Suppliers::subject,
                handle -> found(handle, id)
                        .then(kept -> Namesakes.of(handle, TABLE, "name", kept.name(), id)
                                .<Outcome<Supplier>>map(Outcome::refused)
                                .orElseGet(() -> {
                                    handle.createUpdate("UPDATE supplier SET removed_epoch_ms = NULL WHERE id = :id")
                                            .bind("id", id)
                                            .execute();
                                    return Outcome.ok(kept);
                                })));
    }

    private static Signed.Subject subject(Supplier supplier) {
        return Signed.Subject.of(supplier.id());
    }

    private static Outcome<Supplier> put(Handle handle, Supplier supplier, long now, String sql) {
        handle.createUpdate(sql)
                .bind("id", supplier.id())
                .bind("name", supplier.name())
                .bind("sort", NameOrder.key(supplier.name()))
                .bind("contact", supplier.contact())
                .bind("notes", supplier.notes())
                .bind("now", now)
                .execute();
        return found(handle, supplier.id());
    }

    private Outcome<Supplier> checked(Supplier supplier, Function<Handle, Outcome<Supplier>> work) {
        List<Problem> problems = new ArrayList<>();
        Typed.name("name", "the supplier's name", supplier.name()).ifPresent(problems::add);
        Typed.text("contact", "how to reach them", supplier.contact(), LONGEST_CONTACT)
                .ifPresent(problems::add);
        Typed.text("notes", "the note", supplier.notes(), LONGEST_NOTES).ifPresent(problems::add);
        return problems.isEmpty()
                ? Signed.decide(
                        database,
                        Deed.kept(Deed.Thing.SUPPLIER),
                        Suppliers::subject,
                        handle -> Namesakes.of(handle, TABLE, "name", supplier.name(), supplier.id())
                                .<Outcome<Supplier>>map(Outcome::refused)
                                .orElseGet(() -> work.apply(handle)))
                : new Outcome.Refused<>(problems);
    }

    /** The supplier of a name; one who is not there is added. */
    static Outcome<Supplier> named(Handle handle, String name, java.util.function.Supplier<String> ids, long now) {
        Optional<Supplier> there = handle
                .createQuery("SELECT * FROM supplier WHERE removed_epoch_ms IS NULL")
                .map((row, context) -> supplier(row))
                .stream()
                .filter(supplier -> NameRules.areSame(supplier.name(), name))
                .findFirst();
        if (there.isPresent()) {
            return Outcome.ok(there.get());
        }
        Optional<Problem> problem = Typed.name("supplier", "the supplier's name", name);
        if (problem.isPresent()) {
            return Outcome.refused(problem.get());
        }
        Supplier fresh = new Supplier(ids.get(), name, "", "");
        put(handle, fresh, now, ADD);
        return found(handle, fresh.id());
    }

    static Optional<Supplier> byId(Handle handle, String id) {
        return handle.createQuery("SELECT * FROM supplier WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> supplier(row))
                .findOne();
    }

    private static Outcome<Supplier> found(Handle handle, String id) {
        return byId(handle, id)
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("there is no such supplier", "go back to the suppliers"));
    }

    private static Supplier supplier(ResultSet row) throws SQLException {
        return new Supplier(
                row.getString("id"), row.getString("name"), row.getString("contact"), row.getString("notes"));
    }
}
