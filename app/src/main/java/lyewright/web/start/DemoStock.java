package lyewright.web.start;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.FormulaFile;
import lyewright.formula.MaterialNames;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;
import lyewright.measure.WrittenMass;
import lyewright.records.Records;
import lyewright.records.stock.Arrival;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Delivery;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.KeptLot;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.MoveKind;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Supplier;
import lyewright.records.stock.Taking;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.jspecify.annotations.Nullable;

/**
 * The demo workshop's cupboard, as a maker's is in the middle of a season: two deliveries of oils, one of botanicals, boxes; something
 * used, spilt and counted. Suppliers, lots and prices are invented. A cupboard that has anything in it is left alone.
 */
final class DemoStock {

    private static final String OILS = "Northquay Oils";
    private static final String BOTANICALS = "Fell & Fen Botanicals";
    private static final String CURRENCY = "GBP";
    private static final long KILOGRAM = 1_000_000;
    private static final long GRAM = 1_000;

    private final Records records;
    private final Author author;
    private final LocalDate today;

    DemoStock(Records records, LocalDate today) {
        this.records = records;
        this.author = records.author();
        this.today = today;
    }

    void fill() {
        if (!records.items().list().isEmpty()) {
            return;
        }
        deliveries();
        whatHappened();
        certificate();
        records.suppliers()
                .list()
                .forEach(supplier -> records.suppliers()
                        .change(new Supplier(
                                supplier.id(),
                                supplier.name(),
                                contact(supplier.name()),
                                "Invented, like all of this workshop."))
                        .orThrow());
    }

    /** Northquay's certificate of the olive oil; the figure is invented, within what is published. */
    private void certificate() {
        OwnMaterial figures =
                FormulaFile.read("""
                        recipe: holder
                        oils: {olive-virgin: 100 %}
                        alkali: sodium
                        superfat: 5 %
                        water: 33 % lye
                        materials:
                          olive-virgin:
                            saponification value: 189.6 ± 0.8 mg KOH/g
                            source: "Northquay Oils, certificate NQ-0417 (demo data: invented)"
                        """).formula().orElseThrow().materials().get(0);
        records.items()
                .findKey("olive-virgin")
                .ifPresent(item -> records.lots()
                        .of(item.id())
                        .forEach(lot -> records.lots()
                                .change(author, lot.id(), lot.said().withCertificate(Optional.of(figures)))
                                .orThrow()));
    }

    private static String contact(String name) {
        return name.equals(OILS)
                ? "The Quay, Port Ellery"
                : name.equals(BOTANICALS) ? "Mill Lane, Ellery Fen" : "Port Ellery";
    }

    private void deliveries() {
        receive(
                OILS,
                150,
                List.of(
                        line(table("olive-virgin", ItemKind.OIL, "2 kg"), 10 * KILOGRAM, "NQ-0417", 240, 6_950),
                        line(table("coconut", ItemKind.OIL, "1.5 kg"), 5 * KILOGRAM, "NQ-0388", 400, 2_480),
                        line(table("olive-pomace", ItemKind.OIL, "2 kg"), 5 * KILOGRAM, "NQ-0401", 310, 2_450),
                        line(table("castor", ItemKind.OIL, "500 g"), 1 * KILOGRAM, "NQ-0390", 30, 890)));
        receive(
                OILS,
                40,
                List.of(
                        line(table("coconut", ItemKind.OIL, "1.5 kg"), 5 * KILOGRAM, "NQ-0512", 510, 2_560),
                        line(table("shea-butter", ItemKind.OIL, "500 g"), 2 * KILOGRAM, "NQ-0499", 320, 2_100),
                        line(table("sunflower-high-oleic", ItemKind.OIL, null), 3 * KILOGRAM, "NQ-0501", -5, 960),
                        line(table("cocoa-butter", ItemKind.OIL, null), 1 * KILOGRAM, "NQ-0502", 600, 1_790),
                        line(table("tallow", ItemKind.OIL, null), 2 * KILOGRAM, "NQ-0507", 210, 1_080)));
        receive(
                "Ellery Chandlers",
                120,
                List.of(
                        line(alkali("Sodium hydroxide", "naoh"), 5 * KILOGRAM, "77-A", 500, 2_100),
                        line(alkali("Potassium hydroxide", "koh"), 1 * KILOGRAM, "81-C", 430, 1_150),
                        line(table("sea-salt", ItemKind.ADDITIVE, "1 kg"), 3 * KILOGRAM, "", 0, 540)));
        receive(
                BOTANICALS,
                75,
                List.of(
                        line(spooned("green-clay", 2_100), 500 * GRAM, "FF-31", 700, 620),
                        line(table("activated-charcoal", ItemKind.COLOURANT, null), 200 * GRAM, "FF-32", 800, 480),
                        line(table("rosemary-oil", ItemKind.FRAGRANCE, "30 g"), 100 * GRAM, "FF-36", 300, 1_140),
                        line(table("colloidal-oats", ItemKind.ADDITIVE, "200 g"), 350 * GRAM, "FF-29", 110, 260)));
        received(
                BOTANICALS,
                9,
                LotStatus.QUARANTINE,
                List.of(line(
                        table("cedarwood-virginia-oil", ItemKind.FRAGRANCE, "50 g"), 100 * GRAM, "FF-44", 540, 1_820)));
        receive("Ellery Print", 60, List.of(line(boxes(), 250, "", 0, 3_400)));
    }

