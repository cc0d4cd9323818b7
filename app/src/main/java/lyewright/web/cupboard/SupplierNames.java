package lyewright.web.cupboard;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import lyewright.records.Records;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.Supplier;

/** What suppliers are called, those no longer in the list included. */
final class SupplierNames {

    private final Records records;

    SupplierNames(Records records) {
        this.records = records;
    }

    Map<String, String> ofLots(Collection<KeptLot> lots) {
        Map<String, String> names =
                records.suppliers().list().stream().collect(Collectors.toMap(Supplier::id, Supplier::name));
        lots.stream()
                .flatMap(lot -> lot.said().supplierId().stream())
                .filter(id -> !names.containsKey(id))
                .distinct()
                .toList()
                .forEach(id -> records.suppliers().find(id).ifPresent(gone -> names.put(id, gone.name())));
        return names;
    }
}
