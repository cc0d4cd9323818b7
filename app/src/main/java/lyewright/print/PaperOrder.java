package lyewright.print;

import java.time.LocalDate;
import lyewright.words.UnitsShown;

/**
 * How a paper is to be printed, and what only the caller knows of it. All text may be empty.
 *
 * @param size of the paper
 * @param workshop its name
 * @param title what the recipe is called; empty for its name in the formula
 * @param version which; empty for the version in the formula
 * @param printedOn the day
 * @param units that the maker is used to
 * @param mould what the mould is called, or how much was asked
 */
public record PaperOrder(
        PaperSize size,
        String workshop,
        String title,
        String version,
        LocalDate printedOn,
        UnitsShown units,
        String mould) {}
