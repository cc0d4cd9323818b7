package lyewright.uncertainty;

import java.util.List;
import lyewright.uncertainty.Distribution.Exact;
import lyewright.uncertainty.Distribution.Normal;
import lyewright.uncertainty.Distribution.Rectangular;
import lyewright.uncertainty.Distribution.Trapezoidal;
import lyewright.uncertainty.Distribution.Triangular;

/** A program that draws and prints every bit of what came out, to be run on machines of other sizes. */
final class DigitsOfDraws {

    /** Kept one by one they would take 40 MB, which a machine of 20 MB does not have. */
    static final long MANY = 5_000_000;

    private static final List<Input> INPUTS = List.of(
            new Input("value", new Normal(256.5, 4)),
            new Input("purity", new Rectangular(0.97, 0.99)),
            new Input("oil", new Trapezoidal(1000, 2, 0.5)),
            new Input("leaning", new Triangular(0, 1, 5)),
            new Input("known", new Exact(4486.2)));

    private DigitsOfDraws() {}

    /** Prints, and says on how many processors. */
    public static void main(String[] args) {
        System.out.println(Runtime.getRuntime().availableProcessors());
        System.out.println(Runtime.getRuntime().maxMemory());
        System.out.println(all());
    }

    static String all() {
        Model model = x -> 100 * (1 - 56.105 * x[1] * x[4] / x[0] / (x[2] + x[3]));
        return digits(MonteCarlo.draw(INPUTS, model, MANY))
                + digits(MonteCarlo.draw(INPUTS, model, 12_345))
                + digits(MonteCarlo.drawUntil(INPUTS, model, 0.02, MANY));
    }

    private static String digits(Drawn drawn) {
        StringBuilder digits = new StringBuilder().append(drawn.draws());
        for (double figure : new double[] {
            drawn.mean(),
            drawn.standardUncertainty(),
            drawn.quantile(0.001),
            drawn.interval(0.95).low(),
            drawn.interval(0.95).high(),
            drawn.shortest(0.95).low(),
            drawn.shortest(0.95).high(),
            drawn.chanceBelowZero()
        }) {
            digits.append(' ').append(Double.toHexString(figure));
        }
        return digits.append(';').toString();
    }
}
