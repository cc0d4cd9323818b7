package lyewright.records.stock;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.formula.NameRules;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.stock.Lot;

/**
 * What is stocked, by what recipes call it.
 *
 * @param items the materials that recipes can name
 * @param lots all lots that were given; what no recipe can name goes by its own id, so that it is known for something else
 * @param read what the shelves go by, by each name that people read on them
 */
public record Shelves(Map<String, StockItem> items, Map<String, List<Lot>> lots, Map<String, String> read) {

    /** Copies its maps. */
    public Shelves {
        items = Map.copyOf(items);
        lots = Map.copyOf(lots);
        read = Map.copyOf(read);
    }

    /** Puts lots on their shelves. */
    public static Shelves of(List<StockItem> items, List<KeptLot> lots) {
        Map<String, List<KeptLot>> byItem = lots.stream().collect(Collectors.groupingBy(KeptLot::itemId));
        Map<String, StockItem> named = new HashMap<>();
        Map<String, List<Lot>> shelves = new HashMap<>();
        Map<String, String> read = new HashMap<>();
        for (StockItem item : items) {
            Optional<String> key = item.said().identity().materialKey();
            String shelf = key.orElse(item.id());
            key.ifPresent(called -> named.put(called, item));
            key.filter(called -> !isKnown(called)).ifPresent(called -> read.put(NameRules.asRead(called), shelf));
            shelves.put(
                    shelf,
                    byItem.getOrDefault(item.id(), List.of()).stream()
                            .map(lot -> lot.lot(item.said().kind()))
                            .toList());
        }
        for (StockItem item : items) {
            Optional<String> key = item.said().identity().materialKey();
            if (item.said().kind() != ItemKind.PACKAGING
                    && key.filter(Shelves::isKnown).isEmpty()) {
                String shelf = key.orElse(item.id());
                named.putIfAbsent(shelf, item);
                read.putIfAbsent(NameRules.asRead(item.name()), shelf);
            }
        }
        return new Shelves(named, shelves, read);
    }

    /**
     * The same by what a recipe calls it. A material that no table has and one in the cupboard are the same where their names are read
     * alike, whichever was there first.
     *
     * @param keys what the recipe takes
     * @return these shelves; those that are read as one of the keys go by that
     */
    public Shelves calledAsIn(Collection<String> keys) {
        Map<String, String> other = new HashMap<>();
        for (String key : keys) {
            if (!lots.containsKey(key) && !isKnown(key)) {
                Optional.ofNullable(read.get(NameRules.asRead(key)))
                        .filter(shelf -> !keys.contains(shelf))
                        .ifPresent(shelf -> other.putIfAbsent(shelf, key));
            }
        }
        return other.isEmpty() ? this : new Shelves(renamed(items, other), renamed(lots, other), read);
    }

    private static <T> Map<String, T> renamed(Map<String, T> shelves, Map<String, String> other) {
        Map<String, T> renamed = new HashMap<>();
        shelves.forEach((shelf, what) -> renamed.put(other.getOrDefault(shelf, shelf), what));
        return renamed;
    }

    /** What the tables have goes by its key alone. */
    private static boolean isKnown(String key) {
        return Tables.bundled().has(key) || Alkali.ofKey(key).isPresent();
    }
}
