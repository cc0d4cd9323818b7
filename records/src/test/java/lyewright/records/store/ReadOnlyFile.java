package lyewright.records.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** A file that nobody may write to while it lasts, not even who may do anything. */
final class ReadOnlyFile implements AutoCloseable {

    private final Path file;

    ReadOnlyFile(Path file) throws IOException {
        this.file = file;
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        if (Files.isWritable(file)) {
            attribute("+i");
        }
    }

    /** Whether this machine could do it. */
    boolean isSo() {
        return !Files.isWritable(file);
    }

    private void attribute(String change) throws IOException {
        try (InputStream said = new ProcessBuilder("chattr", change, file.toString())
                .redirectErrorStream(true)
                .start()
                .getInputStream()) {
            // it ends when it has said everything
            said.readAllBytes();
        }
    }

    @Override
    public void close() throws IOException {
        attribute("-i");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    }
}
