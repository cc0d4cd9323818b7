package lyewright.web.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchLine;
import lyewright.formula.OwnMaterial;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.records.Records;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.Shelves;
import lyewright.records.stock.StockItem;
import lyewright.stock.Allocation;
import lyewright.stock.Cupboard;
import lyewright.stock.Cupboard.Need;
import lyewright.stock.Lot;
import lyewright.stock.Picked;

/**
 * What is stocked, asked for once for a choice, and held against its sheets.
 *
 * @param items what is stocked, by what recipes call it
 * @param lots lots that hold something, by the same, and whatever else was picked by hand
 * @param held materials of which there is some
 * @param certificates what a lot's certificate says, by its id
 * @param picked what was picked by hand, by what recipes call it
 * @param today the day of making
 */
record StockLook(
        Map<String, StockItem> items,
        Map<String, List<Lot>> lots,
        List<StockItem> held,
        Map<String, OwnMaterial> certificates,
        Map<String, Picked> picked,
        LocalDate today) {

    private static final double MILLIGRAMS = 1000;

    StockLook {
        items = Map.copyOf(items);
        lots = Map.copyOf(lots);
        held = List.copyOf(held);
        certificates = Map.copyOf(certificates);
        picked = Map.copyOf(picked);
    }

    /**
     * Asks the records: the same two questions for any sheet, and one more for each picked lot that holds nothing.
     *
     * @param keys what the recipe calls what it takes
     */
    static StockLook of(Records records, LocalDate today, MakeChoice choice, Set<String> keys) {
        List<StockItem> all = records.items().list();
        List<KeptLot> held = new ArrayList<>(records.lots().held());
        Set<String> ids = held.stream().map(KeptLot::id).collect(Collectors.toSet());
        choice.firstLots().values().stream()
                .filter(id -> !ids.contains(id))
                .flatMap(id -> records.lots().find(id).stream())
                .forEach(held::add);
        Shelves shelves = Shelves.of(all, held).calledAsIn(keys);
        Map<String, OwnMaterial> certificates = new HashMap<>();
        held.forEach(lot -> lot.said().certificate().ifPresent(own -> certificates.put(lot.id(), own)));
        return new StockLook(
                shelves.items(), shelves.lots(), some(all, held), certificates, picked(shelves.items(), choice), today);
    }

    private static List<StockItem> some(List<StockItem> items, List<KeptLot> held) {
        Set<String> ids =
                held.stream().filter(lot -> lot.left() > 0).map(KeptLot::itemId).collect(Collectors.toSet());
        return items.stream().filter(item -> ids.contains(item.id())).toList();
    }

    private static Map<String, Picked> picked(Map<String, StockItem> items, MakeChoice choice) {
        Map<String, Picked> picked = new HashMap<>();
        items.keySet()
                .forEach(key -> picked.put(
                        key, new Picked(Optional.ofNullable(choice.firstLots().get(key)), choice.leftOut())));
        return picked;
    }

    /** Holds a sheet against the cupboard. */
    Cupboard look(MakingSheet sheet) {
        return Cupboard.look(needs(sheet), lots, picked, today);
    }

    /** What may be used for a need, what expires first before the others. */
    List<Lot> usable(Need need) {
        return Allocation.usable(lots.getOrDefault(need.key(), List.of()), today).stream()
                .filter(lot -> lot.alkali() == need.alkali())
                .toList();
    }

    /** Everything that is weighed but water, each material once. */
    private static List<Need> needs(MakingSheet sheet) {
        Map<String, Need> needs = new LinkedHashMap<>();
        for (Vessel vessel : sheet.vessels()) {
            for (Weighing weighing : vessel.weighings()) {
                BatchLine line = weighing.line();
                long milligrams = Math.round(weighing.weigh().grams() * MILLIGRAMS);
                if (line.kind() != BatchLine.Kind.WATER && !line.key().equals("water") && milligrams > 0) {
                    needs.merge(
                            line.key(),
                            new Need(line.key(), weighing.name(), milligrams, line.kind() == BatchLine.Kind.ALKALI),
                            (one, more) -> new Need(one.key(), one.name(), one.amount() + more.amount(), one.alkali()));
                }
            }
        }
        return List.copyOf(needs.values());
    }
}
