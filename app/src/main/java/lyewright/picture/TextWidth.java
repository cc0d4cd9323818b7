package lyewright.picture;

/**
 * How wide words come out, so that they can be kept apart before anything is drawn: each letter in the wider of the pages' two
 * weights, so that both fit.
 */
final class TextWidth {

    /** Of IBM Plex Sans, thousandths of its size, from the space to the tilde. */
    private static final int[] ASCII = {
        236, 309, 471, 713, 600, 960, 713, 260, 337, 337, 556, 600, 299, 402, 299, 437, 600, 600, 600, 600, 600, 600,
        600, 600, 600, 600, 319, 319, 600, 600, 600, 493, 899, 672, 663, 642, 689, 600, 577, 712, 719, 423, 545, 678,
        521, 817, 719, 712, 641, 712, 664, 611, 580, 689, 638, 949, 655, 632, 599, 329, 437, 329, 600, 565, 600, 559,
        600, 513, 600, 558, 350, 545, 588, 275, 275, 562, 294, 888, 588, 563, 600, 600, 393, 499, 374, 588, 524, 819,
        544, 524, 502, 363, 376, 363, 600
    };

    /** As wide as small letters of any script of that font. */
    private static final int SMALL_LETTER = 940;

    /** As wide as signs for thousandths, small pictures and the like. */
    private static final int SIGN = 1400;

    /** As wide as anything else. */
    private static final int OTHER = 1100;

    private static final String CUT = "…";

    private TextWidth() {}

    /** Of a line of text in letters of a size. */
    static double of(String text, double size) {
        return text.codePoints().map(TextWidth::of).sum() * size / 1000;
    }

    private static int of(int c) {
        if (c >= ' ' && c <= '~') {
            return ASCII[c - ' '];
        }
        if (Character.getType(c) == Character.NON_SPACING_MARK) {
            return 0;
        }
        if ((c >= 0x2030 && c < 0x2c00) || c >= 0x10000) {
            return SIGN;
        }
        return Character.isLowerCase(c) && c < 0x600 ? SMALL_LETTER : OTHER;
    }

    /** As much of a text as there is room for, with dots where some is left out. */
    static String fit(String text, double size, double room) {
        if (of(text, size) <= room) {
            return text;
        }
        int[] points = text.codePoints().toArray();
        int keep = points.length;
        double width = of(text, size) + of(CUT, size);
        while (keep > 0 && width > room) {
            keep--;
            width -= of(points[keep]) * size / 1000;
        }
        return new String(points, 0, keep).stripTrailing() + CUT;
    }
}
