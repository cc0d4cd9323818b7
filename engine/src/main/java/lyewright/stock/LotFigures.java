package lyewright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.Formula;
import lyewright.formula.OwnFigures;
import lyewright.formula.OwnMaterial;
import lyewright.formula.Purities;
import lyewright.material.Alkali;
import lyewright.material.Figure;

/**
 * What the certificates of the lots that are taken say of each material. A material counts only when every lot that is taken of it has a
 * certificate and nothing of it is short: else part of it would be of figures that nobody has.
 *
 * @param materials what is said, by the key that recipes have
 * @param lots the codes of the lots whose certificates these are
 * @param without the codes of lots that are taken and have none
 * @param missing figures that some of the certificates have and others lack, which therefore are left to the tables, by the same key
 */
public record LotFigures(
        Map<String, OwnMaterial> materials,
        List<String> lots,
        List<String> without,
        Map<String, List<String>> missing) {

    /** Of a cupboard that was not looked into. */
    public static final LotFigures NONE = new LotFigures(Map.of(), List.of(), List.of(), Map.of());

    /** Copies. */
    public LotFigures {
        materials = Map.copyOf(materials);
        lots = List.copyOf(lots);
        without = List.copyOf(without);
        missing = Map.copyOf(missing);
    }

    /**
     * Of lots that were chosen.
     *
     * @param cupboard which lots serve what
     * @param certificates what a lot's certificate says, by the lot's id
     * @return what all of them say together
     */
    public static LotFigures of(Cupboard cupboard, Map<String, OwnMaterial> certificates) {
        Map<String, OwnMaterial> materials = new LinkedHashMap<>();
        List<String> lots = new ArrayList<>();
        List<String> without = new ArrayList<>();
        Map<String, List<String>> missing = new LinkedHashMap<>();
        for (Cupboard.Line line : cupboard.lines()) {
            List<Allocation.Taken> taken = line.allocation().taken();
            List<String> lacking = taken.stream()
                    .filter(part -> !certificates.containsKey(part.lot().id()))
                    .map(part -> part.lot().code())
                    .toList();
            without.addAll(lacking);
            if (!taken.isEmpty() && lacking.isEmpty() && line.allocation().shortBy() == 0) {
                List<String> codes =
                        taken.stream().map(part -> part.lot().code()).toList();
                MixedFigures mixed = mixed(taken, codes, certificates);
                materials.put(line.need().key(), mixed.material());
                missing.put(line.need().key(), mixed.missing());
                lots.addAll(codes);
            }
        }
        return new LotFigures(materials, lots, without, missing);
    }

    private static MixedFigures mixed(
            List<Allocation.Taken> taken, List<String> codes, Map<String, OwnMaterial> certificates) {
        List<MixedFigures.Part> parts = taken.stream()
                .flatMap(part -> Optional.ofNullable(certificates.get(part.lot().id()))
                        .map(own -> new MixedFigures.Part(own, part.amount()))
                        .stream())
                .toList();
        return MixedFigures.of(parts, "certificates of lots " + String.join(" and ", codes));
    }

    /**
     * Whether any certificate counts.
     *
     * @return false where all stays as it was
     */
    public boolean any() {
        return !materials.isEmpty();
    }

    /**
     * A formula with what the certificates say in the place of what it carries and of the tables.
     *
     * @param formula a formula
     * @return the same with these figures
     */
    public Formula in(Formula formula) {
        return OwnFigures.takenOver(
                formula, key -> isAlkali(key) ? Optional.empty() : Optional.ofNullable(materials.get(key)));
    }

    private static boolean isAlkali(String key) {
        return key.equals(Alkali.SODIUM.key()) || key.equals(Alkali.POTASSIUM.key());
    }

    /**
     * How pure the alkali is, by the certificates where they say so.
     *
     * @param usual what is known without them
     * @return the same or more
     */
    public Purities purities(Purities usual) {
        return new Purities(
                purity(Alkali.SODIUM).or(usual::sodium),
                purity(Alkali.POTASSIUM).or(usual::potassium));
    }

    private Optional<Figure> purity(Alkali alkali) {
        return Optional.ofNullable(materials.get(alkali.key()))
                .flatMap(own -> own.strength().map(strength -> strength.pure().figure(own.source())));
    }
}
