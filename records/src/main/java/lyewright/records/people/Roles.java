package lyewright.records.people;

import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.store.Author;
import org.jdbi.v3.core.Handle;

/** Who may write what. Asked within the transaction, so that who was a maker a moment ago does not count. */
public final class Roles {

    private static final String WHAT = "a helper weighs and ticks; this is for a maker to do";
    private static final String REMEDY = "ask a maker, who can do it or make a maker of you under Settings";

    private Roles() {}

    /** Whether an author may do something that no ledger is of. */
    static Outcome<Boolean> mayWrite(Handle handle, Author author, Deed deed) {
        return deed.act() == Deed.Act.MADE ? maySign(handle, author) : isMaker(handle, author);
    }

    /**
     * Whether an author may do what a maker does.
     *
     * @param handle of the transaction that writes
     * @param author who
     * @return that they may, or why not
     */
    public static Outcome<Boolean> isMaker(Handle handle, Author author) {
        return maySign(handle, author)
                .then(may -> role(handle, author).filter(Role.MAKER::equals).isPresent()
                        ? Outcome.ok(true)
                        : Outcome.refused(new Problem("", WHAT, REMEDY)));
    }

    /**
     * Whether an author may write at all: they work here, and their device has not been shown the door meanwhile.
     *
     * @param handle of the transaction that writes
     * @param author who
     * @return that they may, or why not
     */
    public static Outcome<Boolean> maySign(Handle handle, Author author) {
        boolean here = role(handle, author).isPresent()
                && author.device()
                        .map(device -> handle.createQuery("""
                                        SELECT count(*) FROM device
                                        WHERE id = :id AND person_id = :person AND removed_epoch_ms IS NULL
                                        """)
                                        .bind("id", device)
                                        .bind("person", author.person())
                                        .mapTo(Integer.class)
                                        .one()
                                > 0)
                        .orElse(true);
        return here
                ? Outcome.ok(true)
                : Outcome.refused(
                        "this device is not let in any more, so nothing was written", "ask a maker to let it in again");
    }

    private static Optional<Role> role(Handle handle, Author author) {
        Optional<Role> kept = handle.createQuery("SELECT role FROM person WHERE id = :id AND removed_epoch_ms IS NULL")
                .bind("id", author.person())
                .mapTo(String.class)
                .findOne()
                .flatMap(Role::ofWord);
        // the maker at the computer has no row before anything was written
        return author.isFirst() ? Optional.of(Role.MAKER) : kept;
    }
}
