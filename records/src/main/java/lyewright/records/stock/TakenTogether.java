package lyewright.records.stock;

import java.util.List;

/**
 * What one form took.
 *
 * @param head the ledger's head when it was written, as it is printed: no other form has it, also after a restore
 * @param moves the moves, the last one first; at least one
 */
public record TakenTogether(String head, List<StockMove> moves) {

    /** Copies its list. */
    public TakenTogether {
        moves = List.copyOf(moves);
    }

    /** Whether all of it was taken back. */
    public boolean isBack() {
        return moves.stream().allMatch(move -> move.correctedBy().isPresent());
    }

    /** How much, milligrams or pieces. */
    public long amount() {
        return -moves.stream().mapToLong(move -> move.told().amount()).sum();
    }
}
