package lyewright.picture;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Moves labels along a line as little as they must so that none lies on another. */
final class Spread {

    private Spread() {}

    /**
     * Places labels.
     *
     * @param wanted where each would have its middle
     * @param sizes how long each is along the line, with the gap it asks for
     * @param from where the line begins
     * @param to where it ends, at least the sizes' sum further
     * @return where each has its middle; in the order of what was wanted, within the line
     */
    static double[] of(double[] wanted, double[] sizes, double from, double to) {
        Integer[] order = IntStream.range(0, wanted.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> wanted[i]));
        double[] placed = new double[wanted.length];
        double edge = from;
        for (int i : order) {
            placed[i] = Math.max(wanted[i], edge + sizes[i] / 2);
            edge = placed[i] + sizes[i] / 2;
        }
        edge = to;
        for (int k = order.length - 1; k >= 0; k--) {
            int i = order[k];
            placed[i] = Math.min(placed[i], edge - sizes[i] / 2);
            edge = placed[i] - sizes[i] / 2;
        }
        return placed;
    }
}
