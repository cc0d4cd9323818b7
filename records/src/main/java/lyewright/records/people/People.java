package lyewright.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.records.store.Database;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Namesakes;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/** The people of a workshop. Whoever sits at the computer itself is its maker, and needs no name before they want one. */
public final class People {

    /** The one who is always there. */
    private static final String FIRST = "00000000-0000-7000-8000-000000000001";

    private static final String FIRST_NAME = "The maker";

    private final Database database;

    /** The people of a database; the records open it. */
    public People(Database database) {
        this.database = database;
    }

    /** Who writes at the computer that Lyewright runs on. */
    public Author desk() {
        return new Author(FIRST, Optional.empty());
    }

    /** Makes sure that an author is a person that rows may refer to; part of the transaction that writes them. */
    public static void ensure(Handle handle, Author author, long now) {
        if (author.person().equals(FIRST)) {
            handle.createUpdate("""
                            INSERT INTO person (id, name, name_sort, role, added_epoch_ms)
                            VALUES (:id, :name, :sort, 'maker', :now) ON CONFLICT (id) DO NOTHING
                            """)
                    .bind("id", FIRST)
                    .bind("name", FIRST_NAME)
                    .bind("sort", NameOrder.key(FIRST_NAME))
                    .bind("now", now)
                    .execute();
        }
    }

    /** Who works here, by name. */
    public List<Person> list() {
        List<Person> kept = database.read(handle -> handle.createQuery(
                        "SELECT * FROM person WHERE removed_epoch_ms IS NULL ORDER BY name_sort, id")
                .map((row, context) -> person(row))
                .list());
        return kept.isEmpty() ? List.of(new Person(FIRST, FIRST_NAME, Role.MAKER)) : kept;
    }

    /** Somebody, whether they still work here or not. */
    public Optional<Person> find(String id) {
        return database.read(handle -> byId(handle, id))
                .or(() -> id.equals(FIRST) ? Optional.of(new Person(FIRST, FIRST_NAME, Role.MAKER)) : Optional.empty());
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

    /** Calls somebody something else. */
    public Outcome<Person> rename(String id, String name) {
        return named(id, name, handle -> {
            ensure(handle, new Author(id, Optional.empty()), database.now());
            handle.createUpdate("UPDATE person SET name = :name, name_sort = :sort WHERE id = :id")
                    .bind("id", id)
                    .bind("name", name)
                    .bind("sort", NameOrder.key(name))
                    .execute();
            return found(handle, id);
        });
    }

    /** Somebody works here no longer. What they wrote stays theirs. */
    public Outcome<Person> remove(String id) {
        return id.equals(FIRST)
                ? Outcome.refused("the maker at this computer cannot be taken away", "call them something else instead")
                : database.decide(handle -> {
                    handle.createUpdate("UPDATE person SET removed_epoch_ms = :now WHERE id = :id")
                            .bind("id", id)
                            .bind("now", database.now())
                            .execute();
                    return found(handle, id);
                });
    }

    private Outcome<Person> named(String id, String name, Function<Handle, Outcome<Person>> work) {
        return Typed.name("name", "their name", name)
                .<Outcome<Person>>map(Outcome::refused)
                .orElseGet(() -> database.decide(handle -> Namesakes.of(handle, "person", "name", name, id)
                        .<Outcome<Person>>map(Outcome::refused)
                        .orElseGet(() -> work.apply(handle))));
    }

    private static Optional<Person> byId(Handle handle, String id) {
        return handle.createQuery("SELECT * FROM person WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> person(row))
                .findOne();
    }

    private static Outcome<Person> found(Handle handle, String id) {
        return byId(handle, id)
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused("there is nobody of that kind here", "go back to the people"));
    }

    private static Person person(ResultSet row) throws SQLException {
        return new Person(
                row.getString("id"),
                row.getString("name"),
                Role.ofWord(row.getString("role")).orElseThrow());
    }
}
