package lyewright.records.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Files named by the SHA-256 of their content, in folders by its first two digits. A file is written whole beside its place, brought
 * to the disk, and only then moved there: what has the name has the content. Nothing else can be named.
 */
public final class FileShelf {

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private static final String BEFORE = "being-written-";
    private static final String AFTER = ".tmp";

    static final int BUFFER = 1 << 16;

    private static final String SHARED = "used-by-a-server.txt";

    private final Path folder;

    /** The files below a folder, which is made when the first is kept. */
    public FileShelf(Path folder) {
        this.folder = folder;
    }

    /** Whether a text is the name of a file at all. */
    public static boolean isName(String text) {
        return HASH.matcher(text).matches();
    }

    /** The name of a content. */
    public static String nameOf(byte[] content) {
        return HexFormat.of().formatHex(sha256().digest(content));
    }

    /** A new digest. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Where a file of this name lies or would lie. */
    public Path at(String name) {
        if (!isName(name)) {
            throw new IllegalArgumentException("not the name of a kept file");
        }
        return folder.resolve(name.substring(0, 2)).resolve(name);
    }

    /** The names of all files that have been there since before a moment. */
    List<String> namesBefore(Instant moment) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder, 2)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = String.valueOf(file.getFileName());
                if (isName(name)
                        && file.equals(at(name))
                        && Files.getLastModifiedTime(file).toInstant().isBefore(moment)) {
                    names.add(name);
                }
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return names;
    }

    /** Whether another database than the one beside it has used it. */
    boolean isShared() {
        return Files.exists(folder.resolve(SHARED));
    }

    /** Notes that another does, where there is anything at all. */
    void share() throws IOException {
        if (Files.isDirectory(folder) && !isShared()) {
            Files.writeString(
                    folder.resolve(SHARED),
                    "A database server's records have photographs or documents here: none is taken away by itself.\n");
        }
    }

    /** Takes a file away; where it is gone already, nothing is. */
    void remove(String name) throws IOException {
        Files.deleteIfExists(at(name));
    }

    /** Whether it is there. */
    public boolean has(String name) {
        return Files.isRegularFile(at(name));
    }

    /** Puts a content in its place and gives its name. */
    public String put(byte[] content) throws IOException {
        String name = nameOf(content);
        Path at = at(name);
        if (isThere(at, content.length)) {
            return name;
        }
        Path beside = begin(at);
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(content);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            finish(beside, at);
        } finally {
            Files.deleteIfExists(beside);
        }
        return name;
    }

    /** Puts a content in its place that must have this name; false where it has another. However long, it is never all in memory. */
    public boolean put(String name, InputStream content) throws IOException {
        try (WaitingFile waiting = receive(content, Long.MAX_VALUE)) {
            boolean same = waiting.name().equals(name);
            if (same) {
                place(waiting);
            }
            return same;
        }
    }

    /** Writes a content beside the shelf, so that it can be judged before it has a place there. */
    WaitingFile receive(InputStream content, long most) throws IOException {
        Files.createDirectories(folder);
        return WaitingFile.write(Files.createTempFile(folder, BEFORE, AFTER), content, most);
    }

    /** Gives what waits its place; what lay there under its name, harmed perhaps, is gone. */
    void place(WaitingFile waiting) throws IOException {
        Path at = at(waiting.name());
        Path in = folderOf(at);
        if (!Files.isDirectory(in)) {
            Files.createDirectories(in);
            syncFolder(folder);
        }
        try {
            finish(waiting.path(), at);
        } catch (IOException e) {
            // Windows moves nothing over a file that somebody reads just now; the same content is as good
            if (!Files.isRegularFile(at) || Files.mismatch(waiting.path(), at) >= 0) {
                throw e;
            }
        }
    }

    /** Whether the file of a name is there and has the content that the name says, read through. */
    public boolean isSound(String name) throws IOException {
        try (InputStream in = Files.newInputStream(at(name))) {
            return nameOf(in).equals(name);
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    private static String nameOf(InputStream content) throws IOException {
        MessageDigest digest = sha256();
        byte[] buffer = new byte[BUFFER];
        for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) {
            digest.update(buffer, 0, read);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Takes away what was begun before a moment and never got its name, as when the power went. */
    void removeHalfWritten(Instant before) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder, 2)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = String.valueOf(file.getFileName());
                if (name.startsWith(BEFORE)
                        && name.endsWith(AFTER)
                        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                        && Files.getLastModifiedTime(file).toInstant().isBefore(before)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** A file of another length was harmed by something else than us, and is written again. */
    private static boolean isThere(Path at, long length) throws IOException {
        return Files.isRegularFile(at) && Files.size(at) == length;
    }

    private static Path begin(Path at) throws IOException {
        Path in = folderOf(at);
        Files.createDirectories(in);
        return Files.createTempFile(in, BEFORE, AFTER);
    }

    private static Path folderOf(Path at) {
        Path in = at.getParent();
        if (in == null) {
            throw new IllegalStateException("a file lies in a folder");
        }
        return in;
    }

    private static void finish(Path beside, Path at) throws IOException {
        Files.move(beside, at, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        syncFolder(at.getParent());
    }

    /** So that the name, too, outlives a power cut. Windows opens no folder and needs none of it. */
    private static void syncFolder(@Nullable Path in) {
        if (in == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(in, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // this system does not sync folders
        }
    }
}
