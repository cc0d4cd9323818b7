package lyewright.records.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import lyewright.measure.Outcome;
import lyewright.records.file.FileShelf;
import lyewright.records.store.Staging;
import org.jspecify.annotations.Nullable;

/** A backup that is being read. Nothing in it is believed: not its names, not its lengths, not its digests. */
final class BackupFile implements AutoCloseable {

    private static final long LARGEST_TABLE = 1L << 30;
    private static final long LARGEST_FILE = 64L << 20;
    private static final long LARGEST = 64L << 30;

    /** Room for what a manifest says of itself and of some ten thousand files that had gone. */
    private static final int MANIFEST = 1 << 20;

    /** What a manifest says of one part. */
    private static final int MANIFEST_A_PART = 400;

    private static final int MOST_PARTS = 200_000;

    /** Text that holds ids is never packed so tightly; under this length it does not matter. */
    private static final int TIGHTEST = 200;

    private static final long LOOSE = 4L << 20;

    private final ZipFile zip;
    private final Manifest manifest;

    private BackupFile(ZipFile zip, Manifest manifest) {
        this.zip = zip;
        this.manifest = manifest;
    }

    /** Opens one; refuses what is no backup, what is newer, and what does not hold together. */
    static Outcome<BackupFile> open(Path path) {
        if (!Files.isRegularFile(path)) {
            return Outcome.refused("there is no file " + path, "name a backup that was made with lyewright backup");
        }
        ZipFile zip = null;
        try {
            if (Files.size(path) == 0) {
                return Outcome.refused("the file " + path + " is empty", "choose another copy of the backup");
            }
            zip = new ZipFile(path.toFile());
            Outcome<BackupFile> opened = open(zip);
            if (opened instanceof Outcome.Refused) {
                zip.close();
            }
            return opened;
        } catch (ZipException e) {
            return noBackup();
        } catch (IOException | RuntimeException e) {
            closeQuietly(zip);
            return e instanceof IOException ? noBackup() : fail((RuntimeException) e);
        }
    }

    private static Outcome<BackupFile> fail(RuntimeException e) {
        // names that are not text make the reader throw this
        if (e instanceof IllegalArgumentException) {
            return damaged();
        }
        throw e;
    }

    private static void closeQuietly(@Nullable ZipFile zip) {
        if (zip != null) {
            try {
                zip.close();
            } catch (IOException e) {
                // it was only read
            }
        }
    }

    private static Outcome<BackupFile> open(ZipFile zip) throws IOException {
        if (zip.size() > MOST_PARTS) {
            return damaged();
        }
        ZipEntry entry = zip.getEntry(Manifest.NAME);
        if (entry == null) {
            return noBackup();
        }
        // read it is many times as large, so it may be no larger than its parts make it
        int largest = MANIFEST + MANIFEST_A_PART * zip.size();
        byte[] bytes;
        try (InputStream in = zip.getInputStream(entry)) {
            bytes = in.readNBytes(largest + 1);
        }
        Optional<Manifest> read =
                bytes.length > largest || !isSound(entry, bytes) ? Optional.empty() : Manifest.read(bytes);
        if (read.isEmpty()) {
            return damaged();
        }
        Manifest manifest = read.get();
        if (manifest.format() > Manifest.FORMAT || manifest.schema() > Staging.schemaVersion()) {
            return Outcome.refused(
                    "this backup was made by a newer Lyewright", "restore it with that one; nothing was touched");
        }
        return holdsTogether(zip, manifest) ? Outcome.ok(new BackupFile(zip, manifest)) : damaged();
    }

    /** The manifest vouches for every other part; for it there is only the file's own checksum, which the reader does not look at. */
    private static boolean isSound(ZipEntry entry, byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return sum.getValue() == entry.getCrc();
    }

