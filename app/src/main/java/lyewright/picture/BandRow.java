package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.makingsheet.SuperfatBand;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** One band over a scale: the interval, the sheet's own figure, the worst corner. */
final class BandRow {

    /** From its top to the foot of the labels below it. */
    static final double HEIGHT = 66;

    private static final double BAR_TOP = 22;
    private static final double BAR = 22;
    private static final double LEAST_WIDTH = 2;
    private static final double GAP = 10;
    private static final double ARROW = 6;

    private final Canvas canvas;
    private final SuperfatScale scale;
    private final double top;

    BandRow(Canvas canvas, SuperfatScale scale, double top) {
        this.canvas = canvas;
        this.scale = scale;
        this.top = top;
    }

    void draw(SuperfatBand band, String said) {
        double low = scale.at(band.lowPercent());
        double high = Math.max(low + LEAST_WIDTH, scale.at(band.highPercent()));
        double zero = scale.at(0);
        double y = top + BAR_TOP;
        if (low < zero) {
            canvas.textured("f-stop", Texture.ALARM, low, y, Math.min(high, zero) - low, BAR);
        }
        if (high > zero) {
            canvas.box("f-soft", Math.max(low, zero), y, high - Math.max(low, zero), BAR);
        }
        canvas.box("f-clear o", low, y, high - low, BAR);
        canvas.line("zero", zero, y - 5, zero, y + BAR + 5);
        if (!scale.before(band.worstPercent())) {
            worst(scale.at(band.worstPercent()), y + BAR / 2);
        }
        if (!scale.before(band.sheetPercent())) {
            sheet(scale.at(band.sheetPercent()), y);
        }
        if (scale.before(band.lowPercent())) {
            arrow(y + BAR / 2);
        }
        above(band, said);
        below(band);
    }

    /** The side of zero where alkali is left over, behind everything. */
    void side(double foot) {
        canvas.box("side", scale.left(), top + BAR_TOP - 5, scale.at(0) - scale.left(), foot - top - BAR_TOP + 5);
    }

    private void sheet(double x, double y) {
        canvas.line("now", x, y, x, y + BAR);
        canvas.path("now-head", Canvas.outline(x - 5, y - 7, x + 5, y - 7, x, y));
    }

    private void worst(double x, double y) {
        canvas.path("worst", Canvas.line(x - 4, y - 4, x + 4, y + 4) + Canvas.line(x - 4, y + 4, x + 4, y - 4));
    }

    /** It goes on beyond the scale's end. */
    private void arrow(double y) {
        double x = scale.left() - 3;
        canvas.path("now-head", Canvas.outline(x, y - ARROW, x - ARROW, y, x, y + ARROW));
    }

    private void above(SuperfatBand band, String said) {
        place(List.of(new Label("t t-strong", said, scale.at(band.sheetPercent()))), top + 11, 0);
    }

    private void below(SuperfatBand band) {
        String low = Figures.fixed(band.lowPercent(), 1);
        String high = Figures.fixed(band.highPercent(), 1);
        String worst = "worst " + Figures.fixed(band.worstPercent(), 1);
        double lowAt = scale.at(band.lowPercent());
        double highAt = scale.at(band.highPercent());
        List<Label> labels = new ArrayList<>();
        labels.add(new Label("t t-muted", worst, scale.at(band.worstPercent())));
        double both = TextWidth.of(low, Canvas.TEXT) / 2 + TextWidth.of(high, Canvas.TEXT) / 2 + GAP;
        if (highAt - lowAt < both) {
            labels.add(new Label(
                    "t t-strong", low.equals(high) ? low : low + " to " + high, (lowAt + Math.max(lowAt, highAt)) / 2));
        } else {
            labels.add(new Label("t t-strong", low, lowAt));
            labels.add(new Label("t t-strong", high, highAt));
        }
        place(labels, top + BAR_TOP + BAR + 17, BAR_TOP + BAR + top + 1);
    }

    private record Label(String style, String text, double at) {}

    private void place(List<Label> labels, double y, double from) {
        double[] wanted = labels.stream().mapToDouble(Label::at).toArray();
        double[] sizes = labels.stream()
                .mapToDouble(label -> TextWidth.of(label.text, Canvas.TEXT) + GAP)
                .toArray();
        double[] placed = Spread.of(wanted, sizes, SuperfatPicture.LEAST_X, SuperfatPicture.MOST_X);
        for (int i = 0; i < placed.length; i++) {
            Label label = labels.get(i);
            canvas.text(label.style, placed[i], y, Anchor.MIDDLE, label.text);
            if (from > 0) {
                canvas.line("lead", wanted[i], from, (wanted[i] + 2 * placed[i]) / 3, from + 4);
            }
        }
    }
}
