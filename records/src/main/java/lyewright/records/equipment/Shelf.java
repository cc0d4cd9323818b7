package lyewright.records.equipment;

import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.records.store.Namesakes;
import org.jdbi.v3.core.Handle;

/** Taking away and putting back, which is the same for everything in the register. */
enum Shelf {
    MOULD("mould"),
    BALANCE("balance"),
    JUG("jug");

    private final String table;

    Shelf(String table) {
        this.table = table;
    }

    Outcome<Boolean> remove(Handle handle, String id, long now) {
        return done(handle.createUpdate("UPDATE " + table + " SET removed_epoch_ms = :now WHERE id = :id")
                .bind("now", now)
                .bind("id", id)
                .execute());
    }

    Outcome<Boolean> putBack(Handle handle, String id) {
        Optional<String> name = handle.createQuery("SELECT name FROM " + table + " WHERE id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .findOne();
        return name.map(called -> free(handle, called, id))
                .orElseGet(this::none)
                .then(free ->
                        done(handle.createUpdate("UPDATE " + table + " SET removed_epoch_ms = NULL WHERE id = :id")
                                .bind("id", id)
                                .execute()));
    }

    /** Whether one of them may be called so. */
    Outcome<Boolean> free(Handle handle, String name, String id) {
        return Namesakes.of(handle, table, "name", name, id)
                .<Outcome<Boolean>>map(Outcome::refused)
                .orElseGet(() -> Outcome.ok(true));
    }

    /** What was written, or that there was nothing to write to. */
    Outcome<Boolean> done(int rows) {
        return rows == 1 ? Outcome.ok(true) : none();
    }

    <T> Outcome<T> found(Optional<T> it) {
        return it.map(Outcome::ok).orElseGet(this::none);
    }

    private <T> Outcome<T> none() {
        return Outcome.refused("there is no such " + table, "go back to the equipment");
    }
}
