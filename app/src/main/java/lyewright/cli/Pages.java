package lyewright.cli;

import java.nio.file.Path;
import java.util.Optional;
import lyewright.measure.Outcome;

/** What shows the workshop in a browser; the command line only asks for it. */
public interface Pages {

    /**
     * How they are asked for.
     *
     * @param bind the address to listen at
     * @param port from 0, which takes a free one, to 65535
     * @param home the workshop's folder as typed; the usual one where empty
     * @param folder the folder that relative names are in
     * @param browser whether to open them in a browser
     * @param practise whether to open every page once and stop, which is what the launcher does after a build
     */
    record Order(String bind, int port, Optional<String> home, Path folder, boolean browser, boolean practise) {}

    /** Pages that are there. */
    interface Shown {

        /** Where they are, as lines to print. */
        String told();

        /** Comes back when they are stopped. */
        void untilStopped();
    }

    /**
     * Shows them.
     *
     * @param order how
     * @return what is shown, or why nothing is
     */
    Outcome<Shown> show(Order order);
}
