package lyewright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One command: how it is typed, and what it does with what was typed. */
interface Command {

    /** Its name, options and help. */
    CommandSpec spec();

    /**
     * Does it.
     *
     * @param typed what was typed
     * @param folder the folder that relative file names are in
     * @return what to print, or why not
     */
    Answer answer(ParseResult typed, Path folder);
}
