package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import lyewright.uncertainty.Drawn;
import lyewright.uncertainty.Interval;

/**
 * How often each superfat was drawn: shares of the draws between edges a round width apart, one of which is zero. Of a wax only what surely
 * reacts is counted on, as for the chance that alkali is left over. The few draws far out count in the outermost shares.
 *
 * @param from the lowest edge, percent
 * @param width from edge to edge, points of superfat
 * @param shares of all draws, from the lowest edge up; they add up to 1
 */
public record SuperfatShape(double from, double width, List<Double> shares) {

    /** Widths that edges may be apart. */
    private static final double[] WIDTHS = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20};

    private static final int MOST = 24;

    /** Of the draws so many lie beyond the outermost edges, to either side, and count inside. */
    private static final double FAR_OUT = 0.001;

    /** Copies its list. */
    public SuperfatShape {
        shares = List.copyOf(shares);
    }

    static SuperfatShape of(Drawn drawn) {
        Interval seen = drawn.range();
        // zero is never cut off from those beyond it, however few
        double low = Math.min(drawn.quantile(FAR_OUT), seen.low() < 0 ? Math.min(0, seen.high()) : seen.high());
        double high = Math.max(drawn.quantile(1 - FAR_OUT), seen.high() > 0 ? Math.max(0, seen.low()) : seen.low());
        double width = width(high - low);
        long first = (long) Math.floor(low / width) - (low == 0 && seen.low() < 0 ? 1 : 0);
        long last = Math.max(first + 1, (long) Math.ceil(high / width) + (high == 0 && seen.high() > 0 ? 1 : 0));
        List<Double> shares = new ArrayList<>();
        double under = 0;
        for (long edge = first + 1; edge <= last; edge++) {
            double below = edge == last ? 1 : drawn.shareBelow(edge == 0 ? 0 : edge * width);
            shares.add(below - under);
            under = below;
        }
        return new SuperfatShape(first * width, width, shares);
    }

    private static double width(double range) {
        for (double width : WIDTHS) {
            if (range / width <= MOST - 2) {
                return width;
            }
        }
        return WIDTHS[WIDTHS.length - 1] * Math.max(1, Math.ceil(range / WIDTHS[WIDTHS.length - 1] / MOST));
    }

    /**
     * An edge.
     *
     * @param place 0 for the lowest, up to as many as there are shares
     * @return percent; exactly 0 where it is zero
     */
    public double edge(int place) {
        return width * (Math.round(from / width) + place);
    }

    /**
     * The share of the draws below zero.
     *
     * @return 0 to 1
     */
    public double belowZero() {
        double sum = 0;
        for (int i = 0; i < shares.size() && edge(i) < 0; i++) {
            sum += shares.get(i);
        }
        return sum;
    }
}
