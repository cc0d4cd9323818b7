package lyewright.words;

import lyewright.makingsheet.Weighing;

/**
 * One thing to weigh, as it is shown.
 *
 * @param path of its figures, as {@code why} knows them: {@code vessels[0].items[2]}
 * @param name what it is called
 * @param portion the portion it is for, empty outside portions
 * @param weigh how much, as its balance shows it
 * @param reads what the balance shows once it is in, all before it and an untared vessel included
 * @param balance the balance's name
 * @param percentOfOils of all oils, two decimals, without the sign
 * @param exact grams before rounding, to the milligram
 * @param tolerance how far off it may really be, weighed as shown: what its balance may err under the load, and half a step
 * @param weighing what it is
 */
public record WeighRow(
        String path,
        String name,
        String portion,
        ShownMass weigh,
        ShownMass reads,
        String balance,
        String percentOfOils,
        String exact,
        String tolerance,
        Weighing weighing) {}
