package lyewright.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.material.Tables;

/**
 * A figure of a material that two formulas name and do not have alike, since one carries the maker's own.
 *
 * @param key the material's key
 * @param name what it is called: by the tables, else its key
 * @param figure which, such as {@code saponification value}
 * @param a what the first has; empty where that says nothing
 * @param b what the second has
 */
public record MaterialChange(String key, String name, String figure, Optional<Said> a, Optional<Said> b) {

    /**
     * What is said of a material.
     *
     * @param value with its unit, such as {@code 188 ± 1 mg KOH/g}
     * @param source where it comes from, perhaps empty
     */
    public record Said(String value, String source) {}

    /**
     * What differs between the materials of two formulas.
     *
     * @param a the first
     * @param b the second
     * @param tables where what neither carries comes from
     * @return by materials, in the order that the second names them
     */
    public static List<MaterialChange> between(Formula a, Formula b, Tables tables) {
        Map<String, OwnMaterial> ofA = byKey(a);
        Map<String, OwnMaterial> ofB = byKey(b);
        Set<String> both = new LinkedHashSet<>(OwnFigures.named(b));
        both.retainAll(OwnFigures.named(a));
        List<MaterialChange> changes = new ArrayList<>();
        for (String key : both) {
            Optional<OwnMaterial> own = Optional.ofNullable(ofA.get(key));
            Optional<OwnMaterial> other = Optional.ofNullable(ofB.get(key));
            if (!own.equals(other)) {
                changes.addAll(of(key, own, other, tables));
            }
        }
        return changes;
    }

    private static Map<String, OwnMaterial> byKey(Formula formula) {
        Map<String, OwnMaterial> materials = new LinkedHashMap<>();
        formula.materials().forEach(material -> materials.put(material.key(), material));
        return materials;
    }

    private static List<MaterialChange> of(
            String key, Optional<OwnMaterial> a, Optional<OwnMaterial> b, Tables tables) {
        Map<String, Said> saidByA = MaterialSaid.of(key, a, tables);
        Map<String, Said> saidByB = MaterialSaid.of(key, b, tables);
        String name = tables.oil(key)
                .map(oil -> oil.name())
                .or(() -> tables.additive(key).map(additive -> additive.name()))
                .orElse(key);
        List<MaterialChange> changes = new ArrayList<>();
        Set<String> figures = new LinkedHashSet<>(saidByA.keySet());
        figures.addAll(saidByB.keySet());
        for (String figure : figures) {
            Optional<Said> one = Optional.ofNullable(saidByA.get(figure));
            Optional<Said> other = Optional.ofNullable(saidByB.get(figure));
            if (!one.map(Said::value).equals(other.map(Said::value))) {
                changes.add(new MaterialChange(key, name, figure, one, other));
            }
        }
        if (changes.isEmpty()) {
            changes.add(new MaterialChange(key, name, MaterialReader.SOURCE, source(a), source(b)));
        }
        return changes;
    }

    private static Optional<Said> source(Optional<OwnMaterial> own) {
        return own.map(OwnMaterial::source).filter(source -> !source.isEmpty()).map(source -> new Said(source, ""));
    }
}
