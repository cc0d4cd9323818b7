package lyewright.picture;

/** One thing that a template draws. All places are in the units of the drawing's view box; colours follow from the style. */
public sealed interface Mark {

    /**
     * What it is, as classes of the stylesheet.
     *
     * @return one class or several
     */
    String style();

    /**
     * A rectangle.
     *
     * @param style classes
     * @param x left
     * @param y top
     * @param width 0 or more
     * @param height 0 or more
     * @param tone how much of its colour it has, 0 to 1
     */
    record Box(String style, double x, double y, double width, double height, double tone) implements Mark {}

    /**
     * A line or an outline.
     *
     * @param style classes
     * @param d the path's data
     */
    record Path(String style, String d) implements Mark {}

    /**
     * A word or a figure on one line.
     *
     * @param style classes
     * @param x where its anchor is
     * @param y its baseline
     * @param anchor which end of it is there
     * @param size of its letters
     * @param text what it says
     */
    record Text(String style, double x, double y, Anchor anchor, double size, String text) implements Mark {

        /** Keeps what XML can carry. */
        public Text {
            text = Drawing.clean(text);
        }

        /**
         * Its left end, by what its letters are taken to be wide.
         *
         * @return x
         */
        public double left() {
            double width = TextWidth.of(text, size);
            return switch (anchor) {
                case START -> x;
                case MIDDLE -> x - width / 2;
                case END -> x - width;
            };
        }

        /**
         * Its right end.
         *
         * @return x
         */
        public double right() {
            return left() + TextWidth.of(text, size);
        }
    }

    /** Which end of a text its place speaks of. */
    enum Anchor {
        /** Its left end. */
        START("start"),
        /** Its middle. */
        MIDDLE("middle"),
        /** Its right end. */
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }

        /**
         * As SVG writes it.
         *
         * @return start, middle or end
         */
        public String word() {
            return word;
        }
    }
}
