package lyewright.picture;

import java.util.ArrayList;
import java.util.List;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.material.FattyAcid;
import lyewright.picture.Mark.Anchor;
import lyewright.words.Figures;

/** Which acids get a row of their own, and what rows and tables say of them. */
final class AcidRows {

    /** Percent under which an acid goes into one row with others. */
    static final double SMALL = 0.5;

    /** By double bonds: how the soap of it behaves goes with them. */
    enum Bonds {
        NONE("no double bond", "f-full", Texture.PLAIN),
        ONE("one", "f-mid", Texture.CLIMBING),
        MORE("two and more", "f-none", Texture.DOTTED);

        final String words;
        final String style;
        final Texture texture;

        Bonds(String words, String style, Texture texture) {
            this.words = words;
            this.style = style;
            this.texture = texture;
        }

        static Bonds of(FattyAcid acid) {
            return acid.doubleBonds() == 0 ? NONE : acid.doubleBonds() == 1 ? ONE : MORE;
        }

        /** Percent of the known acids. */
        double percent(OilPhaseAcids acids) {
            return acids.acids().stream()
                    .filter(share -> of(share.acid()) == this)
                    .mapToDouble(Share::percent)
                    .sum();
        }
    }

    private AcidRows() {}

    static List<Share> large(OilPhaseAcids acids) {
        return acids.acids().stream().filter(share -> share.percent() >= SMALL).toList();
    }

    static List<Share> small(OilPhaseAcids acids) {
        return acids.acids().stream()
                .filter(share -> share.percent() < SMALL && share.highPercent() > 0)
                .toList();
    }

    static double sum(List<Share> shares) {
        return shares.stream().mapToDouble(Share::percent).sum();
    }

    /** Without the word acid, which is in the head. */
    static String name(FattyAcid acid) {
        String common = acid.commonName();
        return common.endsWith(" acid") ? common.substring(0, common.length() - " acid".length()) : common;
    }

    /** Its name, or where there is no room for that its code, ending left of where its bar begins. */
    static void name(Canvas canvas, FattyAcid acid, double bar, double y) {
        double room = bar - 9;
        String name = TextWidth.of(name(acid), Canvas.TEXT) <= room ? name(acid) : acid.code();
        canvas.text("t", bar - 8, y, Anchor.END, TextWidth.fit(name, Canvas.TEXT, room));
    }

    /** What the whole width stands for: the next ten percent over the highest of all. */
    static double full(List<Share> shares) {
        double most = shares.stream()
                .mapToDouble(share -> Math.max(share.percent(), share.highPercent()))
                .max()
                .orElse(0);
        return Math.max(10, 10 * Math.ceil(most / 10));
    }

    static FigureTable table(OilPhaseAcids acids) {
        List<List<String>> rows = new ArrayList<>();
        for (Share share : acids.acids()) {
            if (share.highPercent() > 0 || share.percent() > 0) {
                rows.add(List.of(
                        name(share.acid()) + " " + share.acid().code(),
                        Figures.fixed(share.percent(), 1),
                        Figures.fixed(share.lowPercent(), 1),
                        Figures.fixed(share.highPercent(), 1)));
            }
        }
        acids.unknown()
                .forEach(gap -> rows.add(
                        List.of("not known of " + gap.name(), Figures.percent(gap.percent(), 1) + " of oils", "", "")));
        return new FigureTable(
                "Fatty acids, percent of all that are known",
                List.of(
                        FigureTable.words("Acid"),
                        FigureTable.figures("Middle"),
                        FigureTable.figures("Lowest"),
                        FigureTable.figures("Highest")),
                rows);
    }
}
