package lyewright.records.ledger;

import lyewright.chain.Chain;

/**
 * How far the ledger goes.
 *
 * @param number the last entry's number, 0 where there is none
 * @param seal its seal
 */
public record Head(long number, String seal) {

    /** As it is printed, such as {@code 214-3f09ab51c2d7}. */
    public String printed() {
        return Chain.printed(number, seal);
    }

    /** Whether nothing was written yet. */
    public boolean isEmpty() {
        return number == 0;
    }
}
