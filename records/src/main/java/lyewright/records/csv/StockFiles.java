package lyewright.records.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import lyewright.measure.WrittenMass;
import lyewright.records.material.MaterialText;
import lyewright.records.stock.Counting;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockBook;
import lyewright.records.stock.StockBook.Booked;
import lyewright.records.stock.StockItem;
import lyewright.records.stock.StockMove;
import lyewright.records.stock.Supplier;

/** Everything in the cupboard as CSV files, and a dictionary of their columns made from the columns themselves. */
public final class StockFiles {

    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss'Z'");

    private final StockBook book;
    private final boolean mark;
    private final List<Sheet<?>> sheets;

    /**
     * The files of a cupboard.
     *
     * @param book the cupboard
     * @param mark whether each file begins with a byte order mark, by which some spreadsheets know UTF-8
     */
    public StockFiles(StockBook book, boolean mark) {
        this.book = book;
        this.mark = mark;
        this.sheets = List.of(materials(), suppliers(), lots(), moves());
    }

    /** One column: its name, what it means, its unit, an invented example, and what stands in it. */
    private record Column<T>(String name, String meaning, String unit, String example, Function<T, Object> cell) {}

    private record Sheet<T>(String name, List<T> things, List<Column<T>> columns) {

        List<List<Object>> rows() {
            List<List<Object>> rows = new ArrayList<>();
            rows.add(columns.stream().<Object>map(Column::name).toList());
            things.forEach(thing -> rows.add(
                    columns.stream().map(column -> column.cell().apply(thing)).toList()));
            return rows;
        }
    }

    /** The names of the files, the dictionary last. */
    public List<String> names() {
        List<String> names = new ArrayList<>(sheets.stream().map(Sheet::name).toList());
        names.add("data-dictionary.csv");
        return names;
    }

    /** The bytes of a file; empty where there is none of the name. */
    public Optional<byte[]> file(String name) {
        if (name.equals("data-dictionary.csv")) {
            return Optional.of(CsvText.bytes(dictionary(), ',', mark));
        }
        return sheets.stream()
                .filter(sheet -> sheet.name().equals(name))
                .findFirst()
                .map(sheet -> CsvText.bytes(sheet.rows(), ',', mark));
    }

