package lyewright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lyewright.chemistry.Keeping;
import lyewright.chemistry.OilPhaseAcids;
import lyewright.chemistry.OilPhaseAcids.Gap;
import lyewright.chemistry.OilPhaseAcids.Share;
import lyewright.chemistry.OxidationIndices;
import lyewright.material.FattyAcid;
import lyewright.words.Figures;

/** The part of a page that tells the fatty acids of the oils and how they keep: facts, no marks. */
final class FattyAcidsText {

    /** Acids of less than this are told in one line. */
    private static final double SMALL = 0.5;

    private static final int BAR = 40;
    private static final int LABEL = 22;

    /** From so many mg KOH/g the two ways of reckoning a saponification value are told apart. */
    private static final double APART = 1;

    /** Percent of the oils from which it is said that a value is not of all of them. */
    private static final double LEFT_OUT = 0.05;

    private final OilPhaseAcids acids;
    private final Page page;

    private FattyAcidsText(OilPhaseAcids acids, Page page) {
        this.acids = acids;
        this.page = page;
    }

    /** Writes the section with its heading. */
    static void write(OilPhaseAcids acids, Page page) {
        page.heading("Fatty acids");
        new FattyAcidsText(acids, page).write();
    }

    private void write() {
        Optional<Keeping> keeping = Keeping.of(acids);
        if (keeping.isEmpty()) {
            page.paragraph("Not known of any of the oils: " + names(acids.unknown()) + ".", 0);
            return;
        }
        page.paragraph(
                "Oils and their soaps are made of these acids. Percent of all acids by mass, middles of published ranges"
                        + " scaled to 100; === up to the middle, < lowest and > highest published.",
                0);
        if (keeping.get().patchy()) {
            page.blank();
            gaps();
        }
        page.blank();
        bars();
        small();
        bonds();
        if (!keeping.get().patchy()) {
            gaps();
        }
        page.blank();
        values();
        keeping(keeping.get());
    }

    private void bars() {
        List<Share> large =
                acids.acids().stream().filter(share -> share.percent() >= SMALL).toList();
        int name =
                large.stream().mapToInt(share -> Widths.of(name(share))).max().orElse(0);
        double full = full(large);
        for (Share share : large) {
            page.line("  " + Widths.left(name(share), name) + "  " + AcidBar.of(share, full, BAR)
                    + Widths.right(Figures.fixed(share.percent(), 1) + " %", 8) + "  " + range(share));
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

    private static String name(Share share) {
        FattyAcid acid = share.acid();
        String common = acid.commonName();
        return (common.endsWith(" acid") ? common.substring(0, common.length() - " acid".length()) : common) + " "
                + acid.code();
    }

    private static String range(Share share) {
        String low = Figures.fixed(share.lowPercent(), 1);
        String high = Figures.fixed(share.highPercent(), 1);
        return low.equals(high) ? low : low + " to " + high;
    }

    private void small() {
        List<Share> small = acids.acids().stream()
                .filter(share -> share.percent() < SMALL && share.highPercent() > 0)
                .toList();
        if (small.isEmpty()) {
            return;
        }
        String all = small.stream()
                .map(share -> share.acid().code() + " " + Figures.upTo(share.percent(), 2))
                .collect(Collectors.joining(", "));
        page.hanging("  under " + Figures.upTo(SMALL, 1) + " % each  ", all);
    }

    private void bonds() {
        double none = withBonds(0, 0);
        double one = withBonds(1, 1);
        double more = withBonds(2, 9);
        page.hanging(
                "  by double bonds   ",
                "none (saturated) " + Figures.percent(none, 1) + ", one " + Figures.percent(one, 1) + ", two and more "
                        + Figures.percent(more, 1)
                        + ". The first make hard soap, the others soften it. [common practice]");
    }

    private double withBonds(int least, int most) {
        return acids.acids().stream()
                .filter(share ->
                        share.acid().doubleBonds() >= least && share.acid().doubleBonds() <= most)
                .mapToDouble(Share::percent)
                .sum();
    }

    private void gaps() {
        if (!acids.unknown().isEmpty()) {
            page.hanging(
                    "  not known         ",
                    Figures.percent(acids.unknownPercent(), 1) + " of the oils, which count in none of this: "
                            + names(acids.unknown()));
        }
        if (!acids.addedFats().isEmpty()) {
            page.hanging(
                    "  from additions    ",
                    "soap too, but in neither, in percent of the oils' mass: " + names(acids.addedFats()));
        }
    }

    private static String names(List<Gap> gaps) {
        return gaps.stream()
                .map(gap -> gap.name() + " " + Figures.percent(gap.percent(), 1))
                .collect(Collectors.joining(", "));
    }

    private void values() {
        if (acids.saponificationValue().isEmpty()) {
            return;
        }
        double exact = acids.saponificationValue().get();
        double method = acids.saponificationValueCd3a94().orElse(exact);
        String apart = exact - method >= APART
                ? ". They part where short and long acids mix, as in coconut: the method averages acids by mass, but a"
                        + " gram of a short one takes more alkali"
                : "";
        page.pair(
                "Saponification value",
                Figures.fixed(exact, 1) + " mg KOH/g from " + ofWhat() + ", " + Figures.fixed(method, 1)
                        + " by AOCS Cd 3a-94 (its formula from memory)" + apart
                        + ". The alkali is reckoned from each oil's own value instead." + waxes(),
                LABEL);
    }

    /** Which acids a value is from: not of all oils, where some are not known or are wax. */
    private String ofWhat() {
        double without = acids.unknownPercent()
                + acids.waxes().stream().mapToDouble(Gap::percent).sum();
        return without < LEFT_OUT
                ? "these acids"
                : "the acids of " + Figures.percent(100 - without, 1) + " of the oils";
    }

    private String waxes() {
        return acids.waxes().isEmpty()
                ? ""
                : " Left out of it and of the iodine value, since wax is no glyceride: " + names(acids.waxes()) + ".";
    }

    private void keeping(Keeping keeping) {
        OxidationIndices indices = keeping.indices();
        String iodine = acids.iodineValue()
                .map(value -> "iodine value " + Figures.fixed(value, 1) + " g/100 g by AOCS Cd 1c-85; ")
                .orElse("");
        page.pair(
                "Double bonds",
                iodine + "oxidisability " + Figures.fixed(indices.oxidisability(), 1) + ", COX "
                        + Figures.fixed(indices.cox(), 2) + ", PI " + Figures.fixed(indices.peroxidisability(), 1)
                        + ", APE " + Figures.fixed(indices.allylic(), 1) + ", BAPE "
                        + Figures.fixed(indices.bisAllylic(), 1) + " (formulas from memory)",
                LABEL);
        page.pair("Keeping", keeping.brief(), LABEL);
    }
}
