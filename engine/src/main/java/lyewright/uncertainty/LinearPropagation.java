package lyewright.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The law of propagation of uncertainty (JCGM 100, 5.1 and 5.2): the model taken as a straight line at the inputs' means. It
 * tells how much each input contributes; where the model bends or one rectangular input rules, its interval is not to be
 * trusted and {@link MonteCarlo} is there.
 *
 * @param value the model at the inputs' means
 * @param standardUncertainty combined, in the output's unit
 * @param contributions of the inputs, in their order
 */
public record LinearPropagation(double value, double standardUncertainty, List<Contribution> contributions) {

    /** The step of a derivative against the input's standard uncertainty: so small that a bend does not show. */
    private static final double STEP = 1e-4;

    /** Copies its list. */
    public LinearPropagation {
        contributions = List.copyOf(contributions);
    }

    /**
     * What one input contributes.
     *
     * @param input which
     * @param sensitivity the output's change for a unit of the input
     * @param percentOfVariance its own share of the variance of all; with uncorrelated inputs they add up to 100, and 0
     *     where nothing varies
     */
    public record Contribution(Input input, double sensitivity, double percentOfVariance) {

        /**
         * The part of the output's standard uncertainty that is this input's alone.
         *
         * @return in the output's unit, 0 or more
         */
        public double uncertainty() {
            return Math.abs(sensitivity) * input.distribution().standardUncertainty();
        }
    }

    /**
     * Of inputs that have nothing to do with each other.
     *
     * @param inputs the model's inputs
     * @param model what is computed from them
     * @return value, uncertainty and shares
     */
    public static LinearPropagation of(List<Input> inputs, Model model) {
        return of(inputs, model, new double[0][0]);
    }

    /**
     * Of inputs that may be correlated (JCGM 100, 5.2.2).
     *
     * @param inputs the model's inputs
     * @param model what is computed from them
     * @param correlations coefficients by input and input, symmetric with a diagonal of 1; empty where there are none
     * @return value, uncertainty and shares
     */
    public static LinearPropagation of(List<Input> inputs, Model model, double[][] correlations) {
        double[] means =
                inputs.stream().mapToDouble(i -> i.distribution().mean()).toArray();
        double[] sensitivities = IntStream.range(0, means.length)
                .mapToDouble(i -> sensitivity(
                        model, means, i, inputs.get(i).distribution().standardUncertainty()))
                .toArray();
        double[] own = IntStream.range(0, means.length)
                .mapToDouble(
                        i -> sensitivities[i] * inputs.get(i).distribution().standardUncertainty())
                .toArray();
        double variance = variance(own, correlations);
        List<Contribution> contributions = new ArrayList<>(means.length);
        for (int i = 0; i < means.length; i++) {
            double share = variance == 0 ? 0 : 100 * own[i] * own[i] / variance;
            contributions.add(new Contribution(inputs.get(i), sensitivities[i], share));
        }
        return new LinearPropagation(model.at(means), Math.sqrt(variance), contributions);
    }

    private static double sensitivity(Model model, double[] means, int input, double uncertainty) {
        if (uncertainty == 0) {
            return 0;
        }
        double[] moved = means.clone();
        double step = STEP * uncertainty;
        moved[input] = means[input] + step;
        double above = model.at(moved);
        moved[input] = means[input] - step;
        return (above - model.at(moved)) / (2 * step);
    }

    private static double variance(double[] own, double[][] correlations) {
        double variance = 0;
        for (int i = 0; i < own.length; i++) {
            variance += own[i] * own[i];
            for (int j = 0; j < i && correlations.length > 0; j++) {
                variance += 2 * own[i] * own[j] * correlations[i][j];
            }
        }
        return Math.max(0, variance);
    }

    /**
     * The interval of a normal distribution with this uncertainty.
     *
     * @param coverageFactor standard uncertainties to either side, such as {@link Distribution#NORMAL_95}
     * @return the interval around the value
     */
    public Interval interval(double coverageFactor) {
        double reach = coverageFactor * standardUncertainty;
        return new Interval(value - reach, value + reach);
    }

    /**
     * Effective degrees of freedom by the formula of Welch and Satterthwaite (JCGM 100, G.4.1), for uncorrelated inputs.
     *
     * @return infinite where every input's are, and where nothing varies
     */
    public double effectiveDegreesOfFreedom() {
        double sum = 0;
        for (Contribution c : contributions) {
            sum += Math.pow(c.uncertainty(), 4) / c.input().degreesOfFreedom();
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : Math.pow(standardUncertainty, 4) / sum;
    }
}
