package lyewright.records.stock;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.file.DocumentFiles;
import lyewright.records.ledger.LedgerBook;
import lyewright.records.people.Roles;
import lyewright.records.store.Author;
import lyewright.records.store.Database;
import lyewright.records.store.Typed;
import org.jdbi.v3.core.Handle;

/**
 * Documents of lots, such as certificates. A document that several lots have is one file. That it was put to a lot, and that it was
 * taken off, are entries of the ledger with the digest of its bytes; neither its row nor its file is ever deleted.
 */
public final class LotDocuments {

    private static final int LONGEST_WHY = 2_000;

    private final Database database;
    private final DocumentFiles files;

    /** The documents of a database, and their files; the records open it. */
    public LotDocuments(Database database, DocumentFiles files) {
        this.database = database;
        this.files = files;
    }

    /**
     * A document that a lot has.
     *
     * @param document the document
     * @param isNew whether the lot did not have it before
     */
    public record Added(LotDocument document, boolean isNew) {}

    /** All of a lot, those that were taken off it too, the newest first. */
    public List<LotDocument> of(String lotId) {
        return database.read(handle -> new DocumentRows(handle).of(lotId));
    }

    /** One, on its lot or taken off it. */
    public Optional<LotDocument> find(String lotId, String sha256) {
        return database.read(handle -> new DocumentRows(handle).find(lotId, sha256));
    }

    /** The file of a document; empty where it has gone. */
    public Optional<Path> file(LotDocument document) {
        return files.file(document.sha256());
    }

    /** Whether a document's file has the bytes that its digest, which the ledger seals, stands for; all of them are read. */
    public boolean isSound(LotDocument document) {
        return files.isSound(document.sha256());
    }

    /**
     * Puts a document to a lot. The same document once more adds nothing; its file, should it have gone, is there again.
     *
     * @param author who does it
     * @param lotId to which lot
     * @param name what it is called
     * @param content as it came; read once, piece by piece
     * @return the document, or why it is not kept; problems are at {@code name} or {@code document}
     */
    public Outcome<Added> add(Author author, String lotId, String name, InputStream content) {
        return add(author, List.of(lotId), name, content).then(added -> Outcome.ok(added.get(0)));
    }

    /**
     * Puts a document to several lots, as a delivery note to all that came with it: to all of them or to none.
     *
     * @param author who does it
     * @param lotIds to which lots
     * @param name what it is called
     * @param content as it came; read once, piece by piece
     * @return the document of each lot, or why it is not kept; problems are at {@code name} or {@code document}
     */
    public Outcome<List<Added>> add(Author author, List<String> lotIds, String name, InputStream content) {
        List<Problem> problems =
                Typed.name("name", "the document's name", name).stream().toList();
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        Outcome<List<Added>> added = files.take(
                content,
                waiting -> database.decide(handle ->
                        Roles.isMaker(handle, author).then(may -> added(handle, author, lotIds, name, waiting))));
        return added instanceof Outcome.Ok
                ? added
                : new Outcome.Refused<>(added.problems().stream()
                        .map(problem -> problem.within("document"))
                        .toList());
    }

    private Outcome<List<Added>> added(
            Handle handle, Author author, List<String> lotIds, String name, DocumentFiles.Waiting waiting) {
        LotRows lots = new LotRows(handle);
        if (lotIds.stream().anyMatch(lotId -> lots.find(lotId).isEmpty())) {
            return Outcome.refused("there is no such lot", "go back to the cupboard");
        }
        waiting.place().run();
        return Outcome.ok(lotIds.stream()
                .map(lotId -> added(handle, author, lotId, name, waiting))
                .toList());
    }

    private Added added(Handle handle, Author author, String lotId, String name, DocumentFiles.Waiting waiting) {
        DocumentRows rows = new DocumentRows(handle);
        Optional<LotDocument> there = rows.find(lotId, waiting.sha256());
        if (there.isPresent() && there.get().takenOff().isEmpty()) {
            return new Added(there.get(), false);
        }
        rows.document(waiting.sha256(), waiting.kind(), waiting.bytes(), database.now());
        long number = new LedgerBook(handle, database.now())
                .write(
                        author,
                        StockEntries.DOCUMENT,
                        StockEntries.document(
                                lotId, waiting.sha256(), waiting.kind().mediaType(), waiting.bytes(), name, ""));
        rows.link(lotId, waiting.sha256(), name, number);
        return new Added(rows.find(lotId, waiting.sha256()).orElseThrow(), true);
    }

    /**
     * Takes a document off a lot, as when it is of another. It can still be opened, and stands with why it was taken off.
     *
     * @param author who does it
     * @param lotId off which lot
     * @param sha256 which document
     * @param why why; not empty
     * @return the document as it stands now, or why not; problems are at {@code why}
     */
    public Outcome<LotDocument> takeOff(Author author, String lotId, String sha256, String why) {
        List<Problem> problems = why.isBlank()
                ? List.of(new Problem("why", "nothing says why", "write it, such as: is of another lot"))
                : Typed.text("why", "the reason", why, LONGEST_WHY).stream().toList();
        return problems.isEmpty()
                ? database.decide(handle ->
                        Roles.isMaker(handle, author).then(may -> takenOff(handle, author, lotId, sha256, why)))
                : new Outcome.Refused<>(problems);
    }

    private Outcome<LotDocument> takenOff(Handle handle, Author author, String lotId, String sha256, String why) {
        DocumentRows rows = new DocumentRows(handle);
        Optional<LotDocument> there = rows.find(lotId, sha256);
        if (there.isEmpty()) {
            return Outcome.refused("this lot has no such document", "go back to the lot");
        }
        LotDocument document = there.get();
        if (document.takenOff().isPresent()) {
            return Outcome.refused("it was taken off before, as entry " + document.number() + " tells", "go on");
        }
        long number = new LedgerBook(handle, database.now())
                .write(
                        author,
                        StockEntries.DOCUMENT,
                        StockEntries.document(
                                lotId,
                                sha256,
                                document.kind().mediaType(),
                                document.bytes(),
                                document.name(),
                                why.strip()));
        rows.link(lotId, sha256, document.name(), number);
        return Outcome.ok(rows.find(lotId, sha256).orElseThrow());
    }
}
