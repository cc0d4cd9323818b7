package lyewright.web.cupboard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.material.Names;
import lyewright.material.Tables;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.stock.Allocation;
import lyewright.stock.Lot;
import lyewright.stock.LotStatus;
import lyewright.web.Shop;
import lyewright.web.cupboard.ItemPage.Fact;
import lyewright.web.cupboard.ItemPage.LotLine;
import lyewright.words.Dates;
import lyewright.words.Sentences;

/** Looks at one material of the cupboard. */
final class ItemView {

    static final String MADE_HERE = "made here";

    private final Shop shop;
    private final Units units;
    private final LocalDate today;

    ItemView(Shop shop) {
        this.shop = shop;
        this.units = shop.workshop().units();
        this.today = LocalDate.now(shop.clock());
    }

    ItemPage page(StockItem item) {
        List<KeptLot> all = shop.records().lots().of(item.id());
        Map<String, String> suppliers = new SupplierNames(shop.records()).ofLots(all);
        List<Lot> lots = all.stream().map(KeptLot::lot).toList();
        long usable = Allocation.usableAmount(lots, today);
        List<KeptLot> held = all.stream()
                .filter(lot -> lot.left() != 0)
                .sorted(Comparator.comparing(lot -> lot.said().bestBefore().orElse(LocalDate.MAX)))
                .toList();
        List<KeptLot> gone = all.stream()
                .filter(lot -> lot.left() == 0)
                .sorted(Comparator.comparing((KeptLot lot) -> lot.said().received())
                        .reversed())
                .toList();
        return new ItemPage(
                CupboardFrame.of(shop, item.name()),
                item.name(),
                "/stores/cupboard/" + item.id() + "/edit",
                DeliveryPages.moreOf(item),
                Amounts.said(item.said().counting(), usable, units),
                CupboardView.isLow(item.said(), usable + CupboardView.waiting(lots)),
                facts(item.said()),
                Alike.of(item, shop.records().items().list()),
                held.stream().map(lot -> line(item.said(), lot, suppliers)).toList(),
                gone.stream().map(lot -> line(item.said(), lot, suppliers)).toList(),
                held.isEmpty() ? "/stores/cupboard/" + item.id() + "/remove" : "");
    }

    private List<Fact> facts(ItemSaid said) {
        Identity identity = said.identity();
        List<Fact> facts = new ArrayList<>();
        add(facts, "What it is", Sentences.upperFirst(said.kind().word()));
        add(facts, "Recipes call it", new CalledInRecipes(shop.names()).of(said));
        Optional<Names> names = identity.materialKey().flatMap(ItemView::names);
        add(facts, "INCI name", or(identity.inci(), names.map(Names::inci).orElse("")));
        add(facts, "CAS number", or(identity.cas(), names.map(Names::cas).orElse("")));
        add(facts, "Plant", identity.species() + (identity.part().isEmpty() ? "" : ", " + identity.part()));
        add(facts, "Product code", identity.productCode());
        add(facts, "Certificate's version", identity.certificateVersion());
        add(
                facts,
                "Buy more below",
                said.reorderMass()
                        .map(mass -> mass.toString())
                        .or(() -> said.reorderPieces().map(pieces -> pieces + " pieces"))
                        .orElse(""));
        add(
                facts,
                "My spoons",
                said.spoons().entrySet().stream()
                        .map(spoon -> "a " + spoon.getKey() + " holds "
                                + Amounts.said(Counting.MASS, spoon.getValue(), units))
                        .collect(Collectors.joining("; ")));
        add(facts, "Notes", said.notes());
        return facts;
    }

    private static Optional<Names> names(String key) {
        Tables tables = Tables.bundled();
        return tables.oil(key)
                .map(oil -> oil.names())
                .or(() -> tables.additive(key).map(additive -> additive.names()));
    }

    private static String or(String said, String byTables) {
        return said.isEmpty() && !byTables.isEmpty() ? byTables + " (by the tables)" : said;
    }

    private static void add(List<Fact> facts, String what, String says) {
        if (!says.isBlank()) {
            facts.add(new Fact(what, says));
        }
    }

    private LotLine line(ItemSaid said, KeptLot kept, Map<String, String> suppliers) {
        Lot lot = kept.lot();
        int level = Amounts.level(kept.left(), kept.came());
        return new LotLine(
                lot.code(),
                "/stores/lots/" + lot.id(),
                Amounts.said(said.counting(), kept.left(), units),
                level,
                from(kept, suppliers),
                lot.bestBefore().map(day -> "best before " + Dates.day(day)).orElse("no best before"),
                state(lot, today));
    }

    /** Where it is from: a supplier and their lot, or this workshop; empty where nobody said. */
    static String from(KeptLot kept, Map<String, String> suppliers) {
        String who = kept.said()
                .supplierId()
                .map(id -> suppliers.getOrDefault(id, ""))
                .orElse("");
        String lot =
                kept.said().supplierLot().isEmpty() ? "" : "lot " + kept.said().supplierLot();
        if (who.isEmpty() && lot.isEmpty()) {
            return MadeForm.isMadeHere(kept.said()) ? MADE_HERE : "";
        }
        return who.isEmpty() ? lot : lot.isEmpty() ? who : who + ", " + lot;
    }

    /** What keeps a lot from being used, or that it soon may. */
    static String state(Lot lot, LocalDate today) {
        if (lot.status() == LotStatus.REFUSED) {
            return "refused";
        }
        if (lot.status() == LotStatus.QUARANTINE) {
            return "in quarantine";
        }
        return lot.isExpired(today) && lot.left() != 0 ? "past its best before" : "";
    }
}
