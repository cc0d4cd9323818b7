package lyewright.records.equipment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.Balance;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Typed;
import lyewright.records.store.Typing;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;

/** Balances as they lie in their table. */
final class BalanceRows {

    private final Handle handle;

    BalanceRows(Handle handle) {
        this.handle = handle;
    }

    static List<Problem> check(Balance balance) {
        List<Problem> problems = new ArrayList<>();
        Typed.name("name", "the balance's name", balance.name()).ifPresent(problems::add);
        Measures.check("capacity", balance.capacity()).ifPresent(problems::add);
        Measures.check("step", balance.step()).ifPresent(problems::add);
        return problems;
    }

    List<KeptBalance> list() {
        return handle.createQuery("SELECT * FROM balance WHERE removed_epoch_ms IS NULL ORDER BY name_sort, id")
                .map((row, context) -> balance(row))
                .list();
    }

    Optional<KeptBalance> find(String id) {
        return handle.createQuery("SELECT * FROM balance WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> balance(row))
                .findOne();
    }

    Outcome<KeptBalance> put(String id, Balance balance, long now, boolean isNew) {
        Update update = handle.createUpdate(isNew ? """
                        INSERT INTO balance (id, name, name_sort, capacity_milligrams, capacity_unit, step_milligrams,
                          step_unit, accuracy_class, changed_epoch_ms)
                        VALUES (:id, :name, :sort, :capacity_milligrams, :capacity_unit, :step_milligrams, :step_unit,
                          :accuracy, :now)
                        """ : """
                        UPDATE balance SET name = :name, name_sort = :sort, capacity_milligrams = :capacity_milligrams,
                          capacity_unit = :capacity_unit, step_milligrams = :step_milligrams, step_unit = :step_unit,
                          accuracy_class = :accuracy, changed_epoch_ms = :now
                        WHERE id = :id
                        """);
        Typing.bindMass(update, "capacity", Optional.of(balance.capacity()));
        Typing.bindMass(update, "step", Optional.of(balance.step()));
        int rows = update.bind("id", id)
                .bind("name", balance.name())
                .bind("sort", NameOrder.key(balance.name()))
                .bind("accuracy", balance.accuracyClass().orElse(null))
                .bind("now", now)
                .execute();
        return Shelf.BALANCE.done(rows).then(done -> Shelf.BALANCE.found(find(id)));
    }

    private static KeptBalance balance(ResultSet row) throws SQLException {
        return new KeptBalance(
                row.getString("id"),
                new Balance(
                        row.getString("name"),
                        Typing.mass(row, "capacity").orElseThrow(),
                        Typing.mass(row, "step").orElseThrow(),
                        Optional.ofNullable(row.getString("accuracy_class"))));
    }
}
