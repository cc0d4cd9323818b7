package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.formula.Purities;
import lyewright.makingsheet.Equipment;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.records.equipment.KeptMould;
import lyewright.records.setting.Workshop;
import lyewright.web.Shop;
import lyewright.web.WorkshopUnits;
import lyewright.web.recipe.RecipeSheet;
import lyewright.words.UnitsShown;

/**
 * What the workshop has to make a recipe with; the usual things before there is a workshop.
 *
 * @param equipment balances and jugs
 * @param purities of its alkalis
 * @param holdBack share of a batch that stays in jugs and tools
 * @param units it is used to
 * @param moulds its moulds
 */
public record Bench(
        Equipment equipment, Purities purities, double holdBack, UnitsShown units, List<KnownMould> moulds) {

    /** Copies its list. */
    public Bench {
        moulds = List.copyOf(moulds);
    }

    /**
     * One of the workshop's moulds.
     *
     * @param id its id
     * @param name what it is called
     * @param asked what it asks for
     */
    public record KnownMould(String id, String name, AskedMould asked) {}

    static Bench of(Shop shop) {
        Workshop workshop = shop.workshop();
        Purities purities = RecipeSheet.purities(workshop);
        return new Bench(
                shop.records().equipment().equipment(),
                purities,
                Share.parse(workshop.holdBack()).orThrow().fraction(),
                WorkshopUnits.of(workshop),
                shop.records().equipment().moulds().stream()
                        .flatMap(kept -> known(kept, purities).stream())
                        .toList());
    }

    /** A mould whose usual formula cannot be laid out any more is left out; its own page says why. */
    private static Optional<KnownMould> known(KeptMould kept, Purities purities) {
        return kept.mould(Tables.bundled(), purities) instanceof Outcome.Ok<Mould> ok
                ? Optional.of(new KnownMould(
                        kept.id(),
                        kept.name(),
                        new AskedMould(kept.name() + " takes", new Fill.FullMould(), ok.value(), kept.cutPlan())))
                : Optional.empty();
    }

    Optional<AskedMould> mould(String id) {
        return moulds.stream()
                .filter(known -> known.id().equals(id))
                .map(KnownMould::asked)
                .findFirst();
    }

    /** The unit of amounts that have none in boxes. */
    String unit() {
        return units.ounces() ? "oz" : "g";
    }
}
