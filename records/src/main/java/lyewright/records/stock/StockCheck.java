package lyewright.records.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.chain.Finding;
import lyewright.records.ledger.EntryText;
import lyewright.records.ledger.Ledger;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Whether lots and moves still say what the ledger says of them, no more and no less. */
public final class StockCheck implements Ledger.RowCheck {

    private static final int FETCHED = 1000;

    /** What a row says now, and what its entry says; nothing where there is no such entry. */
    private record Pair(
            long number,
            String id,
            String what,
            String now,
            @Nullable String told) {}

    @Override
    public Ledger.Checked check(Handle handle) {
        List<Finding> findings = new ArrayList<>();
        moves(handle, findings);
        lots(handle, findings);
        held(handle, findings);
        missing(handle)
                .forEach(number ->
                        findings.add(new Finding(number, "Entry " + number + " tells of a move that is gone.")));
        return new Ledger.Checked(findings, Optional.empty());
    }

    private static void moves(Handle handle, List<Finding> findings) {
        handle.createQuery("""
                        SELECT m.*, e.entry_text FROM stock_move m LEFT JOIN ledger_entry e ON e.number = m.number
                        ORDER BY m.number
                        """)
                .setFetchSize(FETCHED)
                .map((row, context) -> new Pair(
                        row.getLong("number"),
                        row.getString("lot_id"),
                        "the move",
                        StockEntries.moveRow(row).text(),
                        row.getString("entry_text")))
                .forEach(pair -> differs(pair, findings));
    }

    private static void lots(Handle handle, List<Finding> findings) {
        Map<String, Long> newest = newestOfEach(handle);
        handle.createQuery("""
                        SELECT l.*, e.entry_text FROM lot l LEFT JOIN ledger_entry e ON e.number = l.entry_number
                        ORDER BY l.entry_number
                        """)
                .setFetchSize(FETCHED)
                .map((row, context) -> new Pair(
                        row.getLong("entry_number"),
                        row.getString("id"),
                        "lot " + row.getString("own_code"),
                        StockEntries.lotRow(row).text(),
                        row.getString("entry_text")))
                .forEach(pair -> {
                    differs(pair, findings);
                    Long last = newest.remove(pair.id());
                    if (last != null && last != pair.number()) {
                        findings.add(new Finding(
                                last,
                                "Entry " + last + ": " + pair.what() + " was set back to what entry " + pair.number()
                                        + " says of it."));
                    }
                });
        new TreeMap<>(newest)
                .values()
                .forEach(number ->
                        findings.add(new Finding(number, "Entry " + number + " tells of a lot that is gone.")));
    }

    /** Whether what the pages list as held is what the moves come to. */
    private static void held(Handle handle, List<Finding> findings) {
        handle.createQuery("""
                        SELECT l.entry_number, l.own_code FROM lot l LEFT JOIN lot_held h ON h.lot_id = l.id
                        WHERE (h.lot_id IS NULL) = (coalesce((
                          SELECT sum(coalesce(m.milligrams, m.pieces)) FROM stock_move m WHERE m.lot_id = l.id), 0) <> 0)
                        ORDER BY l.entry_number
                        """)
                .map((row, context) -> new Finding(
                        row.getLong("entry_number"),
                        "Entry " + row.getLong("entry_number") + ": lot " + row.getString("own_code")
                                + " is listed as empty where its moves leave something, or the other way round."))
                .forEach(findings::add);
    }

    /** The number of the entry that last told of each lot. */
    private static Map<String, Long> newestOfEach(Handle handle) {
        Map<String, Long> newest = new HashMap<>();
        handle.createQuery("SELECT number, entry_text FROM ledger_entry WHERE kind = :lot ORDER BY number")
                .bind("lot", StockEntries.LOT)
                .setFetchSize(FETCHED)
                .map((row, context) -> Map.entry(row.getLong("number"), row.getString("entry_text")))
                .forEach(entry -> Optional.ofNullable(
                                EntryText.facts(entry.getValue()).get("lot"))
                        .ifPresent(lot -> newest.put(lot, entry.getKey())));
        return newest;
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
        if (pair.told() == null) {
            findings.add(new Finding(
                    pair.number(),
                    "Entry " + pair.number() + ": " + pair.what()
                            + " is there, but the entry that tells of it is gone."));
        } else if (!pair.now().equals(pair.told())) {
            findings.add(new Finding(
                    pair.number(),
                    "Entry " + pair.number() + ": " + pair.what() + " now says something else than the ledger."));
        }
    }
}
