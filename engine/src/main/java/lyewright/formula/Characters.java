package lyewright.formula;

import org.jspecify.annotations.Nullable;

/** Which characters may stand in a formula file, and in its names. */
final class Characters {

    /** Longest name of a recipe, a material or a portion, in UTF-16 units. */
    static final int LONGEST_NAME = 200;

    private Characters() {}

    static boolean isLoneSurrogate(int codePoint) {
        return codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
    }

    /** Neither a control character, nor half of one, nor one that Unicode keeps for no text. Tab and line ends apart. */
    static boolean isText(int codePoint) {
        if (codePoint >= ' ' && codePoint < 0x7f) {
            return true;
        }
        return codePoint >= 0xa0
                && !isLoneSurrogate(codePoint)
                && codePoint != 0xfeff
                && (codePoint & 0xfffe) != 0xfffe;
    }

    static boolean isLineEnd(int codePoint) {
        return codePoint == '\n' || codePoint == '\r' || codePoint == 0x2028 || codePoint == 0x2029;
    }

    /** Which line ends a text may have. */
    enum Lines {
        /** None, and no tabs: a name. */
        NONE,
        /** Line feeds, and tabs: notes. */
        LINE_FEEDS,
        /** Those of any system: a file. */
        ANY
    }

    /** Where the first character stands that has no place in the text; -1 if all are fine. */
    static int firstForbidden(String text, Lines lines) {
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c >= ' ' && c < 0x7f) {
                i++;
                continue;
            }
            int codePoint = text.codePointAt(i);
            if (!isAllowed(codePoint, lines)) {
                return i;
            }
            i += Character.charCount(codePoint);
        }
        return -1;
    }

    private static boolean isAllowed(int codePoint, Lines lines) {
        return switch (codePoint) {
            case '\n', '\t', 0x2028, 0x2029 -> lines != Lines.NONE;
            case '\r' -> lines == Lines.ANY;
            default -> isText(codePoint);
        };
    }

    /** What is wrong with a name, or null. */
    static @Nullable String troubleWithName(String name) {
        if (name.isEmpty()) {
            return "is empty";
        }
        if (name.length() > LONGEST_NAME) {
            return "is longer than " + LONGEST_NAME + " characters";
        }
        if (firstForbidden(name, Lines.NONE) >= 0) {
            return "has a line break or a control character in it";
        }
        if (Character.isWhitespace(name.charAt(0)) || Character.isWhitespace(name.charAt(name.length() - 1))) {
            return "begins or ends with a space";
        }
        return null;
    }
}
