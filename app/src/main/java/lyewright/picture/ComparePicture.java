package lyewright.picture;

import java.util.List;
import java.util.Optional;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** Two sheets beside each other: their superfats on one scale, their fatty acids on another. */
public final class ComparePicture {

    private static final int WIDTH = 360;
    private static final double HEAD = 17;
    private static final double BETWEEN = 10;

    private final String a;
    private final String b;

    private ComparePicture(String a, String b) {
        this.a = a;
        this.b = b;
    }

    /**
     * Their superfats.
     *
     * @param a the sheet it is from
     * @param nameA what that is called, such as a version
     * @param b the sheet it is to
     * @param nameB what that is called
     * @return both bands over one scale
     */
    public static Picture superfats(MakingSheet a, String nameA, MakingSheet b, String nameB) {
        return new ComparePicture(nameA, nameB).bands(a.band(), b.band());
    }

    /**
     * Their fatty acids.
     *
     * @param a the sheet it is from
     * @param nameA what that is called, such as a version
     * @param b the sheet it is to
     * @param nameB what that is called
     * @return both profiles over one scale
     */
    public static Picture fattyAcids(MakingSheet a, String nameA, MakingSheet b, String nameB) {
        return new ComparedAcids(nameA, acidsOf(a), nameB, acidsOf(b)).picture();
    }

    private static OilPhaseAcids acidsOf(MakingSheet sheet) {
        return OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams());
    }

    private Picture bands(SuperfatBand bandA, SuperfatBand bandB) {
        return new Picture(
                drawing(
                        BandFigures.of(bandA),
                        a,
                        BandFigures.of(bandB),
                        b,
                        a + ": " + SuperfatPicture.described(bandA, Optional.empty()) + " " + b + ": "
                                + SuperfatPicture.described(bandB, Optional.empty())),
                "",
                List.of(),
                bandTable(bandA, bandB));
    }

    static Drawing drawing(BandFigures bandA, String a, BandFigures bandB, String b, String described) {
        Canvas canvas = new Canvas();
        SuperfatScale scale = scale(bandA, bandB);
        double second = HEAD + BandRow.HEIGHT + BETWEEN;
        double axis = second + HEAD + BandRow.HEIGHT;
        head(canvas, a, 0);
        new BandRow(canvas, scale, HEAD).draw(bandA, Figures.percent(bandA.sheet(), 1), HEAD + BandRow.HEIGHT);
        head(canvas, b, second);
        new BandRow(canvas, scale, second + HEAD).draw(bandB, Figures.percent(bandB.sheet(), 1), axis);
        double foot = SuperfatPicture.axis(canvas, scale, axis);
        return canvas.drawing("pic-superfat", "How sure both superfats are", described, WIDTH, foot);
    }

    private static SuperfatScale scale(BandFigures a, BandFigures b) {
        return SuperfatScale.over(
                SuperfatPicture.LEFT,
                SuperfatPicture.RIGHT,
                SuperfatPicture.SIDES.and(new BandLabels(a).rooms()).and(new BandLabels(b).rooms()),
                a.worst(),
                a.low(),
                a.high(),
                a.sheet(),
                b.worst(),
                b.low(),
                b.high(),
                b.sheet());
    }

    private static void head(Canvas canvas, String name, double y) {
        canvas.text("t t-strong", 2, y + 13, Anchor.START, TextWidth.fit(name, Canvas.TEXT, WIDTH - 4.0));
    }

    private FigureTable bandTable(SuperfatBand bandA, SuperfatBand bandB) {
        return new FigureTable(
                "Superfat",
                List.of(FigureTable.words("What"), FigureTable.figures(a), FigureTable.figures(b)),
                List.of(
                        List.of(
                                "By the sheet",
                                Figures.percent(bandA.sheetPercent(), 1),
                                Figures.percent(bandB.sheetPercent(), 1)),
                        List.of("19 times in 20", between(bandA), between(bandB)),
                        List.of(
                                "All at its worst at once",
                                Figures.percent(bandA.worstPercent(), 1),
                                Figures.percent(bandB.worstPercent(), 1)),
                        List.of(
                                "Chance that alkali is left over",
                                SuperfatPicture.chance(bandA.freeAlkaliProbability()),
                                SuperfatPicture.chance(bandB.freeAlkaliProbability())),
                        List.of(
                                "As to alkali",
                                bandA.verdict().word(),
                                bandB.verdict().word())));
    }

    private static String between(SuperfatBand band) {
        return Figures.fixed(band.lowPercent(), 1) + " to " + Figures.percent(band.highPercent(), 1);
    }
}