    /** Writes all of them into one zip; leaves the stream open. */
    public void zip(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        for (String name : names()) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(file(name).orElseThrow());
            zip.closeEntry();
        }
        zip.finish();
    }

    private List<List<Object>> dictionary() {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of("file", "column", "meaning", "unit", "example"));
        for (Sheet<?> sheet : sheets) {
            for (Column<?> column : sheet.columns()) {
                rows.add(List.of(sheet.name(), column.name(), column.meaning(), column.unit(), column.example()));
            }
        }
        return rows;
    }

    // The columns

    private Sheet<StockItem> materials() {
        return new Sheet<>(
                "materials.csv",
                book.items(),
                List.of(
                        of("name", "what it is called in the cupboard", "Coconut oil", StockItem::name),
                        of(
                                "kind",
                                "oil, alkali, additive, colourant, fragrance or packaging",
                                "oil",
                                item -> item.said().kind().word()),
                        of(
                                "counting",
                                "mass where it is weighed, pieces where it is counted",
                                "mass",
                                item -> item.said().counting().word()),
                        of("recipe_name", "what recipes call it", "coconut", item -> key(item.said())),
                        of(
                                "inci",
                                "INCI name",
                                "Cocos Nucifera Oil",
                                item -> item.said().identity().inci()),
                        of(
                                "cas",
                                "CAS number",
                                "8001-31-8",
                                item -> item.said().identity().cas()),
                        of(
                                "species",
                                "the plant's botanical name",
                                "Cocos nucifera",
                                item -> item.said().identity().species()),
                        of(
                                "plant_part",
                                "which part of the plant",
                                "seed",
                                item -> item.said().identity().part()),
                        of(
                                "supplier",
                                "who sells it, where that is part of what it is",
                                "Northquay Oils",
                                item -> book.name(item.said().identity().supplierId())),
                        of(
                                "product_code",
                                "their code for it",
                                "NQ-CO-25",
                                item -> item.said().identity().productCode()),
                        of(
                                "certificate_version",
                                "the version of its certificate",
                                "3",
                                item -> item.said().identity().certificateVersion()),
                        in(
                                "reorder_g",
                                "buy more when less is left",
                                "g",
                                "2500",
                                item -> item.said().reorderMass().map(StockFiles::grams)),
                        in(
                                "reorder_pieces",
                                "the same for what is counted",
                                "pieces",
                                "50",
                                item -> item.said().reorderPieces()),
                        of(
                                "spoons",
                                "what the maker's own spoons hold, one on a line",
                                "teaspoon: 2.1 g",
                                item -> spoons(item.said())),
                        of(
                                "notes",
                                "the maker's own",
                                "melt gently",
                                item -> item.said().notes())));
    }

    private Sheet<Supplier> suppliers() {
        return new Sheet<>(
                "suppliers.csv",
                book.suppliers(),
                List.of(
                        of("name", "what they are called", "Northquay Oils", Supplier::name),
                        of("contact", "how they are reached, as typed", "by the harbour office", Supplier::contact),
                        of("notes", "the maker's own", "closed on Mondays", Supplier::notes)));
    }

    private Sheet<Booked> lots() {
        return new Sheet<>(
                "lots.csv",
                book.lots(),
                List.of(
                        of(
                                "own_code",
                                "the workshop's own code; no two lots share one",
                                "26-0007",
                                it -> it.lot().said().ownCode()),
                        of(
                                "material",
                                "what it is a lot of, as in materials.csv",
                                "Coconut oil",
                                it -> it.material().name()),
                        of(
                                "recipe_name",
                                "what recipes call it",
                                "coconut",
                                it -> key(it.material().said())),
                        of(
                                "kind",
                                "as in materials.csv",
                                "oil",
                                it -> it.material().said().kind().word()),
                        of(
                                "counting",
                                "mass where it is weighed, pieces where it is counted",
                                "mass",
                                it -> it.material().said().counting().word()),
                        of(
                                "supplier",
                                "who sold it; empty for what was made here",
                                "Northquay Oils",
                                it -> book.name(it.lot().said().supplierId())),
                        of(
                                "supplier_lot",
                                "their lot code",
                                "NQ-118",
                                it -> it.lot().said().supplierLot()),
                        in(
                                "received",
                                "the day it came or was made",
                                "day",
                                "2026-11-25",
                                it -> Optional.of(it.lot().said().received())),
                        in(
                                "opened",
                                "the day it was opened",
                                "day",
                                "2026-11-28",
                                it -> it.lot().said().opened()),
                        in(
                                "best_before",
                                "the last day it is good on",
                                "day",
                                "2027-11-25",
                                it -> it.lot().said().bestBefore()),
                        in(
                                "amount_g",
                                "how much came of what is weighed",
                                "g",
                                "5000",
                                it -> mass(it.material(), it.came())),
                        in(
                                "amount_pieces",
                                "how much came of what is counted",
                                "pieces",
                                "200",
                                it -> pieces(it.material(), it.came())),
                        in(
                                "left_g",
                                "what is left of what is weighed: the sum of its moves; not read in",
                                "g",
                                "4650",
                                it -> mass(it.material(), it.lot().left())),
                        in(
                                "left_pieces",
                                "what is left of what is counted; not read in",
                                "pieces",
                                "188",
                                it -> pieces(it.material(), it.lot().left())),
                        in(
                                "price",
                                "what was paid for all of it",
                                "the currency beside it",
                                "18.95",
                                it -> it.lot().said().price().map(StockFiles::price)),
                        of(
                                "currency",
                                "ISO 4217 code",
                                "GBP",
                                it -> it.lot()
                                        .said()
                                        .price()
                                        .map(Price::currency)
                                        .orElse("")),
                        of(
                                "status",
                                "quarantine, usable or refused",
                                "usable",
                                it -> it.lot().said().status().word()),
                        of(
                                "certificate",
                                "what its certificate says, as in a formula file; not read in",
                                "",
                                it -> it.lot()
                                        .said()
                                        .certificate()
                                        .map(MaterialText::of)
                                        .orElse("")),
                        of(
                                "notes",
                                "the maker's own",
                                "blue lid",
                                it -> it.lot().said().notes())));
    }

    private Sheet<StockMove> moves() {
        Map<String, Booked> lots =
                book.lots().stream().collect(Collectors.toMap(it -> it.lot().id(), it -> it));
        return new Sheet<>(
                "moves.csv",
                book.moves(),
                List.of(
                        in("number", "its number in the ledger", "", "41", move -> Optional.of(move.number())),
                        of(
                                "at",
                                "when it was written, in UTC",
                                "2026-11-25T09:00:00Z",
                                move -> SECOND.format(move.at().atOffset(ZoneOffset.UTC))),
                        of(
                                "by",
                                "who wrote it",
                                "The maker",
                                move -> book.name(Optional.of(move.author().person()))),
                        of(
                                "own_code",
                                "of which lot, as in lots.csv",
                                "26-0007",
                                move -> lot(lots, move).lot().said().ownCode()),
                        of(
                                "material",
                                "as in materials.csv",
                                "Coconut oil",
                                move -> lot(lots, move).material().name()),
                        of(
                                "kind",
                                "receipt, use, loss, count or return",
                                "use",
                                move -> move.told().kind().word()),
                        in(
                                "change_g",
                                "above 0 where it came, below where it went",
                                "g",
                                "-350",
                                move -> mass(
                                        lot(lots, move).material(), move.told().amount())),
                        in(
                                "change_pieces",
                                "the same for what is counted",
                                "pieces",
                                "-12",
                                move -> pieces(
                                        lot(lots, move).material(), move.told().amount())),
                        in(
                                "corrects",
                                "the number of the move that this one takes back",
                                "",
                                "40",
                                move -> move.told().corrects()),
                        of(
                                "purpose",
                                "what for",
                                "Tideline",
                                move -> move.told().purpose()),
                        of(
                                "words",
                                "how much in the maker's own words",
                                "2 teaspoons",
                                move -> move.told().words()),
                        of(
                                "why",
                                "why, where that needed a word",
                                "spilt",
                                move -> move.told().why())));
    }

    private static Booked lot(Map<String, Booked> lots, StockMove move) {
        Booked lot = lots.get(move.lotId());
        if (lot == null) {
            throw new IllegalStateException("a move of a lot that is not there: " + move.number());
        }
        return lot;
    }

    private static <T> Column<T> of(String name, String meaning, String example, Function<T, String> cell) {
        return new Column<>(name, meaning, "", example, cell::apply);
    }

    /** Numbers and days, which stand there bare; nothing where there is none. */
    private static <T> Column<T> in(
            String name, String meaning, String unit, String example, Function<T, Optional<?>> cell) {
        return new Column<>(name, meaning, unit, example, thing -> bare(cell.apply(thing)));
    }

    private static Object bare(Optional<?> value) {
        Object some = value.isPresent() ? value.get() : "";
        return some instanceof Number ? some : some.toString();
    }

    private static String key(ItemSaid said) {
        return said.identity().materialKey().orElse("");
    }

    private static String spoons(ItemSaid said) {
        return said.spoons().entrySet().stream()
                .map(spoon -> spoon.getKey() + ": " + grams(spoon.getValue()).toPlainString() + " g")
                .collect(Collectors.joining("\n"));
    }

    private static Optional<BigDecimal> mass(StockItem item, long amount) {
        return item.said().counting() == Counting.MASS ? Optional.of(grams(amount)) : Optional.empty();
    }

    private static Optional<Long> pieces(StockItem item, long amount) {
        return item.said().counting() == Counting.PIECES ? Optional.of(amount) : Optional.empty();
    }

    private static BigDecimal grams(long milligrams) {
        return plain(BigDecimal.valueOf(milligrams, 3));
    }

    private static BigDecimal grams(WrittenMass mass) {
        return plain(mass.value().multiply(mass.unit().grams()));
    }

    /** Without noughts at the end, and never as a power of ten. */
    private static BigDecimal plain(BigDecimal number) {
        BigDecimal brief = number.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return brief.scale() < 0 ? brief.setScale(0) : brief;
    }

    private static BigDecimal price(Price price) {
        return BigDecimal.valueOf(
                price.minor(), Currency.getInstance(price.currency()).getDefaultFractionDigits());
    }
}
