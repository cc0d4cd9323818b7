package lyewright.print;

import java.time.LocalDate;
import java.util.List;
import lyewright.words.Labelled;
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
 * @param lots from which lots it is taken
 */
public record PaperOrder(
        PaperSize size,
        String workshop,
        String title,
        String version,
        LocalDate printedOn,
        UnitsShown units,
        String mould,
        Lots lots) {

    /** Of a maker without a cupboard. */
    public PaperOrder(
            PaperSize size,
            String workshop,
            String title,
            String version,
            LocalDate printedOn,
            UnitsShown units,
            String mould) {
        this(size, workshop, title, version, printedOn, units, mould, Lots.NONE);
    }

    /**
     * From which lots a batch is taken.
     *
     * @param taken each material with its lots
     * @param certificates whose certificates it is reckoned with; empty where it is not
     */
    public record Lots(List<Labelled> taken, String certificates) {

        /** Of a maker without a cupboard. */
        public static final Lots NONE = new Lots(List.of(), "");

        /** Copies its list. */
        public Lots {
            taken = List.copyOf(taken);
        }
    }
}
