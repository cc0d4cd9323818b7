package lyewright.records.equipment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Typed;
import lyewright.records.store.Typing;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;

/** Jugs and pots as they lie in their table. */
final class JugRows {

    private final Handle handle;

    JugRows(Handle handle) {
        this.handle = handle;
    }

    static List<Problem> check(String name, WrittenMass emptyWeight) {
        List<Problem> problems = new ArrayList<>();
        Typed.name("name", "the jug's name", name).ifPresent(problems::add);
        Measures.check("emptyWeight", emptyWeight).ifPresent(problems::add);
        return problems;
    }

    List<KeptJug> list() {
        return handle.createQuery("SELECT * FROM jug WHERE removed_epoch_ms IS NULL ORDER BY name_sort, id")
                .map((row, context) -> jug(row))
                .list();
    }

    Optional<KeptJug> find(String id) {
        return handle.createQuery("SELECT * FROM jug WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> jug(row))
                .findOne();
    }

    Outcome<KeptJug> put(KeptJug jug, long now, boolean isNew) {
        Update update = handle.createUpdate(isNew ? """
                        INSERT INTO jug (id, name, name_sort, empty_milligrams, empty_unit, used_for, changed_epoch_ms)
                        VALUES (:id, :name, :sort, :empty_milligrams, :empty_unit, :use, :now)
                        """ : """
                        UPDATE jug SET name = :name, name_sort = :sort, empty_milligrams = :empty_milligrams,
                          empty_unit = :empty_unit, used_for = :use, changed_epoch_ms = :now
                        WHERE id = :id
                        """);
        Typing.bindMass(update, "empty", Optional.of(jug.emptyWeight()));
        int rows = update.bind("id", jug.id())
                .bind("name", jug.name())
                .bind("sort", NameOrder.key(jug.name()))
                .bind("use", jug.use().word())
                .bind("now", now)
                .execute();
        return Shelf.JUG.done(rows).then(done -> Shelf.JUG.found(find(jug.id())));
    }

    private static KeptJug jug(ResultSet row) throws SQLException {
        return new KeptJug(
                row.getString("id"),
                row.getString("name"),
                Typing.mass(row, "empty").orElseThrow(),
                JugUse.ofWord(row.getString("used_for")));
    }
}
