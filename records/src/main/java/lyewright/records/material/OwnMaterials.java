package lyewright.records.material;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.people.Deed;
import lyewright.records.people.Signed;
import lyewright.records.store.Database;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Namesakes;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/**
 * The maker's own materials, which any recipe may name by key. Whatever a formula file accepts is accepted here. A key belongs to one
 * material; what is removed frees it and can be put back while nobody else has it.
 */
public final class OwnMaterials {

    private final Database database;

    /** The materials of a database; the records open it. */
    public OwnMaterials(Database database) {
        this.database = database;
    }

    /** The materials by key. */
    public List<KeptMaterial> list() {
        return database.read(handle -> handle.createQuery(
                        "SELECT * FROM material WHERE removed_epoch_ms IS NULL ORDER BY key_sort, id")
                .map((row, context) -> material(row))
                .list());
    }

    /** Something that is the same as long as the list is: what was made of the list need not be made anew. */
    public String revision() {
        return database.read(handle -> String.join(
                " ",
                handle.createQuery(
                                "SELECT id, changed_epoch_ms FROM material WHERE removed_epoch_ms IS NULL ORDER BY id")
                        .map((row, context) -> row.getString("id") + ":" + row.getLong("changed_epoch_ms"))
                        .list()));
    }

    /** A material, removed or not. */
    public Optional<KeptMaterial> find(String id) {
        return database.read(handle -> byId(handle, id));
    }

    /** The material of a key. */
    public Optional<KeptMaterial> findKey(String key) {
        return database.read(handle -> byKey(handle, key));
    }

    /** Adds a material. */
    public Outcome<KeptMaterial> add(OwnMaterial material) {
        String id = database.newId();
        return checked(
                material,
                handle -> unless(keyTaken(handle, material.key(), id), () -> {
                    handle.createUpdate("""
                            INSERT INTO material (id, key, key_sort, kind, material_text, changed_epoch_ms)
                            VALUES (:id, :key, :sort, :kind, :text, :now)
                            """).bindMap(columns(id, material)).execute();
                    return found(handle, id);
                }));
    }

    /** Changes a material. Versions that were saved hold what they held. */
    public Outcome<KeptMaterial> change(String id, OwnMaterial material) {
        return checked(
                material,
                handle -> unless(keyTaken(handle, material.key(), id), () -> {
                    handle.createUpdate("""
                            UPDATE material SET key = :key, key_sort = :sort, kind = :kind, material_text = :text,
                              changed_epoch_ms = :now
                            WHERE id = :id
                            """).bindMap(columns(id, material)).execute();
                    return found(handle, id);
                }));
    }

    /** Takes a material out of the list. */
    public Outcome<KeptMaterial> remove(String id) {
        return Signed.decide(database, Deed.removed(Deed.Thing.MATERIAL), OwnMaterials::subject, handle -> {
            handle.createUpdate("UPDATE material SET removed_epoch_ms = :now WHERE id = :id")
                    .bind("now", database.now())
                    .bind("id", id)
                    .execute();
            return found(handle, id);
        });
    }

    /** Puts a removed material back. */
    public Outcome<KeptMaterial> putBack(String id) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.MATERIAL),
                OwnMaterials::subject,
                handle -> found(handle, id)
                        .then(kept -> unless(keyTaken(handle, kept.key(), id), () -> {
                            handle.createUpdate("UPDATE material SET removed_epoch_ms = NULL WHERE id = :id")
                                    .bind("id", id)
                                    .execute();
                            return found(handle, id);
                        })));
    }

    private Map<String, Object> columns(String id, OwnMaterial material) {
        return Map.of(
                "id", id,
                "key", material.key(),
                "sort", NameOrder.key(material.key()),
                "kind", material.kind(),
                "text", MaterialText.of(material),
                "now", database.now());
    }

    private Outcome<KeptMaterial> checked(OwnMaterial material, Function<Handle, Outcome<KeptMaterial>> work) {
        List<Problem> problems = new ArrayList<>(MaterialText.check(material));
        if (problems.isEmpty()) {
            Typed.name("key", "its name", material.key()).ifPresent(problems::add);
        }
        // files of formulas may have such a one and are read as ever; here it would be weighed for the other
        if (problems.isEmpty()
                && material.kind().equals(OwnMaterial.LYE)
                && Tables.bundled().has(material.key())) {
            problems.add(new Problem(
                    "key",
                    "'" + material.key() + "' is what recipes call something that is no lye",
                    "give the lye a name of its own, as in stock-lye"));
        }
        return problems.isEmpty()
                ? Signed.decide(database, Deed.kept(Deed.Thing.MATERIAL), OwnMaterials::subject, work)
                : new Outcome.Refused<>(problems);
    }

    private static Signed.Subject subject(KeptMaterial material) {
        return Signed.Subject.of(material.id());
    }

    private static Outcome<KeptMaterial> unless(Optional<Problem> problem, Supplier<Outcome<KeptMaterial>> work) {
        return problem.isPresent() ? Outcome.refused(problem.get()) : work.get();
    }

    /** The index forbids a second one of the very key; one that only looks the same is found here, unless it was there before. */
    private static Optional<Problem> keyTaken(Handle handle, String key, String byOtherThan) {
        return Namesakes.of(handle, "material", "key", key, byOtherThan);
    }

    private static Optional<KeptMaterial> byId(Handle handle, String id) {
        return handle.createQuery("SELECT * FROM material WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> material(row))
                .findOne();
    }

    private static Optional<KeptMaterial> byKey(Handle handle, String key) {
        return handle.createQuery("SELECT * FROM material WHERE key = :key AND removed_epoch_ms IS NULL")
                .bind("key", key)
                .map((row, context) -> material(row))
                .findOne();
    }

    private static Outcome<KeptMaterial> found(Handle handle, String id) {
        return byId(handle, id)
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("there is no such material", "go back to the materials"));
    }

    private static KeptMaterial material(ResultSet row) throws SQLException {
        return new KeptMaterial(
                row.getString("id"),
                MaterialText.read(row.getString("material_text")),
                Instant.ofEpochMilli(row.getLong("changed_epoch_ms")));
    }
}
