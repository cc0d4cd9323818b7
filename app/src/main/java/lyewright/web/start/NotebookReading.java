package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.NotebookText;
import lyewright.formula.NotebookText.Trouble;
import lyewright.material.Tables;
import lyewright.words.Sentences;

/**
 * A notebook's text as far as it could be read. It need not say a name: a recipe is answered before it has one.
 *
 * @param formula what it says, where nothing is wrong; called {@link #UNNAMED} where it says no name
 * @param named whether it says a name
 * @param troubles what is wrong, by lines
 * @param missing what a recipe needs and this one does not say yet, in a notebook's words
 */
public record NotebookReading(
        Optional<Formula> formula, boolean named, List<LineTrouble> troubles, List<String> missing) {

    /** Stands in for a name. */
    static final String UNNAMED = "Unnamed";

    /** In the order in which a notebook has them. */
    private static final List<String> NEEDED = List.of("oils", "superfat", "water");

    /** Copies its lists. */
    public NotebookReading {
        troubles = List.copyOf(troubles);
        missing = List.copyOf(missing);
    }

    /**
     * Reads a text.
     *
     * @param text as typed
     * @param caret the line that is being typed, from 1; 0 where none is
     */
    static NotebookReading of(String text, int caret) {
        NotebookText.Read read = NotebookText.read(text, Tables.bundled());
        boolean named = read.troubles().stream().noneMatch(trouble -> isMissing(trouble, "recipe"));
        if (named) {
            return of(read, true, caret);
        }
        // on a line after all others, so that their numbers stay
        NotebookText.Read withName = NotebookText.read(text + "\nrecipe: " + UNNAMED, Tables.bundled());
        return of(withName, false, caret);
    }

    /** Reads boxes. */
    static NotebookReading of(NotebookRows rows, String unit) {
        NotebookText.Read read = NotebookText.read(rows.text(unit), Tables.bundled());
        return of(read, !rows.name().isBlank(), 0);
    }

    private static NotebookReading of(NotebookText.Read read, boolean named, int caret) {
        return new NotebookReading(
                read.formula(),
                named,
                read.troubles().stream()
                        .filter(trouble -> NEEDED.stream().noneMatch(needed -> isMissing(trouble, needed)))
                        .map(trouble -> told(trouble, caret))
                        .toList(),
                NEEDED.stream()
                        .filter(needed -> read.troubles().stream().anyMatch(trouble -> isMissing(trouble, needed)))
                        .map(NotebookReading::needed)
                        .toList());
    }

    /** What is missing altogether is said of the beginning, by the path of what should be there. */
    private static boolean isMissing(Trouble trouble, String path) {
        return trouble.problem().path().equals(path)
                && trouble.place().line() == 1
                && trouble.place().column() == 1;
    }

    private static String needed(String path) {
        return switch (path) {
            case "oils" -> "its oils";
            case "water" -> "its water";
            default -> "its soda or a superfat";
        };
    }

    private static LineTrouble told(Trouble trouble, int caret) {
        int line = trouble.line().isEmpty() ? 0 : trouble.place().line();
        List<Choice> choices = line > 0 ? Choice.of(trouble.problem(), trouble.line()) : List.of();
        String sentence = choices.size() > 1 ? Choice.question(trouble.problem()) : Sentences.two(trouble.problem());
        return new LineTrouble(line, trouble.line(), sentence, line > 0 && line == caret, choices);
    }

    /** Nothing wrong so far, but not all there. */
    boolean isUnfinished() {
        return formula.isEmpty() && troubles.isEmpty();
    }

    /** What is missing, in one phrase. */
    String missingPhrase() {
        return row(missing);
    }

    /** Things in a row: oils, soda and water. */
    private static String row(List<String> things) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        int last = things.size() - 1;
        return String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }
}
