package lyewright.web.start;

import java.util.List;

/**
 * Something wrong with what was typed, beside where it stands.
 *
 * @param number the line's number, from 1; 0 where it is the whole
 * @param line the line as typed, whole
 * @param sentence what is wrong and what to do
 * @param typing whether that line is just being typed, so that this may be settled by the next key
 * @param choices what it may have meant
 * @param unknown the name that nothing goes by; empty where that is not what is wrong
 */
public record LineTrouble(
        int number, String line, String sentence, boolean typing, List<Choice> choices, String unknown) {

    private static final int SHOWN = 60;

    /** Copies the list. */
    public LineTrouble {
        choices = List.copyOf(choices);
    }

    static LineTrouble ofTheWhole(String sentence) {
        return new LineTrouble(0, "", sentence, false, List.of(), "");
    }

    /** The line as it is shown. */
    public String shown() {
        return shortened(line.strip());
    }

    private static String shortened(String line) {
        return line.codePointCount(0, line.length()) <= SHOWN
                ? line
                : line.substring(0, line.offsetByCodePoints(0, SHOWN)) + "…";
    }
}
