package lyewright.records.stock;

import java.util.List;
import java.util.Optional;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.material.MaterialText;
import lyewright.records.store.Author;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** New lots with what came of each, some hundreds in one go: whoever writes meanwhile waits for all of them. */
final class LotsTogether {

    private final LedgerBook.Together entries;
    private final PreparedBatch lots;
    private final PreparedBatch moves;
    private final PreparedBatch held;

    LotsTogether(Handle handle, LedgerBook book) {
        this.entries = book.together();
        this.lots = handle.prepareBatch(LotRows.INSERT);
        this.moves = handle.prepareBatch(LotRows.INSERT_MOVE);
        this.held = handle.prepareBatch(LotRows.HOLD);
    }

    /** The plan has looked at everything that receiving a delivery looks at. */
    void add(Author author, String id, ImportPlan.Coming lot, String purpose) {
        String item = lot.item().id();
        Optional<String> certificate = lot.said().certificate().map(MaterialText::of);
        long entry = entries.write(author, StockEntries.LOT, StockEntries.lot(id, item, lot.said(), certificate));
        LotRows.bound(lots, id, item, lot.said(), entry).add();
        Counting counting = lot.item().said().counting();
        StockMove.Told told = StockMove.Told.of(MoveKind.RECEIPT, lot.amount()).withPurpose(purpose);
        long number = entries.write(author, StockEntries.MOVE, StockEntries.move(id, counting, told));
        LotRows.bound(moves, number, id, counting, told).add();
        // a new lot holds what came, which need not be summed
        held.bind("lot", id).bind("number", number).add();
    }

    /** Writes them, each table after those that it refers to. */
    void write() {
        entries.done();
        for (PreparedBatch batch : List.of(lots, moves, held)) {
            batch.execute();
        }
    }
}