    private void receive(String from, int daysAgo, List<Arrival> arrivals) {
        received(from, daysAgo, LotStatus.USABLE, arrivals);
    }

    /** Lines are written as if they came today and are of the last delivery's day here. */
    private void received(String from, int daysAgo, LotStatus status, List<Arrival> arrivals) {
        LocalDate day = today.minusDays(daysAgo);
        records.lots()
                .receive(
                        author,
                        "",
                        new Delivery(
                                from,
                                arrivals.stream()
                                        .map(arrival -> new Arrival(
                                                "", arrival.fresh(), on(arrival.said(), day, status), arrival.amount()))
                                        .toList()))
                .orThrow();
    }

    private static LotSaid on(LotSaid said, LocalDate day, LotStatus status) {
        return new LotSaid(
                "",
                Optional.empty(),
                said.supplierLot(),
                day,
                Optional.empty(),
                said.bestBefore(),
                said.price(),
                status,
                Optional.empty(),
                "Demo data: invented.");
    }

    /** The best before so many days from today; none for 0. */
    private Arrival line(ItemSaid item, long amount, String lot, int bestBefore, long pence) {
        LotSaid said = LotSaid.of(today)
                .withSupplierLot(lot)
                .withBestBefore(bestBefore == 0 ? Optional.empty() : Optional.of(today.plusDays(bestBefore)))
                .withPrice(Optional.of(new Price(pence, CURRENCY)));
        return Arrival.of(item, said, amount);
    }

    private static ItemSaid table(String key, ItemKind kind, @Nullable String reorder) {
        String name = MaterialNames.of(Tables.bundled()).name(key).orElse(key);
        return said(name, kind, Identity.ofKey(key), reorder, Map.of());
    }

    private static ItemSaid alkali(String name, String key) {
        return said(name, ItemKind.ALKALI, Identity.ofKey(key), "1 kg", Map.of());
    }

    private static ItemSaid spooned(String key, long milligrams) {
        String name = MaterialNames.of(Tables.bundled()).name(key).orElse(key);
        return said(name, ItemKind.COLOURANT, Identity.ofKey(key), "100 g", Map.of("teaspoon", milligrams));
    }

    private static ItemSaid said(
            String name, ItemKind kind, Identity identity, @Nullable String reorder, Map<String, Long> spoons) {
        return new ItemSaid(
                name,
                kind,
                Counting.MASS,
                identity,
                Optional.ofNullable(reorder).map(mass -> WrittenMass.parse(mass).orThrow()),
                Optional.empty(),
                spoons,
                "");
    }

    private static ItemSaid boxes() {
        return new ItemSaid(
                "Card box for one bar",
                ItemKind.PACKAGING,
                Counting.PIECES,
                Identity.none(),
                Optional.empty(),
                Optional.of(60L),
                Map.of(),
                "");
    }

    private void whatHappened() {
        use("olive-virgin", 3_350 * GRAM, "Plain Castile");
        use("olive-virgin", 900 * GRAM, "Tideline");
        use("coconut", 4_400 * GRAM, "Tideline");
        use("castor", 640 * GRAM, "Rope Walk Charcoal");
        use("naoh", 3_980 * GRAM, "four batches");
        use("sea-salt", 1_700 * GRAM, "Tideline");
        take("green-clay", 12_600, MoveKind.USE, "Tideline", "6 teaspoons", "");
        take("colloidal-oats", 30 * GRAM, MoveKind.LOSS, "", "", "damp in the bottom of the bag");
        records.items()
                .findKey("shea-butter")
                .ifPresent(item -> records.lots()
                        .of(item.id())
                        .forEach(lot -> records.lots()
                                .count(
                                        author,
                                        "",
                                        Map.of(lot.id(), 1_985 * GRAM),
                                        Map.of(lot.id(), "sticks to the tub"))
                                .orThrow()));
    }

    private void use(String key, long amount, String purpose) {
        take(key, amount, MoveKind.USE, purpose, "", "");
    }

    private void take(String key, long amount, MoveKind kind, String purpose, String words, String why) {
        KeptLot lot = records.items()
                .findKey(key)
                .flatMap(item -> records.lots().of(item.id()).stream().findFirst())
                .orElseThrow(() -> new IllegalStateException("the demo cupboard has no " + key));
        records.lots()
                .take(
                        author,
                        "",
                        List.of(new Taking(lot.id(), amount, words)),
                        StockMove.Told.of(kind, 0).withPurpose(purpose).withWhy(why))
                .orThrow();
    }
}
