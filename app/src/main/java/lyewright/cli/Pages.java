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
     * @param others who else may come in
     * @param home the workshop's folder as typed; the usual one where empty
     * @param folder the folder that relative names are in
     * @param browser whether to open them in a browser
     * @param practise whether to open every page once and stop, which is what the launcher does after a build
     */
    record Order(
            String bind,
            int port,
            Others others,
            Optional<String> home,
            Path folder,
            boolean browser,
            boolean practise) {}

    /**
     * Who may come in beside whoever sits at the computer.
     *
     * @param devices whether to open the door for other devices
     * @param devicesPort where that is; beside the first port where empty
     * @param signIn whether everybody signs in, at the computer too
     * @param address what others type to get here, as typed
     * @param certificate the file of the maker's own certificate, as typed
     */
    record Others(
            boolean devices,
            Optional<Integer> devicesPort,
            boolean signIn,
            Optional<String> address,
            Optional<String> certificate) {

        /** Nobody, unless the workshop itself says so. */
        public static final Others NOBODY =
                new Others(false, Optional.empty(), false, Optional.empty(), Optional.empty());
    }

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
