package lyewright.records.csv;

import java.util.List;

/**
 * How a file is read: guessed, and then as somebody chose.
 *
 * @param kind what its rows are
 * @param meanings what each column says; {@link Meaning#TOLD} leaves it out
 * @param decimal what stands before decimals
 * @param days which comes first in a day with strokes
 */
public record CsvChoice(CsvKind kind, List<Meaning> meanings, DecimalSign decimal, DayOrder days) {

    /** Copies its list. */
    public CsvChoice {
        meanings = List.copyOf(meanings);
    }
}
