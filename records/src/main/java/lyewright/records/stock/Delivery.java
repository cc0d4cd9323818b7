package lyewright.records.stock;

import java.util.List;

/**
 * What came at a time from one supplier.
 *
 * @param supplier what they are called, or empty; one who is not known yet is added
 * @param arrivals what came; whom it is from is said above, not in the lots
 */
public record Delivery(String supplier, List<Arrival> arrivals) {

    /** Copies its list. */
    public Delivery {
        arrivals = List.copyOf(arrivals);
    }
}
