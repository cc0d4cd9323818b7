package lyewright.records.equipment;

import lyewright.makingsheet.Balance;

/**
 * A balance of the workshop.
 *
 * @param id its id
 * @param balance the balance
 */
public record KeptBalance(String id, Balance balance) {

    /** What it is called. */
    public String name() {
        return balance.name();
    }
}
