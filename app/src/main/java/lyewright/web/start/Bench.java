package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.fill.Fill;
import lyewright.fill.Mould;
import lyewright.formula.Purities;
import lyewright.makingsheet.Equipment;
import lyewright.material.Tables;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.records.equipment.KeptMould;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.web.Shop;

/**
 * What the workshop has to make a recipe with; the usual things before there is a workshop.
 *
 * @param equipment balances and jugs
 * @param purities of its alkalis
 * @param holdBack share of a batch that stays in jugs and tools
 * @param units it weighs in
 * @param moulds its moulds
 */
public record Bench(Equipment equipment, Purities purities, double holdBack, Units units, List<KnownMould> moulds) {

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
        Purities purities = purities(workshop);
        return new Bench(
                shop.records().equipment().equipment(),
                purities,
                Share.parse(workshop.holdBack()).orThrow().fraction(),
                workshop.units(),
                shop.records().equipment().moulds().stream()
                        .flatMap(kept -> known(kept, purities).stream())
                        .toList());
    }

    private static Purities purities(Workshop workshop) {
        String typed = Stream.of(
                        workshop.sodiumPurity().map(purity -> "naoh=" + purity),
                        workshop.potassiumPurity().map(purity -> "koh=" + purity))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(","));
        return typed.isEmpty() ? Purities.ASSUMED : Purities.parse(typed).orThrow();
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
        return units == Units.OUNCES ? "oz" : "g";
    }
}
