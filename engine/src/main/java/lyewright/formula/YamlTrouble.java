package lyewright.formula;

import java.util.List;
import lyewright.formula.Places.Place;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says in plain words what the YAML library stumbled over. */
final class YamlTrouble {

    /** A piece of the library's own words, and what a person is told instead. */
    private record Saying(String theirs, String what, String remedy) {}

    private static final List<Saying> SAYINGS = List.of(
            new Saying("TAB", "there is a tab where a space belongs", "indent with spaces"),
            new Saying(
                    "mapping values are not allowed here",
                    "there is a colon where no name is expected",
                    "put each name on its own line, or the text in quotes"),
            new Saying(
                    "that cannot start any token",
                    "a text begins with a sign that YAML keeps for itself",
                    "put the text in quotes"),
            new Saying("unknown escape", "a backslash in a quoted text means nothing here", "write it twice"),
            new Saying("expected escape sequence", "a backslash in a quoted text means nothing here", "write it twice"),
            new Saying("but got <stream end>", "a bracket is not closed", "close it"),
            new Saying("but got", "a bracket is not closed, or a comma is missing", "close it, or put a comma between"),
            new Saying(
                    "expected the node content",
                    "a value is missing or a bracket is not closed",
                    "write the value, or take the sign out"),
            new Saying(
                    "expected <block end>",
                    "this line does not fit the lines above it",
                    "give all names of one list the same indent"),
            new Saying(
                    "<document start>",
                    "this line does not fit the lines above it",
                    "give every line a name, a colon and a value"),
            new Saying(
                    "could not find expected ':'",
                    "a name has no colon after it",
                    "write the name, a colon and a value"),
            new Saying(
                    "chomping or indentation indicators",
                    "a block of text begins on the line of its sign",
                    "begin it on the next line, or put the text in quotes"));

    private YamlTrouble() {}

    static Unreadable unreadable(MarkedYamlEngineException e) {
        Place place = YamlParser.place(e.getProblemMark().orElse(null));
        String theirs = e.getProblem() == null ? "" : e.getProblem();
        String context = e.getContext() == null ? "" : e.getContext();
        if (context.contains("quoted scalar") && theirs.contains("end of stream")) {
            Place opened = YamlParser.place(e.getContextMark().orElse(null));
            return new Unreadable(
                    place, "the quotes opened at line " + opened.line() + " are not closed", "close them");
        }
        for (Saying saying : SAYINGS) {
            if (theirs.contains(saying.theirs())) {
                return new Unreadable(place, "this is not YAML: " + saying.what(), saying.remedy());
            }
        }
        return new Unreadable(
                place, "this is not YAML: " + Wording.quote(theirs), "compare it with the lines around it");
    }

    static Unreadable unreadable(YamlEngineException e) {
        return new Unreadable(
                Place.BEGINNING,
                "this is not YAML: " + Wording.quote(String.valueOf(e.getMessage())),
                "compare it with an example");
    }
}
