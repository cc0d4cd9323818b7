package lyewright.records.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.chain.Finding;
import lyewright.records.ledger.Ledger;
import org.jdbi.v3.core.Handle;

/** Whether lots and moves still say what the ledger says of them. */
public final class StockCheck implements Ledger.RowCheck {

    /** What a row says now and what its entry says. */
    private record Pair(long number, String what, String now, String sealed) {}

    @Override
    public List<Finding> check(Handle handle) {
        List<Finding> findings = new ArrayList<>();
        handle.createQuery("""
                        SELECT m.*, e.entry_text FROM stock_move m JOIN ledger_entry e ON e.number = m.number ORDER BY m.number
                        """)
                .setFetchSize(1000)
                .map((row, context) -> {
                    row.getLong("milligrams");
                    Counting counting = row.wasNull() ? Counting.PIECES : Counting.MASS;
                    return new Pair(
                            row.getLong("number"),
                            "the move",
                            StockEntries.move(row.getString("lot_id"), counting, LotRows.told(row))
                                    .text(),
                            row.getString("entry_text"));
                })
                .forEach(pair -> differs(pair, findings));
        handle.createQuery("""
                        SELECT l.*, 0 AS left_over, 0 AS came, e.entry_text FROM lot l JOIN ledger_entry e ON e.number = l.entry_number
                        ORDER BY l.entry_number
                        """)
                .setFetchSize(1000)
                .map((row, context) -> {
                    KeptLot lot = LotRows.lot(row);
                    return new Pair(
                            lot.entry(),
                            "lot " + lot.said().ownCode(),
                            StockEntries.lot(
                                            lot.id(),
                                            lot.itemId(),
                                            lot.said(),
                                            Optional.ofNullable(row.getString("certificate_text")))
                                    .text(),
                            row.getString("entry_text"));
                })
                .forEach(pair -> differs(pair, findings));
        missing(handle)
                .forEach(number -> findings.add(new Finding(
                        number, "Entry " + number + " tells of a move that is not among the moves any more.")));
        return findings;
    }

    private static List<Long> missing(Handle handle) {
        return handle.createQuery("""
                        SELECT e.number FROM ledger_entry e LEFT JOIN stock_move m ON m.number = e.number
                        WHERE e.kind = :move AND m.number IS NULL ORDER BY e.number
                        """)
                .bind("move", StockEntries.MOVE)
                .mapTo(Long.class)
                .list();
    }

    private static void differs(Pair pair, List<Finding> findings) {
        if (!pair.now().equals(pair.sealed())) {
            findings.add(new Finding(
                    pair.number(),
                    "Entry " + pair.number() + ": " + pair.what() + " says something else now than the ledger."));
        }
    }
}
