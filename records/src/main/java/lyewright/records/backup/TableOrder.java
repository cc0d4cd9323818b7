package lyewright.records.backup;

import java.util.List;

/** The tables that are kept, each after those that it refers to. */
final class TableOrder {

    static final List<String> TABLES = List.of(
            "workshop",
            "photograph",
            "recipe",
            "recipe_version",
            "draft",
            "mould",
            "balance",
            "jug",
            "material",
            "person",
            "ledger_entry",
            "ledger_once",
            "supplier",
            "stock_item",
            "spoon",
            "lot",
            "stock_move",
            "lot_held",
            "document",
            "lot_document",
            "device",
            "person_password",
            "signature");

    /** What belongs to one computer or to one device in somebody's hand. It goes into no backup, and a restore leaves it. */
    static final List<String> STAYS = List.of("device_session", "network_door");

    private TableOrder() {}
}
