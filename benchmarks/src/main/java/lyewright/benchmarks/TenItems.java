package lyewright.benchmarks;

import lyewright.fill.Fill;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;

/**
 * The formula that is measured, invented. Its ten items: five oils, clay, fragrance, salt, water and sodium hydroxide. The
 * clay is wetted out in some of the water and goes into one of two portions; fragrance and salt go into both, which makes
 * thirteen weighings.
 */
final class TenItems {

    static final String TEXT = """
            recipe: Ten items
            use: own
            oils:
              coconut: 50 %
              palm-kernel: 20 %
              olive-virgin: 15 %
              shea-butter: 7 %
              castor: rest
            alkali: sodium
            superfat: 15 %
            water: 33 % lye
            process: {make: cold, oils: 38 C, lye: 38 C}
            additions:
              - of: green-clay
                amount: 12 g per kg portion oils
                stage: portion kelp
                disperse: {in: water, ratio: 3 to 1, ahead: 1 h}
              - of: rosemary-oil
                amount: 2.2 % of oils
                stage: every portion
              - of: sea-salt
                amount: 50 % of oils
                stage: every portion
            portions:
              plain: 60 %
              kelp: rest
            """;

    private static final int SIZES = 256;

    private TenItems() {}

    static Formula formula() {
        return FormulaFile.read(TEXT).formula().orElseThrow();
    }

    static ResolvedFormula resolved() {
        return resolve(formula());
    }

    static ResolvedFormula resolve(Formula formula) {
        return ResolvedFormula.of(formula, Tables.bundled(), Purities.ASSUMED).orThrow();
    }

    static MakingSheet sheet(ResolvedFormula formula, double mouldGrams) {
        return MakingSheet.of(formula, Fill.mouldMass(mouldGrams), Equipment.USUAL)
                .orThrow();
    }

    /**
     * The mould masses that are asked for in turn: from 400 to 6775 g, so that balances, cups and cautions change on the
     * way, in an order that never asks for the same one twice running.
     */
    static double[] mouldMasses() {
        double[] masses = new double[SIZES];
        for (int i = 0; i < SIZES; i++) {
            masses[i] = 400 + 25.0 * (i * 97 % SIZES);
        }
        return masses;
    }
}
