package lyewright.picture;

import java.util.List;
import lyewright.words.Figures;

/**
 * A picture as shapes and words, for one template to write as SVG. It says what each thing is; the stylesheet of screen or
 * paper says how that looks.
 *
 * @param kind which picture, a class for the stylesheet
 * @param title its name, for whoever cannot see it
 * @param description what it shows, in a sentence or two
 * @param width of its view box; whole, as the paper's SVG reader wants it
 * @param height of its view box
 * @param marks in the order of drawing
 */
public record Drawing(String kind, String title, String description, int width, int height, List<Mark> marks) {

    private static final int TENTH = 10;

    /** Copies its list and keeps what XML can carry. */
    public Drawing {
        title = clean(title);
        description = clean(description);
        marks = List.copyOf(marks);
    }

    /**
     * Its view box.
     *
     * @return four whole numbers
     */
    public String viewBox() {
        return "0 0 " + width + " " + height;
    }

    /**
     * A coordinate: tenths are finer than a screen shows.
     *
     * @param value finite
     * @return such as {@code 12.5} or {@code 12}
     */
    public static String at(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("no place: " + value);
        }
        long tenths = Math.round(value * TENTH);
        long whole = Math.abs(tenths) / 10;
        long part = Math.abs(tenths) % 10;
        return (tenths < 0 ? "-" : "") + whole + (part == 0 ? "" : "." + part);
    }

    /**
     * A share as an attribute.
     *
     * @param value 0 to 1
     * @return with three decimals
     */
    public static String share(double value) {
        return Figures.upTo(value, 3);
    }

    /** Without characters that XML 1.0 forbids, which names typed or pasted may have. */
    static String clean(String text) {
        return plain(text)
                ? text
                : text.codePoints()
                        .filter(Drawing::inXml)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    /** Without looking closely: nearly every text is. */
    private static boolean plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) >= Character.MIN_SURROGATE) {
                return false;
            }
        }
        return true;
    }

    private static boolean inXml(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
