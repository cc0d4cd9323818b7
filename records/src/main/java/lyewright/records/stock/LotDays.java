package lyewright.records.stock;

import java.time.LocalDate;
import java.util.Optional;
import lyewright.measure.Problem;

/**
 * Days of a lot that are hardly meant: 2062 for 2026. No oil keeps ten years, common practice; salt and minerals may, so that it is
 * asked about. Nothing keeps a hundred that anybody here will see.
 */
public final class LotDays {

    private static final int LONG = 10;
    private static final int NEVER = 100;
    private static final String BEST_BEFORE = "bestBefore";
    private static final String LOOK = "look at its year again";

    private LotDays() {}

    /** A best before that is not kept. */
    public static Optional<Problem> neverSoLong(LocalDate received, LocalDate last) {
        return last.isAfter(received.plusYears(NEVER))
                ? Optional.of(new Problem(BEST_BEFORE, "that is more than a hundred years after it came", LOOK))
                : Optional.empty();
    }

    /** A best before that is asked about; not one that is not kept. */
    public static Optional<Problem> hardlySoLong(LocalDate received, LocalDate last) {
        return last.isAfter(received.plusYears(LONG))
                        && neverSoLong(received, last).isEmpty()
                ? Optional.of(new Problem(
                        BEST_BEFORE,
                        "that is more than ten years after it came, and no oil keeps so long",
                        "look at the label again"))
                : Optional.empty();
    }

    /** A day that something came on, at the field of that day, that is not kept. */
    public static Optional<Problem> neverSoLongAgo(String path, LocalDate came, LocalDate today) {
        return came.isBefore(today.minusYears(NEVER))
                ? Optional.of(new Problem(path, "that day is more than a hundred years ago", LOOK))
                : Optional.empty();
    }

    /** A day that something came on that is asked about; not one that is not kept. */
    public static Optional<Problem> hardlySoLongAgo(String path, LocalDate came, LocalDate today) {
        return came.isBefore(today.minusYears(LONG))
                        && neverSoLongAgo(path, came, today).isEmpty()
                ? Optional.of(new Problem(path, "that day is more than ten years ago", LOOK))
                : Optional.empty();
    }
}
