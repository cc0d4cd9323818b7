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
    private static final double LEFT = 16;
    private static final double RIGHT = WIDTH - 16.0;

    private SuperfatPicture() {}

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
        Canvas canvas = new Canvas();
        SuperfatScale scale = SuperfatScale.over(
                LEFT,
                RIGHT,
                band.worstPercent(),
                band.lowPercent(),
                band.highPercent(),
                band.sheetPercent(),
                asked.orElse(0.0));
        double axis = BandRow.HEIGHT + 8;
        BandRow row = new BandRow(canvas, scale, 0);
        row.side(axis);
        asked.filter(a -> differs(a, band)).ifPresent(a -> asked(canvas, scale.at(a), axis));
        row.draw(band, said(band, asked));
        double foot = axis(canvas, scale, axis);
        return new Picture(
                canvas.drawing("pic-superfat", "How sure the superfat is", described(band, asked), WIDTH, foot),
                sentence,
                List.of(),
                table(band, asked));
    }

    private static boolean differs(double asked, SuperfatBand band) {
        return !Figures.fixed(asked, 1).equals(Figures.fixed(band.sheetPercent(), 1));
    }

    private static String said(SuperfatBand band, Optional<Double> asked) {
        String sheet = Figures.percent(band.sheetPercent(), 1);
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
        side(canvas, zero - 6, y + 35, Anchor.END, zero - 6 - LEAST_X, "alkali left over", "alkali over", "caustic");
        side(canvas, zero + 6, y + 35, Anchor.START, MOST_X - zero - 6, "superfat, %", "superfat");
        canvas.line("zero", zero, y + 24, zero, y + 38);
        return y + 41;
    }

    /** The longest of several wordings that there is room for. */
    private static void side(Canvas canvas, double x, double y, Anchor anchor, double room, String... wordings) {
        for (String words : wordings) {
            if (TextWidth.of(words, Canvas.SMALL) <= room) {
                canvas.small("t t-muted", x, y, anchor, words);
                return;
            }
        }
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
