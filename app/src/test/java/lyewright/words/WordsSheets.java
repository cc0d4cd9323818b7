package lyewright.words;

import java.nio.charset.StandardCharsets;
import lyewright.fill.Fill;
import lyewright.formula.FormulaFile;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.makingsheet.Equipment;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;

/** Sheets to put into words; their formulas are invented. */
final class WordsSheets {

    /** Two portions, clay wetted out, a fade, and a large balance in ounces. */
    static final String FADE = """
            recipe: Tideline
            version: 3
            use: sale
            oils: {coconut: 1 lb, olive-virgin: 4 oz, castor: 50 g}
            alkali: sodium
            superfat: 12 %
            water: 34 % lye
            process: {make: cold, oils: 100 F, lye: 100 F, pour: fade plain into kelp in 4}
            additions:
              - of: green-clay
                amount: 12 g per kg portion oils
                stage: portion kelp
                disperse: {in: water, ratio: 3 to 1, ahead: 1 h}
              - {of: sea-salt, amount: 6 % of oils, stage: every portion}
              - {of: lavender-oil, amount: 1 % of oils, stage: every portion}
            portions: {plain: 60 %, kelp: rest}
            """;

    /** An ordinary bar. */
    static final String PLAIN = """
            recipe: Plain
            oils: {coconut: 250 g, olive-virgin: 650 g, castor: 100 g}
            alkali: sodium
            superfat: 6 %
            water: 32 % lye
            additions:
              - {of: lavender-oil, amount: 2 % of oils, stage: trace}
            """;

    static final Equipment OUNCES = Equipment.parseBalances("counter:10lb:0.05oz,fine:200g:0.01g")
            .orThrow()
            .withVessels("lye jug:312g")
            .orThrow();

    private WordsSheets() {}

    static MakingSheet of(String formula, Equipment equipment) {
        FormulaFile.Read read = FormulaFile.read(formula.getBytes(StandardCharsets.UTF_8));
        ResolvedFormula resolved = ResolvedFormula.of(
                        read.formula()
                                .orElseThrow(() -> new IllegalArgumentException(
                                        read.problems().toString())),
                        Tables.bundled(),
                        Purities.ASSUMED)
                .orThrow();
        return MakingSheet.of(resolved, Fill.AS_WRITTEN, equipment).orThrow();
    }
}
