package lyewright.web.cupboard;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.Supplier;
import lyewright.words.Dates;

/**
 * Whether a supplier's lot is in the cupboard already, or further up on the same form: a second part of it, or the same typed twice.
 * That is asked about once, of each line.
 */
final class HereAlready {

    static final String REMEDY = "empty the line if it was typed twice; if this is a second part of it, say so below";

    private final Records records;
    private final String supplier;
    private final boolean asks;
    private final Map<String, Integer> further = new HashMap<>();
    private int line;

    /**
     * For one form.
     *
     * @param records where to look
     * @param supplier who it is from, as typed
     * @param asks whether to ask at all: not of what came by this very form before
     */
    HereAlready(Records records, String supplier, boolean asks) {
        this.records = records;
        this.supplier = supplier.strip();
        this.asks = asks;
    }

    /** What to ask of the next line. */
    Optional<Problem> asks(Meant.Found of, DeliveryForm.Line typed) {
        line++;
        String lot = typed.lot().strip();
        if (!asks || lot.isEmpty()) {
            return Optional.empty();
        }
        String same = of.there().map(StockItem::id).orElse(of.said().name()) + "\n" + lot;
        Optional<Integer> above = Optional.ofNullable(further.putIfAbsent(same, line));
        return typed.again()
                ? Optional.empty()
                : of.there()
                        .flatMap(item -> kept(item, lot))
                        .or(() -> above.map(
                                number -> "this lot of " + of.said().name() + " stands on line " + number + " too"))
                        .map(HereAlready::asked);
    }

    private Optional<String> kept(StockItem item, String lot) {
        return records.lots().of(item.id()).stream()
                .filter(kept -> kept.came() > 0
                        && NameRules.areSame(kept.said().supplierLot(), lot)
                        && NameRules.areSame(from(kept), supplier))
                .findFirst()
                .map(kept -> "lot " + lot + " of " + item.name() + " is here already, as "
                        + kept.said().ownCode() + ", which came on "
                        + Dates.day(kept.said().received()));
    }

    private String from(KeptLot kept) {
        return kept.said()
                .supplierId()
                .flatMap(records.suppliers()::find)
                .map(Supplier::name)
                .orElse("");
    }

    private static Problem asked(String what) {
        return new Problem("lot", what, REMEDY);
    }
}
