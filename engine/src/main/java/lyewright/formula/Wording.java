package lyewright.formula;

import java.util.Collection;
import java.util.List;
import lyewright.material.NearestKey;

/** How the file's texts are tidied before they are read, and quoted when they are refused. */
final class Wording {

    private static final int QUOTED = 48;

    private Wording() {}

    /** The text with every run of white space as one space, none at the ends. */
    static String tidy(String text) {
        StringBuilder tidy = new StringBuilder(text.length());
        boolean gap = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isWhitespace(c)) {
                gap = !tidy.isEmpty();
            } else {
                if (gap) {
                    tidy.append(' ');
                    gap = false;
                }
                tidy.append(c);
            }
        }
        return tidy.toString();
    }

    /** The text between quotes, on one line, cut short where it is long. */
    static String quote(String text) {
        return "'" + clip(text) + "'";
    }

    /** The text on one line, cut short where it is long. */
    static String clip(String text) {
        StringBuilder shown = new StringBuilder();
        int taken = 0;
        for (int i = 0; i < text.length() && taken < QUOTED; taken++) {
            int c = text.codePointAt(i);
            shown.appendCodePoint(Character.isISOControl(c) || Characters.isLoneSurrogate(c) ? ' ' : c);
            i += Character.charCount(c);
        }
        boolean cut = text.codePointCount(0, text.length()) > QUOTED;
        return cut ? shown.append('…').toString() : shown.toString();
    }

    /** {@code a, b or c}. */
    static String oneOf(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    /** The nearest known word if one is near, else all of them. */
    static String offer(String word, Collection<String> known) {
        List<String> near = NearestKey.among(word, known);
        return near.isEmpty() ? "write one of " + oneOf(List.copyOf(known)) : "did you mean " + near.get(0) + "?";
    }
}
