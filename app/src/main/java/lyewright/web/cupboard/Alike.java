package lyewright.web.cupboard;

import java.util.List;
import java.util.Optional;
import lyewright.formula.MaterialNames;
import lyewright.measure.Outcome;
import lyewright.records.stock.StockItem;
import lyewright.stock.Variants;
import lyewright.stock.Variants.Thing;
import lyewright.words.Labelled;
import lyewright.words.VariantWords;

/**
 * What is easily taken for a material, for who reads or types its name.
 *
 * @param here what of that is in the cupboard: its name, and its page as text
 * @param says what else there is to say
 */
public record Alike(List<Labelled> here, List<String> says) {

    static final Alike NOTHING = new Alike(List.of(), List.of());

    /** Copies its lists. */
    public Alike {
        here = List.copyOf(here);
        says = List.copyOf(says);
    }

    /** Everything there is to say of a material of the cupboard. */
    static Alike of(StockItem item, List<StockItem> items) {
        return new Alike(here(item.thing(), item.id(), items), VariantWords.of(item.thing()));
    }

    /** Only what presses, of a name on a delivery note. */
    static Alike ofLine(String typed, List<StockItem> items, MaterialNames names) {
        if (typed.isBlank()) {
            return NOTHING;
        }
        Outcome<Meant.Found> meant = new Meant(items, names).of(typed, Optional.empty());
        Optional<Meant.Found> found =
                meant instanceof Outcome.Ok<Meant.Found> ok ? Optional.of(ok.value()) : Optional.empty();
        Thing thing = found.map(it ->
                        it.there().map(StockItem::thing).orElseGet(() -> new StockItem("", it.said()).thing()))
                .orElseGet(() -> new Thing(Optional.empty(), typed.strip(), "", ""));
        String id = found.flatMap(Meant.Found::there).map(StockItem::id).orElse("");
        return new Alike(here(thing, id, items), VariantWords.pressing(thing));
    }

    /** What is being typed of a material itself. */
    static Alike ofForm(Thing thing, String id, List<StockItem> items) {
        return new Alike(here(thing, id, items), VariantWords.of(thing));
    }

    private static List<Labelled> here(Thing thing, String id, List<StockItem> items) {
        return items.stream()
                .filter(item -> !item.id().equals(id) && Variants.areConfused(thing, item.thing()))
                .map(item -> new Labelled(item.name(), "/stores/cupboard/" + item.id()))
                .toList();
    }
}
