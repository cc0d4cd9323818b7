package lyewright.web.start;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lyewright.fill.Mould;
import lyewright.formula.MaterialNames;
import lyewright.formula.Purities;
import lyewright.makingsheet.Equipment;
import lyewright.material.Tables;
import lyewright.measure.MassUnit;
import lyewright.measure.Outcome;
import lyewright.measure.Share;
import lyewright.records.equipment.KeptMould;
import lyewright.records.setting.Units;
import lyewright.records.setting.Workshop;
import lyewright.web.Shop;
import lyewright.words.Figures;

/**
 * What the workshop has to make a recipe with; the usual things before there is a workshop.
 *
 * @param equipment balances and jugs
 * @param purities of its alkalis
 * @param holdBack share of a batch that stays in jugs and tools
 * @param units it weighs in
 * @param moulds its moulds
 * @param names what may be named, its own materials first
 */
public record Bench(
        Equipment equipment,
        Purities purities,
        double holdBack,
        Units units,
        List<KnownMould> moulds,
        MaterialNames names) {

    private static final double TENTHS_UNTIL = 10;

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

    static Bench of(Shop shop, KnownNames names) {
        Workshop workshop = shop.workshop();
        Purities purities = purities(workshop);
        return new Bench(
                shop.records().equipment().equipment(),
                purities,
                Share.parse(workshop.holdBack()).orThrow().fraction(),
                workshop.units(),
                shop.records().equipment().moulds().stream()
                        .flatMap(kept -> known(kept, purities).stream())
                        .toList(),
                names.now());
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
                Units.OUNCES,
                moulds,
                names);
    }

    /** A mass that nobody weighs as such, in the workshop's units. */
    String about(double grams) {
        double ounces = grams / MassUnit.OUNCE.grams().doubleValue();
        return units == Units.OUNCES
                ? Figures.fixed(ounces, ounces < TENTHS_UNTIL ? 2 : 1) + " oz"
                : Figures.about(grams);
    }

    /** The unit of amounts that have none in boxes. */
    String unit() {
        return units == Units.OUNCES ? "oz" : "g";
    }
}
