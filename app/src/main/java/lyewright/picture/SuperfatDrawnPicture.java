package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.makingsheet.SuperfatBand;
import lyewright.makingsheet.SuperfatShape;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** How often each superfat was drawn: columns over a scale with zero on it, left of which alkali is left over. */
public final class SuperfatDrawnPicture {

    private static final double TOP = 52;
    private static final double HIGH = 110;
    private static final double AXIS = TOP + HIGH;
    private static final double ARROW = 6;

    private final SuperfatBand band;
    private final SuperfatShape shape;
    private final SuperfatScale scale;
    private final Canvas canvas = new Canvas();

    private SuperfatDrawnPicture(SuperfatBand band) {
        this.band = band;
        this.shape = band.shape();
        this.scale = SuperfatScale.over(
                SuperfatPicture.LEFT,
                SuperfatPicture.RIGHT,
                SuperfatPicture.SIDES,
                shape.edge(0),
                shape.edge(shape.shares().size()),
                band.lowPercent(),
                band.highPercent(),
                band.sheetPercent());
    }

    /**
     * Of a band.
     *
     * @param band of a sheet or of one portion
     * @param wax whether there is wax in it
     * @return its picture
     */
    public static Picture of(SuperfatBand band, boolean wax) {
        return new SuperfatDrawnPicture(band).picture(wax);
    }

    private Picture picture(boolean wax) {
        canvas.box("side", scale.left(), TOP - 4, scale.at(0) - scale.left(), HIGH + 4);
        columns();
        ends();
        canvas.line("zero", scale.at(0), TOP - 4, scale.at(0), AXIS);
        if (scale.before(shape.edge(shape.shares().size() - 1))) {
            beyond();
        }
        words();
        double foot = SuperfatPicture.axis(canvas, scale, AXIS);
        return new Picture(
                canvas.drawing(
                        "pic-drawn", "How often each superfat was drawn", described(), SuperfatPicture.WIDTH, foot),
                left(),
                notes(wax),
                table());
    }

    private void columns() {
        double most = shape.shares().stream().mapToDouble(share -> share).max().orElse(1);
        for (int i = 0; i < shape.shares().size(); i++) {
            double x = scale.at(shape.edge(i));
            double width = scale.at(shape.edge(i + 1)) - x;
            double high = HIGH * shape.shares().get(i) / most;
            if (width <= 0 || high <= 0) {
                continue;
            }
            if (shape.edge(i) < 0) {
                canvas.textured("f-stop", Texture.ALARM, x, AXIS - high, width, high);
                canvas.box("f-clear o", x, AXIS - high, width, high);
            } else {
                canvas.box("f-soft o", x, AXIS - high, width, high);
            }
        }
    }

    /** Where 19 draws in 20 lie between, and what the sheet says. */
    private void ends() {
        for (double end : List.of(band.lowPercent(), band.highPercent())) {
            if (!scale.before(end)) {
                canvas.line("range", scale.at(end), TOP, scale.at(end), AXIS);
            }
        }
        if (!scale.before(band.sheetPercent())) {
            double x = scale.at(band.sheetPercent());
            canvas.path("now-head", Canvas.outline(x - 5, TOP - 9, x + 5, TOP - 9, x, TOP - 2));
        }
    }

    /** They all lie beyond the scale's end. */
    private void beyond() {
        double x = scale.left() - 3;
        double y = AXIS - HIGH / 2;
        canvas.path("now-head", Canvas.outline(x, y - ARROW, x - ARROW, y, x, y + ARROW));
    }

    private void words() {
        above(12, "t t-strong", Figures.percent(band.sheetPercent(), 1) + " by the sheet", band.sheetPercent());
        above(
                30,
                "t",
                "19 times in 20: " + Figures.fixed(band.lowPercent(), 1) + " to "
                        + Figures.fixed(band.highPercent(), 1),
                (band.lowPercent() + band.highPercent()) / 2);
    }

    private void above(double y, String style, String text, double at) {
        double half = TextWidth.of(text, Canvas.TEXT) / 2;
        double x = Math.max(SuperfatPicture.LEAST_X + half, Math.min(SuperfatPicture.MOST_X - half, scale.at(at)));
        canvas.text(style, x, y, Anchor.MIDDLE, text);
    }

    /** What lies left of zero, in words. */
    private String left() {
        double chance = band.freeAlkaliProbability();
        return chance <= 0
                ? "Left of 0 lies none of the draws: in none is alkali left over."
                : "Left of 0 lie " + SuperfatPicture.chance(chance) + " of the draws: there alkali is left over.";
    }

    private List<String> notes(boolean wax) {
        List<String> notes = new ArrayList<>();
        notes.add("Each column is " + Figures.upTo(shape.width(), 2)
                + " points wide and as high as it was drawn often; the few draws far out stand in the outermost. Between the two strokes lie"
                + " 19 draws of 20.");
        if (wax) {
            notes.add(
                    "Of a wax only what surely reacts is drawn here; the higher stroke is where it lies if all of it reacts.");
        }
        return notes;
    }

    private String described() {
        return Figures.percent(band.sheetPercent(), 1) + " by the sheet; 19 times in 20 between "
                + Figures.fixed(band.lowPercent(), 1) + " and " + Figures.percent(band.highPercent(), 1) + ". "
                + left();
    }

    private FigureTable table() {
        int decimals = shape.width() < 0.1 ? 2 : shape.width() < 1 ? 1 : 0;
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < shape.shares().size(); i++) {
            double percent = 100 * shape.shares().get(i);
            rows.add(List.of(
                    Figures.fixed(shape.edge(i), decimals) + " to " + Figures.percent(shape.edge(i + 1), decimals),
                    percent > 0 && percent < 0.05 ? "under 0.1 %" : Figures.percent(percent, 1)));
        }
        return new FigureTable(
                "How often it was drawn",
                List.of(FigureTable.words("Superfat"), FigureTable.figures("Share of the draws")),
                rows);
    }
}
