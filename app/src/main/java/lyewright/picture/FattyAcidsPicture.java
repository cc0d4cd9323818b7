package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.MakingSheet;
import lyewright.picture.AcidRows.Bonds;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** The fatty acids of a formula's oils: each with its middle and its published range, and what is not known. */
public final class FattyAcidsPicture {

    private static final int WIDTH = 360;
    private static final double NAME = 116;
    private static final double PLOT = 190;
    private static final double ROW = 27;
    private static final double BAR = 10;
    private static final double KNOWN = 0.05;

    private final OilPhaseAcids acids;
    private final Canvas canvas = new Canvas();
    private double y;

    private FattyAcidsPicture(OilPhaseAcids acids) {
        this.acids = acids;
    }

    /**
     * Of a sheet.
     *
     * @param sheet whose oils
     * @return their picture
     */
    public static Picture of(MakingSheet sheet) {
        return of(OilPhaseAcids.of(sheet.batch(), sheet.filled().oilsGrams()));
    }

    /**
     * Of a formula of which nothing is weighed yet.
     *
     * @param formula whose oils
     * @return their picture
     */
    public static Picture of(ResolvedFormula formula) {
        return of(OilPhaseAcids.of(formula));
    }

    /**
     * Of acids that were added up.
     *
     * @param acids what is known and not known
     * @return their picture
     */
    public static Picture of(OilPhaseAcids acids) {
        return new FattyAcidsPicture(acids).picture();
    }

    private Picture picture() {
        if (!acids.known() || acids.unknownPercent() > 0) {
            knownAndNot();
        }
        if (acids.known()) {
            byBonds();
            rows();
        }
        return new Picture(
                canvas.drawing("pic-acids", "Fatty acids of the oils", described(), WIDTH, y + 2),
                "",
                notes(),
                AcidRows.table(acids));
    }

    /** The oils as one bar: whose acids are known, and whose are not. */
    private void knownAndNot() {
        double unknown = Math.min(100, acids.unknownPercent());
        double known = (100 - unknown) * (WIDTH - 2) / 100;
        canvas.box("f-soft", 1, 20, known, 14);
        canvas.textured("f-none", Texture.CROSSED, 1 + known, 20, WIDTH - 2 - known, 14);
        canvas.box("f-clear o o-dash", 1 + known, 20, WIDTH - 2 - known, 14);
        canvas.box("f-clear o", 1, 20, known, 14);
        canvas.text(
                "t",
                1,
                13,
                Anchor.START,
                "Acids not known of " + Figures.percent(acids.unknownPercent(), 1) + " of the oils");
        y = 44;
    }

    /** All known acids as one bar. */
    private void byBonds() {
        double x = 1;
        List<String> texts = new ArrayList<>();
        List<Double> middles = new ArrayList<>();
        for (Bonds bonds : Bonds.values()) {
            double percent = bonds.percent(acids);
            double wide = percent / 100 * (WIDTH - 2);
            canvas.textured(bonds.style, bonds.texture, x, y + 20, wide, 18);
            canvas.box("f-clear o", x, y + 20, wide, 18);
            texts.add(bonds.words + " " + Figures.percent(percent, 0));
            middles.add(x + wide / 2);
            x += wide;
        }
        double[] sizes = texts.stream()
                .mapToDouble(text -> TextWidth.of(text, Canvas.SMALL) + 8)
                .toArray();
        double[] placed = Spread.of(middles.stream().mapToDouble(m -> m).toArray(), sizes, 0, WIDTH);
        for (int i = 0; i < placed.length; i++) {
            canvas.small("t", placed[i], y + 13, Anchor.MIDDLE, texts.get(i));
        }
        y += 52;
    }

    private void rows() {
        List<Share> large = AcidRows.large(acids);
        List<Share> small = AcidRows.small(acids);
        double full = AcidRows.full(large);
        double top = y;
        double foot = y + ROW * large.size();
        for (int tick = 0; tick <= 2; tick++) {
            double x = NAME + PLOT * tick / 2;
            canvas.line(tick == 0 ? "axis" : "grid", x, top - 4, x, foot);
            canvas.small(
                    "t t-muted",
                    x,
                    foot + 14,
                    Anchor.MIDDLE,
                    Figures.upTo(full * tick / 2, 0) + (tick == 2 ? " %" : ""));
        }
        for (Share share : large) {
            row(share, full);
        }
        y = foot + 18;
        if (!small.isEmpty()) {
            y += 18;
            canvas.small(
                    "t t-muted",
                    1,
                    y - 4,
                    Anchor.START,
                    small.size() + (small.size() == 1 ? " more acid" : " more acids, under 0.5 % each: together") + " "
                            + Figures.percent(AcidRows.sum(small), 1));
        }
    }

    private void row(Share share, double full) {
        AcidRows.name(canvas, share.acid(), NAME, y + 10);
        Bonds bonds = Bonds.of(share.acid());
        double wide = PLOT * share.percent() / full;
        canvas.textured(bonds.style, bonds.texture, NAME, y, wide, BAR);
        canvas.box("f-clear o", NAME, y, wide, BAR);
        range(NAME + PLOT * share.lowPercent() / full, NAME + PLOT * share.highPercent() / full, y + BAR + 5);
        canvas.text("t t-strong", WIDTH - 1.0, y + 10, Anchor.END, Figures.fixed(share.percent(), 1));
        y += ROW;
    }

    private void range(double low, double high, double at) {
        canvas.path(
                "range",
                Canvas.line(low, at, high, at)
                        + Canvas.line(low, at - 3, low, at + 3)
                        + Canvas.line(high, at - 3, high, at + 3));
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (acids.known()) {
            notes.add("Thick: middles of published ranges, scaled so that all come to 100 %. Thin: lowest to highest"
                    + " published.");
        }
        if (!acids.unknown().isEmpty()) {
            notes.add("Not known: " + names(acids.unknown()) + ". They count in none of this.");
        }
        if (acids.addedFats().stream().anyMatch(gap -> gap.percent() >= KNOWN)) {
            notes.add("Additions bring fats too, in percent of the oils, which count in none of this: "
                    + names(acids.addedFats()) + ".");
        }
        return notes;
    }

    private static String names(List<Gap> gaps) {
        return gaps.stream()
                .map(gap -> gap.name() + " " + Figures.percent(gap.percent(), 1))
                .collect(Collectors.joining(", "));
    }

    private String described() {
        String known = AcidRows.large(acids).stream()
                .map(share -> AcidRows.name(share.acid()) + " " + Figures.percent(share.percent(), 1) + " ("
                        + Figures.fixed(share.lowPercent(), 1) + " to " + Figures.fixed(share.highPercent(), 1) + ")")
                .collect(Collectors.joining(", "));
        String unknown = acids.unknownPercent() > 0
                ? "Not known of " + Figures.percent(acids.unknownPercent(), 1) + " of the oils. "
                : "";
        return unknown + (known.isEmpty() ? "No acid is known." : known + ".");
    }
}
