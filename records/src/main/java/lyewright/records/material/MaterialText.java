package lyewright.records.material;

import java.util.List;
import lyewright.formula.FormulaFile;
import lyewright.formula.FormulaRules;
import lyewright.formula.OwnMaterial;
import lyewright.material.Tables;
import lyewright.measure.Problem;

/**
 * A material as the text it is kept as: a formula file that holds nothing of its own but the material. It reads as long as
 * formula files do, and loses nothing that they keep.
 */
public final class MaterialText {

    private MaterialText() {}

    /** The text of a material. */
    public static String of(OwnMaterial material) {
        return FormulaFile.write(material.alone());
    }

    /** The material of a text. */
    public static OwnMaterial read(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        return read.formula()
                .map(formula -> formula.materials().get(0))
                .orElseThrow(() -> new IllegalStateException(
                        "a material does not read: " + read.problems().get(0).sentence()));
    }

    /** What is wrong with a material, by the rules of a formula; paths are those within the material. */
    public static List<Problem> check(OwnMaterial material) {
        String within = "materials." + material.key();
        return FormulaRules.check(material.alone(), Tables.bundled()).stream()
                .map(problem -> new Problem(inner(problem.path(), within), problem.what(), problem.remedy()))
                .toList();
    }

    private static String inner(String path, String within) {
        if (path.startsWith(within + ".")) {
            return path.substring(within.length() + 1);
        }
        return "key";
    }
}
