package lyewright.makingsheet;

import java.util.ArrayList;
import java.util.List;
import lyewright.measure.Outcome;

/**
 * A pour that fades: layer after layer is poured from the coloured jug, and after each some plain batter is stirred into it,
 * so that all of both is used up by the last layer.
 */
public final class FadingPour {

    private FadingPour() {}

    /**
     * One layer.
     *
     * @param layer which, from 1
     * @param pourGrams to pour from the coloured jug
     * @param colourPercent how much of it is still the coloured batter
     * @param addPlainGrams plain batter to stir into the coloured jug after it; 0 after the last
     * @param jugBeforeGrams what is in the coloured jug before the layer is poured
     */
    public record Layer(
            int layer, double pourGrams, double colourPercent, double addPlainGrams, double jugBeforeGrams) {}

    /**
     * Plans the layers.
     *
     * @param coloured grams of the coloured portion
     * @param plain grams of the plain portion
     * @param layers how many, at least 2
     * @return the layers, or why not: with less coloured batter than one layer the jug runs dry
     */
    public static Outcome<List<Layer>> of(double coloured, double plain, int layers) {
        double pour = (coloured + plain) / layers;
        double add = plain / (layers - 1);
        if (coloured < pour) {
            int enough = (int) Math.ceil(1 + plain / coloured);
            return Outcome.refused(
                    "the coloured jug runs dry: a layer takes more than is in it",
                    "pour in at least " + enough + " layers, or make the coloured portion larger");
        }
        List<Layer> plan = new ArrayList<>(layers);
        double inJug = coloured;
        double colour = coloured;
        for (int layer = 1; layer <= layers; layer++) {
            boolean last = layer == layers;
            plan.add(new Layer(layer, pour, 100 * colour / inJug, last ? 0 : add, inJug));
            colour -= pour * colour / inJug;
            inJug += (last ? 0 : add) - pour;
        }
        return Outcome.ok(plan);
    }
}
