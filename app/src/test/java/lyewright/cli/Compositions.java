package lyewright.cli;

import java.nio.file.Path;
import lyewright.chemistry.BatchComposition;
import lyewright.chemistry.BatchLines;
import lyewright.formula.FormulaFile;
import lyewright.formula.Purities;
import lyewright.formula.ResolvedFormula;
import lyewright.material.Tables;

/** Compositions of formulas, and how they are told, for tests. A kilogram of oils each. */
final class Compositions {

    private Compositions() {}

    static BatchComposition of(Path formula) {
        return of(FormulaSource.read(formula.toString(), Path.of(""))
                .orThrow()
                .resolve(Purities.ASSUMED)
                .orThrow());
    }

    static BatchComposition of(String formula) {
        return of(ResolvedFormula.of(
                        FormulaFile.read(formula).formula().orElseThrow(), Tables.bundled(), Purities.ASSUMED)
                .orThrow());
    }

    private static BatchComposition of(ResolvedFormula formula) {
        BatchLines lines = BatchLines.of(formula).orThrow();
        return BatchComposition.of(lines, lines.massesAt(1000));
    }

    static String text(BatchComposition composition) {
        Page page = new Page();
        CompositionText.write(composition, Tables.bundled(), page);
        return page.toString();
    }
}
