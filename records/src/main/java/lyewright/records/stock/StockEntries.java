package lyewright.records.stock;

import java.util.Optional;
import lyewright.records.ledger.EntryText;

/** What the ledger tells of lots and moves. These texts are sealed: what a fact is called never changes, new facts may be added. */
final class StockEntries {

    static final String LOT = "lot";
    static final String MOVE = "stock move";

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
}
