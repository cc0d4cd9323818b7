package lyewright.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What a formula carries of the maker's own materials, beside those kept for every recipe. A formula carries them, so that what
 * was made of it stays what it was when a later lot has another certificate.
 */
public final class OwnFigures {

    private OwnFigures() {}

    /**
     * Every material that a formula names.
     *
     * @param formula a formula
     * @return their keys, those in its premixes included
     */
    public static Set<String> named(Formula formula) {
        Set<String> named = new LinkedHashSet<>();
        formula.oils().forEach(line -> named.add(line.key()));
        formula.additions().forEach(addition -> {
            named.add(addition.of());
            addition.disperse().ifPresent(disperse -> named.add(disperse.in()));
        });
        named.addAll(lyes(formula));
        formula.materials().stream()
                .filter(own -> named.contains(own.key()))
                .flatMap(own -> own.oils().stream())
                .forEach(part -> named.add(part.key()));
        return named;
    }

    /** Stock lyes are named by the alkali; whatever carried lye there is serves that. */
    private static List<String> lyes(Formula formula) {
        return formula.materials().stream()
                .filter(own -> own.kind().equals(OwnMaterial.LYE))
                .map(OwnMaterial::key)
                .toList();
    }

    /**
     * A formula with the figures that are kept now for the materials it names.
     *
     * @param formula a formula
     * @param kept the maker's own material of a key, if there is one
     * @return the formula with those it carried replaced and those it lacked added; equal to it where nothing differs
     */
    public static Formula takenOver(Formula formula, Function<String, Optional<OwnMaterial>> kept) {
        Formula taken = once(formula, kept);
        // a premix that is taken over may bring oils of its own
        return taken.equals(formula) ? formula : takenOver(taken, kept);
    }

    private static Formula once(Formula formula, Function<String, Optional<OwnMaterial>> kept) {
        Set<String> named = named(formula);
        Map<String, OwnMaterial> carried = new LinkedHashMap<>();
        formula.materials()
                .forEach(material -> carried.put(
                        material.key(),
                        named.contains(material.key())
                                ? kept.apply(material.key()).orElse(material)
                                : material));
        named.forEach(key -> kept.apply(key).ifPresent(own -> carried.putIfAbsent(key, own)));
        return formula.withMaterials(new ArrayList<>(carried.values()));
    }
}
