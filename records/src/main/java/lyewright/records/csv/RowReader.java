package lyewright.records.csv;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.measure.WrittenMass;
import lyewright.records.stock.CertificateSaid;
import lyewright.records.stock.Counting;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.LotSaid;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockRow;
import lyewright.records.stock.StockRow.Amount;
import lyewright.records.stock.StockRow.MaterialSaid;
import lyewright.stock.LotStatus;
import lyewright.stock.SaidAmount;

/** Makes of one row what it tells of. */
final class RowReader {

    private static final Map<String, ItemKind> OTHER_KINDS = Map.ofEntries(
            Map.entry("oils", ItemKind.OIL),
            Map.entry("butter", ItemKind.OIL),
            Map.entry("fat", ItemKind.OIL),
            Map.entry("wax", ItemKind.OIL),
            Map.entry("lye", ItemKind.ALKALI),
            Map.entry("additives", ItemKind.ADDITIVE),
            Map.entry("colourants", ItemKind.COLOURANT),
            Map.entry("colorant", ItemKind.COLOURANT),
            Map.entry("colour", ItemKind.COLOURANT),
            Map.entry("clay", ItemKind.COLOURANT),
            Map.entry("fragrances", ItemKind.FRAGRANCE),
            Map.entry("essential oil", ItemKind.FRAGRANCE),
            Map.entry("perfume", ItemKind.FRAGRANCE));

    private static final Problem NO_UNIT =
            new Problem("", "it is weighed, and this number has no unit of mass", "write it as in 500 g or 2.5 kg");

    private final CellReader cells;
    private final CsvChoice choice;
    private final String currency;

    RowReader(CellReader cells, CsvChoice choice, String currency) {
        this.cells = cells;
        this.choice = choice;
        this.currency = currency;
    }

    /** What the row tells of; empty where something in it cannot be read, which the cells then say. */
    Optional<StockRow> read(int number) {
        Optional<StockRow.What> what = switch (choice.kind()) {
            case SUPPLIERS ->
                Optional.of(new StockRow.OfSupplier(
                        named("who this is"), cells.text(Meaning.CONTACT), cells.text(Meaning.NOTES)));
            case MATERIALS -> Optional.of(new StockRow.OfMaterial(material(true)));
            case LOTS -> lot();
        };
        return cells.troubles().isEmpty() ? what.map(it -> new StockRow(number, it)) : Optional.empty();
    }

    private String named(String whose) {
        String name = cells.line(Meaning.NAME);
        if (name.isEmpty()) {
            cells.add(Meaning.NAME, new Problem("", "nothing says " + whose, "write a name"));
        }
        return name;
    }

    private MaterialSaid material(boolean whole) {
        String recipeName = cells.line(Meaning.RECIPE_NAME);
        String name = cells.line(Meaning.NAME);
        if (name.isEmpty() && recipeName.isEmpty()) {
            cells.add(
                    Meaning.NAME,
                    new Problem("", "nothing says which material this is", "write what it is called in the cupboard"));
        }
        Optional<ItemKind> kind = cells.read(Meaning.KIND, RowReader::kind);
        Optional<Counting> counting = cells.read(Meaning.COUNTING, RowReader::counting);
        boolean counted = counting.orElse(kind.filter(it -> it == ItemKind.PACKAGING)
                        .map(it -> Counting.PIECES)
                        .orElse(Counting.MASS))
                == Counting.PIECES;
        Identity identity = new Identity(
                Optional.of(recipeName).filter(it -> !it.isEmpty()),
                cells.line(Meaning.INCI),
                cells.line(Meaning.CAS),
                cells.line(Meaning.SPECIES),
                cells.line(Meaning.PART),
                Optional.empty(),
                cells.line(Meaning.PRODUCT_CODE),
                cells.line(Meaning.CERTIFICATE_VERSION));
        return new MaterialSaid(
                name.isEmpty() ? recipeName : name,
                kind,
                counting,
                identity,
                whole ? cells.line(Meaning.SUPPLIER) : "",
                counted ? Optional.empty() : reorderMass(),
                counted ? reorderPieces() : Optional.empty(),
                cells.read(Meaning.SPOONS, this::spoons).orElse(Map.of()),
                whole ? cells.text(Meaning.NOTES) : "");
    }

    private static Outcome<ItemKind> kind(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        return ItemKind.ofWord(small)
                .or(() -> Optional.ofNullable(OTHER_KINDS.get(small)))
                .<Outcome<ItemKind>>map(Outcome::ok)
                .orElseGet(() -> Outcome.refused(
                        "'" + CellReader.shown(text) + "' is no kind of material",
                        "write oil, alkali, additive, colourant, fragrance or packaging"));
    }

