package lyewright.words;

import java.util.Optional;
import lyewright.formula.Process;
import lyewright.makingsheet.MakingSheet;
import lyewright.material.Tables;
import lyewright.measure.Temperature;

/** Figures of common practice as words, always marked as what they are. */
public final class Practices {

    private static final double MINUTES = 60;

    private final Tables tables;
    private final UnitsShown units;
    private final boolean fahrenheit;

    private Practices(Tables tables, UnitsShown units, boolean fahrenheit) {
        this.tables = tables;
        this.units = units;
        this.fahrenheit = fahrenheit;
    }

    /** In degrees as the maker writes them. */
    public static Practices of(MakingSheet sheet) {
        return of(sheet, UnitsShown.METRIC);
    }

    /** In degrees as they are wanted, else as the maker writes them. */
    static Practices of(MakingSheet sheet, UnitsShown units) {
        Process process = sheet.formula().formula().process();
        boolean written = process.oils()
                .or(process::lye)
                .filter(t -> t.scale() == Temperature.Scale.F)
                .isPresent();
        return new Practices(sheet.formula().tables(), units, units.fahrenheit() || written);
    }

    /** Stands behind every figure that nobody published; explained once beneath them. */
    public static final String MARK = "*";

    /** What the mark means. */
    public static final String MEANING = "* common practice: what the trade does, without a published source";

    /**
     * A figure with its unit, marked: {@code 35 to 45 °C*}.
     *
     * @param id the practice's id in the tables
     * @return its words
     */
    public String text(String id) {
        Tables.Practice practice = tables.practice(id);
        String range = switch (practice.unit()) {
            case "C" ->
                fahrenheit
                        ? range(UnitsShown.toFahrenheit(practice.low()), UnitsShown.toFahrenheit(practice.high()), "°F")
                        : range(practice.low(), practice.high(), "°C");
            // parts of an hour are easier read as minutes
            case "h" ->
                practice.low() < 1
                        ? range(MINUTES * practice.low(), MINUTES * practice.high(), "min")
                        : range(practice.low(), practice.high(), "h");
            default -> range(practice.low(), practice.high(), practice.unit());
        };
        return range + MARK;
    }

    private static String range(double low, double high, String unit) {
        String from = Figures.upTo(low, 1);
        return (low == high ? from : from + " to " + Figures.upTo(high, 1)) + " " + unit;
    }

    /** A temperature as written, else by common practice. */
    String degrees(Optional<Temperature> written, String practice) {
        return written.map(units::degrees).orElseGet(() -> text(practice));
    }

    /** A temperature as typed, with its degree sign. */
    public static String degrees(Temperature temperature) {
        return temperature.value().toPlainString() + " °" + temperature.scale();
    }
}
