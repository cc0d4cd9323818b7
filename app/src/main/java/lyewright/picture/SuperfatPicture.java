package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** How sure a superfat is: a band over a scale with zero on it, left of which alkali is left over. */
public final class SuperfatPicture {

    static final int WIDTH = 360;
    static final double LEAST_X = 2;
    static final double MOST_X = WIDTH - 2.0;
    static final double LEFT = 16;
    static final double RIGHT = WIDTH - 16.0;
    private static final String BELOW_ZERO = "alkali left over";
    private static final String ABOVE_ZERO = "superfat, %";
    private static final double SIDE_GAP = 6;

    /** How high the mark of what was asked for is. */
    private static final double ASKED = 8;

    /** What the two sides of zero are called has room on every scale, so that it stands in the same place on each. */
    static final SuperfatScale.Rooms SIDES = new SuperfatScale.Rooms(side(BELOW_ZERO), side(ABOVE_ZERO));

    private SuperfatPicture() {}

    private static double side(String words) {
        return TextWidth.of(words, Canvas.SMALL) + SIDE_GAP;
    }

    /**
     * Of a sheet.
     *
     * @param sheet whose superfat
     * @return its picture; a portion that is worse is spoken of in the sentence
     */
    public static Picture of(MakingSheet sheet) {
        return of(sheet.band(), sheet.askedSuperfatPercent(), sheet.howSure());
    }

    /**
     * Of a band by itself, such as a portion's.
     *
     * @param band how sure it is
     * @param asked the superfat asked for, percent
     * @return its picture
     */
    public static Picture of(SuperfatBand band, Optional<Double> asked) {
        return of(band, asked, band.sentence());
    }

    private static Picture of(SuperfatBand band, Optional<Double> asked, String sentence) {
        return new Picture(
                drawing(BandFigures.of(band), asked, described(band, asked)), sentence, List.of(), table(band, asked));
    }

    static Drawing drawing(BandFigures band, Optional<Double> asked, String described) {
        Canvas canvas = new Canvas();
        SuperfatScale scale = SuperfatScale.over(
                LEFT,
                RIGHT,
                SIDES.and(new BandLabels(band).rooms()),
                band.worst(),
                band.low(),
                band.high(),
                band.sheet(),
                asked.orElse(0.0));
        double axis = BandRow.HEIGHT + ASKED;
        new BandRow(canvas, scale, 0).draw(band, said(band, asked), axis);
        asked.filter(a -> differs(a, band)).ifPresent(a -> asked(canvas, scale.at(a), axis));
        double foot = axis(canvas, scale, axis);
        return canvas.drawing("pic-superfat", "How sure the superfat is", described, WIDTH, foot);
    }

    private static boolean differs(double asked, BandFigures band) {
        return !Figures.fixed(asked, 1).equals(Figures.fixed(band.sheet(), 1));
    }

    private static String said(BandFigures band, Optional<Double> asked) {
        String sheet = Figures.percent(band.sheet(), 1);
        if (asked.isEmpty()) {
            return sheet + " by the sheet";
        }
        return differs(asked.get(), band)
                ? sheet + " by the sheet, " + Figures.upTo(asked.get(), 2) + " asked"
                : sheet + ", as asked";
    }

    private static void asked(Canvas canvas, double x, double axis) {
        canvas.path("asked", Canvas.outline(x, axis, x - 5, axis - 8, x + 5, axis - 8));
    }

    /** The scale with its figures, and below it what its two sides mean; gives the foot of all. */
    static double axis(Canvas canvas, SuperfatScale scale, double y) {
        canvas.line("axis", scale.left(), y, scale.right(), y);
        for (double tick : scale.ticks()) {
            double x = scale.at(tick);
            canvas.line(tick == 0 ? "zero" : "axis", x, y, x, y + (tick == 0 ? 7 : 4));
            canvas.small("t t-muted", x, y + 18, Anchor.MIDDLE, Figures.upTo(tick, 1));
        }
        double zero = scale.at(0);
        canvas.small("t t-muted", zero - SIDE_GAP, y + 35, Anchor.END, BELOW_ZERO);
        canvas.small("t t-muted", zero + SIDE_GAP, y + 35, Anchor.START, ABOVE_ZERO);
        canvas.line("zero", zero, y + 24, zero, y + 38);
        return y + 41;
    }

    static String described(SuperfatBand band, Optional<Double> asked) {
        return Figures.percent(band.sheetPercent(), 1) + " by the sheet"
                + asked.map(a -> ", " + Figures.upTo(a, 2) + " % asked").orElse("") + "; 19 times in 20 between "
                + Figures.fixed(band.lowPercent(), 1) + " and " + Figures.percent(band.highPercent(), 1)
                + "; all at its worst at once " + Figures.percent(band.worstPercent(), 1) + "; as to alkali: "
                + band.verdict().word() + ".";
    }

    private static FigureTable table(SuperfatBand band, Optional<Double> asked) {
        List<List<String>> rows = new ArrayList<>();
        asked.ifPresent(a -> rows.add(List.of("Asked for", Figures.upTo(a, 2) + " %")));
        rows.add(List.of("By the sheet", Figures.percent(band.sheetPercent(), 1)));
        rows.add(List.of(
                "19 times in 20 between",
                Figures.fixed(band.lowPercent(), 1) + " and " + Figures.percent(band.highPercent(), 1)));
        rows.add(List.of("All at its worst at once", Figures.percent(band.worstPercent(), 1)));
        rows.add(List.of("Chance that alkali is left over", chance(band.freeAlkaliProbability())));
        rows.add(List.of("As to alkali", band.verdict().word()));
        return new FigureTable("Superfat", List.of(FigureTable.words("What"), FigureTable.figures("Superfat")), rows);
    }

    static String chance(double probability) {
        if (probability <= 0) {
            return "none seen";
        }
        double percent = 100 * probability;
        return percent < 0.1 ? "under 0.1 %" : percent > 99.9 ? "over 99.9 %" : Figures.percent(percent, 1);
    }
}
