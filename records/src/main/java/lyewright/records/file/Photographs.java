package lyewright.records.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import lyewright.records.RecordsTrouble;
import lyewright.records.store.Database;

/** Photographs, named by their content: the same picture is kept once. */
public final class Photographs {

    /** The largest photograph that is kept, bytes. The pages make them smaller before that. */
    public static final int LARGEST = 8 << 20;

    private static final Duration GRACE = Duration.ofHours(1);

    private final Database database;
    private final FileShelf shelf;
    private final boolean ofAServer;

    /**
     * The photographs of a database, in a folder; the records open them.
     *
     * @param ofAServer whether the database is a server's, so that another one may have photographs in the same folder
     */
    public Photographs(Database database, Path folder, boolean ofAServer) {
        this.database = database;
        this.shelf = new FileShelf(folder);
        this.ofAServer = ofAServer;
    }

    /**
     * Keeps a photograph: its file is on the disk before anything says that it is there.
     *
     * @param jpeg a JPEG made by the application, {@value #LARGEST} bytes at most; anything else is the caller's fault
     * @return its name, the SHA-256 of its bytes in hexadecimal
     */
    public String keep(byte[] jpeg) {
        if (jpeg.length > LARGEST || !isJpeg(jpeg)) {
            throw new IllegalArgumentException(jpeg.length + " bytes that are no photograph of ours");
        }
        String name = put(jpeg);
        database.write(handle -> handle.createUpdate("""
                        INSERT INTO photograph (sha256, size_bytes, kept_epoch_ms) VALUES (:name, :size, :now)
                        ON CONFLICT (sha256) DO UPDATE SET kept_epoch_ms = :now
                        """)
                .bind("name", name)
                .bind("size", jpeg.length)
                .bind("now", database.now())
                .execute());
        // one that was there before and that nobody wanted may have been taken away since
        put(jpeg);
        return name;
    }

    /**
     * Takes away photographs that no recipe has any more, deleted recipes counted among those that have one. What was kept within
     * the last hour stays, for somebody may be about to give it to a recipe. First the row goes, then the file: what ends this between
     * the two leaves a file without a row, which is taken away the next time.
     *
     * <p>Documents lie on the same shelf: a file that a document is of stays.
     *
     * <p>Never in a folder that the records of a server have used as well: one of two databases does not know what the other's
     * recipes have.
     *
     * @return how many files were taken away
     */
    public int sweep() {
        try {
            if (ofAServer) {
                shelf.share();
            }
            return shelf.isShared() ? 0 : sweepUp();
        } catch (IOException e) {
            throw trouble("photographs that nobody has any more could not be taken away", e);
        }
    }

    private int sweepUp() throws IOException {
        long before = database.now() - GRACE.toMillis();
        database.write(handle -> handle.createUpdate("""
                        DELETE FROM photograph WHERE kept_epoch_ms < :before AND NOT EXISTS (
                          SELECT 1 FROM recipe WHERE recipe.photograph_sha256 = photograph.sha256)
                        """).bind("before", before).execute());
        shelf.removeHalfWritten(Instant.ofEpochMilli(before));
        int gone = 0;
        for (String name : shelf.namesBefore(Instant.ofEpochMilli(before))) {
            gone += removeUnlessKept(name) ? 1 : 0;
        }
        return gone;
    }

    /** While this looks, nobody can begin to keep it: who writes waits for their turn. */
    private boolean removeUnlessKept(String name) throws IOException {
        try {
            return database.write(handle -> {
                boolean kept = handle.createQuery("""
                                SELECT (SELECT count(*) FROM photograph WHERE sha256 = :name)
                                  + (SELECT count(*) FROM document WHERE sha256 = :name)
                                """)
                                .bind("name", name)
                                .mapTo(Integer.class)
                                .one()
                        > 0;
                if (!kept) {
                    try {
                        shelf.remove(name);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }
                return !kept;
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static RecordsTrouble trouble(String what, IOException e) {
        return new RecordsTrouble(what, "see that there is room on the disk and leave to write to it", e);
    }

    private static boolean isJpeg(byte[] bytes) {
        return bytes.length > 3 && bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xd8 && bytes[2] == (byte) 0xff;
    }

    private String put(byte[] jpeg) {
        try {
            String name = shelf.put(jpeg);
            if (ofAServer) {
                shelf.share();
            }
            return name;
        } catch (IOException e) {
            throw trouble("the photograph could not be written", e);
        }
    }

    /** A photograph's file; empty for any name that is not the name of one that is there. */
    public Optional<Path> file(String name) {
        return FileShelf.isName(name) && shelf.has(name) ? Optional.of(shelf.at(name)) : Optional.empty();
    }

    /** A photograph's bytes; empty for any name that is not the name of one that is there. */
    public Optional<byte[]> open(String name) {
        Optional<Path> file = file(name);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readAllBytes(file.get()));
        } catch (IOException e) {
            throw new RecordsTrouble("a photograph could not be read", "see that the disk is sound", e);
        }
    }
}
