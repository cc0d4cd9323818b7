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
    /** The same where alkali is left over. */
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

    /** Where a point of the rectangle is drawn: a face that is seen aslant draws it elsewhere. */
    interface Place {

        /** As a path writes it. */
        String at(double x, double y);

        /** Just there. */
        Place FLAT = (x, y) -> Drawing.at(x) + " " + Drawing.at(y);
    }

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
        return in(x, y, width, height, Place.FLAT);
    }

    String in(double x, double y, double width, double height, Place place) {
        return width > 0 && height > 0 ? new Lines(x, y, width, height, place).all() : "";
    }

    /** The lines of one rectangle. */
    private final class Lines {
        private final StringBuilder d = new StringBuilder();
        private final double x;
        private final double y;
        private final double width;
        private final double height;
        private final Place place;

        Lines(double x, double y, double width, double height, Place place) {
            this.x = x;
            this.y = y;
            this.width = width;
            this.height = height;
            this.place = place;
        }

        String all() {
            switch (Texture.this) {
                case PLAIN -> {}
                case CLIMBING, CLOSE, ALARM -> slanting(true);
                case FALLING -> slanting(false);
                case CROSSED -> {
                    slanting(true);
                    slanting(false);
                }
                case LYING -> {
                    for (double at = apart / 2; at < height; at += apart) {
                        line(0, at, width, at);
                    }
                }
                case STANDING -> {
                    for (double at = apart / 2; at < width; at += apart) {
                        line(at, 0, at, height);
                    }
                }
                case DOTTED -> dots();
            }
            return d.toString();
        }

        /** At 45 degrees: {@code s} runs over where they meet the left edge, prolonged. */
        private void slanting(boolean climbing) {
            for (double s = apart / 2; s < width + height; s += apart) {
                double x1 = Math.max(0, s - height);
                double y1 = Math.min(height, s);
                double x2 = Math.min(width, s);
                double y2 = Math.max(0, s - width);
                line(x1, climbing ? y1 : height - y1, x2, climbing ? y2 : height - y2);
            }
        }

        private void dots() {
            boolean odd = false;
            for (double v = apart / 2; v < height; v += apart / 2 + 1) {
                for (double u = odd ? apart / 2 : apart; u < width; u += apart) {
                    d.append('M').append(place.at(x + u, y + v)).append("h0.1");
                }
                odd = !odd;
            }
        }

        private void line(double x1, double y1, double x2, double y2) {
            d.append('M').append(place.at(x + x1, y + y1)).append('L').append(place.at(x + x2, y + y2));
        }
    }
}
