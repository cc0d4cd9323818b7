package lyewright.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lyewright.material.Additive;
import lyewright.material.OilBlend;
import lyewright.material.StockLye;
import lyewright.material.Tables;
import lyewright.measure.Problem;
import org.jspecify.annotations.Nullable;

/** The materials one formula may name: its own first, then the tables'. A missing one is a problem and null. */
final class Catalogue {

    private final Tables tables;
    private final List<Problem> problems;
    private final Map<String, OilBlend> ownOils;
    private final Map<String, Additive> ownAdditives;
    private final Map<String, StockLye> ownLyes;

    Catalogue(Formula formula, Tables tables, List<Problem> problems) {
        this.tables = tables;
        this.problems = problems;
        boolean own = !formula.materials().isEmpty();
        ownOils = own ? new HashMap<>() : Map.of();
        ownAdditives = own ? new HashMap<>() : Map.of();
        ownLyes = own ? new HashMap<>() : Map.of();
        if (own) {
            new OwnMaterials(tables, problems, ownOils, ownAdditives, ownLyes).read(formula.materials());
        }
    }

    /** An oil, or premixed oils, as a blend of one or more. */
    @Nullable
    OilBlend oils(String key, String path) {
        OilBlend own = ownOils.get(key);
        if (own != null) {
            return own;
        }
        OilBlend alone = tables.alone(key).orElse(null);
        if (alone != null) {
            return alone;
        }
        if (ownAdditives.containsKey(key) || tables.additive(key).isPresent()) {
            no(path, "'" + key + "' is not an oil", "list it under additions");
            return null;
        }
        if (ownLyes.containsKey(key)) {
            no(path, "'" + key + "' is a stock lye, not an oil", "write it as the alkali");
            return null;
        }
        unknown(key, path);
        return null;
    }

    @Nullable
    Additive additive(String key, int place) {
        String path = "additions." + place + ".of";
        Additive own = ownAdditives.get(key);
        if (own != null) {
            return own;
        }
        Additive additive = tables.additive(key).orElse(null);
        if (additive != null) {
            return additive;
        }
        if (ownOils.containsKey(key) || tables.oil(key).isPresent()) {
            no(path, "'" + key + "' belongs to the oils", "list it under oils, so that its alkali is counted");
            return null;
        }
        if (ownLyes.containsKey(key)) {
            no(path, "'" + key + "' is a stock lye, not an addition", "write it as the alkali");
            return null;
        }
        unknown(key, path);
        return null;
    }

    @Nullable
    StockLye lye(String key) {
        StockLye lye = ownLyes.get(key);
        if (lye == null) {
            no("alkali", "'" + key + "' is not a stock lye", "give it kind: lye and a strength under materials");
        }
        return lye;
    }

    private void unknown(String key, String path) {
        List<String> near = tables.nearest(key);
        no(
                path,
                "'" + key + "' is not in the tables, nor among the formula's own materials",
                near.isEmpty()
                        ? "choose a key of the tables, or describe it under materials"
                        : "did you mean " + String.join(" or ", near) + "? If not, describe it under materials");
    }

    private void no(String path, String what, String remedy) {
        problems.add(new Problem(path, what, remedy));
    }
}
