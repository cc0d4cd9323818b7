package lyewright.records.people;

import java.util.OptionalInt;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import org.jdbi.v3.core.Handle;

/**
 * Writes that somebody signs. Within the transaction of the write: who may not do it is refused, and what was done gets a line
 * that says who did it. The ledger's entries carry their author themselves.
 */
public final class Signed {

    private Signed() {}

    /**
     * What exactly was written.
     *
     * @param id of the thing
     * @param version of it, where it has versions
     */
    public record Subject(String id, OptionalInt version) {

        /** A thing without versions. */
        public static Subject of(String id) {
            return new Subject(id, OptionalInt.empty());
        }
    }

    /**
     * Writes what may be refused; a refusal undoes all of it.
     *
     * @param database whose author signs
     * @param deed what is done
     * @param subject tells of the result what it was done to
     * @param work the write
     * @return what the work gives, or that this is the maker's to do
     */
    public static <T> Outcome<T> decide(
            Database database, Deed deed, Function<T, Subject> subject, Function<Handle, Outcome<T>> work) {
        return database.decide(handle -> Roles.mayWrite(handle, database.author(), deed)
                .then(may -> work.apply(handle))
                .then(done -> {
                    sign(handle, database, deed, subject.apply(done));
                    return Outcome.ok(done);
                }));
    }

    /**
     * Signs within a transaction that asks about roles itself.
     *
     * @param handle of the transaction
     * @param database whose author signs
     * @param deed what was done
     * @param subject what it was done to
     */
    public static void sign(Handle handle, Database database, Deed deed, Subject subject) {
        Author author = database.author();
        People.ensure(handle, author, database.now());
        handle.createUpdate("""
                        INSERT INTO signature (id, at_epoch_ms, person_id, device_id, thing, thing_id, version, deed)
                        VALUES (:id, :now, :person, :device, :thing, :thingId, :version, :deed)
                        """)
                .bind("id", database.newId())
                .bind("now", database.now())
                .bind("person", author.person())
                .bind("device", author.device())
                .bind("thing", deed.thing().word())
                .bind("thingId", subject.id())
                .bind(
                        "version",
                        subject.version().isPresent()
                                ? (Integer) subject.version().getAsInt()
                                : null)
                .bind("deed", deed.act().word())
                .execute();
    }
}
