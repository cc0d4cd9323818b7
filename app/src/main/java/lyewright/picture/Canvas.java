package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.picture.Mark.Anchor;

/** Collects the marks of one drawing. */
final class Canvas {

    /** Letters that are read, in units of a view box 360 wide. */
    static final double TEXT = 13;

    /** Letters of scales and notes; not 12, of which the paper's SVG reader makes letters of no size. */
    static final double SMALL = 12.2;

    /** Letters of marks beside words. */
    static final double TINY = 11;

    private final List<Mark> marks = new ArrayList<>();

    void box(String style, double x, double y, double width, double height) {
        marks.add(new Mark.Box(style, x, y, width, height, 1));
    }

    void tone(String style, double x, double y, double width, double height, double tone) {
        marks.add(new Mark.Box(style, x, y, width, height, tone));
    }

    /** A rectangle with a texture that tells it apart without colour. */
    void textured(String style, Texture texture, double x, double y, double width, double height) {
        box(style, x, y, width, height);
        String lines = texture.in(x, y, width, height);
        if (!lines.isEmpty()) {
            path(texture.style(), lines);
        }
    }

    void path(String style, String d) {
        marks.add(new Mark.Path(style, d));
    }

    void line(String style, double x1, double y1, double x2, double y2) {
        path(style, line(x1, y1, x2, y2));
    }

    static String line(double x1, double y1, double x2, double y2) {
        return "M" + Drawing.at(x1) + " " + Drawing.at(y1) + "L" + Drawing.at(x2) + " " + Drawing.at(y2);
    }

    /** A closed outline through points given as x, y, x, y. */
    static String outline(double... points) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            d.append(i == 0 ? 'M' : 'L')
                    .append(Drawing.at(points[i]))
                    .append(' ')
                    .append(Drawing.at(points[i + 1]));
        }
        return d.append('Z').toString();
    }

    void text(String style, double x, double y, Anchor anchor, String text) {
        text(style, x, y, anchor, TEXT, text);
    }

    void small(String style, double x, double y, Anchor anchor, String text) {
        text(style, x, y, anchor, SMALL, text);
    }

    void tiny(String style, double x, double y, Anchor anchor, String text) {
        text(style, x, y, anchor, TINY, text);
    }

    private void text(String style, double x, double y, Anchor anchor, double size, String text) {
        marks.add(new Mark.Text(style, x, y, anchor, size, text));
    }

    /** Where lines would run together only some are drawn, and that is said; gives the foot. */
    double everyFew(int step, double middle, double foot) {
        if (step == 1) {
            return foot;
        }
        small("t t-muted", middle, foot + 13, Anchor.MIDDLE, "not every cut is drawn");
        return foot + 18;
    }

    Drawing drawing(String kind, String title, String description, int width, double height) {
        return new Drawing(kind, title, description, width, (int) Math.ceil(height), marks);
    }
}
