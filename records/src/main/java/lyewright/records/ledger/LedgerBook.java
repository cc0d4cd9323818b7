package lyewright.records.ledger;

import java.util.List;
import java.util.Optional;
import lyewright.chain.Chain;
import lyewright.chain.Entry;
import lyewright.records.people.People;
import lyewright.records.store.Author;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;

/** The ledger within one transaction that writes. As only one writes at a time, the next number is the last one's and one more. */
public final class LedgerBook {

    private final Handle handle;
    private final long now;
    private long lastWritten;

    /** What this book wrote last. Nobody else writes while its transaction lasts, so that it is the ledger's last as well. */
    private Optional<Last> mine = Optional.empty();

    private Optional<Author> ensured = Optional.empty();

    /**
     * For one transaction.
     *
     * @param handle of the transaction
     * @param now the present moment, epoch milliseconds
     */
    public LedgerBook(Handle handle, long now) {
        this.handle = handle;
        this.now = now;
    }

    /** The last entry's number and seal. */
    record Last(long number, String seal) {}

    private static final String INSERT = """
            INSERT INTO ledger_entry (number, at_epoch_ms, person_id, device_id, kind, entry_text, sha256)
            VALUES (:number, :at, :person, :device, :kind, :text, :seal)
            """;

    /** Writes the next entry and gives its number. */
    public long write(Author author, String kind, EntryText text) {
        Entry entry = next(author, kind, text);
        bind(handle.createUpdate(INSERT), entry).execute();
        return entry.number();
    }

    /** Entries that are written together, which takes a third of the time of one by one. */
    public final class Together {

        private final PreparedBatch batch = handle.prepareBatch(INSERT);

        /** Adds the next entry and gives its number. */
        public long write(Author author, String kind, EntryText text) {
            Entry entry = next(author, kind, text);
            bind(batch, entry).add();
            return entry.number();
        }

        /** Writes what was added; nothing that names these entries may be written before. */
        public void done() {
            batch.execute();
        }
    }

    /** Entries that are written together. */
    public Together together() {
        return new Together();
    }

    private Entry next(Author author, String kind, EntryText text) {
        if (!ensured.filter(author::equals).isPresent()) {
            People.ensure(handle, author, now);
            ensured = Optional.of(author);
        }
        Last last = mine.or(() -> last(handle)).orElse(new Last(0, Chain.BEFORE_ALL));
        Entry entry = new Entry(last.number() + 1, now, author.person(), author.device(), kind, text.text());
        lastWritten = entry.number();
        mine = Optional.of(new Last(lastWritten, Chain.seal(last.seal(), entry)));
        return entry;
    }

    private <S extends SqlStatement<S>> S bind(S statement, Entry entry) {
        return statement
                .bind("number", entry.number())
                .bind("at", entry.atEpochMs())
                .bind("person", entry.person())
                .bind("device", entry.device())
                .bind("kind", entry.kind())
                .bind("text", entry.text())
                .bind("seal", mine.orElseThrow().seal());
    }

    /** The number of what this transaction wrote last, 0 where it wrote nothing. */
    public long lastWritten() {
        return lastWritten;
    }

    static Optional<Last> last(Handle handle) {
        return handle.createQuery("SELECT number, sha256 FROM ledger_entry ORDER BY number DESC LIMIT 1")
                .map((row, context) -> new Last(row.getLong("number"), row.getString("sha256")))
                .findOne();
    }

    /** Whether what a form carries was done already; an empty token never was. */
    public boolean isFirstTime(String token) {
        List<Long> done = token.isEmpty()
                ? List.of()
                : handle.createQuery("SELECT number FROM ledger_once WHERE token = :token")
                        .bind("token", token)
                        .mapTo(Long.class)
                        .list();
        return done.isEmpty();
    }

    /** Notes that what a form carries is done. */
    public void done(String token, long number) {
        if (!token.isEmpty()) {
            handle.createUpdate("INSERT INTO ledger_once (token, number) VALUES (:token, :number)")
                    .bind("token", token)
                    .bind("number", number)
                    .execute();
        }
    }
}
