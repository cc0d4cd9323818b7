package lyewright.picture;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.stream.IntStream;

/**
 * Moves labels along a line as little as they must so that none lies on another: those that crowd stand close together around
 * the middle of where they wanted to be.
 */
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
        Deque<Crowd> crowds = new ArrayDeque<>();
        for (int i : order) {
            Crowd crowd = new Crowd(1, wanted[i], sizes[i]).within(from, to);
            while (!crowds.isEmpty() && crowds.peekLast().end() > crowd.begin()) {
                crowd = crowds.removeLast().with(crowd).within(from, to);
            }
            crowds.addLast(crowd);
        }
        double[] placed = new double[wanted.length];
        int next = 0;
        for (Crowd crowd : crowds) {
            double edge = crowd.begin();
            for (int k = 0; k < crowd.count; k++) {
                int i = order[next++];
                placed[i] = edge + sizes[i] / 2;
                edge += sizes[i];
            }
        }
        return placed;
    }

    /** Labels that stand close together. */
    private record Crowd(int count, double middle, double size) {

        double begin() {
            return middle - size / 2;
        }

        double end() {
            return middle + size / 2;
        }

        Crowd with(Crowd next) {
            double mean = (middle * count + next.middle * next.count) / (count + next.count);
            return new Crowd(count + next.count, mean, size + next.size);
        }

        Crowd within(double from, double to) {
            return new Crowd(count, Math.max(from + size / 2, Math.min(to - size / 2, middle)), size);
        }
    }
}
