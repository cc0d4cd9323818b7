package lyewright.web.cupboard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.records.Records;
import lyewright.records.setting.Units;
import lyewright.records.stock.Counting;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotDays;
import lyewright.records.stock.StockItem;
import lyewright.stock.Allocation;
import lyewright.stock.Lot;
import lyewright.stock.LotStatus;
import lyewright.web.Shop;
import lyewright.web.cupboard.CupboardPage.Call;
import lyewright.web.cupboard.CupboardPage.Shelf;
import lyewright.web.cupboard.CupboardPage.Thing;
import lyewright.words.Dates;

/** Looks into the cupboard. */
final class CupboardView {

    /** So many days before its best before a lot asks to be used: a season of cure and some; our own choice. */
    private static final int SOON = 60;

    private static final Map<ItemKind, String> NAMES = new EnumMap<>(Map.of(
            ItemKind.OIL, "Oils",
            ItemKind.ALKALI, "Alkali",
            ItemKind.ADDITIVE, "Additives",
            ItemKind.COLOURANT, "Colourants",
            ItemKind.FRAGRANCE, "Fragrance",
            ItemKind.PACKAGING, "Packaging"));

    private final Shop shop;
    private final Units units;
    private final LocalDate today;

    CupboardView(Shop shop) {
        this.shop = shop;
        this.units = shop.workshop().units();
        this.today = LocalDate.now(shop.clock());
    }

    static String many(ItemKind kind) {
        return NAMES.getOrDefault(kind, "");
    }

    CupboardPage page() {
        Records records = shop.records();
        List<StockItem> items = records.items().list();
        Map<String, List<KeptLot>> lots =
                records.lots().held().stream().collect(Collectors.groupingBy(KeptLot::itemId));
        List<Call> calls = new ArrayList<>();
        Map<ItemKind, List<Thing>> things = new EnumMap<>(ItemKind.class);
        for (StockItem item : items) {
            List<KeptLot> own = lots.getOrDefault(item.id(), List.of());
            things.computeIfAbsent(item.said().kind(), kind -> new ArrayList<>())
                    .add(thing(item, own));
            calls(item, own, calls);
        }
        calls.sort(Comparator.comparing(Call::pressing).reversed());
        List<Shelf> shelves = things.entrySet().stream()
                .map(entry -> new Shelf(many(entry.getKey()), entry.getValue()))
                .toList();
        return new CupboardPage(CupboardFrame.of(shop, "Cupboard"), calls, shelves);
    }

    private Thing thing(StockItem item, List<KeptLot> own) {
        List<Lot> lots = own.stream().map(KeptLot::lot).toList();
        long usable = Allocation.usableAmount(lots, today);
        long came = own.stream().mapToLong(KeptLot::came).sum();
        int level = came <= 0 ? -1 : Amounts.level(usable, came);
        return new Thing(
                item.name(),
                "/stores/cupboard/" + item.id(),
                said(item.said(), usable == 0 ? there(lots) : usable),
                level,
                isLow(item.said(), usable + waiting(lots)),
                says(item.said(), lots));
    }

    private static long there(List<Lot> lots) {
        return lots.stream().mapToLong(Lot::left).filter(left -> left > 0).sum();
    }

    private String said(ItemSaid said, long amount) {
        return Amounts.said(said.counting(), amount, units);
    }

    private String says(ItemSaid item, List<Lot> lots) {
        if (lots.isEmpty()) {
            return "none left";
        }
        String count = lots.size() == 1 ? "1 lot" : lots.size() + " lots";
        Allocation all = Allocation.firstExpiredFirstOut(Allocation.usableAmount(lots, today), lots, today);
        return all.taken().stream()
                .findFirst()
                .map(first -> count + held(item, lots) + "; " + (lots.size() == 1 ? "" : "first ")
                        + first.lot().code()
                        + first.lot()
                                .bestBefore()
                                .map(day -> ", best before " + Dates.day(day))
                                .orElse(""))
                .orElse(count + ", and none of it may be used");
    }

    /** How much of all that lies there may not be used, where some may. */
    private String held(ItemSaid item, List<Lot> lots) {
        long held = there(lots) - Allocation.usableAmount(lots, today);
        return held > 0 ? ", with " + said(item, held) + " more that may not be used" : "";
    }

    /** What waits to be looked at is there all the same. */
    static long waiting(List<Lot> lots) {
        return lots.stream()
                .filter(lot -> lot.status() == LotStatus.QUARANTINE)
                .mapToLong(Lot::left)
                .sum();
    }

    static boolean isLow(ItemSaid said, long usable) {
        Optional<Long> level = said.counting() == Counting.MASS
                ? said.reorderMass().map(mass -> Math.round(mass.grams() * 1000))
                : said.reorderPieces();
        return level.filter(least -> usable < least).isPresent();
    }

    private void calls(StockItem item, List<KeptLot> own, List<Call> calls) {
        List<Lot> lots = own.stream().map(KeptLot::lot).toList();
        Optional<String> misnamed = MisnamedLye.of(item, own);
        for (KeptLot kept : own) {
            Lot lot = kept.lot();
            String called = item.name() + ", lot " + lot.code();
            String address = "/stores/lots/" + lot.id();
            String left = said(item.said(), lot.left());
            misnamed.filter(name -> MisnamedLye.isLye(kept))
                    .ifPresent(name -> calls.add(
                            0,
                            new Call(
                                    called,
                                    address,
                                    "is lye under the name of " + name
                                            + ", and burns: label it, and see on its page what to do",
                                    true)));
            if (lot.left() < 0) {
                calls.add(new Call(called, address, "is " + left + " by the book: count it", true));
            } else if (lot.status() == LotStatus.REFUSED) {
                calls.add(new Call(called, address, "is refused; " + left + " to send back or throw away", false));
            } else if (lot.isExpired(today)) {
                calls.add(new Call(called, address, "is past its best before; " + left + " left", true));
            } else if (lot.bestBefore()
                    .flatMap(day -> LotDays.neverSoLong(kept.said().received(), day))
                    .isPresent()) {
                // nobody may type it any more; what was kept before would never be old
                calls.add(new Call(
                        called,
                        address,
                        "is best before " + Dates.day(lot.bestBefore().orElseThrow())
                                + ", which is hardly meant: correct it",
                        true));
            } else if (lot.status() == LotStatus.QUARANTINE) {
                calls.add(new Call(called, address, "is in quarantine: look at it, then say what it is", false));
            } else if (lot.bestBefore()
                    .filter(day -> day.isBefore(today.plusDays(SOON)))
                    .isPresent()) {
                calls.add(new Call(
                        called,
                        address,
                        "is best before " + Dates.day(lot.bestBefore().orElseThrow()) + "; " + left + " left",
                        false));
            }
        }
        long usable = Allocation.usableAmount(lots, today);
        if (isLow(item.said(), usable + waiting(lots))) {
            calls.add(new Call(
                    item.name(),
                    "/stores/cupboard/" + item.id(),
                    "is down to " + said(item.said(), usable) + ": buy more",
                    false));
        }
    }
}
