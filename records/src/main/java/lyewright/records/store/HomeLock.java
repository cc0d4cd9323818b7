package lyewright.records.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/** Keeps a second application out of a workshop's folder. The system lets go of it when the process ends, however it ends. */
final class HomeLock implements AutoCloseable {

    private static final String FILE = "lyewright.lock";

    private final FileChannel channel;

    private HomeLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Takes the folder; null where somebody else has it. */
    static @Nullable HomeLock take(Path home) throws IOException {
        FileChannel channel = FileChannel.open(home.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return new HomeLock(channel);
            }
        } catch (OverlappingFileLockException e) {
            // this very process has it
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return null;
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
