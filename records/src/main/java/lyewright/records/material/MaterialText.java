package lyewright.records.material;

import java.util.List;
import java.util.Optional;
import lyewright.formula.AlkaliChoice;
import lyewright.formula.Comments;
import lyewright.formula.Formula;
import lyewright.formula.FormulaFile;
import lyewright.formula.FormulaRules;
import lyewright.formula.OilLine;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Process;
import lyewright.formula.Use;
import lyewright.formula.WaterRule;
import lyewright.material.Alkali;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import lyewright.measure.Share;

/**
 * A material as the text it is kept as: a formula file that holds nothing of its own but the material. It reads as long as
 * formula files do, and loses nothing that they keep.
 */
final class MaterialText {

    private static final String HOLDER = "material";
    private static final String AN_OIL = "olive-virgin";

    private MaterialText() {}

    static String of(OwnMaterial material) {
        return FormulaFile.write(holding(material));
    }

    static OwnMaterial read(String text) {
        FormulaFile.Read read = FormulaFile.read(text);
        return read.formula()
                .map(formula -> formula.materials().get(0))
                .orElseThrow(() -> new IllegalStateException(
                        "a material does not read: " + read.problems().get(0).sentence()));
    }

    /** What is wrong with a material, by the rules of a formula; paths are those within the material. */
    static List<Problem> check(OwnMaterial material) {
        String within = "materials." + material.key();
        return FormulaRules.check(holding(material), Tables.bundled()).stream()
                .map(problem -> new Problem(inner(problem.path(), within), problem.what(), problem.remedy()))
                .toList();
    }

    private static String inner(String path, String within) {
        if (path.startsWith(within + ".")) {
            return path.substring(within.length() + 1);
        }
        return "key";
    }

    private static Formula holding(OwnMaterial material) {
        return new Formula(
                HOLDER,
                1,
                Use.OWN,
                "",
                List.of(new OilLine(AN_OIL, new OilLine.Rest())),
                new AlkaliChoice.Single(Alkali.SODIUM),
                Optional.of(Share.ofPercent("5")),
                new WaterRule.LyeStrength(Share.ofPercent("33"), false),
                Optional.empty(),
                Optional.empty(),
                Process.COLD,
                List.of(),
                List.of(),
                List.of(material),
                Comments.NONE);
    }
}
