package lyewright.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.makingsheet.MakingSheet;
import lyewright.makingsheet.SuperfatBand;
import lyewright.material.FattyAcid;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** Two sheets beside each other: their superfats on one scale, their fatty acids on another. */
public final class ComparePicture {

    private static final int WIDTH = 360;
    private static final double NAME = 116;
    private static final double PLOT = 190;
    private static final double ROW = 30;
    private static final double BAR = 10;
    private static final double HEAD = 17;

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
        return new ComparePicture(nameA, nameB).acids(acidsOf(a), acidsOf(b));
    }

    private static OilPhaseAcids acidsOf(MakingSheet sheet) {
        return OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams());
    }

    private Picture bands(SuperfatBand bandA, SuperfatBand bandB) {
        Canvas canvas = new Canvas();
        SuperfatScale scale = SuperfatScale.over(
                16,
                WIDTH - 16.0,
                bandA.worstPercent(),
                bandA.lowPercent(),
                bandA.highPercent(),
                bandA.sheetPercent(),
                bandB.worstPercent(),
                bandB.lowPercent(),
                bandB.highPercent(),
                bandB.sheetPercent());
        double second = HEAD + BandRow.HEIGHT + 12;
        double axis = second + HEAD + BandRow.HEIGHT + 4;
        new BandRow(canvas, scale, HEAD).side(axis);
        canvas.line("axis", scale.at(0), HEAD + 20, scale.at(0), axis);
        head(canvas, a, 0);
        new BandRow(canvas, scale, HEAD).draw(bandA, Figures.percent(bandA.sheetPercent(), 1));
        head(canvas, b, second);
        new BandRow(canvas, scale, second + HEAD).draw(bandB, Figures.percent(bandB.sheetPercent(), 1));
        double foot = SuperfatPicture.axis(canvas, scale, axis);
        return new Picture(
                canvas.drawing(
                        "pic-superfat",
                        "How sure both superfats are",
                        a + ": " + SuperfatPicture.described(bandA, java.util.Optional.empty()) + " " + b + ": "
                                + SuperfatPicture.described(bandB, java.util.Optional.empty()),
                        WIDTH,
                        foot),
                "",
                List.of(),
                bandTable(bandA, bandB));
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

    /** One acid of both; a share that one lacks is nothing. */
    private record Both(FattyAcid acid, Share a, Share b) {

        double most() {
            return Math.max(Math.max(a.percent(), a.highPercent()), Math.max(b.percent(), b.highPercent()));
        }

        boolean large() {
            return Math.max(a.percent(), b.percent()) >= AcidRows.SMALL;
        }
    }

    private static List<Both> both(OilPhaseAcids acidsA, OilPhaseAcids acidsB) {
        Map<FattyAcid, Share[]> shares = new LinkedHashMap<>();
        acidsA.acids().forEach(s -> shares.computeIfAbsent(s.acid(), ComparePicture::none)[0] = s);
        acidsB.acids().forEach(s -> shares.computeIfAbsent(s.acid(), ComparePicture::none)[1] = s);
        return shares.entrySet().stream()
                .map(e -> new Both(e.getKey(), e.getValue()[0], e.getValue()[1]))
                .filter(both -> both.most() > 0)
                .sorted(Comparator.comparing(Both::acid, OilPhaseAcids.BY_SIZE))
                .toList();
    }

    private static Share[] none(FattyAcid acid) {
        Share nothing = new Share(acid, 0, 0, 0);
        return new Share[] {nothing, nothing};
    }

    private Picture acids(OilPhaseAcids acidsA, OilPhaseAcids acidsB) {
        List<Both> all = both(acidsA, acidsB);
        List<Both> large = all.stream().filter(Both::large).toList();
        Canvas canvas = new Canvas();
        double y = legend(canvas);
        double full = Math.max(
                10, 10 * Math.ceil(large.stream().mapToDouble(Both::most).max().orElse(0) / 10));
        double foot = y + ROW * large.size();
        for (int tick = 0; tick <= 2; tick++) {
            double x = NAME + PLOT * tick / 2;
            canvas.line(tick == 0 ? "axis" : "grid", x, y - 4, x, foot);
            canvas.small(
                    "t t-muted",
                    x,
                    foot + 14,
                    Anchor.MIDDLE,
                    Figures.upTo(full * tick / 2, 0) + (tick == 2 ? " %" : ""));
        }
        for (Both acid : large) {
            row(canvas, acid, full, y);
            y += ROW;
        }
        return new Picture(
                canvas.drawing("pic-acids", "Fatty acids of both", described(large), WIDTH, foot + 19),
                "",
                notes(acidsA, acidsB, all.size() - large.size()),
                acidTable(all));
    }

    private double legend(Canvas canvas) {
        canvas.box("f-full o", 1, 4, 14, BAR);
        canvas.small("t", 21, 13, Anchor.START, TextWidth.fit(a, Canvas.SMALL, WIDTH - 24.0));
        canvas.textured("f-none o", Texture.CLIMBING, 1, 22, 14, BAR);
        canvas.small("t", 21, 31, Anchor.START, TextWidth.fit(b, Canvas.SMALL, WIDTH - 24.0));
        return 48;
    }

    private static void row(Canvas canvas, Both acid, double full, double y) {
        AcidRows.name(canvas, acid.acid(), NAME, y + 14);
        canvas.box("f-full o", NAME, y, PLOT * acid.a().percent() / full, BAR);
        canvas.textured(
                "f-none o", Texture.CLIMBING, NAME, y + BAR + 1, PLOT * acid.b().percent() / full, BAR);
        String from = Figures.fixed(acid.a().percent(), 1);
        String to = Figures.fixed(acid.b().percent(), 1);
        canvas.small("t", WIDTH - 1.0, y + 10, Anchor.END, from);
        canvas.small("t t-strong", WIDTH - 1.0, y + 23, Anchor.END, to);
    }

    private List<String> notes(OilPhaseAcids acidsA, OilPhaseAcids acidsB, int small) {
        List<String> notes = new ArrayList<>();
        notes.add("Middles of published ranges, scaled so that all come to 100 %."
                + (small > 0 ? " " + small + " under 0.5 % in both are in the table only." : ""));
        unknown(notes, a, acidsA);
        unknown(notes, b, acidsB);
        return notes;
    }

    private static void unknown(List<String> notes, String name, OilPhaseAcids acids) {
        if (acids.unknownPercent() > 0) {
            notes.add(name + ": acids not known of " + Figures.percent(acids.unknownPercent(), 1)
                    + " of the oils, which count in none of this.");
        }
    }

    private String described(List<Both> large) {
        if (large.isEmpty()) {
            return "No acid is known.";
        }
        StringBuilder text = new StringBuilder();
        for (Both acid : large) {
            text.append(text.isEmpty() ? "" : "; ")
                    .append(AcidRows.name(acid.acid()))
                    .append(' ')
                    .append(Figures.percent(acid.a().percent(), 1))
                    .append(" in ")
                    .append(a)
                    .append(", ")
                    .append(Figures.percent(acid.b().percent(), 1))
                    .append(" in ")
                    .append(b);
        }
        return text.append('.').toString();
    }

    private FigureTable acidTable(List<Both> all) {
        List<List<String>> rows = new ArrayList<>();
        for (Both acid : all) {
            rows.add(List.of(
                    AcidRows.name(acid.acid()) + " " + acid.acid().code(),
                    Figures.fixed(acid.a().percent(), 1),
                    Figures.fixed(acid.b().percent(), 1)));
        }
        return new FigureTable(
                "Fatty acids, percent of all that are known",
                List.of(FigureTable.words("Acid"), FigureTable.figures(a), FigureTable.figures(b)),
                rows);
    }
}
