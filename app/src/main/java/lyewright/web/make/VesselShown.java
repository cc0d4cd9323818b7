package lyewright.web.make;

import java.util.List;
import java.util.Optional;
import lyewright.web.Piece;
import lyewright.words.WeighRow;
import lyewright.words.WeighVessel;

/**
 * A vessel and what is weighed into it.
 *
 * @param vessel which
 * @param balance the balance it stands on, where all of it is weighed on one
 * @param rows in the order of weighing
 */
public record VesselShown(WeighVessel vessel, Optional<String> balance, List<Row> rows) {

    /** Copies its list. */
    public VesselShown {
        rows = List.copyOf(rows);
    }

    /**
     * One thing to weigh.
     *
     * @param row what it is
     * @param weigh how much
     * @param reads what the balance shows then
     * @param percentOfOils of all oils
     */
    public record Row(WeighRow row, Piece weigh, Piece reads, Piece percentOfOils) {

        /** Whether the mass is said in grams and in ounces, which a phone has to set one under the other. */
        public boolean inTwoUnits() {
            return !row.weigh().also().isEmpty();
        }
    }

    static VesselShown of(WeighVessel vessel, FigureLinks links) {
        List<String> balances =
                vessel.rows().stream().map(WeighRow::balance).distinct().toList();
        return new VesselShown(
                vessel,
                balances.size() == 1 ? Optional.of(balances.get(0)) : Optional.empty(),
                vessel.rows().stream().map(row -> row(row, links)).toList());
    }

    private static Row row(WeighRow row, FigureLinks links) {
        return new Row(
                row,
                links.figure(row.weigh().text(), row.path() + ".weighGrams"),
                links.figure(row.reads().text(), row.path() + ".readingGrams"),
                links.figure(row.percentOfOils() + " %", row.path() + ".percentOfOils"));
    }

    /** Whether readings run on from row to row: cups have one row each, which says its mass already. */
    public boolean readsOn() {
        return !vessel.cups() && (rows.size() > 1 || vessel.empty().isPresent());
    }
}
