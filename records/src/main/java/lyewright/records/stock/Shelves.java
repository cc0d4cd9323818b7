package lyewright.records.stock;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lyewright.stock.Lot;

/**
 * What is stocked, by what recipes call it.
 *
 * @param items the materials that recipes can name
 * @param lots all lots that were given; what no recipe can name goes by its own id, so that it is known for something else
 */
public record Shelves(Map<String, StockItem> items, Map<String, List<Lot>> lots) {

    /** Copies its maps. */
    public Shelves {
        items = Map.copyOf(items);
        lots = Map.copyOf(lots);
    }

    /** Puts lots on their shelves. */
    public static Shelves of(List<StockItem> items, List<KeptLot> lots) {
        Map<String, List<KeptLot>> byItem = lots.stream().collect(Collectors.groupingBy(KeptLot::itemId));
        Map<String, StockItem> named = new HashMap<>();
        Map<String, List<Lot>> shelves = new HashMap<>();
        for (StockItem item : items) {
            item.said().identity().materialKey().ifPresent(key -> named.put(key, item));
            shelves.put(
                    item.said().identity().materialKey().orElse(item.id()),
                    byItem.getOrDefault(item.id(), List.of()).stream()
                            .map(lot -> lot.lot(item.said().kind()))
                            .toList());
        }
        return new Shelves(named, shelves);
    }
}
