package lyewright.records.stock;

import lyewright.stock.Lot;

/**
 * A lot as it is kept.
 *
 * @param id its id
 * @param itemId what it is a lot of
 * @param said what is said of it
 * @param left what is left of it: the sum of its moves, milligrams or pieces
 * @param came how much came: the sum of its receipts
 * @param entry the ledger's entry that says what is said of it
 */
public record KeptLot(String id, String itemId, LotSaid said, long left, long came, long entry) {

    /** As the rules of stock see it, where it does not matter what it is a lot of. */
    public Lot lot() {
        return lot(ItemKind.OIL);
    }

    /**
     * As the rules of stock see it.
     *
     * @param kind what it is a lot of; what its certificate says goes before that, where it says that it is lye
     */
    public Lot lot(ItemKind kind) {
        return new Lot(
                id,
                said.ownCode(),
                said.bestBefore(),
                said.received(),
                said.status(),
                left,
                LotFits.isAlkali(kind, said));
    }
}
