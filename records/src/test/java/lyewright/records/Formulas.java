package lyewright.records;

import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;

/** Recipes of the invented workshop "Gannet Stair Soap", Port Ellery. */
public final class Formulas {

    private Formulas() {}

    /** A formula of this name. */
    public static Formula named(String name) {
        return of(name, 1, "5 %", "");
    }

    /** A formula with these superfat and notes. */
    public static Formula of(String name, int version, String superfat, String notes) {
        return read("""
                recipe: "%s"
                version: %d
                use: own
                notes: "%s"
                oils:
                  olive-virgin: 70 %%
                  coconut: rest
                alkali: sodium
                superfat: %s
                water: 33 %% lye
                """.formatted(quoted(name), version, quoted(notes), superfat));
    }

    /** The formula of a file. */
    public static Formula read(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        return read.formula().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static String quoted(String text) {
        return text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    }
}
