package lyewright.cli;

import java.util.List;
import java.util.stream.Collectors;
import lyewright.makingsheet.SuperfatBand;
import lyewright.material.Names;

/** The superfat as a band on a scale, what its width hangs on, and what would narrow it. */
final class BandText {

    private static final int MOST_NAMED = 4;

    /** Percent of the doubt from which an input is named. */
    private static final double LEAST_NAMED = 0.5;

    /** Percent from which all others are told of together. */
    private static final double LEAST_TOLD = 0.05;

    private final SuperfatBand band;
    private final int label;
    private final Page page;

    private BandText(SuperfatBand band, int label, Page page) {
        this.band = band;
        this.label = label;
        this.page = page;
    }

    /** What each sheet and each look at a superfat says of how sure it is, labels as wide as those around it. */
    static void write(SuperfatBand band, int label, Page page) {
        new BandText(band, label, page).write();
    }

    private void write() {
        if (!band.contributions().isEmpty()) {
            BandScale.of(band.worstPercent(), band.lowPercent(), band.highPercent(), band.sheetPercent())
                    .ifPresentOrElse(this::draw, this::tell);
            page.pair("It hangs on", contributions(), label);
        }
        if (!band.takenAsExact().isEmpty()) {
            page.pair("Taken as exact", String.join(", ", band.takenAsExact()), label);
        }
        band.certificateGain()
                .ifPresent(gain -> page.pair(
                        "A certificate",
                        "for " + Names.inSentence(gain.oil()) + " would narrow it most: to between "
                                + Figures.fixed(gain.lowPercent(), 1) + " and "
                                + Figures.percent(gain.highPercent(), 1) + ".",
                        label));
    }

    private void draw(BandScale drawing) {
        page.pair("How far off", "19 times in 20 it lies between [ and ]", label);
        drawing.lines().forEach(line -> page.line(" ".repeat(label) + line));
        page.line(" ".repeat(label) + "# by the sheet   x all at its worst at once   left of 0: alkali left over");
    }

    private void tell() {
        page.pair(
                "How far off",
                "19 times in 20 it lies between " + Figures.fixed(band.lowPercent(), 1) + " and "
                        + Figures.percent(band.highPercent(), 1) + ", all at its worst at once comes to "
                        + Figures.percent(band.worstPercent(), 1) + ": too far off to draw.",
                label);
    }

    /** What is too little to say how little goes with the rest. */
    private String contributions() {
        List<SuperfatBand.Contribution> named = band.contributions().stream()
                .filter(c -> c.percentOfVariance() >= LEAST_NAMED)
                .limit(MOST_NAMED)
                .toList();
        double rest = 100
                - named.stream()
                        .mapToDouble(SuperfatBand.Contribution::percentOfVariance)
                        .sum();
        String told = named.stream()
                .map(c -> c.input() + " " + Figures.percent(c.percentOfVariance(), 0))
                .collect(Collectors.joining(", "));
        return rest >= LEAST_TOLD ? told + ", all else " + share(rest) : told;
    }

    private static String share(double percent) {
        return percent < LEAST_NAMED ? "under 1 %" : Figures.percent(percent, 0);
    }
}
