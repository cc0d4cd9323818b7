package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.material.MaterialText;
import lyewright.records.store.Author;
import org.jdbi.v3.core.Handle;

/** What is said of lots, within one transaction: each change is an entry of the ledger. */
final class LotFacts {

    private final Handle handle;
    private final LotRows rows;
    private final LedgerBook book;
    private final Author author;

    LotFacts(Handle handle, LedgerBook book, Author author) {
        this.handle = handle;
        this.rows = new LotRows(handle);
        this.book = book;
        this.author = author;
    }

    long entry(String id, String itemId, LotSaid said) {
        return book.write(
                author,
                StockEntries.LOT,
                StockEntries.lot(id, itemId, said, said.certificate().map(MaterialText::of)));
    }

    List<Problem> codeTaken(String code, String byOtherThan) {
        return rows
                .findCode(code)
                .filter(other -> !other.id().equals(byOtherThan))
                .map(other -> new Problem("ownCode", "there is a lot " + code + " already", "give it another code"))
                .stream()
                .toList();
    }

    List<Problem> supplierUnknown(LotSaid said) {
        return said
                .supplierId()
                .filter(id -> Suppliers.byId(handle, id).isEmpty())
                .map(id -> new Problem("supplier", "there is no such supplier", "choose one, or add it"))
                .stream()
                .toList();
    }

    Outcome<KeptLot> change(String id, LotSaid said) {
        Optional<KeptLot> before = rows.find(id);
        if (before.isEmpty()) {
            return none();
        }
        List<Problem> problems = new ArrayList<>(codeTaken(said.ownCode(), id));
        problems.addAll(supplierUnknown(said));
        // what is wrong already can still be refused, or put in quarantine
        if (!before.get().said().certificate().equals(said.certificate())) {
            new ItemRows(handle).find(before.get().itemId()).ifPresent(item -> {
                problems.addAll(LotFits.check(item.said(), said));
                LotFits.staysLye(item.said(), before.get().said()).ifPresent(problems::add);
            });
        }
        if (said.ownCode().isBlank()) {
            problems.add(new Problem("ownCode", "its own code is empty", "write one, as in 26-0007"));
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        if (before.get().said().equals(said)) {
            return Outcome.ok(before.get());
        }
        rows.update(id, before.get().itemId(), said, entry(id, before.get().itemId(), said));
        return found(id);
    }

    Outcome<KeptLot> found(String id) {
        return rows.find(id).map(Outcome::ok).orElseGet(LotFacts::none);
    }

    private static Outcome<KeptLot> none() {
        return Outcome.refused("there is no such lot", "go back to the cupboard");
    }
}
