package lyewright.records.stock;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import lyewright.formula.NameRules;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.people.Deed;
import lyewright.records.people.Roles;
import lyewright.records.people.Signed;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import lyewright.records.store.NameOrder;
import org.jdbi.v3.core.Handle;

/**
 * Takes the rows of a file into the cupboard. The same rows twice are kept once: a supplier and a material are the same by name, a
 * material by what recipes call it too; a lot by its own code, or, where the row has none, by its material, supplier, supplier's lot, day
 * and amount.
 */
public final class StockImport {

    private static final String PURPOSE = "read in from a file";

    /** So many lots wait in memory to be written; more of them make it no faster. */
    private static final int TOGETHER = 500;

    private final Database database;

    /** The way in of a database; the records open it. */
    public StockImport(Database database) {
        this.database = database;
    }

    /**
     * What would become of rows; nothing is written.
     *
     * @param rows of the file
     * @param names what recipes know by name
     */
    public List<StockVerdict> look(List<StockRow> rows, NamedMaterials names) {
        return database.read(handle -> plan(handle, names).judge(rows));
    }

    private ImportPlan plan(Handle handle, NamedMaterials names) {
        LocalDate today = LocalDate.ofInstant(Instant.ofEpochMilli(database.now()), ZoneOffset.UTC);
        return new ImportPlan(KnownStock.read(handle), names, database::newId, today);
    }

    /**
     * Keeps what is new, in one transaction.
     *
     * @param author who does it
     * @param rows of the file; those with something wrong are left out
     * @param names what recipes know by name
     * @return what became of each, in their order
     */
    public List<StockVerdict> take(Author author, List<StockRow> rows, NamedMaterials names) {
        return database.write(handle -> {
            Roles.isMaker(handle, author).orThrow();
            ImportPlan plan = plan(handle, names);
            List<StockVerdict> verdicts = plan.judge(rows);
            keep(handle, author, plan);
            return verdicts;
        });
    }

    private void keep(Handle handle, Author author, ImportPlan plan) {
        long now = database.now();
        plan.suppliers().forEach(supplier -> {
            insert(handle, supplier, now);
            Signed.sign(handle, database, Deed.kept(Deed.Thing.SUPPLIER), Signed.Subject.of(supplier.id()));
        });
        ItemRows items = new ItemRows(handle);
        plan.items().forEach(item -> {
            items.insert(item, now);
            Signed.sign(handle, database, Deed.kept(Deed.Thing.STOCKED_MATERIAL), Signed.Subject.of(item.id()));
        });
        LedgerBook book = new LedgerBook(handle, now);
        for (int from = 0; from < plan.lots().size(); from += TOGETHER) {
            LotsTogether some = new LotsTogether(handle, book);
            plan.lots()
                    .subList(from, Math.min(from + TOGETHER, plan.lots().size()))
                    .forEach(lot -> some.add(author, database.newId(), lot, PURPOSE));
            some.write();
        }
    }

    private static void insert(Handle handle, Supplier supplier, long now) {
        handle.createUpdate("""
                        INSERT INTO supplier (id, name, name_sort, contact, notes, changed_epoch_ms)
                        VALUES (:id, :name, :sort, :contact, :notes, :now)
                        """)
                .bind("id", supplier.id())
                .bind("name", supplier.name())
                .bind("sort", NameOrder.key(supplier.name()))
                .bind("contact", supplier.contact())
                .bind("notes", supplier.notes())
                .bind("now", now)
                .execute();
    }

    /** How names are compared. */
    static String read(String name) {
        return NameRules.asRead(name);
    }
}
