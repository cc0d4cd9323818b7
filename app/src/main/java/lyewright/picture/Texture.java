package lyewright.picture;

/**
 * Lines or dots over a rectangle. They are drawn one by one instead of by a pattern, which needs an id that is its own on the
 * page.
 */
enum Texture {
    /** None. */
    PLAIN("", 0),
    /** Lines that climb. */
    CLIMBING("h", 5),
    /** The same, closer. */
    CLOSE("h", 3),
    /** Lines that climb, where alkali is left over. */
    ALARM("h h-stop", 5),
    /** Lines that fall. */
    FALLING("h", 5),
    /** Lines that lie. */
    LYING("h", 5),
    /** Lines that stand. */
    STANDING("h", 4),
    /** Both climbing and falling. */
    CROSSED("h", 6),
    /** Dots. */
    DOTTED("h h-dots", 5);

    private final String style;
    private final double apart;

    Texture(String style, double apart) {
        this.style = style;
        this.apart = apart;
    }

    String style() {
        return style;
    }

    /** The path; empty where nothing of it falls inside. */
    String in(double x, double y, double width, double height) {
        StringBuilder d = new StringBuilder();
        if (width <= 0 || height <= 0) {
            return "";
        }
        switch (this) {
            case PLAIN -> {}
            case CLIMBING, CLOSE, ALARM -> slanting(d, x, y, width, height, true);
            case FALLING -> slanting(d, x, y, width, height, false);
            case CROSSED -> {
                slanting(d, x, y, width, height, true);
                slanting(d, x, y, width, height, false);
            }
            case LYING -> {
                for (double at = apart / 2; at < height; at += apart) {
                    line(d, x, y + at, x + width, y + at);
                }
            }
            case STANDING -> {
                for (double at = apart / 2; at < width; at += apart) {
                    line(d, x + at, y, x + at, y + height);
                }
            }
            case DOTTED -> dots(d, x, y, width, height);
        }
        return d.toString();
    }

    /** Lines at 45 degrees: {@code s} runs over where they meet the left edge, prolonged. */
    private void slanting(StringBuilder d, double x, double y, double width, double height, boolean climbing) {
        for (double s = apart / 2; s < width + height; s += apart) {
            double x1 = Math.max(0, s - height);
            double y1 = Math.min(height, s);
            double x2 = Math.min(width, s);
            double y2 = Math.max(0, s - width);
            if (climbing) {
                line(d, x + x1, y + y1, x + x2, y + y2);
            } else {
                line(d, x + x1, y + height - y1, x + x2, y + height - y2);
            }
        }
    }

    private void dots(StringBuilder d, double x, double y, double width, double height) {
        boolean odd = false;
        for (double v = apart / 2; v < height; v += apart / 2 + 1) {
            for (double u = odd ? apart / 2 : apart; u < width; u += apart) {
                d.append('M')
                        .append(Drawing.at(x + u))
                        .append(' ')
                        .append(Drawing.at(y + v))
                        .append("h0.1");
            }
            odd = !odd;
        }
    }

    private static void line(StringBuilder d, double x1, double y1, double x2, double y2) {
        d.append(Canvas.line(x1, y1, x2, y2));
    }
}
