package lyewright.records.store;

import java.util.Optional;
import lyewright.formula.NameRules;
import lyewright.measure.Problem;

/** What may be kept of a text that a person typed. Both databases and every page can hold what passes. */
public final class Typed {

    private Typed() {}

    /** What is wrong with a name of one line, if anything. */
    public static Optional<Problem> name(String path, String whose, String name) {
        return NameRules.check(path, whose, name);
    }

    /** What is wrong with a text of several lines, if anything. */
    public static Optional<Problem> text(String path, String whose, String text, int longest) {
        if (text.length() > longest) {
            return Optional.of(
                    new Problem(path, whose + " is longer than " + longest + " characters", "write it shorter"));
        }
        return text.codePoints().allMatch(c -> isText(c) || c == '\n' || c == '\r' || c == '\t')
                ? Optional.empty()
                : Optional.of(new Problem(path, whose + " has a control character in it", "take it out"));
    }

    private static boolean isText(int c) {
        boolean halfACharacter = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return !Character.isISOControl(c) && !halfACharacter && c != 0xfeff && (c & 0xfffe) != 0xfffe;
    }
}
