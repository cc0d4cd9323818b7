package lyewright.records.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.chain.Finding;
import lyewright.records.file.DocumentFiles;
import lyewright.records.ledger.EntryText;
import lyewright.records.ledger.Ledger;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Whether the documents of lots still are what the ledger says of them: their rows, and the files themselves. */
public final class DocumentCheck implements Ledger.RowCheck {

    /** So much is read through, the newest first; of what is older, whether it is there with its length. */
    static final long READ_THROUGH = 512L << 20;

    private final DocumentFiles files;
    private final long most;

    /** The check of some files. */
    public DocumentCheck(DocumentFiles files) {
        this(files, READ_THROUGH);
    }

    DocumentCheck(DocumentFiles files, long most) {
        this.files = files;
        this.most = most;
    }

    /** What a row says now, and what its entry says; nothing where there is no such entry. */
    private record Linked(
            long number,
            String lot,
            String sha256,
            String name,
            @Nullable String mediaType,
            long bytes,
            @Nullable String told) {

        String key() {
            return lot + ' ' + sha256;
        }

        String what() {
            return "the document \"" + name + "\"";
        }

        /** Whether the row says what the entry says, whatever was written there. */
        boolean isAsTold() {
            if (told == null || mediaType == null) {
                return false;
            }
            String takenOff = EntryText.facts(told).getOrDefault(StockEntries.TAKEN_OFF, "");
            return StockEntries.document(lot, sha256, mediaType, bytes, name, takenOff)
                    .text()
                    .equals(told);
        }
    }

    @Override
    public Ledger.Checked check(Handle handle) {
        List<Finding> findings = new ArrayList<>();
        List<Linked> links = links(handle);
        rows(links, newestOfEach(handle), findings);
        Optional<String> looked = files(links, findings);
        return new Ledger.Checked(findings, looked);
    }

    private static List<Linked> links(Handle handle) {
        return handle.createQuery("""
                        SELECT l.*, d.media_type, d.size_bytes, e.entry_text
                        FROM lot_document l
                        LEFT JOIN document d ON d.sha256 = l.sha256
                        LEFT JOIN ledger_entry e ON e.number = l.entry_number AND e.kind = :kind
                        ORDER BY l.entry_number DESC
                        """)
                .bind("kind", StockEntries.DOCUMENT)
                .map((row, context) -> new Linked(
                        row.getLong("entry_number"),
                        row.getString("lot_id"),
                        row.getString("sha256"),
                        row.getString("name"),
                        row.getString("media_type"),
                        row.getLong("size_bytes"),
                        row.getString("entry_text")))
                .list();
    }

    /** The number of the entry that last told of each document of each lot. */
    private static Map<String, Long> newestOfEach(Handle handle) {
        Map<String, Long> newest = new HashMap<>();
        handle.createQuery("SELECT number, entry_text FROM ledger_entry WHERE kind = :kind ORDER BY number")
                .bind("kind", StockEntries.DOCUMENT)
                .map((row, context) -> Map.entry(row.getLong("number"), row.getString("entry_text")))
                .forEach(entry -> {
                    Map<String, String> facts = EntryText.facts(entry.getValue());
                    newest.put(facts.get("lot") + ' ' + facts.get("sha256"), entry.getKey());
                });
        return newest;
    }

    private static void rows(List<Linked> links, Map<String, Long> newest, List<Finding> findings) {
        for (Linked link : links) {
            Long last = newest.remove(link.key());
            if (link.told() == null) {
                findings.add(finding(link.number(), link.what() + " is there, but the entry that tells of it is gone"));
            } else if (!link.isAsTold()) {
                findings.add(finding(link.number(), link.what() + " now says something else than the ledger"));
            }
            if (last != null && last != link.number()) {
                findings.add(
                        finding(last, link.what() + " was set back to what entry " + link.number() + " says of it"));
            }
        }
        newest.values().stream()
                .sorted()
                .forEach(number ->
                        findings.add(new Finding(number, "Entry " + number + " tells of a document that is gone.")));
    }

    private Optional<String> files(List<Linked> links, List<Finding> findings) {
        Set<String> seen = new HashSet<>();
        long read = 0;
        int whole = 0;
        int byLength = 0;
        for (Linked link : links) {
            if (!seen.add(link.sha256())) {
                continue;
            }
            boolean reads = read + link.bytes() <= most;
            boolean sound;
            if (reads) {
                read += link.bytes();
                whole++;
                sound = files.isSound(link.sha256());
            } else {
                byLength++;
                sound = files.hasLength(link.sha256(), link.bytes());
            }
            if (!sound) {
                String gone = files.file(link.sha256()).isEmpty()
                        ? "the file of " + link.what() + " has gone"
                        : "the file of " + link.what() + " is not what was put there: its bytes were changed";
                findings.add(finding(link.number(), gone));
            }
        }
        return seen.isEmpty() ? Optional.empty() : Optional.of(looked(whole, byLength));
    }

    private static String looked(int whole, int byLength) {
        String read = whole == 1 ? "One document's file was read" : "The files of " + whole + " documents were read";
        return switch (byLength) {
            case 0 -> read + " through and compared with the ledger.";
            case 1 -> read + " through, the newest; of 1 older only whether it is there and how long it is.";
            default ->
                read + " through, the newest; of " + byLength
                        + " older ones only whether they are there and how long they are.";
        };
    }

    private static Finding finding(long number, String what) {
        return new Finding(number, "Entry " + number + ": " + what + ".");
    }
}
