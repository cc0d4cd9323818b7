package lyewright.records.stock;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What the cupboard has, as the rows of a file are held against it. Grows by what the file adds. */
final class KnownStock {

    /** A lot that is there, or that a row of the file brings. */
    record LotThere(String code, String materialRead, String materialName, Sameness same, int row) {}

    /** By what two lots without a code of their own are the same. */
    record Sameness(String material, String supplier, String supplierLot, String received, long amount) {}

    private final Map<String, Supplier> suppliers = new HashMap<>();
    private final Map<String, StockItem> byName = new HashMap<>();
    private final Map<String, StockItem> byKey = new HashMap<>();
    private final Map<String, LotThere> byCode = new HashMap<>();
    private final Map<Sameness, LotThere> bySameness = new HashMap<>();

    private List<String> lostCodes = List.of();

    static KnownStock read(Handle handle) {
        KnownStock known = new KnownStock();
        known.lostCodes = CodesGiven.lost(handle);
        Suppliers.listed(handle).forEach(known::add);
        new ItemRows(handle).list().forEach(known::add);
        handle.createQuery("""
                        SELECT l.own_code, l.item_id, l.supplier_lot, l.received_day, i.name AS item_name, s.name AS supplier_name,
                          (SELECT coalesce(m.milligrams, m.pieces) FROM stock_move m WHERE m.number =
                            (SELECT min(r.number) FROM stock_move r WHERE r.lot_id = l.id AND r.kind = 'receipt')) AS came
                        FROM lot l JOIN stock_item i ON i.id = l.item_id LEFT JOIN supplier s ON s.id = l.supplier_id
                        """)
                .map((row, context) -> {
                    String supplier = row.getString("supplier_name");
                    String material = row.getString("item_name");
                    return new LotThere(
                            row.getString("own_code"),
                            StockImport.read(material),
                            material,
                            new Sameness(
                                    row.getString("item_id"),
                                    supplier == null ? "" : StockImport.read(supplier),
                                    row.getString("supplier_lot"),
                                    row.getString("received_day"),
                                    row.getLong("came")),
                            0);
                })
                .forEach(known::add);
        return known;
    }

    /** Codes that stand on jars of lots that a restore lost. */
    List<String> lostCodes() {
        return lostCodes;
    }

    void add(Supplier supplier) {
        suppliers.put(StockImport.read(supplier.name()), supplier);
    }

    void add(StockItem item) {
        byName.put(StockImport.read(item.name()), item);
        item.said().identity().materialKey().ifPresent(key -> byKey.put(key, item));
    }

    void add(LotThere lot) {
        byCode.put(lot.code(), lot);
        bySameness.putIfAbsent(lot.same(), lot);
    }

    Optional<Supplier> supplier(String name) {
        return Optional.ofNullable(suppliers.get(StockImport.read(name)));
    }

    Optional<StockItem> named(String name) {
        return Optional.ofNullable(byName.get(StockImport.read(name)));
    }

    Optional<StockItem> keyed(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    Optional<LotThere> coded(String code) {
        return Optional.ofNullable(byCode.get(code));
    }

    Optional<LotThere> same(Sameness same) {
        return Optional.ofNullable(bySameness.get(same));
    }

    Iterable<String> codes() {
        return byCode.keySet();
    }
}
