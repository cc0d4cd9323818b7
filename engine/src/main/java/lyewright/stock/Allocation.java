package lyewright.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * Which lots serve a need, and with how much each. What is taken and what is short add up to the need.
 *
 * @param need what is wanted, milligrams or pieces, 0 or more
 * @param taken from which lots, in the order they are used up
 * @param shortBy what no lot serves, 0 or more
 * @param passedOver lots that hold some and were not asked, with why
 */
public record Allocation(long need, List<Taken> taken, long shortBy, List<PassedOver> passedOver) {

    /** Copies its lists and insists that they add up. */
    public Allocation {
        taken = List.copyOf(taken);
        passedOver = List.copyOf(passedOver);
        if (taken.stream().mapToLong(Taken::amount).sum() + shortBy != need) {
            throw new IllegalArgumentException("what is taken and what is short must be the need");
        }
    }

    /**
     * So much of one lot.
     *
     * @param lot the lot
     * @param amount milligrams or pieces, above 0
     */
    public record Taken(Lot lot, long amount) {}

    /**
     * A lot that holds some of it and was left alone.
     *
     * @param lot the lot
     * @param why why it was
     */
    public record PassedOver(Lot lot, Why why) {}

    /** Why a lot is left alone. */
    public enum Why {
        /** Nobody has judged it yet. */
        QUARANTINE,
        /** It was refused. */
        REFUSED,
        /** Its best before is over. */
        EXPIRED,
        /** The maker left it out by hand. */
        LEFT_OUT,
        /** It is an alkali where none is asked for, or none where one is. */
        OTHER_KIND
    }

    /**
     * First expired, first out among the lots that may be used.
     *
     * @param need milligrams or pieces, 0 or more
     * @param lots all lots of the material
     * @param day the day of making: a lot is good on its last day
     * @return which lots, and what is short
     */
    public static Allocation firstExpiredFirstOut(long need, List<Lot> lots, LocalDate day) {
        long open = atLeastNothing(need);
        List<Taken> taken = new ArrayList<>();
        for (Lot lot : usable(lots, day)) {
            long amount = Math.min(open, lot.left());
            if (amount > 0) {
                taken.add(new Taken(lot, amount));
                open -= amount;
            }
        }
        return new Allocation(need, taken, open, passedOver(lots, day));
    }

    /**
     * By hand: from these lots and no other, each as much as is said. What is in quarantine, refused or past its best before may not be
     * named: who finds it good says so on the lot first.
     *
     * @param need milligrams or pieces, 0 or more
     * @param asked how much of which lot, by lot id
     * @param lots all lots of the material
     * @param day the day of making
     * @return the allocation; refused where a lot is none of these, is not to be used, holds less, or more is taken than needed
     */
    public static Outcome<Allocation> byHand(long need, Map<String, Long> asked, List<Lot> lots, LocalDate day) {
        Map<String, Lot> known = lots.stream().collect(Collectors.toMap(Lot::id, Function.identity()));
        List<Problem> problems = new ArrayList<>();
        List<Taken> taken = new ArrayList<>();
        long open = atLeastNothing(need);
        for (Map.Entry<String, Long> entry : asked.entrySet()) {
            Lot lot = known.get(entry.getKey());
            if (lot == null) {
                problems.add(new Problem(entry.getKey(), "there is no such lot of it", "choose one of those shown"));
            } else if (entry.getValue() > 0) {
                wrong(lot, entry.getValue(), day).ifPresent(problems::add);
                taken.add(new Taken(lot, entry.getValue()));
                open -= entry.getValue();
            }
        }
        if (open < 0 && problems.isEmpty()) {
            problems.add(new Problem("", "more is taken from the lots than is needed", "take less of one of them"));
        }
        if (!problems.isEmpty()) {
            return new Outcome.Refused<>(problems);
        }
        Set<String> named = new HashSet<>(asked.keySet());
        List<PassedOver> others = passedOver(lots, day).stream()
                .filter(lot -> !named.contains(lot.lot().id()))
                .toList();
        return Outcome.ok(new Allocation(need, taken, open, others));
    }

    private static Optional<Problem> wrong(Lot lot, long amount, LocalDate day) {
        if (lot.status() != LotStatus.USABLE) {
            return Optional.of(new Problem(
                    lot.id(),
                    "lot " + lot.code() + " is " + (lot.status() == LotStatus.REFUSED ? "refused" : "in quarantine"),
                    "take another, or judge this one first"));
        }
        if (lot.isExpired(day)) {
            return Optional.of(new Problem(
                    lot.id(),
                    "lot " + lot.code() + " is past its best before",
                    "take another, or give this one a new best before once you have found it good"));
        }
        return lot.left() >= amount
                ? Optional.empty()
                : Optional.of(new Problem(
                        lot.id(),
                        "lot " + lot.code() + " does not hold that much",
                        "take less of it, or count it if the cupboard has more"));
    }

    /**
     * What of a material may be used on a day.
     *
     * @param lots all lots of the material
     * @param day the day
     * @return milligrams or pieces, 0 or more
     */
    public static long usableAmount(List<Lot> lots, LocalDate day) {
        return usable(lots, day).stream().mapToLong(Lot::left).sum();
    }

    /**
     * Lots that hold something and may be used on a day.
     *
     * @param lots all lots of the material
     * @param day the day
     * @return those, in the order in which they are taken
     */
    public static List<Lot> usable(List<Lot> lots, LocalDate day) {
        return lots.stream()
                .filter(lot -> lot.left() > 0 && why(lot, day).isEmpty())
                .sorted(Lot.FIRST_EXPIRED_FIRST)
                .toList();
    }

    /** The same, with lots that are called as the need is and are something else told of. */
    Allocation withOthers(List<Lot> others) {
        List<PassedOver> over = new ArrayList<>(passedOver);
        others.stream()
                .filter(lot -> lot.left() > 0)
                .sorted(Lot.FIRST_EXPIRED_FIRST)
                .forEach(lot -> over.add(new PassedOver(lot, Why.OTHER_KIND)));
        return new Allocation(need, taken, shortBy, over);
    }

    private static List<PassedOver> passedOver(List<Lot> lots, LocalDate day) {
        return lots.stream()
                .filter(lot -> lot.left() > 0)
                .sorted(Lot.FIRST_EXPIRED_FIRST)
                .flatMap(lot -> why(lot, day).map(why -> new PassedOver(lot, why)).stream())
                .toList();
    }

    private static Optional<Why> why(Lot lot, LocalDate day) {
        return switch (lot.status()) {
            case QUARANTINE -> Optional.of(Why.QUARANTINE);
            case REFUSED -> Optional.of(Why.REFUSED);
            case USABLE -> lot.isExpired(day) ? Optional.of(Why.EXPIRED) : Optional.empty();
        };
    }

    private static long atLeastNothing(long need) {
        if (need < 0) {
            throw new IllegalArgumentException("a need must not be below nothing: " + need);
        }
        return need;
    }
}
