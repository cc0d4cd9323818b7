package lyewright.records.backup;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A file that gets its name when it is whole: until then it lies beside under another, and goes away if it is not finished. */
final class BackupTarget implements AutoCloseable {

    private final Path file;
    private final Path beside;
    private final FileChannel channel;
    private final OutputStream out;

    private BackupTarget(Path file, Path beside, FileChannel channel) {
        this.file = file;
        this.beside = beside;
        this.channel = channel;
        this.out = new BufferedOutputStream(Channels.newOutputStream(channel));
    }

    static BackupTarget beside(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException("no folder to write to");
        }
        Path beside = Files.createTempFile(folder, "being-written-", ".tmp");
        return new BackupTarget(file, beside, FileChannel.open(beside, StandardOpenOption.WRITE));
    }

    OutputStream out() {
        return out;
    }

    /** It is whole. */
    void done() throws IOException {
        out.flush();
        channel.force(true);
        channel.close();
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(beside);
    }
}
