package lyewright.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lyewright.measure.Outcome;
import lyewright.measure.Problem;

/**
 * Whether the cupboard has all that a sheet asks for.
 *
 * @param lines each material with what serves it, in the order they were asked for
 */
public record Cupboard(List<Line> lines) {

    /** Copies its list. */
    public Cupboard {
        lines = List.copyOf(lines);
    }

    /**
     * What is wanted of a material.
     *
     * @param key what its lots are found by
     * @param name what it is called
     * @param amount milligrams or pieces, above 0
     * @param alkali whether it is the alkali, or the stock lye, of the sheet
     */
    public record Need(String key, String name, long amount, boolean alkali) {

        /** Of something that is no alkali. */
        public Need(String key, String name, long amount) {
            this(key, name, amount, false);
        }

        /** Whether a lot is what is wanted, and not only called so. */
        boolean isServedBy(Lot lot) {
            return lot.alkali() == alkali;
        }
    }

    /**
     * A material, and what serves it.
     *
     * @param need what is wanted
     * @param known whether the cupboard knows it; water from the tap, for one, nobody keeps
     * @param usable what may be used of it, 0 or more
     * @param allocation which lots
     * @param refused why what was picked by hand is not taken; empty where it is, or nothing was
     */
    public record Line(Need need, boolean known, long usable, Allocation allocation, Optional<Problem> refused) {

        /** How many times the need the cupboard could serve; without bound where nobody keeps the material. */
        double times() {
            return known ? (double) usable / need.amount() : Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Looks into the cupboard, first expired first out.
     *
     * @param needs what is wanted, each material once
     * @param lots all lots by the need's key; a key that is missing is of a material that is not kept, and holds nothing up
     * @param day the day of making
     * @return what serves what
     */
    public static Cupboard look(List<Need> needs, Map<String, List<Lot>> lots, LocalDate day) {
        return look(needs, lots, Map.of(), day);
    }

    /**
     * Looks into the cupboard, first expired first out but for what was picked by hand.
     *
     * @param needs what is wanted, each material once
     * @param lots all lots by the need's key; a key that is missing is of a material that is not kept, and holds nothing up
     * @param picked what was picked by hand, by the need's key
     * @param day the day of making
     * @return what serves what; where what was picked cannot be, what would be taken without it
     */
    public static Cupboard look(
            List<Need> needs, Map<String, List<Lot>> lots, Map<String, Picked> picked, LocalDate day) {
        return new Cupboard(needs.stream()
                .map(need -> line(need, lots, picked.getOrDefault(need.key(), Picked.NOTHING), day))
                .toList());
    }

    private static Line line(Need need, Map<String, List<Lot>> lots, Picked picked, LocalDate day) {
        boolean known = lots.containsKey(need.key());
        long wanted = known ? need.amount() : 0;
        List<Lot> called = lots.getOrDefault(need.key(), List.of());
        List<Lot> own = called.stream().filter(need::isServedBy).toList();
        List<Lot> others = called.stream().filter(lot -> !need.isServedBy(lot)).toList();
        Outcome<Allocation> chosen = picked.first()
                .flatMap(id -> ofAnother(id, need.key(), lots).or(() -> ofOtherKind(id, need, others)))
                .<Outcome<Allocation>>map(Outcome::refused)
                .orElseGet(() -> picked.of(wanted, own, day));
        Allocation allocation = chosen instanceof Outcome.Ok<Allocation> ok
                ? ok.value()
                : picked.withoutFirst().of(wanted, own, day).orThrow();
        return new Line(
                need,
                known,
                picked.usableAmount(own, day),
                allocation.withOthers(others),
                chosen.problems().stream().findFirst());
    }

    private static Optional<Problem> ofAnother(String id, String key, Map<String, List<Lot>> lots) {
        return lots.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(key))
                .flatMap(entry -> entry.getValue().stream())
                .filter(lot -> lot.id().equals(id))
                .findFirst()
                .map(lot ->
                        new Problem(id, "lot " + lot.code() + " is of another material", "choose one of those shown"));
    }

    private static Optional<Problem> ofOtherKind(String id, Need need, List<Lot> others) {
        return others.stream()
                .filter(lot -> lot.id().equals(id))
                .findFirst()
                .map(lot -> new Problem(
                        id,
                        "lot " + lot.code()
                                + (need.alkali() ? " is no alkali" : " is lye or alkali, not " + need.name()),
                        "choose one of those shown, and put that lot right in the cupboard"));
    }

    /**
     * What was picked by hand and cannot be taken.
     *
     * @return a problem for each, its path the lot's id
     */
    public List<Problem> refused() {
        return lines.stream().flatMap(line -> line.refused().stream()).toList();
    }

    /**
     * Whether nothing that is kept is short.
     *
     * @return whether it can be made
     */
    public boolean isEnough() {
        return shortages().isEmpty();
    }

    /**
     * What is short.
     *
     * @return those lines, in their order
     */
    public List<Line> shortages() {
        return lines.stream().filter(line -> line.allocation().shortBy() > 0).toList();
    }

    /**
     * How many whole bars the cupboard allows, if so many come of what was asked for. Every need grows alike, so that the scarcest
     * material decides.
     *
     * @param bars how many bars the needs make, above 0
     * @return whole bars, 0 or more; {@link Long#MAX_VALUE} where nothing that is kept limits them
     */
    public long barsAllowed(int bars) {
        double times = lines.stream().mapToDouble(Line::times).min().orElse(Double.POSITIVE_INFINITY);
        return Double.isInfinite(times) ? Long.MAX_VALUE : (long) Math.floor(times * bars * (1 + ROUNDING));
    }

    /** So that a cupboard with just enough for twenty bars does not say nineteen. */
    private static final double ROUNDING = 1e-12;
}
