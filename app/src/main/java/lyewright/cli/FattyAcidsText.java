package lyewright.cli;

import java.util.List;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.words.FattyAcidWords;
import lyewright.words.Figures;
import lyewright.words.Labelled;

/** The part of a page that tells the fatty acids of the oils and how they keep: facts, no marks. */
final class FattyAcidsText {

    private static final int BAR = 40;
    private static final int LABEL = 22;
    private static final int REMARK = 18;

    private final FattyAcidWords words;
    private final Page page;

    private FattyAcidsText(OilPhaseAcids acids, Page page) {
        this.words = new FattyAcidWords(acids);
        this.page = page;
    }

    /** Writes the section with its heading. */
    static void write(OilPhaseAcids acids, Page page) {
        page.heading("Fatty acids");
        FattyAcidsText text = new FattyAcidsText(acids, page);
        text.words.noneKnown().ifPresentOrElse(none -> page.paragraph(none, 0), text::write);
    }

    private void write() {
        page.paragraph(
                "Oils and their soaps are made of these acids. Percent of all acids by mass, middles of published ranges"
                        + " scaled to 100; === up to the middle, < lowest and > highest published.",
                0);
        if (words.patchy()) {
            page.blank();
            words.gaps().forEach(this::remark);
        }
        page.blank();
        bars();
        words.small().ifPresent(this::remark);
        remark(words.bonds());
        if (!words.patchy()) {
            words.gaps().forEach(this::remark);
        }
        page.blank();
        words.values().forEach(value -> page.pair(value.label(), value.text(), LABEL));
    }

    private void remark(Labelled remark) {
        page.hanging("  " + Widths.left(remark.label(), REMARK), remark.text());
    }

    private void bars() {
        List<Share> large = words.large();
        int name = large.stream()
                .mapToInt(share -> Widths.of(FattyAcidWords.name(share)))
                .max()
                .orElse(0);
        double full = full(large);
        for (Share share : large) {
            page.line("  " + Widths.left(FattyAcidWords.name(share), name) + "  " + AcidBar.of(share, full, BAR)
                    + Widths.right(Figures.fixed(share.percent(), 1) + " %", 8) + "  " + FattyAcidWords.range(share));
        }
    }

    /** What the whole bar stands for: the next ten percent over the highest of all. */
    private static double full(List<Share> shares) {
        double most = shares.stream()
                .mapToDouble(share -> Math.max(share.percent(), share.highPercent()))
                .max()
                .orElse(0);
        return Math.max(10, 10 * Math.ceil(most / 10));
    }
}
