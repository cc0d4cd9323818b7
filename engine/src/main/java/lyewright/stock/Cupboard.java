package lyewright.stock;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

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
     */
    public record Need(String key, String name, long amount) {}

    /**
     * A material, and what serves it.
     *
     * @param need what is wanted
     * @param known whether the cupboard knows it; water from the tap, for one, nobody keeps
     * @param usable what may be used of it, 0 or more
     * @param allocation which lots
     */
    public record Line(Need need, boolean known, long usable, Allocation allocation) {

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
        return new Cupboard(needs.stream()
                .map(need -> {
                    boolean known = lots.containsKey(need.key());
                    List<Lot> own = lots.getOrDefault(need.key(), List.of());
                    Allocation allocation = Allocation.firstExpiredFirstOut(known ? need.amount() : 0, own, day);
                    return new Line(need, known, Allocation.usableAmount(own, day), allocation);
                })
                .toList());
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
