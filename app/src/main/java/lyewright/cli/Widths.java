package lyewright.cli;

import java.util.ArrayList;
import java.util.List;

/** How many columns text takes on a terminal or on paper of fixed pitch, and where it may be broken. */
final class Widths {

    /** First and last code points of what is drawn two columns wide: East Asian wide forms and pictures. */
    private static final int[][] WIDE = {
        {0x1100, 0x115F}, {0x231A, 0x231B}, {0x23E9, 0x23FA}, {0x25FD, 0x25FE}, {0x2600, 0x27BF}, {0x2B05, 0x2B55},
        {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xA960, 0xA97F}, {0xAC00, 0xD7A3}, {0xF900, 0xFAFF}, {0xFE30, 0xFE6F},
        {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F000, 0x1FAFF}, {0x20000, 0x3FFFD}
    };

    private Widths() {}

    /** Columns that text takes. */
    static int of(String text) {
        return text.codePoints().map(Widths::of).sum();
    }

    private static int of(int codePoint) {
        int type = Character.getType(codePoint);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        for (int[] range : WIDE) {
            if (codePoint >= range[0] && codePoint <= range[1]) {
                return 2;
            }
        }
        return 1;
    }

    /** Text filled up with spaces behind. */
    static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - of(text)));
    }

    /** Text filled up with spaces before. */
    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - of(text))) + text;
    }

    /** Breaks text into lines at its spaces; a word longer than a line is broken where it must be. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        for (String word : text.strip().split("\\s+", -1)) {
            for (String part : parts(word, width)) {
                int wide = of(part);
                if (used > 0 && used + 1 + wide > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    used = 0;
                }
                line.append(used > 0 ? " " : "").append(part);
                used += (used > 0 ? 1 : 0) + wide;
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> parts(String word, int width) {
        if (of(word) <= width) {
            return List.of(word);
        }
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        int used = 0;
        for (int codePoint : word.codePoints().toArray()) {
            int wide = of(codePoint);
            if (used + wide > width) {
                parts.add(part.toString());
                part.setLength(0);
                used = 0;
            }
            part.appendCodePoint(codePoint);
            used += wide;
        }
        parts.add(part.toString());
        return parts;
    }
}
