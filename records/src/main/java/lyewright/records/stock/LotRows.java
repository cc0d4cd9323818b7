package lyewright.records.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.material.MaterialText;
import lyewright.records.store.Author;
import lyewright.stock.LotStatus;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.SqlStatement;

/** Lots and moves as they lie in their tables. */
final class LotRows {

    private static final String WITH_LEFT = """
            SELECT l.*, coalesce((SELECT sum(coalesce(m.milligrams, m.pieces)) FROM stock_move m WHERE m.lot_id = l.id), 0) AS left_over,
              coalesce((SELECT sum(coalesce(m.milligrams, m.pieces)) FROM stock_move m
                WHERE m.lot_id = l.id AND m.kind = 'receipt'), 0) AS came
            FROM lot l
            """;

    private static final String ORDER = " ORDER BY l.received_day, l.own_code, l.id";

    private static final String MOVES = """
            SELECT m.*, e.at_epoch_ms, e.person_id, e.device_id,
              (SELECT c.number FROM stock_move c WHERE c.corrects_number = m.number) AS corrected_by
            FROM stock_move m JOIN ledger_entry e ON e.number = m.number
            """;

    static final String INSERT = """
            INSERT INTO lot (id, item_id, own_code, supplier_id, supplier_lot, received_day, opened_day, best_before_day,
              price_minor, price_currency, status, certificate_text, notes, entry_number)
            VALUES (:id, :item, :code, :supplier, :supplierLot, :received, :opened, :bestBefore,
              :minor, :currency, :status, :certificate, :notes, :entry)
            """;

    static final String INSERT_MOVE = """
            INSERT INTO stock_move (number, lot_id, kind, milligrams, pieces, corrects_number, purpose, words, why)
            VALUES (:number, :lot, :kind, :milligrams, :pieces, :corrects, :purpose, :words, :why)
            """;

    static final String HOLD = """
            INSERT INTO lot_held (lot_id, since_number) VALUES (:lot, :number)
            ON CONFLICT (lot_id) DO NOTHING
            """;

    private final Handle handle;

    LotRows(Handle handle) {
        this.handle = handle;
    }

    /** Lots that hold something, or less than nothing. */
    List<KeptLot> held() {
        return lots(handle.createQuery(WITH_LEFT + " JOIN lot_held h ON h.lot_id = l.id" + ORDER));
    }

    /** Every lot. */
    List<KeptLot> all() {
        return lots(handle.createQuery(WITH_LEFT + ORDER));
    }

    /** Every move, the oldest first. */
    List<StockMove> allMoves() {
        return handle.createQuery(MOVES + " ORDER BY m.number")
                .map((row, context) -> stockMove(row))
                .list();
    }

    List<KeptLot> of(String itemId) {
        return lots(handle.createQuery(WITH_LEFT + " WHERE l.item_id = :item" + ORDER)
                .bind("item", itemId));
    }

    Optional<KeptLot> find(String id) {
        return handle.createQuery(WITH_LEFT + " WHERE l.id = :id")
                .bind("id", id)
                .map((row, context) -> lot(row))
                .findOne();
    }

    Optional<KeptLot> findCode(String code) {
        return handle.createQuery(WITH_LEFT + " WHERE l.own_code = :code")
                .bind("code", code)
                .map((row, context) -> lot(row))
                .findOne();
    }

    /** Other lots that the same supplier brought on the same day; those that were taken back never came. */
    List<KeptLot> cameWith(String id) {
        List<KeptLot> all = lots(handle.createQuery(WITH_LEFT + """
                         WHERE l.id <> :id
                          AND l.supplier_id = (SELECT supplier_id FROM lot WHERE id = :id)
                          AND l.received_day = (SELECT received_day FROM lot WHERE id = :id)
                        """ + ORDER).bind("id", id));
        return all.stream().filter(lot -> lot.came() > 0).toList();
    }

