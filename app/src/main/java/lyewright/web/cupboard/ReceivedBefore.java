package lyewright.web.cupboard;

import java.util.List;
import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Problem;
import lyewright.records.Records;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.Supplier;
import lyewright.words.Sentences;

/**
 * Whether a delivery whose form was received before is that one still. A form sent twice comes once; but whoever goes back in the
 * browser and writes something else into it must not lose that.
 */
record ReceivedBefore(Records records) {

    /** What to ask where something else stands in it now. */
    Optional<Problem> another(DeliveryReading.Read read, String token) {
        List<KeptLot> lots = records.lots().broughtBy(token);
        return isSame(read.delivery(), lots) ? Optional.empty() : Optional.of(asked(lots));
    }

    private static Problem asked(List<KeptLot> lots) {
        List<String> codes = lots.stream().map(lot -> lot.said().ownCode()).toList();
        boolean one = codes.size() == 1;
        return new Problem(
                "",
                "this form was received already" + (codes.isEmpty() ? "" : ", as ")
                        + (codes.isEmpty() ? "" : (one ? "lot " : "lots ") + Sentences.row(codes))
                        + "; something else stands in it now, and that is not kept yet",
                "change what was wrong on the page of the lot; if this is another delivery, press Receive it once more");
    }

    private boolean isSame(Delivery delivery, List<KeptLot> lots) {
        List<Arrival> arrivals = delivery.arrivals();
        boolean same = arrivals.size() == lots.size();
        for (int i = 0; same && i < lots.size(); i++) {
            same = isSame(arrivals.get(i), lots.get(i))
                    && NameRules.areSame(supplier(lots.get(i)), delivery.supplier());
        }
        return same;
    }

    private static boolean isSame(Arrival arrival, KeptLot lot) {
        return arrival.itemId().equals(lot.itemId())
                && arrival.amount() == lot.came()
                && lot.said().withCode("").withSupplier(Optional.empty()).equals(arrival.said());
    }

    private String supplier(KeptLot lot) {
        return lot.said()
                .supplierId()
                .flatMap(records.suppliers()::find)
                .map(Supplier::name)
                .orElse("");
    }
}
