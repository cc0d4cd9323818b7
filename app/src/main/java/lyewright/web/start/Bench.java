package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import lyewright.fill.Mould;
import lyewright.formula.MaterialNames;
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
 * @param names what may be named, its own materials first
 */
public record Bench(
        Equipment equipment,
        Purities purities,
        double holdBack,
        UnitsShown units,
        List<KnownMould> moulds,
        MaterialNames names) {

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

    /** As somebody types that has no workshop yet, but may have said already what it weighs in. */
    static Bench of(Shop shop, KnownNames names, NotebookForm form) {
        Bench bench = of(shop, names);
        boolean ounces = !shop.started() && form.keep().units().equals(WorkshopForm.OUNCES);
        return ounces ? bench.inOunces() : bench;
    }

    static Bench of(Shop shop, KnownNames names) {
        Workshop workshop = shop.workshop();
        Purities purities = RecipeSheet.purities(workshop);
        return new Bench(
                shop.records().equipment().equipment(),
                purities,
                Share.parse(workshop.holdBack()).orThrow().fraction(),
                WorkshopUnits.of(workshop),
                shop.records().equipment().moulds().stream()
                        .flatMap(kept -> known(kept, purities).stream())
                        .toList(),
                names.now());
    }

    /** A mould whose usual formula cannot be laid out any more is left out; its own page says why. */
    private static Optional<KnownMould> known(KeptMould kept, Purities purities) {
        return kept.mould(Tables.bundled(), purities) instanceof Outcome.Ok<Mould> ok
                ? Optional.of(new KnownMould(
                        kept.id(), kept.name(), AskedMould.kept(kept.id(), kept.name(), ok.value(), kept.cutPlan())))
                : Optional.empty();
    }

    Optional<AskedMould> mould(String id) {
        return moulds.stream()
                .filter(known -> known.id().equals(id))
                .map(KnownMould::asked)
                .findFirst();
    }

    /** The same in ounces, for who chose them before there is a workshop. */
    Bench inOunces() {
        return new Bench(
                new Equipment(Equipment.USUAL_IN_OUNCES.balances(), equipment.vesselGrams()),
                purities,
                holdBack,
                new UnitsShown(true, true),
                moulds,
                names);
    }

    /** The unit of amounts that have none in boxes. */
    String unit() {
        return units.ounces() ? "oz" : "g";
    }
}
