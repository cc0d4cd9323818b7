package lyewright.makingsheet;

import lyewright.chemistry.BatchLine;
import lyewright.measure.Mass;

/**
 * One thing weighed into its vessel.
 *
 * @param line what it is
 * @param name what it is called
 * @param portion name of the portion it is for, empty outside portions
 * @param exactGrams before rounding
 * @param weigh after rounding to the balance
 * @param reading what the balance shows after it, with the vessel where that is not tared
 * @param balance on which balance
 * @param percentOfOils of all oils
 */
public record Weighing(
        BatchLine line,
        String name,
        String portion,
        double exactGrams,
        Mass weigh,
        Mass reading,
        Balance balance,
        double percentOfOils) {}
