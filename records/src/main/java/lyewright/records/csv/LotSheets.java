package lyewright.records.csv;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.records.stock.Price;
import lyewright.records.stock.StockBook;
import lyewright.records.stock.StockBook.Booked;
import lyewright.records.stock.StockMove;

/** Lots and their moves as files. */
final class LotSheets {

    /** What is left of a lot, which only the ledger knows. */
    static final String LEFT = "left_g";

    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss'Z'");

    /** The columns of the moves, by which the file is known when it is given back. */
    static final List<String> MOVES = List.of(
            "number",
            "at",
            "by",
            "own_code",
            "material",
            "kind",
            "change_g",
            "change_pieces",
            "corrects",
            "purpose",
            "words",
            "why");

    private LotSheets() {}

    static Sheet<Booked> lots(StockBook book) {
        List<Sheet.Column<Booked>> columns = new ArrayList<>(columns(book));
        columns.addAll(columns.size() - 1, CertificateColumns.all());
        return new Sheet<>("lots.csv", book.lots(), columns);
    }

    private static List<Sheet.Column<Booked>> columns(StockBook book) {
        return List.of(
                Sheet.of(
                        "own_code",
                        "the workshop's own code; no two lots share one",
                        "26-0007",
                        it -> it.lot().said().ownCode()),
                Sheet.of(
                        "material",
                        "what it is a lot of, as in materials.csv",
                        "Coconut oil",
                        it -> it.material().name()),
                Sheet.of(
                        "recipe_name",
                        "what recipes call it",
                        "coconut",
                        it -> MaterialSheets.key(it.material().said())),
                Sheet.of(
                        "kind",
                        "as in materials.csv",
                        "oil",
                        it -> it.material().said().kind().word()),
                Sheet.of(
                        "counting",
                        "mass where it is weighed, pieces where it is counted",
                        "mass",
                        it -> it.material().said().counting().word()),
                Sheet.of(
                        "supplier",
                        "who sold it; empty for what was made here",
                        "Northquay Oils",
                        it -> book.name(it.lot().said().supplierId())),
                Sheet.of(
                        "supplier_lot",
                        "their lot code",
                        "NQ-118",
                        it -> it.lot().said().supplierLot()),
                Sheet.in(
                        "received",
                        "the day it came or was made",
                        "day",
                        "2026-11-25",
                        it -> Optional.of(it.lot().said().received())),
                Sheet.in(
                        "opened",
                        "the day it was opened",
                        "day",
                        "2026-11-28",
                        it -> it.lot().said().opened()),
                Sheet.in(
                        "best_before",
                        "the last day it is good on",
                        "day",
                        "2027-11-25",
                        it -> it.lot().said().bestBefore()),
                Sheet.in(
                        "amount_g",
                        "how much came of what is weighed",
                        "g",
                        "5000",
                        it -> PlainNumbers.mass(it.material(), it.lot().came())),
                Sheet.in(
                        "amount_pieces",
                        "how much came of what is counted",
                        "pieces",
                        "200",
                        it -> PlainNumbers.pieces(it.material(), it.lot().came())),
                Sheet.in(
                        LEFT,
                        "what is left of what is weighed: the sum of its moves; not read in",
                        "g",
                        "4650",
                        it -> PlainNumbers.mass(it.material(), it.lot().left())),
                Sheet.in(
                        "left_pieces",
                        "what is left of what is counted; not read in",
                        "pieces",
                        "188",
                        it -> PlainNumbers.pieces(it.material(), it.lot().left())),
                Sheet.in(
                        "price",
                        "what was paid for all of it",
                        "the currency beside it",
                        "18.95",
                        it -> it.lot().said().price().map(PlainNumbers::price)),
                Sheet.of(
                        "currency",
                        "ISO 4217 code",
                        "GBP",
                        it -> it.lot().said().price().map(Price::currency).orElse("")),
                Sheet.of(
                        "status",
                        "quarantine, usable or refused",
                        "usable",
                        it -> it.lot().said().status().word()),
                Sheet.of(
                        "notes",
                        "the maker's own",
                        "blue lid",
                        it -> it.lot().said().notes()));
    }

    static Sheet<StockMove> moves(StockBook book) {
        Map<String, Booked> lots =
                book.lots().stream().collect(Collectors.toMap(it -> it.lot().id(), it -> it));
        return new Sheet<>(
                "moves.csv",
                book.moves(),
                List.of(
                        Sheet.in("number", "its number in the ledger", "", "41", move -> Optional.of(move.number())),
                        Sheet.of(
                                "at",
                                "when it was written, in UTC",
                                "2026-11-25T09:00:00Z",
                                move -> SECOND.format(move.at().atOffset(ZoneOffset.UTC))),
                        Sheet.of(
                                "by",
                                "who wrote it",
                                "The maker",
                                move -> book.name(Optional.of(move.author().person()))),
                        Sheet.of(
                                "own_code",
                                "of which lot, as in lots.csv",
                                "26-0007",
                                move -> lot(lots, move).lot().said().ownCode()),
                        Sheet.of(
                                "material",
                                "as in materials.csv",
                                "Coconut oil",
                                move -> lot(lots, move).material().name()),
                        Sheet.of(
                                "kind",
                                "receipt, use, loss, count or return",
                                "use",
                                move -> move.told().kind().word()),
                        Sheet.in(
                                "change_g",
                                "above 0 where it came, below where it went",
                                "g",
                                "-350",
                                move -> PlainNumbers.mass(
                                        lot(lots, move).material(), move.told().amount())),
                        Sheet.in(
                                "change_pieces",
                                "the same for what is counted",
                                "pieces",
                                "-12",
                                move -> PlainNumbers.pieces(
                                        lot(lots, move).material(), move.told().amount())),
                        Sheet.in(
                                "corrects",
                                "the number of the move that this one takes back",
                                "",
                                "40",
                                move -> move.told().corrects()),
                        Sheet.of(
                                "purpose",
                                "what for",
                                "Tideline",
                                move -> move.told().purpose()),
                        Sheet.of(
                                "words",
                                "how much in the maker's own words",
                                "2 teaspoons",
                                move -> move.told().words()),
                        Sheet.of(
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
}
