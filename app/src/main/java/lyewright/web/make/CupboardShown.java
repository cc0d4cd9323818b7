package lyewright.web.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chemistry.BatchLine;
import lyewright.formula.OwnMaterial;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.Vessel;
import lyewright.makingsheet.Weighing;
import lyewright.records.Records;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.StockItem;
import lyewright.stock.Allocation.PassedOver;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Cupboard;
import lyewright.stock.Cupboard.Need;
import lyewright.stock.Lot;
import lyewright.stock.LotFigures;
import lyewright.words.Dates;
import lyewright.words.Sentences;
import lyewright.words.UnitsShown;

/**
 * What the cupboard has for a sheet.
 *
 * @param enough whether it has all that it keeps and the sheet asks for
 * @param says that, or what is short and by how much, in sentences
 * @param lines what is taken from which lot
 * @param certified what the certificates of these lots do; empty where none has one
 */
public record CupboardShown(boolean enough, List<String> says, List<Line> lines, Optional<Certified> certified) {

    private static final double MILLIGRAMS = 1000;

    /** Copies its lists. */
    public CupboardShown {
        says = List.copyOf(says);
        lines = List.copyOf(lines);
    }

    /**
     * A material.
     *
     * @param name what it is called
     * @param address its page in the cupboard
     * @param need how much is weighed
     * @param lots from which lots, and what is short
     * @param isShort whether something is
     */
    public record Line(String name, String address, String need, String lots, boolean isShort) {}

    /**
     * What certificates do.
     *
     * @param on whether they are reckoned with
     * @param says whose they are, and which lots have none
     * @param address where the sheet is reckoned the other way
     */
    public record Certified(boolean on, String says, String address) {}

    /** What is stocked, and what of it holds anything. */
    record Stock(List<StockItem> items, List<KeptLot> held, LocalDate today) {

        Map<String, StockItem> byKey() {
            Map<String, StockItem> byKey = new HashMap<>();
            items.forEach(item -> item.said().identity().materialKey().ifPresent(key -> byKey.put(key, item)));
            return byKey;
        }

        Map<String, OwnMaterial> certificates() {
            Map<String, OwnMaterial> certificates = new HashMap<>();
            held.forEach(lot -> lot.said().certificate().ifPresent(own -> certificates.put(lot.id(), own)));
            return certificates;
        }

        static Stock of(Records records, LocalDate today) {
            return new Stock(records.items().list(), records.lots().held(), today);
        }
    }

    /** What the cupboard has for a sheet; nothing to say where it has never held anything that the sheet weighs. */
    static Optional<CupboardShown> of(MakingSheet sheet, Stock stock, MakeChoice choice, UnitsShown units) {
        Map<String, StockItem> items = stock.byKey();
        Cupboard cupboard = look(sheet, stock);
        List<Line> lines = cupboard.lines().stream()
                .filter(Cupboard.Line::known)
                .map(line -> line(line, items, units))
                .toList();
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new CupboardShown(
                        cupboard.isEnough(),
                        says(cupboard, sheet, units),
                        lines,
                        certified(LotFigures.of(cupboard, stock.certificates()), choice)));
    }

    /** What the certificates of the lots that a sheet takes say. */
    static LotFigures certified(MakingSheet sheet, Stock stock) {
        return LotFigures.of(look(sheet, stock), stock.certificates());
    }

    private static Cupboard look(MakingSheet sheet, Stock stock) {
        return Cupboard.look(needs(sheet), lots(stock, stock.byKey()), stock.today());
    }

    private static Optional<Certified> certified(LotFigures figures, MakeChoice choice) {
        if (!figures.any()) {
            return Optional.empty();
        }
        boolean on = choice.asksForCertificates();
        String lots = (figures.lots().size() == 1 ? "the certificate of lot " : "the certificates of lots ")
                + Sentences.row(figures.lots());
        String says = on
                ? "Reckoned with " + lots + ", which the superfat and how sure it is follow."
                : Sentences.upperFirst(lots) + " would say more exactly what superfat this has.";
        MakeChoice other = on ? choice.without(MakeChoice.LOTS) : choice.with(MakeChoice.LOTS, MakeChoice.CERTIFICATES);
        return Optional.of(new Certified(on, says, "/make?" + other.query()));
    }

    private static Map<String, List<Lot>> lots(Stock stock, Map<String, StockItem> items) {
        Map<String, List<KeptLot>> byItem = stock.held().stream().collect(Collectors.groupingBy(KeptLot::itemId));
        Map<String, List<Lot>> lots = new HashMap<>();
        items.forEach((key, item) -> lots.put(
                key,
                byItem.getOrDefault(item.id(), List.of()).stream()
                        .map(KeptLot::lot)
                        .toList()));
        return lots;
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
                            new Need(line.key(), weighing.name(), milligrams),
                            (one, more) -> new Need(one.key(), one.name(), one.amount() + more.amount()));
                }
            }
        }
        return List.copyOf(needs.values());
    }

    private static List<String> says(Cupboard cupboard, MakingSheet sheet, UnitsShown units) {
        List<String> says = new ArrayList<>();
        if (cupboard.isEnough()) {
            says.add("The cupboard has all of it.");
        } else {
            says.add("Short of "
                    + Sentences.row(cupboard.shortages().stream()
                            .map(line -> units.tenths(line.allocation().shortBy() / MILLIGRAMS) + " of "
                                    + line.need().name())
                            .toList())
                    + ".");
            sheet.bars().ifPresent(bars -> {
                long allowed = cupboard.barsAllowed(bars.count());
                says.add(
                        allowed == 0
                                ? "Not one bar can be made of what there is."
                                : "What there is would do for " + allowed + (allowed == 1 ? " bar" : " bars")
                                        + " of these " + bars.count() + ".");
            });
        }
        return says;
    }

    private static Line line(Cupboard.Line line, Map<String, StockItem> items, UnitsShown units) {
        List<String> lots = new ArrayList<>();
        for (Taken taken : line.allocation().taken()) {
            lots.add(units.tenths(taken.amount() / MILLIGRAMS) + " of lot "
                    + taken.lot().code()
                    + taken.lot()
                            .bestBefore()
                            .map(day -> " (best before " + Dates.day(day) + ")")
                            .orElse(""));
        }
        if (line.allocation().shortBy() > 0) {
            lots.add(units.tenths(line.allocation().shortBy() / MILLIGRAMS) + " short");
        }
        for (PassedOver over : line.allocation().passedOver()) {
            lots.add("left alone: lot " + over.lot().code() + ", " + why(over));
        }
        String address = Optional.ofNullable(items.get(line.need().key()))
                .map(item -> "/stores/cupboard/" + item.id())
                .orElse("/stores/cupboard");
        return new Line(
                line.need().name(),
                address,
                units.tenths(line.need().amount() / MILLIGRAMS),
                String.join("; ", lots),
                line.allocation().shortBy() > 0);
    }

    private static String why(PassedOver over) {
        return switch (over.why()) {
            case QUARANTINE -> "in quarantine";
            case REFUSED -> "refused";
            case EXPIRED -> "past its best before";
        };
    }
}
