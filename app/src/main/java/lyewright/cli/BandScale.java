package lyewright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lyewright.words.Figures;

/** A superfat's band drawn over a scale that has zero on it, in plain characters. */
final class BandScale {

    /** Below this, percent, a superfat is so far off that nobody asks where exactly; this project's own rule. */
    private static final double LEAST_DRAWN = -100;

    private static final int MOST_COLUMNS = 70;
    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};
    private static final int MOST_TICKS = 8;

    private final double worst;
    private final double low;
    private final double high;
    private final double sheet;
    private final double from;
    private final double to;
    private final double step;
    private final int columnsPerStep;

    private BandScale(double worst, double low, double high, double sheet) {
        this.worst = worst;
        this.low = low;
        this.high = high;
        this.sheet = sheet;
        double least = least(0, worst, low, sheet);
        double most = Math.max(0, Math.max(high, sheet));
        this.step = Arrays.stream(STEPS)
                .filter(s -> (most - least) / s <= MOST_TICKS)
                .findFirst()
                .orElse(STEPS[STEPS.length - 1]);
        this.from = step * Math.floor(least / step);
        this.to = step * Math.max(Math.ceil(most / step), from / step + 1);
        this.columnsPerStep = (int) Math.floor((MOST_COLUMNS - 1) * step / (to - from));
    }

    /**
     * The drawing of a band.
     *
     * @param worst percent, all at its worst at once
     * @param low percent, the band's lower end
     * @param high percent, its higher end, 100 or less
     * @param sheet percent by the sheet, 100 or less
     * @return the drawing; empty where it lies so low that there is nothing to see
     */
    static Optional<BandScale> of(double worst, double low, double high, double sheet) {
        return least(worst, low, sheet) < LEAST_DRAWN
                ? Optional.empty()
                : Optional.of(new BandScale(worst, low, high, sheet));
    }

    private static double least(double... values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    /** The scale, and the band under it. */
    List<String> lines() {
        return List.of(scale(), bar());
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

    /** What matters more is drawn later. */
    private String bar() {
        char[] line = new char[column(to) + 1];
        Arrays.fill(line, ' ');
        for (int tick = 0; from + tick * step <= to + step / 2; tick++) {
            line[column(from + tick * step)] = '.';
        }
        Arrays.fill(line, column(low), column(high) + 1, '=');
        line[column(0)] = '|';
        line[column(worst)] = 'x';
        line[column(low)] = '[';
        line[column(high)] = ']';
        line[column(sheet)] = '#';
        return new String(line);
    }
}
