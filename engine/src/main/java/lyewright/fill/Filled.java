package lyewright.fill;

import java.util.List;
import java.util.Optional;

/**
 * How much oil a fill takes, before anything is rounded to a balance.
 *
 * @param oilsGrams mass of all oils
 * @param targetGrams mould mass asked for; empty where oils were asked for or the formula stands as written
 * @param mouldSays what each known figure of the mould would take of this batter, the best measured first
 * @param cut the bars, if the mould is cut
 */
public record Filled(
        double oilsGrams, Optional<Double> targetGrams, List<MouldSays> mouldSays, Optional<CutPlan.Cut> cut) {

    /** A mould is not measured more closely than this share; this project's own rule. */
    private static final double GIVE_OR_TAKE = 0.03;

    /**
     * What the mould holds of this batter, by the best measured of its figures.
     *
     * @return grams in the mould; empty where nothing is known of it
     */
    public Optional<Double> mouldHoldsGrams() {
        return mouldSays.stream().findFirst().map(MouldSays::grams);
    }

    /**
     * Whether so much goes into the mould, as far as anything is known of it.
     *
     * @param grams of batter that would be poured, at least 0
     * @return false where it is more than {@value #GIVE_OR_TAKE} of what the mould holds above that
     */
    public boolean takes(double grams) {
        return mouldHoldsGrams()
                .map(holds -> grams <= holds * (1 + GIVE_OR_TAKE))
                .orElse(true);
    }

    /**
     * What one figure of a mould comes to.
     *
     * @param figure which: usual mass, water fill, shape
     * @param grams mould mass it stands for
     */
    public record MouldSays(String figure, double grams) {}
}
