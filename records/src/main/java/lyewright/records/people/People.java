package lyewright.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Namesakes;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/** The people of a workshop. Whoever sits at the computer itself is its maker, and needs no name before they want one. */
public final class People {

    private static final String FIRST = Author.DESK.person();

    private static final String FIRST_NAME = "The maker";

    /** It stands beside whatever they write. */
    private static final int LONGEST_NAME = 100;

    private static final Person NAMELESS = new Person(FIRST, FIRST_NAME, Role.MAKER);

    private final Database database;

    /** The people of a database; the records open it. */
    public People(Database database) {
        this.database = database;
    }

    /**
     * Makes sure that an author is a person that rows may refer to, and the first of them a maker, whatever a backup from elsewhere
     * says; part of the transaction that writes them.
     */
    public static void ensure(Handle handle, Author author, long now) {
        if (author.isFirst()) {
            handle.createUpdate("""
                            INSERT INTO person (id, name, name_sort, role, added_epoch_ms)
                            VALUES (:id, :name, :sort, 'maker', :now)
                            ON CONFLICT (id) DO UPDATE SET role = 'maker', removed_epoch_ms = NULL
                            """)
                    .bind("id", FIRST)
                    .bind("name", FIRST_NAME)
                    .bind("sort", NameOrder.key(FIRST_NAME))
                    .bind("now", now)
                    .execute();
        }
    }

    /** Who works here, by name. The maker at the computer is among them from the start. */
    public List<Person> list() {
        List<Person> kept = database.read(handle -> handle.createQuery(
                        "SELECT * FROM person WHERE removed_epoch_ms IS NULL ORDER BY name_sort, id")
                .map((row, context) -> person(row))
                .list());
        boolean hasFirst = kept.stream().anyMatch(person -> person.id().equals(FIRST));
        return hasFirst
                ? kept
                : Stream.concat(Stream.of(NAMELESS), kept.stream()).toList();
    }

    /** Somebody, whether they still work here or not. */
    public Optional<Person> find(String id) {
        return database.read(handle -> byId(handle, id))
                .or(() -> id.equals(FIRST) ? Optional.of(NAMELESS) : Optional.empty());
    }

    /** Adds somebody. */
    public Outcome<Person> add(String name, Role role) {
        String id = database.newId();
        return named(id, name, handle -> {
            handle.createUpdate("""
                            INSERT INTO person (id, name, name_sort, role, added_epoch_ms)
                            VALUES (:id, :name, :sort, :role, :now)
                            """)
                    .bind("id", id)
                    .bind("name", name)
                    .bind("sort", NameOrder.key(name))
                    .bind("role", role.word())
                    .bind("now", database.now())
                    .execute();
            return found(handle, id);
        });
    }

    /**
     * Calls somebody something else, and says what they may do.
     *
     * @param id of them
     * @param name what they are called
     * @param role what they may do; the maker at the computer stays one
     * @return them, or why not
     */
    public Outcome<Person> change(String id, String name, Role role) {
        if (id.equals(FIRST) && role != Role.MAKER) {
            return Outcome.refused("the maker at this computer cannot be a helper", "leave them a maker");
        }
        return named(id, name, handle -> {
            handle.createUpdate("UPDATE person SET name = :name, name_sort = :sort, role = :role WHERE id = :id")
                    .bind("id", id)
                    .bind("name", name)
                    .bind("sort", NameOrder.key(name))
                    .bind("role", role.word())
                    .execute();
            return found(handle, id);
        });
    }

    /** Somebody works here no longer: none of their devices is let in, their password is gone. What they wrote stays theirs. */
    public Outcome<Person> remove(String id) {
        return id.equals(FIRST)
                ? Outcome.refused("the maker at this computer cannot be taken away", "call them something else instead")
                : Signed.decide(database, Deed.removed(Deed.Thing.PERSON), People::subject, handle -> {
                    handle.createUpdate("UPDATE person SET removed_epoch_ms = :now WHERE id = :id")
                            .bind("id", id)
                            .bind("now", database.now())
                            .execute();
                    DeviceRows devices = new DeviceRows(handle);
                    devices.of(id).forEach(device -> devices.remove(device.id(), database.now()));
                    handle.createUpdate("DELETE FROM person_password WHERE person_id = :id")
                            .bind("id", id)
                            .execute();
                    return found(handle, id);
                });
    }

    /** Puts somebody back. Their devices have to be let in anew. */
    public Outcome<Person> putBack(String id) {
        return Signed.decide(
                database,
                Deed.putBack(Deed.Thing.PERSON),
                People::subject,
                handle -> found(handle, id)
                        .then(person -> Namesakes.of(handle, "person", "name", person.name(), id)
                                .<Outcome<Person>>map(Outcome::refused)
                                .orElseGet(() -> {
                                    handle.createUpdate("UPDATE person SET removed_epoch_ms = NULL WHERE id = :id")
                                            .bind("id", id)
                                            .execute();
                                    return Outcome.ok(person);
                                })));
    }

    private Outcome<Person> named(String id, String name, Function<Handle, Outcome<Person>> work) {
        return Typed.name("name", "their name", name)
                .or(() -> tooLong(name))
                .<Outcome<Person>>map(Outcome::refused)
                .orElseGet(() -> Signed.decide(database, Deed.kept(Deed.Thing.PERSON), People::subject, handle -> {
                    // who was there first has their name, though nothing was written yet
                    ensure(handle, Author.DESK, database.now());
                    return Namesakes.of(handle, "person", "name", name, id)
                            .<Outcome<Person>>map(Outcome::refused)
                            .orElseGet(() -> work.apply(handle));
                }));
    }

    private static Optional<Problem> tooLong(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST_NAME
                ? Optional.empty()
                : Optional.of(new Problem(
                        "name", "their name is longer than " + LONGEST_NAME + " letters", "write a shorter one"));
    }

    private static Signed.Subject subject(Person person) {
        return Signed.Subject.of(person.id());
    }

    private static Optional<Person> byId(Handle handle, String id) {
        return handle.createQuery("SELECT * FROM person WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> person(row))
                .findOne();
    }

    /** Somebody who works here now, in a transaction that does something for them. */
    static Outcome<Person> working(Handle handle, String id, long now) {
        ensure(handle, new Author(id, Optional.empty()), now);
        return handle.createQuery("SELECT * FROM person WHERE id = :id AND removed_epoch_ms IS NULL")
                .bind("id", id)
                .map((row, context) -> person(row))
                .findOne()
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("they do not work here any more", "go back to the people"));
    }

    private static Outcome<Person> found(Handle handle, String id) {
        return byId(handle, id)
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("there is nobody of that kind here", "go back to the people"));
    }

    static Person person(ResultSet row) throws SQLException {
        return new Person(
                row.getString("id"),
                row.getString("name"),
                Role.ofWord(row.getString("role")).orElseThrow());
    }
}
