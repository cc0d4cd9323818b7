package lyewright.records.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import lyewright.measure.Outcome;
import lyewright.records.RecordsTrouble;

/** The files of documents. They lie on the photographs' shelf, as they came: not a byte is changed, so that their digest stands for them. */
public final class DocumentFiles {

    /** The largest document that is kept, bytes. */
    public static final long LARGEST = 40L << 20;

    private final FileShelf shelf;
    private final boolean ofAServer;

    /**
     * The files of a folder; the records open them.
     *
     * @param ofAServer whether the records are a server's, so that others may have files in the same folder
     */
    public DocumentFiles(Path folder, boolean ofAServer) {
        this.shelf = new FileShelf(folder);
        this.ofAServer = ofAServer;
    }

    /**
     * A document that is on the disk and has no place on the shelf yet.
     *
     * @param sha256 the digest of its bytes, hexadecimal
     * @param kind what it is
     * @param bytes how long it is
     * @param place gives it its place; to be done in the transaction that writes its row, for while that lasts nobody sweeps
     */
    public record Waiting(String sha256, DocumentKind kind, long bytes, Runnable place) {}

    /**
     * Takes a document in: writes it down piece by piece, judges it, and lets something be done with it. What was given no place by
     * then is forgotten.
     *
     * @param content as it came
     * @param work what is done with it
     * @return what that gives, or why the document is not kept
     */
    public <T> Outcome<T> take(InputStream content, Function<Waiting, Outcome<T>> work) {
        try (WaitingFile waiting = shelf.receive(content, LARGEST)) {
            return judge(waiting)
                    .then(kind -> work.apply(new Waiting(waiting.name(), kind, waiting.size(), () -> place(waiting))));
        } catch (IOException e) {
            throw trouble("the document could not be written", e);
        }
    }

    private static Outcome<DocumentKind> judge(WaitingFile waiting) throws IOException {
        return waiting.size() > LARGEST
                ? Outcome.refused(
                        "the file is larger than " + (LARGEST >> 20) + " MB",
                        "scan it with fewer dots to the inch, or give only the pages that count")
                : DocumentJudge.judge(waiting.path());
    }

    private void place(WaitingFile waiting) {
        try {
            shelf.place(waiting);
            if (ofAServer) {
                shelf.share();
            }
        } catch (IOException e) {
            throw trouble("the document could not be written", e);
        }
    }

    /** A document's file; empty where it has gone. */
    public Optional<Path> file(String sha256) {
        return FileShelf.isName(sha256) && shelf.has(sha256) ? Optional.of(shelf.at(sha256)) : Optional.empty();
    }

    /** Whether a file is there with as many bytes as it should have. */
    public boolean hasLength(String sha256, long bytes) {
        try {
            return file(sha256).isPresent() && Files.size(shelf.at(sha256)) == bytes;
        } catch (IOException e) {
            throw trouble("a document could not be read", e);
        }
    }

    /** Whether a file is there with the bytes that it should have; all of them are read. */
    public boolean isSound(String sha256) {
        try {
            return FileShelf.isName(sha256) && shelf.isSound(sha256);
        } catch (IOException e) {
            throw trouble("a document could not be read", e);
        }
    }

    private static RecordsTrouble trouble(String what, IOException e) {
        return new RecordsTrouble(what, "see that there is room on the disk and leave to use it", e);
    }
}
