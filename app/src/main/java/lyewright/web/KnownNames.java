package lyewright.web;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import lyewright.formula.MaterialNames;
import lyewright.material.Tables;
import lyewright.records.Records;
import lyewright.records.material.KeptMaterial;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.StockedNames;

/**
 * The names that may be typed in each workshop, taken apart once for each change of its own materials. Safe for several threads.
 */
final class KnownNames {

    private final Map<Records, Looked> looked = new ConcurrentHashMap<>();

    /** The names as they were at a revision of the workshop's materials and of its cupboard. */
    private record Looked(String revision, MaterialNames names) {}

    MaterialNames of(Records records) {
        String revision =
                records.materials().revision() + "\n" + records.items().revision();
        return looked.compute(
                        records,
                        (key, last) -> last != null && last.revision().equals(revision)
                                ? last
                                : new Looked(revision, look(records)))
                .names();
    }

    private static MaterialNames look(Records records) {
        MaterialNames described = MaterialNames.of(Tables.bundled())
                .with(records.materials().list().stream()
                        .map(KeptMaterial::material)
                        .toList());
        List<StockItem> stocked = records.items().list();
        return described.with(StockedNames.of(stocked, described)).withSpoons(StockedNames.spoons(stocked));
    }
}
