package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.MaterialNames;
import lyewright.formula.NotebookText;
import lyewright.formula.NotebookText.Trouble;
import lyewright.words.Sentences;

/**
 * A notebook's text as far as it could be read. It need not say a name: a recipe is answered before it has one.
 *
 * @param formula what it says, where nothing is wrong; called {@link #UNNAMED} where it says no name
 * @param nameLine the line its name stands on, from 1; 0 where it says none
 * @param troubles what is wrong, by lines
 * @param missing what a recipe needs and this one does not say yet, in a notebook's words
 */
public record NotebookReading(
        Optional<Formula> formula, int nameLine, List<LineTrouble> troubles, List<String> missing) {

    /** Stands in for a name. */
    static final String UNNAMED = "Unnamed";

    static final NotebookReading NOTHING = new NotebookReading(Optional.empty(), 0, List.of(), List.of());

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
     * @param names what may be named
     */
    static NotebookReading of(String text, int caret, MaterialNames names) {
        NotebookText.Read read = NotebookText.read(text, names);
        boolean named = read.troubles().stream().noneMatch(trouble -> isMissing(trouble, "recipe"));
        if (named) {
            return of(read, read.nameLine(), caret);
        }
        // on a line after all others, so that their numbers stay
        NotebookText.Read withName = NotebookText.read(text + "\nrecipe: " + UNNAMED, names);
        return of(withName, 0, caret);
    }

    /** Reads boxes; the line of the one that is being typed in, or 0. */
    static NotebookReading of(NotebookRows rows, String unit, int caret, MaterialNames names) {
        NotebookText.Read read = NotebookText.read(rows.text(unit), names);
        return of(read, rows.name().isBlank() ? 0 : 1, caret);
    }

    private static NotebookReading of(NotebookText.Read read, int nameLine, int caret) {
        return new NotebookReading(
                read.formula(),
                nameLine,
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
        List<Choice> choices =
                line > 0 ? trouble.offers().stream().map(Choice::of).toList() : List.of();
        return new LineTrouble(
                line,
                trouble.line(),
                Choice.question(trouble),
                line > 0 && line == caret,
                choices,
                trouble.unknown().orElse(""));
    }

    boolean named() {
        return nameLine > 0;
    }

    /** The lines that cannot be understood, in order. */
    List<Integer> wrongLines() {
        return troubles.stream()
                .map(LineTrouble::number)
                .filter(number -> number > 0)
                .distinct()
                .toList();
    }

    /** Nothing wrong so far, but not all there. */
    boolean isUnfinished() {
        return formula.isEmpty() && troubles.isEmpty();
    }

    /** What is missing, in one phrase. */
    String missingPhrase() {
        return Sentences.row(missing);
    }
}
