package lyewright.cli;

import java.util.Arrays;
import lyewright.chemistry.OilPhaseAcids.Share;

/** One acid's share as a row of plain characters: {@code =====<====--->}. */
final class AcidBar {

    private AcidBar() {}

    /**
     * A bar.
     *
     * @param share what it shows
     * @param full percent that the whole width stands for
     * @param width columns
     * @return {@code =} up to the middle, {@code <} at the low and {@code >} at the high end of the published range,
     *     {@code -} between them beyond the middle; always as wide as asked
     */
    static String of(Share share, double full, int width) {
        char[] bar = new char[width];
        Arrays.fill(bar, ' ');
        int low = column(share.lowPercent(), full, width);
        int high = column(share.highPercent(), full, width);
        Arrays.fill(bar, low, high, '-');
        Arrays.fill(bar, 0, (int) Math.round(width * share.percent() / full), '=');
        bar[high] = '>';
        if (low < high) {
            bar[low] = '<';
        }
        return new String(bar);
    }

    private static int column(double percent, double full, int width) {
        return Math.min(width - 1, (int) Math.round(width * percent / full));
    }
}
