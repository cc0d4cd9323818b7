package lyewright.records.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import lyewright.records.RecordsTrouble;
import lyewright.records.store.Database;

/** Photographs, named by their content: the same picture is kept once. */
public final class Photographs {

    /** The largest photograph that is kept, bytes. The pages make them smaller before that. */
    public static final int LARGEST = 8 << 20;

    private final Database database;
    private final FileShelf shelf;

    /** The photographs of a database, in a folder; the records open them. */
    public Photographs(Database database, Path folder) {
        this.database = database;
        this.shelf = new FileShelf(folder);
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
                        ON CONFLICT (sha256) DO NOTHING
                        """)
                .bind("name", name)
                .bind("size", jpeg.length)
                .bind("now", database.now())
                .execute());
        return name;
    }

    private static boolean isJpeg(byte[] bytes) {
        return bytes.length > 3 && bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xd8 && bytes[2] == (byte) 0xff;
    }

    private String put(byte[] jpeg) {
        try {
            return shelf.put(jpeg);
        } catch (IOException e) {
            throw new RecordsTrouble(
                    "the photograph could not be written",
                    "see that there is room on the disk and leave to write to it",
                    e);
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