    private static Outcome<Counting> counting(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "mass", "weighed", "weight", "g" -> Outcome.ok(Counting.MASS);
            case "pieces", "counted", "count" -> Outcome.ok(Counting.PIECES);
            default ->
                Outcome.refused(
                        "'" + CellReader.shown(text) + "' says neither weighed nor counted",
                        "write weighed or counted");
        };
    }

    private Optional<WrittenMass> reorderMass() {
        cells.read(
                Meaning.REORDER_PIECES,
                text -> Outcome.refused("it is weighed, not counted", "write a mass, as in 500 g"));
        return cells.read(Meaning.REORDER, text -> mass(text, ""))
                .or(() -> cells.read(Meaning.REORDER_G, text -> mass(text, "g")));
    }

    private Outcome<WrittenMass> mass(String text, String usual) {
        return AmountCell.parts(text, choice.decimal())
                .then(parts -> AmountCell.mass(parts.number(), parts.unit().isEmpty() ? usual : parts.unit()));
    }

    private Optional<Long> reorderPieces() {
        cells.read(
                Meaning.REORDER_G, text -> Outcome.refused("it is counted, not weighed", "write how many, as in 50"));
        return cells.read(Meaning.REORDER, this::pieces).or(() -> cells.read(Meaning.REORDER_PIECES, this::pieces));
    }

    private Outcome<Long> pieces(String text) {
        return AmountCell.read(text, choice.decimal(), "")
                .then(read -> read.counting() == Counting.PIECES
                        ? Outcome.ok(read.number())
                        : Outcome.refused("it is counted, not weighed", "write how many, as in 50"));
    }

    /** As in {@code teaspoon: 2.1 g; ladle: 40 g}, or each on a line of its own. */
    private Outcome<Map<String, Long>> spoons(String text) {
        Map<String, Long> spoons = new TreeMap<>();
        for (String part : text.split(text.indexOf('\n') >= 0 ? "\\R" : ";", -1)) {
            int colon = part.lastIndexOf(':');
            Outcome<Long> holds = colon < 0
                    ? Outcome.refused(
                            "'" + CellReader.shown(part) + "' does not say what the spoon holds",
                            "write it as in teaspoon: 2.1 g")
                    : mass(part.substring(colon + 1).strip(), "").then(SaidAmount::milligrams);
            if (!(holds instanceof Outcome.Ok<Long> ok)) {
                return new Outcome.Refused<>(holds.problems());
            }
            spoons.put(part.substring(0, colon).strip(), ok.value());
        }
        return Outcome.ok(spoons);
    }

    private Optional<StockRow.What> lot() {
        MaterialSaid material = material(false);
        Optional<Amount> amount = amount();
        amount.filter(it -> it.counting() == Counting.PIECES && isWeighed(material))
                .ifPresent(it -> cells.add(amountColumn(), NO_UNIT));
        Optional<LocalDate> received = day(Meaning.RECEIVED);
        if (received.isEmpty() && cells.text(Meaning.RECEIVED).isEmpty()) {
            cells.add(
                    Meaning.RECEIVED,
                    new Problem("", "nothing says when it came", "write the day, as in 2026-11-25, or about when"));
        }
        Optional<Price> price = cells.read(
                Meaning.PRICE, text -> PriceCell.read(text, choice.decimal(), cells.text(Meaning.CURRENCY), currency));
        CertificateReader certificate = new CertificateReader(cells, choice.decimal());
        Optional<CertificateSaid> inColumns = certificate.inColumns();
        LotSaid said = new LotSaid(
                cells.line(Meaning.OWN_CODE),
                Optional.empty(),
                cells.line(Meaning.SUPPLIER_LOT),
                received.orElse(LocalDate.EPOCH),
                day(Meaning.OPENED),
                day(Meaning.BEST_BEFORE),
                price,
                cells.read(Meaning.STATUS, RowReader::status).orElse(LotStatus.USABLE),
                certificate.whole(),
                cells.text(Meaning.NOTES));
        String supplier = cells.line(Meaning.SUPPLIER);
        return amount.map(it -> new StockRow.OfLot(material, supplier, said, inColumns, it));
    }

    /** By its own kind; what the row does not say is asked of the cupboard. */
    private static boolean isWeighed(MaterialSaid material) {
        return material.kind().filter(it -> it != ItemKind.PACKAGING).isPresent();
    }

    private Optional<LocalDate> day(Meaning meaning) {
        return cells.read(meaning, text -> DayCell.read(text, choice.days()));
    }

    private static Outcome<LotStatus> status(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "usable", "in the cupboard", "released", "ok" -> Outcome.ok(LotStatus.USABLE);
            case "quarantine", "in quarantine" -> Outcome.ok(LotStatus.QUARANTINE);
            case "refused", "rejected" -> Outcome.ok(LotStatus.REFUSED);
            default ->
                Outcome.refused(
                        "'" + CellReader.shown(text) + "' is no status",
                        "write usable, quarantine or refused, or nothing");
        };
    }

    private Meaning amountColumn() {
        return choice.meanings().stream()
                .filter(it -> it.isAmount() && !cells.text(it).isEmpty())
                .findFirst()
                .orElse(Meaning.AMOUNT);
    }

    private Optional<Amount> amount() {
        List<Meaning> said = new ArrayList<>();
        for (Meaning meaning : List.of(Meaning.AMOUNT, Meaning.AMOUNT_G, Meaning.AMOUNT_KG, Meaning.AMOUNT_PIECES)) {
            if (!cells.text(meaning).isEmpty()) {
                said.add(meaning);
            }
        }
        if (said.size() == 1) {
            return cells.read(said.get(0), text -> AmountCell.read(text, choice.decimal(), unit(said.get(0))));
        }
        Meaning at =
                choice.meanings().stream().filter(Meaning::isAmount).findFirst().orElse(Meaning.AMOUNT);
        cells.add(
                said.isEmpty() ? at : said.get(1),
                said.isEmpty()
                        ? new Problem("", "nothing says how much came", "write it as in 2.5 kg, 500 g or 50")
                        : new Problem("", "how much came is said twice", "leave one of the two out"));
        return Optional.empty();
    }

    private static String unit(Meaning meaning) {
        return switch (meaning) {
            case AMOUNT_G -> "g";
            case AMOUNT_KG -> "kg";
            default -> "";
        };
    }
}
