package lyewright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lyewright.makingsheet.SuperfatBand;

/** The superfat as a band on a scale, what its width hangs on, and what would narrow it. */
final class BandText {

    private static final int MOST_COLUMNS = 70;
    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100};
    private static final int MOST_TICKS = 8;
    private static final int MOST_NAMED = 4;

    private final SuperfatBand band;
    private final int label;
    private final Page page;
    private final double from;
    private final double to;
    private final double step;
    private final int columnsPerStep;

    private BandText(SuperfatBand band, int label, Page page) {
        this.band = band;
        this.label = label;
        this.page = page;
        double low = Math.min(0, Math.min(band.worstPercent(), band.lowPercent()));
        double high = Math.max(0, Math.max(band.highPercent(), band.sheetPercent()));
        this.step = Arrays.stream(STEPS)
                .filter(s -> (high - low) / s <= MOST_TICKS)
                .findFirst()
                .orElse(STEPS[STEPS.length - 1]);
        this.from = step * Math.floor(low / step);
        this.to = step * Math.max(Math.ceil(high / step), from / step + 1);
        this.columnsPerStep = (int) Math.floor((MOST_COLUMNS - 1) * step / (to - from));
    }

    /** What each sheet and each look at a superfat says of how sure it is, labels as wide as those around it. */
    static void write(SuperfatBand band, int label, Page page) {
        new BandText(band, label, page).write();
    }

    private void write() {
        if (!band.contributions().isEmpty()) {
            page.pair("How far off", "19 batches of 20 lie between [ and ]", label);
            page.line(" ".repeat(label) + scale());
            page.line(" ".repeat(label) + bar());
            page.line(" ".repeat(label) + "# by the sheet   x all at its worst at once   left of 0: alkali left over");
            page.pair("It hangs on", contributions(), label);
        }
        band.certificateGain()
                .ifPresent(gain -> page.pair(
                        "A certificate",
                        "for " + inSentence(gain.oil()) + " would narrow it most: to between "
                                + Figures.fixed(gain.lowPercent(), 1) + " and "
                                + Figures.percent(gain.highPercent(), 1) + ".",
                        label));
    }

    private int column(double percent) {
        return (int) Math.round((percent - from) / step * columnsPerStep);
    }

    private String scale() {
        StringBuilder line = new StringBuilder();
        for (int tick = 0; from + tick * step <= to + step / 2; tick++) {
            String text = Figures.upTo(from + tick * step, 1);
            int at = column(from + tick * step);
            int start = Math.max(line.isEmpty() ? 0 : line.length() + 1, at - (text.length() - 1) / 2);
            line.append(" ".repeat(start - line.length())).append(text);
        }
        return line.append(" %").toString();
    }

    private String bar() {
        char[] line = new char[column(to) + 1];
        Arrays.fill(line, ' ');
        for (int tick = 0; from + tick * step <= to + step / 2; tick++) {
            line[column(from + tick * step)] = '.';
        }
        line[column(0)] = '|';
        Arrays.fill(line, column(band.lowPercent()), column(band.highPercent()) + 1, '=');
        line[column(band.worstPercent())] = 'x';
        line[column(band.lowPercent())] = '[';
        line[column(band.highPercent())] = ']';
        line[column(Math.max(from, Math.min(to, band.sheetPercent())))] = '#';
        return new String(line);
    }

    private String contributions() {
        List<SuperfatBand.Contribution> all = band.contributions();
        String named = all.stream()
                .limit(MOST_NAMED)
                .map(c -> c.input() + " " + share(c.percentOfVariance()))
                .collect(Collectors.joining(", "));
        double rest = all.stream()
                .skip(MOST_NAMED)
                .mapToDouble(SuperfatBand.Contribution::percentOfVariance)
                .sum();
        return all.size() > MOST_NAMED ? named + ", all else " + share(rest) : named;
    }

    private static String inSentence(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private static String share(double percent) {
        return percent < 0.5 ? "under 1 %" : Figures.percent(percent, 0);
    }
}
