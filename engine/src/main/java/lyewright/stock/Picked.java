package lyewright.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;
import lyewright.stock.Allocation.PassedOver;
import lyewright.stock.Allocation.Taken;
import lyewright.stock.Allocation.Why;

/**
 * What a maker picked by hand among the lots of one material. How much is taken of each follows from it.
 *
 * @param first the id of the lot that is taken before all others; empty where what expires first is
 * @param leftOut the ids of lots that are not to be taken; one that is not there does not matter
 */
public record Picked(Optional<String> first, Set<String> leftOut) {

    /** Nothing: first expired, first out. */
    public static final Picked NOTHING = new Picked(Optional.empty(), Set.of());

    /** Copies its set. */
    public Picked {
        leftOut = Set.copyOf(leftOut);
    }

    /**
     * From these lots as they were picked: the first as far as it goes, then the others, first expired, first out.
     *
     * @param need milligrams or pieces, 0 or more
     * @param lots all lots of the material
     * @param day the day of making
     * @return the allocation; refused where the first is none of these, or is not to be used
     */
    public Outcome<Allocation> of(long need, List<Lot> lots, LocalDate day) {
        List<Lot> open =
                lots.stream().filter(lot -> !leftOut.contains(lot.id())).toList();
        Optional<Problem> wrong = first.flatMap(id -> wrong(id, lots));
        if (wrong.isPresent()) {
            return Outcome.refused(wrong.get());
        }
        Map<String, Long> asked = new LinkedHashMap<>();
        first.flatMap(id -> lot(id, lots)).ifPresent(lot -> asked.put(lot.id(), Math.min(need, lot.left())));
        long rest = need - asked.values().stream().mapToLong(Long::longValue).sum();
        List<Lot> others =
                open.stream().filter(lot -> !asked.containsKey(lot.id())).toList();
        for (Taken taken : Allocation.firstExpiredFirstOut(rest, others, day).taken()) {
            asked.put(taken.lot().id(), taken.amount());
        }
        return Allocation.byHand(need, asked, lots, day).then(all -> Outcome.ok(tellingLeftOut(all, lots, day)));
    }

    private Optional<Problem> wrong(String id, List<Lot> lots) {
        Optional<Lot> lot = lot(id, lots);
        if (lot.isEmpty()) {
            return Optional.of(
                    new Problem(id, "the lot that was chosen is not in the cupboard", "choose one of those shown"));
        }
        String code = lot.get().code();
        if (leftOut.contains(id)) {
            return Optional.of(new Problem(
                    id, "lot " + code + " cannot be taken first and left out as well", "choose one of the two"));
        }
        return lot.get().left() > 0
                ? Optional.empty()
                : Optional.of(new Problem(
                        id, "lot " + code + " holds nothing", "take another, or count it if there is some"));
    }

    private static Optional<Lot> lot(String id, List<Lot> lots) {
        return lots.stream().filter(lot -> lot.id().equals(id)).findFirst();
    }

    private Allocation tellingLeftOut(Allocation all, List<Lot> lots, LocalDate day) {
        List<PassedOver> over = new ArrayList<>(all.passedOver());
        Allocation.usable(lots, day).stream()
                .filter(lot -> leftOut.contains(lot.id()))
                .forEach(lot -> over.add(new PassedOver(lot, Why.LEFT_OUT)));
        return new Allocation(all.need(), all.taken(), all.shortBy(), over);
    }

    /** The same, but for the lot that was to come first. */
    Picked withoutFirst() {
        return new Picked(Optional.empty(), leftOut);
    }

    /** What of a material may be used, the lots that are left out not counted. */
    long usableAmount(List<Lot> lots, LocalDate day) {
        return Allocation.usableAmount(
                lots.stream().filter(lot -> !leftOut.contains(lot.id())).toList(), day);
    }
}
