package lyewright.picture;

import lyewright.picture.Mark.Anchor;

/** One band over a scale: the interval, the sheet's own figure, the worst corner. */
final class BandRow {

    private static final double BAR_TOP = 22;
    private static final double BAR = 22;

    /** From its top to the foot of the labels below it. */
    static final double HEIGHT = BAR_TOP + BAR + BandLabels.HEIGHT;

    private static final double LEAST_WIDTH = 2;
    private static final double BEYOND = 5;
    private static final double ARROW = 6;

    private final Canvas canvas;
    private final SuperfatScale scale;
    private final double top;

    BandRow(Canvas canvas, SuperfatScale scale, double top) {
        this.canvas = canvas;
        this.scale = scale;
        this.top = top;
    }

    /** The band, with the side where alkali is left over behind it, down to a foot. */
    void draw(BandFigures band, String said, double foot) {
        double zero = scale.at(0);
        double y = top + BAR_TOP;
        canvas.box("side", scale.left(), y - BEYOND, zero - scale.left(), foot - y + BEYOND);
        bar(band, y, zero);
        canvas.line("zero", zero, y - BEYOND, zero, foot);
        if (!scale.before(band.worst())) {
            BandLabels.cross(canvas, scale.at(band.worst()), y + BAR / 2);
        }
        if (!scale.before(band.sheet())) {
            sheet(scale.at(band.sheet()), y);
        }
        if (scale.before(band.low())) {
            arrow(y + BAR / 2);
        }
        above(band, said);
        new BandLabels(band).draw(canvas, scale, y + BAR);
    }

    private void bar(BandFigures band, double y, double zero) {
        double low = scale.at(band.low());
        double high = Math.max(low + LEAST_WIDTH, scale.at(band.high()));
        if (low < zero) {
            canvas.textured("f-stop", Texture.ALARM, low, y, Math.min(high, zero) - low, BAR);
        }
        if (high > zero) {
            canvas.box("f-soft", Math.max(low, zero), y, high - Math.max(low, zero), BAR);
        }
        canvas.box("f-clear o", low, y, high - low, BAR);
    }

    private void sheet(double x, double y) {
        canvas.line("now", x, y, x, y + BAR);
        canvas.path("now-head", Canvas.outline(x - 5, y - 7, x + 5, y - 7, x, y));
    }

    /** It goes on beyond the scale's end. */
    private void arrow(double y) {
        double x = scale.left() - 3;
        canvas.path("now-head", Canvas.outline(x, y - ARROW, x - ARROW, y, x, y + ARROW));
    }

    /** Over the line of zero, which begins below it. */
    private void above(BandFigures band, String said) {
        double half = TextWidth.of(said, Canvas.TEXT) / 2;
        double x = Math.max(
                SuperfatPicture.LEAST_X + half, Math.min(SuperfatPicture.MOST_X - half, scale.at(band.sheet())));
        canvas.text("t t-strong", x, top + 11, Anchor.MIDDLE, said);
    }
}
