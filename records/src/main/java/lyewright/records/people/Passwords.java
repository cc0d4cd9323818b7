package lyewright.records.people;

import java.util.List;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Passwords of those who sign in, on a server. How often one may be guessed is for whoever asks to limit. */
public final class Passwords {

    /** The shortest that is taken; common practice. Nothing else is asked of it: length is what makes it hard to guess. */
    public static final int SHORTEST = 12;

    /** The longest. */
    public static final int LONGEST = 200;

    /** What nobody's password is, tried where there is no name, so that the answer takes as long as for one that is there. */
    private static @Nullable String nobodys;

    private final Database database;

    /** The passwords of a database; the records open it. */
    public Passwords(Database database) {
        this.database = database;
    }

    private record Known(Person person, String digest) {}

    /** Those who have one, by their ids. */
    public List<String> having() {
        return database.read(handle -> handle.createQuery("SELECT person_id FROM person_password")
                .mapTo(String.class)
                .list());
    }

    /**
     * Gives somebody a password, their own or, by a maker, another's. Whoever signed in with the one before stays.
     *
     * @param personId whose
     * @param password what they will type
     * @return them, or why not; the problem's path is {@code password}
     */
    public Outcome<Person> set(String personId, String password) {
        Optional<Problem> trouble = trouble(password);
        if (trouble.isPresent()) {
            return Outcome.refused(trouble.get());
        }
        // long, and so before anybody has to wait for it
        String digest = PasswordDigest.of(password);
        return database.decide(handle -> maySet(handle, personId)
                .then(may -> People.working(handle, personId, database.now()))
                .then(person -> {
                    put(handle, personId, digest);
                    Signed.sign(handle, database, Deed.kept(Deed.Thing.PASSWORD), Signed.Subject.of(personId));
                    return Outcome.ok(person);
                }));
    }

    private Outcome<Boolean> maySet(Handle handle, String personId) {
        Author author = database.author();
        return author.person().equals(personId) ? Roles.maySign(handle, author) : Roles.isMaker(handle, author);
    }

    private void put(Handle handle, String personId, String digest) {
        handle.createUpdate("""
                        INSERT INTO person_password (person_id, argon2id, changed_epoch_ms) VALUES (:id, :digest, :now)
                        ON CONFLICT (person_id) DO UPDATE SET argon2id = :digest, changed_epoch_ms = :now
                        """)
                .bind("id", personId)
                .bind("digest", digest)
                .bind("now", database.now())
                .execute();
    }

    /**
     * Whether somebody is who they say.
     *
     * @param name what they are called
     * @param password what they typed
     * @return them; empty where there is nobody of the name, they have no password, or it is another
     */
    public Optional<Person> check(String name, String password) {
        Optional<Known> known = database.read(handle -> handle
                .createQuery("""
                        SELECT p.*, w.argon2id FROM person p JOIN person_password w ON w.person_id = p.id
                        WHERE p.removed_epoch_ms IS NULL
                        """)
                .map((row, context) -> new Known(People.person(row), row.getString("argon2id")))
                .list()
                .stream()
                .filter(one -> NameRules.areSame(one.person().name(), name))
                .findFirst());
        boolean right = password.length() <= LONGEST
                && PasswordDigest.matches(password, known.map(Known::digest).orElseGet(Passwords::nobodys));
        return right ? known.map(Known::person) : Optional.empty();
    }

    private static synchronized String nobodys() {
        if (nobodys == null) {
            nobodys = PasswordDigest.of("nobody has this one");
        }
        return nobodys;
    }

    private static Optional<Problem> trouble(String password) {
        if (password.codePointCount(0, password.length()) < SHORTEST) {
            return Optional.of(new Problem(
                    "password",
                    "a password needs " + SHORTEST + " characters or more",
                    "write a few words in a row that nobody would put together"));
        }
        return Typed.text("password", "the password", password, LONGEST);
    }
}
