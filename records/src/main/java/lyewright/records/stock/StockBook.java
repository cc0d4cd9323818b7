package lyewright.records.stock;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.records.store.Database;

/**
 * All of the cupboard at one moment, to be written out.
 *
 * @param items materials by name, those that were removed not among them
 * @param suppliers by name, the same
 * @param lots every lot, the oldest first
 * @param moves every move, the oldest first
 * @param names what things are called, by id: materials, suppliers and people, removed ones too
 */
public record StockBook(
        List<StockItem> items,
        List<Supplier> suppliers,
        List<Booked> lots,
        List<StockMove> moves,
        Map<String, String> names) {

    /** Copies its lists and its map. */
    public StockBook {
        items = List.copyOf(items);
        suppliers = List.copyOf(suppliers);
        lots = List.copyOf(lots);
        moves = List.copyOf(moves);
        names = Map.copyOf(names);
    }

    /**
     * A lot with what it needs to be told of.
     *
     * @param lot the lot
     * @param material what it is a lot of, removed or not
     */
    public record Booked(KeptLot lot, StockItem material) {}

    /** What something is called; empty for nothing. */
    public String name(Optional<String> id) {
        return id.map(it -> names.getOrDefault(it, "")).orElse("");
    }

    /** The cupboard of a database. */
    public static StockBook of(Database database) {
        return database.read(handle -> {
            ItemRows itemRows = new ItemRows(handle);
            Map<String, StockItem> all = new HashMap<>();
            Map<String, String> names = new HashMap<>();
            for (String table : List.of("stock_item", "supplier", "person")) {
                handle.createQuery("SELECT id, name FROM " + table)
                        .map((row, context) -> names.put(row.getString("id"), row.getString("name")))
                        .list();
            }
            List<StockItem> items = itemRows.list();
            items.forEach(item -> all.put(item.id(), item));
            List<StockMove> moves = new LotRows(handle).allMoves();
            List<Booked> lots = new LotRows(handle)
                    .all().stream()
                            .map(lot -> new Booked(
                                    lot,
                                    all.computeIfAbsent(
                                            lot.itemId(),
                                            id -> itemRows.find(id).orElseThrow())))
                            .toList();
            return new StockBook(items, Suppliers.listed(handle), lots, moves, names);
        });
    }
}
