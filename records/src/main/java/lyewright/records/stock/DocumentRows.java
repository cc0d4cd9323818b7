package lyewright.records.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import lyewright.records.file.DocumentKind;
import lyewright.records.ledger.EntryText;
import org.jdbi.v3.core.Handle;

/** The rows of documents, in the transaction of a handle. A row of a lot's document names the entry that tells last of it. */
final class DocumentRows {

    private static final String ALL = """
            SELECT l.lot_id, l.sha256, l.name, l.entry_number, d.media_type, d.size_bytes,
              e.at_epoch_ms, e.person_id, e.entry_text
            FROM lot_document l
            JOIN document d ON d.sha256 = l.sha256
            JOIN ledger_entry e ON e.number = l.entry_number
            WHERE l.lot_id = :lot
            """;

    private final Handle handle;

    DocumentRows(Handle handle) {
        this.handle = handle;
    }

    List<LotDocument> of(String lotId) {
        return handle.createQuery(ALL + "ORDER BY l.entry_number DESC")
                .bind("lot", lotId)
                .map((row, context) -> document(row))
                .list();
    }

    Optional<LotDocument> find(String lotId, String sha256) {
        return handle.createQuery(ALL + "AND l.sha256 = :sha256")
                .bind("lot", lotId)
                .bind("sha256", sha256)
                .map((row, context) -> document(row))
                .findOne();
    }

    private static LotDocument document(ResultSet row) throws SQLException {
        return new LotDocument(
                row.getString("lot_id"),
                row.getString("sha256"),
                DocumentKind.ofMediaType(row.getString("media_type")).orElse(DocumentKind.TEXT),
                row.getLong("size_bytes"),
                row.getString("name"),
                row.getLong("entry_number"),
                Instant.ofEpochMilli(row.getLong("at_epoch_ms")),
                row.getString("person_id"),
                Optional.ofNullable(EntryText.facts(row.getString("entry_text")).get(StockEntries.TAKEN_OFF)));
    }

    /** Notes a file, unless it is known. */
    void document(String sha256, DocumentKind kind, long bytes, long now) {
        handle.createUpdate("""
                        INSERT INTO document (sha256, media_type, size_bytes, kept_epoch_ms)
                        VALUES (:sha256, :type, :bytes, :now) ON CONFLICT (sha256) DO NOTHING
                        """)
                .bind("sha256", sha256)
                .bind("type", kind.mediaType())
                .bind("bytes", bytes)
                .bind("now", now)
                .execute();
    }

    /** Notes what an entry tells of a lot's document. */
    void link(String lotId, String sha256, String name, long number) {
        handle.createUpdate("""
                        INSERT INTO lot_document (lot_id, sha256, name, entry_number)
                        VALUES (:lot, :sha256, :name, :number)
                        ON CONFLICT (lot_id, sha256) DO UPDATE SET name = :name, entry_number = :number
                        """)
                .bind("lot", lotId)
                .bind("sha256", sha256)
                .bind("name", name)
                .bind("number", number)
                .execute();
    }
}
