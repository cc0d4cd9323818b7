package lyewright.stock;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/**
 * A lot, as far as it matters to who takes from it.
 *
 * @param id what tells it from all others
 * @param code the workshop's own lot code
 * @param bestBefore the last day it is good on; empty where nobody said
 * @param received the day it came
 * @param status whether it may be used
 * @param left what is left of it, milligrams or pieces; below nothing where more was taken than came
 * @param alkali whether it is an alkali or stock lye: such a lot is taken as alkali and as nothing else, whatever it is called
 */
public record Lot(
        String id,
        String code,
        Optional<LocalDate> bestBefore,
        LocalDate received,
        LotStatus status,
        long left,
        boolean alkali) {

    /** A lot that is no alkali. */
    public Lot(
            String id, String code, Optional<LocalDate> bestBefore, LocalDate received, LotStatus status, long left) {
        this(id, code, bestBefore, received, status, left, false);
    }

    /**
     * First expired, first out: what expires sooner is taken sooner; what never says it expires comes last; of two alike, the one that
     * came first.
     */
    static final Comparator<Lot> FIRST_EXPIRED_FIRST = Comparator.comparing(
                    (Lot lot) -> lot.bestBefore().orElse(LocalDate.MAX))
            .thenComparing(Lot::received)
            .thenComparing(Lot::code)
            .thenComparing(Lot::id);

    /**
     * Whether it is past its day. On the day itself it is still good.
     *
     * @param day the day it is asked on
     * @return whether its best before is over
     */
    public boolean isExpired(LocalDate day) {
        return bestBefore.map(last -> last.isBefore(day)).orElse(false);
    }
}
