package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;

/**
 * What a sum is made of: factors, each with the places of one input or of two that it is multiplied by. Works on one set of
 * inputs, or on many at once that lie in columns; both add up in the same order, so that they give the same digits.
 */
final class Terms {

    private final List<Integer> ones = new ArrayList<>();
    private final List<Integer> others = new ArrayList<>();
    private final List<Double> factors = new ArrayList<>();
    private int[] one = {};
    private int[] other = {};
    private double[] factor = {};

    void add(int one, int other, double factor) {
        ones.add(one);
        others.add(other);
        factors.add(factor);
    }

    /** All have been added. */
    void close() {
        one = ones.stream().mapToInt(i -> i).toArray();
        other = others.stream().mapToInt(i -> i).toArray();
        factor = factors.stream().mapToDouble(f -> f).toArray();
    }

    /** A sum, and to it each factor times its first input. */
    double addTo(double sum, double[] x) {
        double sums = sum;
        for (int i = 0; i < factor.length; i++) {
            sums += factor[i] * x[one[i]];
        }
        return sums;
    }

    /** A sum, and to it each factor times both its inputs. */
    double addProductsTo(double sum, double[] x) {
        double sums = sum;
        for (int i = 0; i < factor.length; i++) {
            sums += factor[i] * x[one[i]] * x[other[i]];
        }
        return sums;
    }

    void addTo(double[] sums, double[][] x, int sets) {
        for (int i = 0; i < factor.length; i++) {
            addTo(sums, factor[i], x[one[i]], sets);
        }
    }

    void addProductsTo(double[] sums, double[][] x, int sets) {
        for (int i = 0; i < factor.length; i++) {
            addTo(sums, factor[i], x[one[i]], x[other[i]], sets);
        }
    }

    private static void addTo(double[] sums, double factor, double[] one, int sets) {
        for (int set = 0; set < sets; set++) {
            sums[set] += factor * one[set];
        }
    }

    private static void addTo(double[] sums, double factor, double[] one, double[] other, int sets) {
        for (int set = 0; set < sets; set++) {
            sums[set] += factor * one[set] * other[set];
        }
    }
}
