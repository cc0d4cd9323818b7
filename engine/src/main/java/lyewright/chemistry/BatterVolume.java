package lyewright.chemistry;

import java.util.List;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Alkali;

/**
 * The volume of a batter by additive volumes: each thing's mass over its density, the lye as one solution. Contraction and
 * trapped air are left out; the record of a mould corrects for them. Toppings lie on top and take no volume.
 */
public final class BatterVolume {

    /** Temperature taken for oils and lye where none is written, °C: middle of the blending range, common practice. */
    static final double USUAL_TEMPERATURE = 40;

    /** Density of water at 20 °C, g/ml (CRC Handbook, 102nd edition, table of solutions). */
    public static final double WATER_DENSITY = 0.9982;

    /** Density of what sodium hydroxide's purity leaves out, taken as common salt's, g/ml (CRC; see docs/sources). */
    static final double ALKALI_REST_DENSITY = 2.17;

    private BatterVolume() {}

    /**
     * The volume of given masses.
     *
     * @param batch the batch's lines
     * @param masses grams of each
     * @return millilitres
     */
    public static double millilitres(BatchLines batch, double[] masses) {
        List<BatchLine> lines = batch.lines();
        double volume = 0;
        double moles = 0;
        double lyeWater = 0;
        for (int i = 0; i < masses.length; i++) {
            BatchLine line = lines.get(i);
            double m = masses[i];
            if (line.onTop()) {
                continue;
            }
            if (line.inLyeJug()) {
                double water = m * line.water();
                lyeWater += water;
                moles += m * line.alkali();
                volume += restOfLyeLine(batch.formula(), line, m, water);
            } else {
                volume += m / line.gramsPerMillilitre();
            }
        }
        return volume + lyeMillilitres(batch.formula(), moles, lyeWater);
    }

    /** What a line in the jug adds beside its water and its alkali, which are counted in the lye. */
    private static double restOfLyeLine(ResolvedFormula formula, BatchLine line, double mass, double water) {
        return switch (line.kind()) {
            case WATER -> 0;
            case ALKALI ->
                Math.max(
                                0,
                                mass
                                        - water
                                        - mass
                                                * line.alkali()
                                                * formula.alkaliOf(line.key()).molarMass())
                        / ALKALI_REST_DENSITY;
            default -> Math.max(0, mass / line.gramsPerMillilitre() - water / WATER_DENSITY);
        };
    }

    private static double lyeMillilitres(ResolvedFormula formula, double moles, double water) {
        var written = formula.formula().process().lye();
        double temperature = written.isPresent() ? written.get().celsius() : USUAL_TEMPERATURE;
        double potassium = formula.alkali().potassium();
        double sodiumGrams = moles * (1 - potassium) * Alkali.SODIUM.molarMass();
        double potassiumGrams = moles * potassium * Alkali.POTASSIUM.molarMass();
        double alkali = sodiumGrams + potassiumGrams;
        double percent = 100 * alkali / (alkali + water);
        Solutions solutions = Solutions.of(formula.tables());
        double volume = 0;
        if (sodiumGrams > 0) {
            volume +=
                    (alkali + water) * sodiumGrams / alkali / solutions.lyeDensity(Alkali.SODIUM, percent, temperature);
        }
        if (potassiumGrams > 0) {
            volume += (alkali + water)
                    * potassiumGrams
                    / alkali
                    / solutions.lyeDensity(Alkali.POTASSIUM, percent, temperature);
        }
        return volume;
    }

    /**
     * The batter's density for given masses.
     *
     * @param batch the batch's lines
     * @param masses grams of each
     * @return g/ml, toppings left out
     */
    public static double density(BatchLines batch, double[] masses) {
        double grams = 0;
        for (int i = 0; i < masses.length; i++) {
            if (!batch.lines().get(i).onTop()) {
                grams += masses[i];
            }
        }
        return grams / millilitres(batch, masses);
    }
}
