package lyewright.records.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.formula.NameRules;
import lyewright.formula.OwnMaterial;
import lyewright.material.AdditiveKind;

/**
 * What was received and no table knows, as recipes may name it: a material of the maker's own of which nothing is known but its kind. An
 * oil or an alkali is none without figures, and stays unknown.
 */
public final class StockedNames {

    private StockedNames() {}

    /**
     * Of a cupboard.
     *
     * @param items what is stocked
     * @param names all that recipes know besides: the tables and what the maker described, which go before these
     * @return a material for each that goes by no other name
     */
    public static List<OwnMaterial> of(List<StockItem> items, MaterialNames names) {
        List<OwnMaterial> stocked = new ArrayList<>();
        items.forEach(item -> of(item.said(), names).ifPresent(stocked::add));
        return stocked;
    }

    /** As recipes may name one; empty where they cannot, or know its name already. */
    public static Optional<OwnMaterial> of(ItemSaid said, MaterialNames names) {
        String name = called(said);
        return kind(said.kind())
                .filter(kind -> NameRules.check("name", "its name", name).isEmpty() && !names.isCalled(name))
                .map(kind -> OwnMaterial.of(name, kind.word()));
    }

    /** What recipes call it; its own name where nobody said another. */
    public static String called(ItemSaid said) {
        return said.identity().materialKey().orElse(said.name());
    }

    /** What the maker's own spoons hold of each, by what recipes call it. */
    public static Map<String, Map<String, Long>> spoons(List<StockItem> items) {
        Map<String, Map<String, Long>> spoons = new HashMap<>();
        items.stream()
                .map(StockItem::said)
                .filter(said -> !said.spoons().isEmpty())
                .forEach(said -> spoons.put(called(said), said.spoons()));
        return spoons;
    }

    private static Optional<AdditiveKind> kind(ItemKind kind) {
        return switch (kind) {
            case FRAGRANCE -> Optional.of(AdditiveKind.FRAGRANCE);
            case COLOURANT -> Optional.of(AdditiveKind.COLOURANT);
            case ADDITIVE -> Optional.of(AdditiveKind.OTHER);
            case OIL, ALKALI, PACKAGING -> Optional.empty();
        };
    }
}
