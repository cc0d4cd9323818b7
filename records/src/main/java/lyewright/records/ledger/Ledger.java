package lyewright.records.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.chain.Chain;
import lyewright.chain.Entry;
import lyewright.chain.Finding;
import lyewright.chain.PrintedHead;
import lyewright.records.store.Database;
import org.jdbi.v3.core.Handle;

/** The ledger as others see it: its entries, its head, and whether it is whole. */
public final class Ledger {

    /** So many findings are told one by one. */
    private static final int TOLD = 50;

    private final Database database;
    private final List<RowCheck> checks;

    /**
     * The ledger of a database; the records open it.
     *
     * @param database where it is
     * @param checks what else must agree with it: rows that are kept beside their entries
     */
    public Ledger(Database database, List<RowCheck> checks) {
        this.database = database;
        this.checks = List.copyOf(checks);
    }

    /** Whether what is kept beside the ledger still says what its entries say. */
    @FunctionalInterface
    public interface RowCheck {

        /** Looks, in the transaction of a handle. */
        Checked check(Handle handle);
    }

    /**
     * What a check found.
     *
     * @param findings what differs
     * @param looked what was looked at and how far, a sentence; empty where that is plain
     */
    public record Checked(List<Finding> findings, Optional<String> looked) {

        /** Copies its list. */
        public Checked {
            findings = List.copyOf(findings);
        }
    }

    /** An entry and its seal. */
    record Sealed(Entry entry, String seal) {}

    /** How far it goes. */
    public Head head() {
        return database.read(Ledger::head);
    }

    /** How far it goes, in the transaction of a handle. */
    public static Head head(Handle handle) {
        return LedgerBook.last(handle)
                .map(last -> new Head(last.number(), last.seal()))
                .orElse(new Head(0, Chain.BEFORE_ALL));
    }

    /**
     * Entries, the newest first.
     *
     * @param upTo the number of the newest that is wanted
     * @param most so many at most
     * @return those that are there
     */
    public List<Entry> entries(long upTo, int most) {
        return database.read(handle -> handle.createQuery(
                        "SELECT * FROM ledger_entry WHERE number <= :upTo ORDER BY number DESC LIMIT :most")
                .bind("upTo", upTo)
                .bind("most", most)
                .map((row, context) -> entry(row).entry())
                .list());
    }

    /**
     * Goes through the whole ledger, and through what is kept beside it.
     *
     * @param printed a head that somebody holds on paper; what was cut off after it is found only with one
     * @return what was found, all of one moment
     */
    public Verified verify(Optional<PrintedHead> printed) {
        return database.read(handle -> {
            List<Finding> all = new ArrayList<>(chain(handle));
            printed.flatMap(head -> head.against(seal(handle, head.number()))).ifPresent(all::add);
            List<String> looked = new ArrayList<>();
            for (RowCheck check : checks) {
                Checked checked = check.check(handle);
                all.addAll(checked.findings());
                checked.looked().ifPresent(looked::add);
            }
            List<Finding> told = all.subList(0, Math.min(TOLD, all.size()));
            return new Verified(head(handle), told, all.size() - told.size(), looked);
        });
    }

    private static List<Finding> chain(Handle handle) {
        Chain chain = new Chain();
        List<Finding> findings = new ArrayList<>();
        handle.createQuery("SELECT * FROM ledger_entry ORDER BY number")
                .setFetchSize(1000)
                .map((row, context) -> entry(row))
                .forEach(kept -> chain.next(kept.entry(), kept.seal()).ifPresent(findings::add));
        return findings;
    }

    /** The seals of all entries, in order, in the transaction of a handle. */
    public static List<String> seals(Handle handle) {
        return handle.createQuery("SELECT sha256 FROM ledger_entry ORDER BY number")
                .mapTo(String.class)
                .list();
    }

    private static Optional<String> seal(Handle handle, long number) {
        return handle.createQuery("SELECT sha256 FROM ledger_entry WHERE number = :number")
                .bind("number", number)
                .mapTo(String.class)
                .findOne();
    }

    private static Sealed entry(ResultSet row) throws SQLException {
        return new Sealed(
                new Entry(
                        row.getLong("number"),
                        row.getLong("at_epoch_ms"),
                        row.getString("person_id"),
                        Optional.ofNullable(row.getString("device_id")),
                        row.getString("kind"),
                        row.getString("entry_text")),
                row.getString("sha256"));
    }
}
