package lyewright.benchmarks;

import lyewright.formula.FormulaFile;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.SheetDraws;

/** The formulas that only the drawing is measured on, invented. */
final class OtherFormulas {

    /** One oil, whose published range is most of the doubt. */
    private static final String COCONUT = """
            recipe: Coconut alone
            use: own
            oils:
              coconut: 100 %
            alkali: sodium
            superfat: 2 %
            water: 33 % lye
            process: {make: cold, oils: 38 C, lye: 38 C}
            """;

    /** Twelve things are uncertain: five saponification values, the purity of the alkali, six weighings. */
    private static final String TWELVE_INPUTS = """
            recipe: Twelve inputs
            use: own
            oils:
              coconut: 25 %
              palm-kernel: 10 %
              olive-virgin: 45 %
              shea-butter: 12 %
              castor: rest
            alkali: sodium
            superfat: 6 %
            water: 33 % lye
            process: {make: cold, oils: 38 C, lye: 38 C}
            """;

    private OtherFormulas() {}

    static ResolvedFormula coconut() {
        return resolved(COCONUT);
    }

    static SheetDraws twelveInputs() {
        return new SheetDraws(TenItems.sheet(resolved(TWELVE_INPUTS), 1500));
    }

    private static ResolvedFormula resolved(String text) {
        return TenItems.resolve(FormulaFile.read(text).formula().orElseThrow());
    }
}