    /** What a form brought is written at one moment. */
    List<KeptLot> broughtBy(String token) {
        return lots(handle.createQuery(WITH_LEFT + """
                         JOIN stock_move r ON r.lot_id = l.id AND r.kind = 'receipt' AND r.corrects_number IS NULL
                         JOIN ledger_entry e ON e.number = r.number
                         JOIN ledger_once o ON o.token = :token AND r.number <= o.number
                         JOIN ledger_entry f ON f.number = o.number AND f.at_epoch_ms = e.at_epoch_ms
                         ORDER BY r.number
                        """).bind("token", token));
    }

    private static List<KeptLot> lots(Query query) {
        return query.map((row, context) -> lot(row)).list();
    }

    /** The code after the last one of a year. */
    String nextCode(LocalDate received) {
        LotCodes codes = new LotCodes();
        handle.createQuery("SELECT own_code FROM lot WHERE own_code LIKE :year")
                .bind("year", "%02d-%%".formatted(received.getYear() % 100))
                .mapTo(String.class)
                .forEach(codes::taken);
        CodesGiven.lost(handle).forEach(codes::taken);
        return codes.next(received);
    }

    void insert(String id, String itemId, LotSaid said, long entry) {
        bound(handle.createUpdate(INSERT), id, itemId, said, entry).execute();
    }

    void update(String id, String itemId, LotSaid said, long entry) {
        bound(handle.createUpdate("""
                UPDATE lot SET item_id = :item, own_code = :code, supplier_id = :supplier, supplier_lot = :supplierLot,
                  received_day = :received, opened_day = :opened, best_before_day = :bestBefore, price_minor = :minor,
                  price_currency = :currency, status = :status, certificate_text = :certificate, notes = :notes, entry_number = :entry
                WHERE id = :id
                """), id, itemId, said, entry).execute();
    }

    static <S extends SqlStatement<S>> S bound(S statement, String id, String itemId, LotSaid said, long entry) {
        return statement
                .bind("id", id)
                .bind("item", itemId)
                .bind("code", said.ownCode())
                .bind("supplier", said.supplierId().orElse(null))
                .bind("supplierLot", said.supplierLot())
                .bind("received", said.received().toString())
                .bind("opened", said.opened().map(LocalDate::toString).orElse(null))
                .bind("bestBefore", said.bestBefore().map(LocalDate::toString).orElse(null))
                .bind("minor", said.price().map(Price::minor).orElse(null))
                .bind("currency", said.price().map(Price::currency).orElse(null))
                .bind("status", said.status().word())
                .bind("certificate", said.certificate().map(MaterialText::of).orElse(null))
                .bind("notes", said.notes())
                .bind("entry", entry);
    }

    /** Writes a move in the ledger and beside it. */
    long move(LedgerBook book, Author author, String lotId, Counting counting, StockMove.Told told) {
        long number = moved(book, author, lotId, counting, told);
        noteHeld(lotId, number);
        return number;
    }

    private long moved(LedgerBook book, Author author, String lotId, Counting counting, StockMove.Told told) {
        long number = book.write(author, StockEntries.MOVE, StockEntries.move(lotId, counting, told));
        bound(handle.createUpdate(INSERT_MOVE), number, lotId, counting, told).execute();
        return number;
    }

    static <S extends SqlStatement<S>> S bound(
            S statement, long number, String lotId, Counting counting, StockMove.Told told) {
        return statement
                .bind("number", number)
                .bind("lot", lotId)
                .bind("kind", told.kind().word())
                .bind("milligrams", counting == Counting.MASS ? told.amount() : null)
                .bind("pieces", counting == Counting.PIECES ? told.amount() : null)
                .bind("corrects", told.corrects().orElse(null))
                .bind("purpose", told.purpose())
                .bind("words", told.words())
                .bind("why", told.why());
    }

    /** Whether a lot holds something, which a move may change either way. */
    private void noteHeld(String lotId, long number) {
        long left = handle.createQuery(
                        "SELECT coalesce(sum(coalesce(milligrams, pieces)), 0) FROM stock_move WHERE lot_id = :lot")
                .bind("lot", lotId)
                .mapTo(Long.class)
                .one();
        if (left == 0) {
            handle.createUpdate("DELETE FROM lot_held WHERE lot_id = :lot")
                    .bind("lot", lotId)
                    .execute();
        } else {
            handle.createUpdate(HOLD).bind("lot", lotId).bind("number", number).execute();
        }
    }

