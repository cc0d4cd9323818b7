package lyewright.records.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.records.store.NameOrder;
import lyewright.records.store.Typing;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Update;

/** Stocked materials as they lie in their tables. */
final class ItemRows {

    private final Handle handle;

    ItemRows(Handle handle) {
        this.handle = handle;
    }

    List<StockItem> list() {
        Map<String, Map<String, Long>> spoons = spoons();
        return handle.createQuery("SELECT * FROM stock_item WHERE removed_epoch_ms IS NULL ORDER BY name_sort, id")
                .map((row, context) -> item(row, spoons))
                .list();
    }

    Optional<StockItem> find(String id) {
        return handle.createQuery("SELECT * FROM stock_item WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> item(row, Map.of(id, spoonsOf(id))))
                .findOne();
    }

    Optional<StockItem> findKey(String key) {
        return handle.createQuery("SELECT id FROM stock_item WHERE material_key = :key AND removed_epoch_ms IS NULL")
                .bind("key", key)
                .mapTo(String.class)
                .findOne()
                .flatMap(this::find);
    }

    boolean hasLots(String id) {
        return handle.createQuery("SELECT 1 FROM lot WHERE item_id = :id LIMIT 1")
                .bind("id", id)
                .mapTo(Integer.class)
                .findOne()
                .isPresent();
    }

    void insert(StockItem item, long now) {
        write(item, now, """
                INSERT INTO stock_item (id, name, name_sort, kind, measure, material_key, inci, cas, species, part, product_code,
                  certificate_version, supplier_id, reorder_milligrams, reorder_unit, reorder_pieces, notes, changed_epoch_ms)
                VALUES (:id, :name, :sort, :kind, :measure, :key, :inci, :cas, :species, :part, :code,
                  :version, :supplier, :reorder_milligrams, :reorder_unit, :pieces, :notes, :now)
                """);
    }

    void update(StockItem item, long now) {
        write(item, now, """
                UPDATE stock_item SET name = :name, name_sort = :sort, kind = :kind, measure = :measure, material_key = :key,
                  inci = :inci, cas = :cas, species = :species, part = :part, product_code = :code, certificate_version = :version,
                  supplier_id = :supplier, reorder_milligrams = :reorder_milligrams, reorder_unit = :reorder_unit,
                  reorder_pieces = :pieces, notes = :notes, changed_epoch_ms = :now
                WHERE id = :id
                """);
    }

    void remove(String id, long now) {
        handle.createUpdate("UPDATE stock_item SET removed_epoch_ms = :now WHERE id = :id")
                .bind("now", now)
                .bind("id", id)
                .execute();
    }

    void putBack(String id) {
        handle.createUpdate("UPDATE stock_item SET removed_epoch_ms = NULL WHERE id = :id")
                .bind("id", id)
                .execute();
    }

    private void write(StockItem item, long now, String sql) {
        ItemSaid said = item.said();
        Identity identity = said.identity();
        Update update = handle.createUpdate(sql);
        Typing.bindMass(update, "reorder", said.reorderMass());
        update.bind("id", item.id())
                .bind("name", said.name())
                .bind("sort", NameOrder.key(said.name()))
                .bind("kind", said.kind().word())
                .bind("measure", said.counting().word())
                .bind("key", identity.materialKey().orElse(null))
                .bind("inci", identity.inci())
                .bind("cas", identity.cas())
                .bind("species", identity.species())
                .bind("part", identity.part())
                .bind("code", identity.productCode())
                .bind("version", identity.certificateVersion())
                .bind("supplier", identity.supplierId().orElse(null))
                .bind("pieces", said.reorderPieces().orElse(null))
                .bind("notes", said.notes())
                .bind("now", now)
                .execute();
        handle.createUpdate("DELETE FROM spoon WHERE item_id = :id")
                .bind("id", item.id())
                .execute();
        said.spoons()
                .forEach((name, milligrams) -> handle.createUpdate(
                                "INSERT INTO spoon (item_id, name, milligrams) VALUES (:id, :name, :milligrams)")
                        .bind("id", item.id())
                        .bind("name", name)
                        .bind("milligrams", milligrams)
                        .execute());
    }

    Map<String, Map<String, Long>> spoons() {
        Map<String, Map<String, Long>> all = new TreeMap<>();
        handle.createQuery("SELECT item_id, name, milligrams FROM spoon")
                .map((row, context) -> all.computeIfAbsent(row.getString("item_id"), id -> new TreeMap<>())
                        .put(row.getString("name"), row.getLong("milligrams")))
                .list();
        return all;
    }

    private Map<String, Long> spoonsOf(String id) {
        Map<String, Long> spoons = new TreeMap<>();
        handle.createQuery("SELECT name, milligrams FROM spoon WHERE item_id = :id")
                .bind("id", id)
                .map((row, context) -> spoons.put(row.getString("name"), row.getLong("milligrams")))
                .list();
        return spoons;
    }

    private static StockItem item(ResultSet row, Map<String, Map<String, Long>> spoons) throws SQLException {
        String id = row.getString("id");
        Identity identity = new Identity(
                Optional.ofNullable(row.getString("material_key")),
                row.getString("inci"),
                row.getString("cas"),
                row.getString("species"),
                row.getString("part"),
                Optional.ofNullable(row.getString("supplier_id")),
                row.getString("product_code"),
                row.getString("certificate_version"));
        long pieces = row.getLong("reorder_pieces");
        Optional<Long> reorder = row.wasNull() ? Optional.empty() : Optional.of(pieces);
        return new StockItem(
                id,
                new ItemSaid(
                        row.getString("name"),
                        ItemKind.ofWord(row.getString("kind")).orElseThrow(),
                        Counting.ofWord(row.getString("measure")).orElseThrow(),
                        identity,
                        Typing.mass(row, "reorder"),
                        reorder,
                        spoons.getOrDefault(id, Map.of()),
                        row.getString("notes")));
    }
}
