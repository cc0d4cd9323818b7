package lyewright.records.stock;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lyewright.measure.WrittenMass;

/**
 * What is said of a stocked material.
 *
 * @param name what it is called in the cupboard
 * @param kind what sort of thing it is
 * @param counting whether it is weighed or counted
 * @param identity what it is
 * @param reorderMass when less than this is left, it should be bought; only for what is weighed
 * @param reorderPieces the same for what is counted
 * @param spoons what the maker's own spoons hold of it, milligrams by the spoon's name
 * @param notes the maker's own
 */
public record ItemSaid(
        String name,
        ItemKind kind,
        Counting counting,
        Identity identity,
        Optional<WrittenMass> reorderMass,
        Optional<Long> reorderPieces,
        Map<String, Long> spoons,
        String notes) {

    /** Copies its map. */
    public ItemSaid {
        spoons = Collections.unmodifiableMap(new TreeMap<>(spoons));
    }

    /** A material with nothing else said of it. */
    public static ItemSaid of(String name, ItemKind kind, Identity identity) {
        Counting counting = kind == ItemKind.PACKAGING ? Counting.PIECES : Counting.MASS;
        return new ItemSaid(name, kind, counting, identity, Optional.empty(), Optional.empty(), Map.of(), "");
    }

    /** The same under another name in recipes. */
    public ItemSaid calledInRecipes(String key) {
        return new ItemSaid(
                name, kind, counting, identity.withKey(Optional.of(key)), reorderMass, reorderPieces, spoons, notes);
    }
}
