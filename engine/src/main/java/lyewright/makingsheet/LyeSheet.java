package lyewright.makingsheet;

import java.util.List;

/**
 * The alkali and the jug it dissolves in, of the rounded sheet. Grams.
 *
 * @param naohGrams sodium hydroxide as it goes on the balance, a stock lye's mass if it comes as that
 * @param kohGrams potassium hydroxide as it goes on the balance, a stock lye's mass if it comes as that
 * @param naohPureGrams pure NaOH in it
 * @param kohPureGrams pure KOH in it
 * @param potassiumMolesPercent potassium's share of the alkali by moles
 * @param potassiumPurePercent its share by pure mass
 * @param potassiumWeighedPercent its share as weighed
 * @param waterInJugGrams all water in the jug when the alkali goes in
 * @param concentrationPercent pure alkali ÷ (pure alkali + that water)
 * @param pureStrengthPercent pure alkali ÷ (pure alkali + water by the rule)
 * @param weighedStrengthPercent alkali as it comes ÷ (alkali as it comes + water by the rule)
 * @param waterLeftGrams water of the jug beyond what would just hold the alkali at 20 °C; under 0 where it would not
 * @param dissolvesIn keys of what is in the jug before the alkali, in order
 * @param saltPerWaterPercent all common salt of the batter, grams for each 100 g of all its water
 * @param saltHeldPercent what that water would hold with this much alkali in it, grams for each 100 g
 */
public record LyeSheet(
        double naohGrams,
        double kohGrams,
        double naohPureGrams,
        double kohPureGrams,
        double potassiumMolesPercent,
        double potassiumPurePercent,
        double potassiumWeighedPercent,
        double waterInJugGrams,
        double concentrationPercent,
        double pureStrengthPercent,
        double weighedStrengthPercent,
        double waterLeftGrams,
        List<String> dissolvesIn,
        double saltPerWaterPercent,
        double saltHeldPercent) {

    /**
     * Pure alkali of both kinds.
     *
     * @return grams
     */
    public double pureGrams() {
        return naohPureGrams + kohPureGrams;
    }

    /**
     * Salt that has to stay solid.
     *
     * @return percent of the salt, 0 without salt
     */
    public double saltUndissolvedPercent() {
        return saltPerWaterPercent <= saltHeldPercent ? 0 : 100 * (1 - saltHeldPercent / saltPerWaterPercent);
    }
}
