package lyewright.records.recipe;

import java.util.stream.Collectors;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.OilLine;
import lyewright.records.store.NameOrder;

/**
 * A formula ready to be kept as one version.
 *
 * @param formula with its number
 * @param text its file
 */
record FormulaText(Formula formula, String text) {

    static FormulaText of(Formula formula, int number) {
        return of(formula, formula.recipe(), number);
    }

    static FormulaText of(Formula formula, String name, int number) {
        Formula numbered = formula.as(name, number);
        return new FormulaText(numbered, FormulaFile.write(numbered));
    }

    String name() {
        return formula.recipe();
    }

    /** What a search looks through. */
    String searchText() {
        String oils = formula.oils().stream().map(OilLine::key).collect(Collectors.joining(" "));
        return NameOrder.folded(name() + "\n" + oils + "\n" + formula.notes());
    }
}
