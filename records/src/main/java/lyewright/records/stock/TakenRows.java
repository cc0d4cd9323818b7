package lyewright.records.stock;

import java.util.List;
import java.util.Optional;
import lyewright.chain.Chain;
import lyewright.measure.Outcome;
import org.jdbi.v3.core.Handle;

/** What was taken by one form, found by the token that the form carried. */
final class TakenRows {

    /** A form takes from far fewer. */
    private static final int MOST_LOTS = 200;

    private final Handle handle;
    private final LotRows rows;

    TakenRows(Handle handle) {
        this.handle = handle;
        this.rows = new LotRows(handle);
    }

    TakenBefore before(String tokens, int most) {
        List<Long> numbers = numbers(tokens);
        return new TakenBefore(
                numbers.size(), numbers.stream().limit(most).map(this::together).toList());
    }

    /** The moves of one of these forms that are not back. */
    Outcome<List<Long>> open(String tokens, String head) {
        Optional<TakenTogether> taken = numbers(tokens).stream()
                .filter(number -> head.startsWith(number + "-"))
                .map(this::together)
                .filter(together -> together.head().equals(head))
                .findFirst();
        return taken.isEmpty()
                ? Outcome.refused(
                        "nothing was taken so, or a backup was put back since", "load the sheet again and look below")
                : Outcome.ok(taken.get().moves().stream()
                        .filter(move -> move.correctedBy().isEmpty())
                        .map(StockMove::number)
                        .toList());
    }

    private List<Long> numbers(String tokens) {
        return handle.createQuery(
                        "SELECT number FROM ledger_once WHERE substr(token, 1, :length) = :tokens ORDER BY number DESC")
                .bind("length", tokens.length())
                .bind("tokens", tokens)
                .mapTo(Long.class)
                .list();
    }

    /** Its last move and those before that were written in the same moment for the same. */
    private TakenTogether together(long number) {
        List<StockMove> before = rows.movesUpTo(number, MOST_LOTS);
        StockMove last = before.get(0);
        List<StockMove> moves =
                before.stream().takeWhile(move -> isLike(move, last)).toList();
        String seal = handle.createQuery("SELECT sha256 FROM ledger_entry WHERE number = :number")
                .bind("number", number)
                .mapTo(String.class)
                .one();
        return new TakenTogether(Chain.printed(number, seal), moves);
    }

    private static boolean isLike(StockMove move, StockMove last) {
        return move.told().kind() == last.told().kind()
                && move.told().corrects().isEmpty()
                && move.told().purpose().equals(last.told().purpose())
                && move.at().equals(last.at())
                && move.author().equals(last.author());
    }
}
