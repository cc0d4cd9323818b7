package lyewright.formula;

import java.util.List;
import java.util.Locale;

/** Writes one text as a YAML value: plain where that reads back the same, else in quotes. */
final class YamlText {

    private static final String INDICATORS = "-?:,[]{}#&*!|>'\"%@`";

    private YamlText() {}

    /** A name before a colon. */
    static String key(String text) {
        return text.indexOf(':') < 0 && isPlain(text, false) ? text : quoted(text);
    }

    /** A value behind a colon, alone on its line. */
    static String value(String text) {
        return isPlain(text, false) ? text : quoted(text);
    }

    /** A value inside braces. */
    static String inFlow(String text) {
        return isPlain(text, true) ? text : quoted(text);
    }

    private static boolean isPlain(String text, boolean flow) {
        if (text.isEmpty() || INDICATORS.indexOf(text.charAt(0)) >= 0 || text.endsWith(":")) {
            return false;
        }
        if (Character.isWhitespace(text.charAt(0)) || Character.isWhitespace(text.charAt(text.length() - 1))) {
            return false;
        }
        if (text.contains(": ") || text.contains(" #") || (flow && hasFlowSign(text))) {
            return false;
        }
        return text.codePoints().allMatch(c -> Characters.isText(c) && !Characters.isLineEnd(c));
    }

    private static boolean hasFlowSign(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (",[]{}:?".indexOf(text.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> escape(c, out));
        return out.append('"').toString();
    }

    private static void escape(int c, StringBuilder out) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\t' -> out.append("\\t");
            default -> {
                if (Characters.isText(c) && !Characters.isLineEnd(c)) {
                    out.appendCodePoint(c);
                } else {
                    out.append(String.format(Locale.ROOT, "\\u%04x", c));
                }
            }
        }
    }

    /**
     * Whether a text of several lines can stand as a block, line by line as it is. It begins with something that is not
     * white space, no line ends in white space, and at most one line end closes it.
     */
    static boolean isBlock(String text) {
        if (text.indexOf('\n') < 1 || Character.isWhitespace(text.charAt(0)) || text.endsWith("\n\n")) {
            return false;
        }
        boolean tidyLines = text.lines()
                .allMatch(line -> line.isEmpty() || !Character.isWhitespace(line.charAt(line.length() - 1)));
        return tidyLines
                && text.codePoints().allMatch(c -> c == '\n' || (Characters.isText(c) && !Characters.isLineEnd(c)));
    }

    /** The sign that opens a block. */
    static String blockSign(String text) {
        return text.endsWith("\n") ? "|" : "|-";
    }

    /** The lines of a block, without indent. */
    static List<String> blockLines(String text) {
        return text.lines().toList();
    }
}
