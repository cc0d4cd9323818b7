package lyewright.why;

import java.util.List;

/** Published points in a row. */
final class Points {

    private Points() {}

    /** The place of the point above a value, or of the end that the line is carried on from; never the first. */
    static int above(List<Double> sorted, double value) {
        int i = 1;
        while (i < sorted.size() - 1 && sorted.get(i) < value) {
            i++;
        }
        return i;
    }
}
