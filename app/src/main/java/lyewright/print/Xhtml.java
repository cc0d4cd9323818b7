package lyewright.print;

/** What may stand in XML. */
final class Xhtml {

    private static final int REPLACEMENT = 0xFFFD;

    private Xhtml() {}

    /** Text with what XML has no place for, control characters and halves of pairs, shown as what they are not. */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints()
                .map(codePoint -> allowed(codePoint) ? codePoint : REPLACEMENT)
                .forEach(clean::appendCodePoint);
        return clean.toString();
    }

    private static boolean allowed(int codePoint) {
        return codePoint == '\t'
                || codePoint == '\n'
                || codePoint == '\r'
                || (codePoint >= 0x20 && codePoint <= 0xD7FF)
                || (codePoint >= 0xE000 && codePoint <= 0xFFFD)
                || codePoint >= 0x10000;
    }
}
