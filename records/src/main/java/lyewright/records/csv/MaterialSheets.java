package lyewright.records.csv;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.StockBook;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.Supplier;

/** Materials and suppliers as files. */
final class MaterialSheets {

    private MaterialSheets() {}

    static Sheet<StockItem> materials(StockBook book) {
        return new Sheet<>(
                "materials.csv",
                book.items(),
                List.of(
                        Sheet.of("name", "what it is called in the cupboard", "Coconut oil", StockItem::name),
                        Sheet.of(
                                "kind",
                                "oil, alkali, additive, colourant, fragrance or packaging",
                                "oil",
                                item -> item.said().kind().word()),
                        Sheet.of(
                                "counting",
                                "mass where it is weighed, pieces where it is counted",
                                "mass",
                                item -> item.said().counting().word()),
                        Sheet.of("recipe_name", "what recipes call it", "coconut", item -> key(item.said())),
                        Sheet.of(
                                "inci",
                                "INCI name",
                                "Cocos Nucifera Oil",
                                item -> item.said().identity().inci()),
                        Sheet.of(
                                "cas",
                                "CAS number",
                                "8001-31-8",
                                item -> item.said().identity().cas()),
                        Sheet.of(
                                "species",
                                "the plant's botanical name",
                                "Cocos nucifera",
                                item -> item.said().identity().species()),
                        Sheet.of(
                                "plant_part",
                                "which part of the plant",
                                "seed",
                                item -> item.said().identity().part()),
                        Sheet.of(
                                "supplier",
                                "who sells it, where that is part of what it is",
                                "Northquay Oils",
                                item -> book.name(item.said().identity().supplierId())),
                        Sheet.of(
                                "product_code",
                                "their code for it",
                                "NQ-CO-25",
                                item -> item.said().identity().productCode()),
                        Sheet.of(
                                "certificate_version",
                                "the version of its certificate",
                                "3",
                                item -> item.said().identity().certificateVersion()),
                        Sheet.in(
                                "reorder_g",
                                "buy more when less is left",
                                "g",
                                "2500",
                                item -> item.said().reorderMass().map(PlainNumbers::grams)),
                        Sheet.in(
                                "reorder_pieces",
                                "the same for what is counted",
                                "pieces",
                                "50",
                                item -> item.said().reorderPieces()),
                        Sheet.of(
                                "spoons",
                                "what the maker's own spoons hold, one on a line",
                                "teaspoon: 2.1 g",
                                item -> spoons(item.said())),
                        Sheet.of(
                                "notes",
                                "the maker's own",
                                "melt gently",
                                item -> item.said().notes())));
    }

    static Sheet<Supplier> suppliers(StockBook book) {
        return new Sheet<>(
                "suppliers.csv",
                book.suppliers(),
                List.of(
                        Sheet.of("name", "what they are called", "Northquay Oils", Supplier::name),
                        Sheet.of(
                                "contact",
                                "how they are reached, as typed",
                                "by the harbour office",
                                Supplier::contact),
                        Sheet.of("notes", "the maker's own", "closed on Mondays", Supplier::notes)));
    }

    static String key(ItemSaid said) {
        return said.identity().materialKey().orElse("");
    }

    private static String spoons(ItemSaid said) {
        return said.spoons().entrySet().stream()
                .map(spoon -> spoon.getKey() + ": "
                        + PlainNumbers.grams(spoon.getValue()).toPlainString() + " g")
                .collect(Collectors.joining("\n"));
    }
}
