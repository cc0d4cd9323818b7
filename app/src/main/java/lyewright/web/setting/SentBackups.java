package lyewright.web.setting;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Files that were sent and wait for an answer to the question whether to put them back. A few at a time; a restart forgets them. */
final class SentBackups {

    private static final int WAITING = 4;

    private final Map<String, Path> files = new LinkedHashMap<>();

    /** Keeps what was sent; gives the word it is asked for by. */
    synchronized String keep(InputStream content) {
        try {
            Path file = Files.createTempFile("lyewright-sent-", ".zip");
            file.toFile().deleteOnExit();
            Files.copy(content, file, StandardCopyOption.REPLACE_EXISTING);
            String token = UUID.randomUUID().toString();
            files.put(token, file);
            if (files.size() > WAITING) {
                forget(files.keySet().iterator().next());
            }
            return token;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    synchronized Optional<Path> file(String token) {
        return Optional.ofNullable(files.get(token));
    }

    synchronized void forget(String token) {
        Path file = files.remove(token);
        if (file != null) {
            try {
                Files.deleteIfExists(file);
            } catch (IOException e) {
                // it goes when the application ends
            }
        }
    }
}