    /** Whether the file has exactly the parts that its manifest lists, each of a kind and a size that a backup may have. */
    private static boolean holdsTogether(ZipFile zip, Manifest manifest) {
        Map<String, Part> listed = new HashMap<>();
        long total = 0;
        for (Part part : manifest.parts()) {
            long largest = part.isFile() ? LARGEST_FILE : LARGEST_TABLE;
            if (!part.isKnown()
                    || part.bytes() < 0
                    || part.bytes() > largest
                    || listed.put(part.name(), part) != null) {
                return false;
            }
            total += part.bytes();
        }
        Set<String> seen = new HashSet<>();
        Enumeration<? extends ZipEntry> entries = zip.entries();
        while (entries.hasMoreElements()) {
            ZipEntry entry = entries.nextElement();
            boolean known = entry.getName().equals(Manifest.NAME) || fits(entry, listed.get(entry.getName()));
            if (!known || !seen.add(entry.getName())) {
                return false;
            }
        }
        return manifest.schema() >= 1 && total <= LARGEST && seen.size() == listed.size() + 1;
    }

    private static boolean fits(ZipEntry entry, @Nullable Part part) {
        return part != null
                && entry.getSize() == part.bytes()
                && (part.bytes() < LOOSE || part.bytes() / TIGHTEST <= entry.getCompressedSize());
    }

    Manifest manifest() {
        return manifest;
    }

    /** Reads every part through and holds it against what the manifest says of it. */
    Outcome<BackupContents> check() {
        try {
            long bytes = 0;
            for (Part part : manifest.parts()) {
                if (!isSound(part)) {
                    return damaged();
                }
                bytes += part.bytes();
            }
            if (!ledger().head().equals(manifest.ledger())) {
                return damaged();
            }
            return Outcome.ok(new BackupContents(
                    Instant.ofEpochMilli(manifest.madeEpochMs()),
                    workshop(),
                    rows("recipe"),
                    rows("recipe_version"),
                    rows("photograph"),
                    rows("document"),
                    manifest.missing().size(),
                    rows("mould"),
                    rows("balance"),
                    rows("jug"),
                    rows("material"),
                    rows("lot"),
                    rows("stock_move"),
                    manifest.ledger(),
                    bytes));
        } catch (IOException e) {
            return damaged();
        }
    }

    private boolean isSound(Part part) throws IOException {
        MessageDigest digest = FileShelf.sha256();
        long bytes = 0;
        long lines = 0;
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = content(part)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                bytes += read;
                if (bytes > part.bytes()) {
                    return false;
                }
                digest.update(buffer, 0, read);
                for (int i = 0; i < read; i++) {
                    lines += buffer[i] == '\n' ? 1 : 0;
                }
            }
        }
        return bytes == part.bytes()
                && HexFormat.of().formatHex(digest.digest()).equals(part.sha256())
                && (part.isFile() || lines == part.rows());
    }

    InputStream content(Part part) throws IOException {
        ZipEntry entry = zip.getEntry(part.name());
        if (entry == null) {
            throw new ZipException("no " + part.name());
        }
        return zip.getInputStream(entry);
    }

    /** The ledger's entries, as far as there are any. */
    LedgerRows ledger() {
        return new LedgerRows(this, manifest.table(LedgerRows.TABLE));
    }

    private long rows(String table) {
        return manifest.table(table).map(Part::rows).orElse(0L);
    }

    private Optional<String> workshop() throws IOException {
        Optional<Part> part = manifest.table("workshop");
        return part.isEmpty() ? Optional.empty() : RowReader.workshopName(this, part.get());
    }

    /** Puts photographs and documents on their shelf. */
    void putFiles(FileShelf shelf) throws IOException {
        for (Part part : manifest.parts()) {
            if (part.isFile()) {
                try (InputStream in = content(part)) {
                    shelf.put(part.hash(), in);
                }
            }
        }
    }

    static <T> Outcome<T> damaged() {
        return Outcome.refused(
                "this backup is damaged or not whole",
                "copy it again from where it was kept, or use another; nothing was touched");
    }

    private static <T> Outcome<T> noBackup() {
        return Outcome.refused(
                "this is not a backup of Lyewright, or it is cut short",
                "choose a file that was made with lyewright backup; nothing was touched");
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
