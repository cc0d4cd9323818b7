package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.PortionSheet;
import lyewright.measure.MassUnit;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** How the batter is shared among jugs: each portion's share, and what is in its jug at the end. */
public final class PortionsPicture {

    private static final int WIDTH = 360;
    private static final int MOST = 12;
    private static final double ROW = 40;
    private static final double LINE = 20;
    private static final double FULL = WIDTH - 2.0;
    private static final double BAR = 14;

    private final Masses masses;

    private PortionsPicture(Masses masses) {
        this.masses = masses;
    }

    /**
     * Of a sheet.
     *
     * @param sheet whose portions
     * @return their picture; empty for a single batter
     */
    public static Optional<Picture> of(MakingSheet sheet) {
        return of(sheet, MassUnit.GRAM);
    }

    /**
     * The same in another unit.
     *
     * @param sheet whose portions
     * @param unit grams or ounces
     * @return their picture; empty for a single batter
     */
    public static Optional<Picture> of(MakingSheet sheet, MassUnit unit) {
        return sheet.portions().isEmpty()
                ? Optional.empty()
                : Optional.of(new PortionsPicture(new Masses(unit)).picture(sheet.portions()));
    }

    private Picture picture(List<PortionSheet> portions) {
        Canvas canvas = new Canvas();
        double y = 0;
        double from = 0;
        for (PortionSheet portion : portions.subList(0, Math.min(MOST, portions.size()))) {
            row(canvas, portion, from, y);
            from += portion.sharePercent();
            y += ROW;
        }
        if (portions.size() > MOST) {
            canvas.text("t t-muted", 1, y + 13, Anchor.START, "and " + (portions.size() - MOST) + " more in the table");
            y += LINE;
        }
        String told = portions.stream()
                .map(p -> p.name() + " " + Figures.upTo(p.sharePercent(), 1) + " %, " + masses.say(p.baseBatterGrams())
                        + " of batter, " + masses.say(p.totalGrams()) + " with what goes in")
                .collect(Collectors.joining("; "));
        return new Picture(
                canvas.drawing("pic-portions", "Portions of the batter", told + ".", WIDTH, y),
                "",
                List.of(),
                table(portions));
    }

    /** Each bar begins where the one above ends, so that they read as one batter. */
    private void row(Canvas canvas, PortionSheet portion, double from, double y) {
        String share =
                Figures.upTo(portion.sharePercent(), 1) + " %, " + masses.say(portion.totalGrams()) + " in its jug";
        double room = FULL - TextWidth.of(share, Canvas.TEXT) - 12;
        canvas.text("t t-strong", 1, y + 13, Anchor.START, TextWidth.fit(portion.name(), Canvas.TEXT, room));
        canvas.text("t", WIDTH - 1.0, y + 13, Anchor.END, share);
        double x = 1 + FULL * Math.min(100, from) / 100;
        double wide = FULL * portion.sharePercent() / 100;
        canvas.box("f-soft", 1, y + 19, FULL, BAR);
        canvas.box("f-full", x, y + 19, Math.min(wide, FULL + 1 - x), BAR);
        canvas.box("f-clear o", 1, y + 19, FULL, BAR);
    }

    private FigureTable table(List<PortionSheet> portions) {
        List<List<String>> rows = new ArrayList<>();
        for (PortionSheet p : portions) {
            rows.add(List.of(
                    p.name(),
                    Figures.upTo(p.sharePercent(), 1) + " %",
                    masses.say(p.baseBatterGrams()),
                    masses.say(p.totalGrams()),
                    Figures.percent(p.superfatPercent(), 1)));
        }
        return new FigureTable(
                "Portions of the batter",
                List.of(
                        FigureTable.words("Portion"),
                        FigureTable.figures("Share"),
                        FigureTable.figures("Batter"),
                        FigureTable.figures("In the jug"),
                        FigureTable.figures("Superfat")),
                rows);
    }
}
