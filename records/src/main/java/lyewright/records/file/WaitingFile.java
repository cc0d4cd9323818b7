package lyewright.records.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;

/** A content that is on the disk, and has no place on the shelf yet. Closing it forgets what was not given one. */
final class WaitingFile implements AutoCloseable {

    private final Path path;
    private final String name;
    private final long size;

    private WaitingFile(Path path, String name, long size) {
        this.path = path;
        this.name = name;
        this.size = size;
    }

    /** Writes a content to a file that is there and empty, piece by piece, and no further than shows that it is too long. */
    static WaitingFile write(Path path, InputStream content, long most) throws IOException {
        boolean written = false;
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
            MessageDigest digest = FileShelf.sha256();
            byte[] buffer = new byte[FileShelf.BUFFER];
            long size = 0;
            for (int read = content.read(buffer); read >= 0 && size <= most; read = content.read(buffer)) {
                digest.update(buffer, 0, read);
                ByteBuffer rest = ByteBuffer.wrap(buffer, 0, read);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                size += read;
            }
            channel.force(true);
            written = true;
            return new WaitingFile(path, HexFormat.of().formatHex(digest.digest()), size);
        } finally {
            if (!written) {
                Files.deleteIfExists(path);
            }
        }
    }

    Path path() {
        return path;
    }

    /** The name that its content gives it. */
    String name() {
        return name;
    }

    long size() {
        return size;
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // what is left over harms nobody, and a later start takes it away
        }
    }
}
