package lyewright.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** What goes wrong is written to a file in the workshop's folder; the terminal stays quiet. */
final class Log {

    private static final int LARGEST = 1 << 20;

    private Log() {}

    /** From now on the terminal is told nothing that is not for the maker. */
    static void quiet() {
        LogManager.getLogManager().reset();
        Logger.getLogger("").setLevel(Level.WARNING);
    }

    static void into(Path home) {
        Logger root = Logger.getLogger("");
        try {
            // records on a server make no folder before the first photograph
            Files.createDirectories(home);
            Handler file = new FileHandler(home.resolve("lyewright.log").toString(), LARGEST, 1, true);
            file.setFormatter(new SimpleFormatter());
            root.addHandler(file);
        } catch (IOException e) {
            // a folder that cannot be written to is told by whoever opens the records
        }
    }
}
