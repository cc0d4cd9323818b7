package lyewright.web.cupboard;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.formula.NameRules;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.records.stock.Identity;
import lyewright.records.stock.ItemKind;
import lyewright.records.stock.ItemSaid;
import lyewright.records.stock.NamedMaterials;
import lyewright.records.stock.StockItem;

/** What a name on a delivery note means: something in the cupboard, something recipes name, or something new. */
final class Meant {

    /** Keys of the alkalis, as sheets have them; no table of oils or additions has them. */
    static final String SODIUM = "naoh";

    static final String POTASSIUM = "koh";

    private final List<StockItem> items;
    private final NamedMaterials names;

    Meant(List<StockItem> items, MaterialNames names) {
        this.items = items;
        this.names = new NamedMaterials(names);
    }

    /** Something in the cupboard, or what is to be added to it. */
    record Found(Optional<StockItem> there, Optional<ItemSaid> fresh) {

        ItemSaid said() {
            return there.map(StockItem::said).or(() -> fresh).orElseThrow();
        }
    }

    /**
     * What a name means.
     *
     * @param typed the name
     * @param kind what sort of thing it is, where the maker said so
     * @return what is meant; refused at {@code kind} where that has to be said
     */
    Outcome<Found> of(String typed, Optional<ItemKind> kind) {
        String name = typed.strip();
        if (name.isEmpty()) {
            return Outcome.refused(new Problem("material", "nothing says what it is", "write its name"));
        }
        Optional<StockItem> there = items.stream()
                .filter(item -> NameRules.areSame(item.name(), name)
                        || item.said()
                                .identity()
                                .materialKey()
                                .filter(name::equals)
                                .isPresent())
                .findFirst();
        if (there.isPresent()) {
            return asSaid(new Found(there, Optional.empty()), kind);
        }
        Optional<Problem> unclear = names.unclear(name);
        if (unclear.isPresent()) {
            return Outcome.refused(
                    new Problem("material", unclear.get().what(), unclear.get().remedy()));
        }
        NamedMaterials.Meant known = names.of(name);
        if (known.one().isPresent()) {
            return found(known.one().get()).then(found -> asSaid(found, kind));
        }
        if (!known.all().isEmpty() && kind.isEmpty()) {
            return Outcome.refused(new Problem(
                    "material",
                    "'" + name + "' may be " + known.either(),
                    "write which; if it is none of them, say below what sort of thing it is"));
        }
        return kind.map(sort -> found(ItemSaid.of(name, sort, Identity.none())))
                .orElseGet(() -> Outcome.refused(new Problem(
                        "kind", "'" + name + "' is new here, and no table knows it", "say what sort of thing it is")));
    }

    /** An alkali under the name of an oil, or the other way, would be weighed for it. */
    private static Outcome<Found> asSaid(Found found, Optional<ItemKind> kind) {
        boolean alkali = found.said().kind() == ItemKind.ALKALI;
        return kind.filter(said -> (said == ItemKind.ALKALI) != alkali).isEmpty()
                ? Outcome.ok(found)
                : Outcome.refused(new Problem(
                        "kind",
                        "'" + found.said().name() + "' is " + (alkali ? "an alkali" : "no alkali"),
                        "leave that empty, or write another name"));
    }

    /** One that the cupboard has under the name that recipes know is that one, however it was typed here. */
    private Outcome<Found> found(ItemSaid said) {
        Optional<StockItem> there = said.identity()
                .materialKey()
                .flatMap(key -> items.stream()
                        .filter(item -> item.said()
                                .identity()
                                .materialKey()
                                .filter(key::equals)
                                .isPresent())
                        .findFirst());
        return Outcome.ok(there.isPresent() ? new Found(there, Optional.empty()) : new Found(there, Optional.of(said)));
    }

    /** A kind as it is chosen; the empty choice is none. */
    static Optional<ItemKind> kind(String word) {
        return ItemKind.ofWord(word.toLowerCase(Locale.ROOT));
    }
}
