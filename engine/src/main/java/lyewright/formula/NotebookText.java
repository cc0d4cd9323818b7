package lyewright.formula;

import java.util.List;
import java.util.Optional;
import lyewright.formula.Places.Place;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/**
 * A recipe as it stands in a notebook, one thing on each line: its name, then {@code coconut oil 350 g} or
 * {@code 350g olive-virgin}, {@code soda 71 g} or {@code superfat 5 %}, {@code water 155 g}, {@code lavender 15 g at trace}.
 * Nothing is guessed: a name that may mean several materials, a number without a unit, two amounts in a line are refused
 * with what could be written instead, as whole lines where there are only a few. Empty lines and lines that begin with {@code #} are remarks; the latter are kept.
 */
public final class NotebookText {

    /** The largest text that is read: 100 KB; in characters where it is given as text. */
    public static final int LARGEST = 100 * 1024;

    /** The most lines that are read, empty ones too. */
    public static final int MOST_LINES = 300;

    private NotebookText() {}

    /**
     * What reading gave.
     *
     * @param formula the formula, present exactly when there are no troubles
     * @param troubles all that is wrong, in the order of the lines; a hundred are enough
     * @param nameLine the line that the recipe's name stands on, from 1; 0 where it has none
     */
    public record Read(Optional<Formula> formula, List<Trouble> troubles, int nameLine) {
        /** Copies its list. */
        public Read {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * One thing that is wrong, beside the line it is wrong in.
     *
     * @param place line and column from 1; what is missing altogether is said of the first line
     * @param line that line as it was typed, whole; empty where the text is too large or not text
     * @param problem what is wrong and what to do; its path is that of the formula's entry, or {@code lines.3}
     * @param offers what the line may have meant, each to be taken as it is
     * @param unknown the name that nothing goes by, where that is what is wrong
     */
    public record Trouble(Place place, String line, Problem problem, List<Offer> offers, Optional<String> unknown) {
        /** Copies its list. */
        public Trouble {
            offers = List.copyOf(offers);
        }
    }

    /**
     * Something that a line may have meant.
     *
     * @param label in a word or two
     * @param line the whole line as it then is; it is read without a question about what was asked
     */
    public record Offer(String label, String line) {}

    /**
     * Reads a file's bytes. Never throws.
     *
     * @param utf8 the bytes
     * @param tables the materials that may be named
     * @return the formula, or what is wrong with the text
     */
    public static Read read(byte[] utf8, Tables tables) {
        try {
            return utf8.length > LARGEST ? refused(tooLarge()) : read(FormulaFile.decode(utf8), tables);
        } catch (Unreadable e) {
            return refused(e);
        }
    }

    /**
     * Reads a text. Never throws.
     *
     * @param text the text
     * @param tables the materials that may be named
     * @return the formula, or what is wrong with the text
     */
    public static Read read(String text, Tables tables) {
        return read(text, MaterialNames.of(tables));
    }

    /**
     * Reads a text in which the maker's own materials may be named. Those that are become part of the formula. Never throws.
     *
     * @param text the text
     * @param names what may be named; the maker's own go before the tables'
     * @return the formula, or what is wrong with the text
     */
    public static Read read(String text, MaterialNames names) {
        try {
            return new NotebookReader(lines(text), names).read();
        } catch (Unreadable e) {
            return refused(e);
        }
    }

    private static List<String> lines(String given) {
        if (given.length() > LARGEST) {
            throw tooLarge();
        }
        String text = FormulaFile.withoutMark(given);
        FormulaFile.refuseControlCharacters(text);
        List<String> lines = text.lines().toList();
        if (lines.size() > MOST_LINES) {
            throw new Unreadable(
                    new Place(MOST_LINES + 1, 1),
                    "there are " + lines.size() + " lines",
                    "write at most " + MOST_LINES + ", and one recipe only");
        }
        return lines;
    }

    private static Unreadable tooLarge() {
        return new Unreadable(
                new Place(1, 1), "the text is larger than 100 KB", "write one recipe, and keep its papers elsewhere");
    }

    private static Read refused(Unreadable e) {
        return new Read(
                Optional.empty(), List.of(new Trouble(e.place(), "", e.problem(), List.of(), Optional.empty())), 0);
    }
}
