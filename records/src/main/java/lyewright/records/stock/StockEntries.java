package lyewright.records.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import lyewright.records.ledger.EntryText;

/** What the ledger tells of lots, their moves and their documents. These texts are sealed: what a fact is called never changes, new facts may be added. */
final class StockEntries {

    static final String LOT = "lot";
    static final String MOVE = "stock move";
    static final String DOCUMENT = "lot document";

    /** The fact that tells why a document was taken off its lot; an entry without it tells that it was put there. */
    static final String TAKEN_OFF = "taken off";

    private StockEntries() {}

    static EntryText lot(String id, String itemId, LotSaid said, Optional<String> certificate) {
        return new EntryText()
                .with("lot", id)
                .with("item", itemId)
                .with("code", said.ownCode())
                .with("supplier", said.supplierId())
                .with("supplier lot", said.supplierLot())
                .with("received", said.received().toString())
                .with("opened", said.opened())
                .with("best before", said.bestBefore())
                .with("price", said.price().map(Price::minor))
                .with("currency", said.price().map(Price::currency))
                .with("status", said.status().word())
                .with("certificate", certificate)
                .with("notes", said.notes());
    }

    static EntryText move(String lotId, Counting counting, StockMove.Told told) {
        return new EntryText()
                .with("lot", lotId)
                .with("kind", told.kind().word())
                .with(counting == Counting.MASS ? "milligrams" : "pieces", told.amount())
                .with("corrects", told.corrects())
                .with("purpose", told.purpose())
                .with("words", told.words())
                .with("why", told.why());
    }

    /** What the ledger would tell of a lot as its row stands, whatever was written there. */
    static EntryText lotRow(ResultSet row) throws SQLException {
        return new EntryText()
                .with("lot", row.getString("id"))
                .with("item", row.getString("item_id"))
                .with("code", row.getString("own_code"))
                .with("supplier", text(row, "supplier_id"))
                .with("supplier lot", row.getString("supplier_lot"))
                .with("received", row.getString("received_day"))
                .with("opened", text(row, "opened_day"))
                .with("best before", text(row, "best_before_day"))
                .with("price", number(row, "price_minor"))
                .with("currency", text(row, "price_currency"))
                .with("status", row.getString("status"))
                .with("certificate", text(row, "certificate_text"))
                .with("notes", row.getString("notes"));
    }

    /** What the ledger would tell of a move as its row stands, whatever was written there. */
    static EntryText moveRow(ResultSet row) throws SQLException {
        return new EntryText()
                .with("lot", row.getString("lot_id"))
                .with("kind", row.getString("kind"))
                .with("milligrams", number(row, "milligrams"))
                .with("pieces", number(row, "pieces"))
                .with("corrects", number(row, "corrects_number"))
                .with("purpose", row.getString("purpose"))
                .with("words", row.getString("words"))
                .with("why", row.getString("why"));
    }

    /** What the ledger tells of a document of a lot; with the digest of its bytes, so that the chain covers them. */
    static EntryText document(String lotId, String sha256, String mediaType, long bytes, String name, String takenOff) {
        return new EntryText()
                .with("lot", lotId)
                .with("sha256", sha256)
                .with("type", mediaType)
                .with("bytes", bytes)
                .with("name", name)
                .with(TAKEN_OFF, takenOff);
    }

    private static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    private static Optional<Long> number(ResultSet row, String column) throws SQLException {
        long number = row.getLong(column);
        return row.wasNull() ? Optional.empty() : Optional.of(number);
    }
}
