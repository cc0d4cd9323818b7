package lyewright.app;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens an address in the person's browser, where there is one. */
final class Browser {

    private Browser() {}

    static void open(String address) {
        try {
            new ProcessBuilder(command(address))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // no browser to be opened: the address stands on the terminal
        }
    }

    private static List<String> command(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return List.of("open", address);
        }
        if (system.contains("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        return List.of("xdg-open", address);
    }
}