    /** The moves of a lot, the newest first. */
    /** Moves from a number downwards, that one first. */
    List<StockMove> movesUpTo(long number, int most) {
        return handle.createQuery(MOVES + " WHERE m.number <= :number ORDER BY m.number DESC LIMIT " + most)
                .bind("number", number)
                .map((row, context) -> stockMove(row))
                .list();
    }

    List<StockMove> movesOf(String lotId) {
        return handle.createQuery(MOVES + " WHERE m.lot_id = :lot ORDER BY m.number DESC")
                .bind("lot", lotId)
                .map((row, context) -> stockMove(row))
                .list();
    }

    /** The moves that were written straight after a lot was made, of what it was made of. */
    List<StockMove> madeOf(String lotId) {
        List<StockMove> parts = new ArrayList<>();
        Optional<StockMove> next = movesOf(lotId).stream()
                .filter(move -> move.told().kind() == MoveKind.RECEIPT
                        && move.told().corrects().isEmpty()
                        && move.told().purpose().equals(LotWork.MADE_HERE))
                .findFirst()
                .flatMap(made -> move(made.number() + 1));
        while (next.filter(LotRows::isPart).isPresent()) {
            parts.add(next.get());
            next = move(next.get().number() + 1);
        }
        return parts;
    }

    private static boolean isPart(StockMove move) {
        return move.told().kind() == MoveKind.USE
                && move.told().corrects().isEmpty()
                && move.told().purpose().startsWith(LotWork.MADE_INTO);
    }

    Optional<StockMove> move(long number) {
        return handle.createQuery(MOVES + " WHERE m.number = :number")
                .bind("number", number)
                .map((row, context) -> stockMove(row))
                .findOne();
    }

    static KeptLot lot(ResultSet row) throws SQLException {
        long minor = row.getLong("price_minor");
        Optional<Price> price =
                row.wasNull() ? Optional.empty() : Optional.of(new Price(minor, row.getString("price_currency")));
        LotSaid said = new LotSaid(
                row.getString("own_code"),
                Optional.ofNullable(row.getString("supplier_id")),
                row.getString("supplier_lot"),
                LocalDate.parse(row.getString("received_day")),
                Optional.ofNullable(row.getString("opened_day")).map(LocalDate::parse),
                Optional.ofNullable(row.getString("best_before_day")).map(LocalDate::parse),
                price,
                LotStatus.ofWord(row.getString("status")).orElseThrow(),
                Optional.ofNullable(row.getString("certificate_text")).map(MaterialText::read),
                row.getString("notes"));
        return new KeptLot(
                row.getString("id"),
                row.getString("item_id"),
                said,
                row.getLong("left_over"),
                row.getLong("came"),
                row.getLong("entry_number"));
    }

    private static StockMove stockMove(ResultSet row) throws SQLException {
        return new StockMove(
                row.getLong("number"),
                Instant.ofEpochMilli(row.getLong("at_epoch_ms")),
                new Author(row.getString("person_id"), Optional.ofNullable(row.getString("device_id"))),
                row.getString("lot_id"),
                told(row),
                number(row, "corrected_by"));
    }

    static StockMove.Told told(ResultSet row) throws SQLException {
        long milligrams = row.getLong("milligrams");
        long amount = row.wasNull() ? row.getLong("pieces") : milligrams;
        return new StockMove.Told(
                MoveKind.ofWord(row.getString("kind")).orElseThrow(),
                amount,
                number(row, "corrects_number"),
                row.getString("purpose"),
                row.getString("words"),
                row.getString("why"));
    }

    private static Optional<Long> number(ResultSet row, String name) throws SQLException {
        long number = row.getLong(name);
        return row.wasNull() ? Optional.empty() : Optional.of(number);
    }
}
