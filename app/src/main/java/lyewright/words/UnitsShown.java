package lyewright.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import lyewright.formula.Process;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Caution;
import lyewright.makingsheet.Weighing;
import lyewright.measure.Mass;
import lyewright.measure.MassUnit;
import lyewright.measure.Temperature;

/**
 * The units that a reader is used to. What is read from a balance is said in the balance's own unit first, since its display says
 * it so; all else in the reader's.
 *
 * @param ounces whether masses are wanted in ounces, grams beside them
 * @param fahrenheit whether temperatures are wanted in degrees Fahrenheit
 */
public record UnitsShown(boolean ounces, boolean fahrenheit) {

    /** Grams and degrees Celsius; what was written in other degrees stays in them. */
    public static final UnitsShown METRIC = new UnitsShown(false, false);

    private static final double MANY_OUNCES = 100;
    private static final double OUNCES_IN_A_POUND = 16;
    private static final double GRAMS_IN_KILOGRAM = 1000;

    /** The unit of masses, as pictures ask for it. */
    public MassUnit mass() {
        return ounces ? MassUnit.OUNCE : MassUnit.GRAM;
    }

    /** A mass as one balance shows it, and in ounces where they are wanted and the balance has none. */
    public ShownMass shown(Balance balance, double grams) {
        ShownMass shown = Figures.shown(balance, grams);
        if (!ounces || inOunces(balance.step().unit())) {
            return shown;
        }
        int decimals = Math.max(2, Figures.gramDecimals(balance) + 1);
        return shown.and(Figures.fixed(grams / MassUnit.OUNCE.grams().doubleValue(), decimals) + " oz");
    }

    static boolean inOunces(MassUnit unit) {
        return unit == MassUnit.OUNCE || unit == MassUnit.POUND;
    }

    /** The same on one line. */
    public String on(Balance balance, double grams) {
        return shown(balance, grams).text();
    }

    /** The same for what was weighed. */
    public String on(Balance balance, Mass mass) {
        return on(balance, mass.grams());
    }

    /** What several weighings come to. */
    public String sum(List<Weighing> weighings) {
        return wanted(grams(weighings), Figures.sum(weighings)).text();
    }

    /** The same for within brackets, which it does not nest. */
    String sumInBrackets(List<Weighing> weighings) {
        ShownMass sum = wanted(grams(weighings), Figures.sum(weighings));
        return sum.also().isEmpty()
                ? sum.shown()
                : sum.shown() + ", " + sum.also().get(0);
    }

    private static double grams(List<Weighing> weighings) {
        return weighings.stream().mapToDouble(w -> w.weigh().grams()).sum();
    }

    /** A caution with its masses and temperatures in the units that are wanted. */
    public Caution told(Caution caution) {
        Caution told = ounces ? caution.in(this::beside) : caution;
        return fahrenheit
                ? new Caution(
                        told.id(),
                        told.level(),
                        "{}",
                        FahrenheitText.of(told.remedy()),
                        told.source(),
                        List.of(FahrenheitText.of(told.text())))
                : told;
    }

    /** A sentence that speaks of degrees Celsius, in the degrees that are wanted. */
    String warmth(String sentence) {
        return fahrenheit ? FahrenheitText.of(sentence) : sentence;
    }

    /** A mass that nobody weighs as such. */
    public String about(double grams) {
        return wanted(grams, Figures.about(grams)).text();
    }

    /** A mass in whole grams. */
    String whole(double grams) {
        return wanted(grams, Figures.fixed(grams, 0) + " g").text();
    }

    /** A mass to the tenth of a gram. */
    public String tenths(double grams) {
        return wanted(grams, Figures.grams(grams, 1)).text();
    }

    /** A mass that lies on a shelf. */
    public String stocked(double grams) {
        return wanted(grams, Figures.stocked(grams)).text();
    }

    /** The same where it is read from a balance. */
    String about(Balance under, double grams) {
        return read(under, grams, Figures.about(grams));
    }

    /** So little that hundredths of an ounce would say nothing. */
    public String traces(double grams) {
        String inGrams = Figures.fixed(grams, 3) + " g";
        return ounces
                ? Figures.fixed(grams / MassUnit.OUNCE.grams().doubleValue(), 5) + " oz (" + inGrams + ")"
                : inGrams;
    }

    /** A mass of which it is known already how it reads in grams. */
    public String beside(double grams, String inGrams) {
        return wanted(grams, inGrams).text();
    }

    /** A mass to the tenth of a gram that is read from a balance. */
    String tenths(Balance under, double grams) {
        return read(under, grams, Figures.grams(grams, 1));
    }

    private String read(Balance under, double grams, String inGrams) {
        ShownMass wanted = wanted(grams, inGrams);
        return ounces && !inOunces(under.step().unit())
                ? new ShownMass(inGrams, List.of(wanted.shown())).text()
                : wanted.text();
    }

    private ShownMass wanted(double grams, String inGrams) {
        if (!ounces) {
            return new ShownMass(inGrams, List.of());
        }
        return new ShownMass(inOunces(grams), List.of(inGrams));
    }

    /** A mass in ounces alone. */
    public static String inOunces(double grams) {
        double value = grams / MassUnit.OUNCE.grams().doubleValue();
        return Figures.fixed(value, value < MANY_OUNCES ? 2 : 1) + " oz";
    }

    /** What is said of how much of the oils: a kilogram, or a pound for whoever wants ounces. */
    public String perOils() {
        return ounces ? "per pound" : "per kilogram";
    }

    /** Grams for a kilogram of oils as grams for as much of them as {@link #perOils} says. */
    BigDecimal per(BigDecimal gramsPerKilogram) {
        return ounces ? gramsPerKilogram.multiply(MassUnit.POUND.grams()).movePointLeft(3) : gramsPerKilogram;
    }

    /** Grams for a kilogram of oils as a plain number: as it is, or as ounces for a pound of them. */
    public String forOils(double gramsPerKilogram) {
        return ounces ? Figures.fixed(ouncesForAPound(gramsPerKilogram), 3) : Figures.fixed(gramsPerKilogram, 1);
    }

    /** The same ratio in ounces for a pound. */
    public static double ouncesForAPound(double gramsPerKilogram) {
        return gramsPerKilogram * OUNCES_IN_A_POUND / GRAMS_IN_KILOGRAM;
    }

    /** A kilogram, as what figures are for is said. */
    public String kilogram() {
        return ounces ? about(GRAMS_IN_KILOGRAM) : "1 kg";
    }

    /** A temperature as typed, with its degree sign; what was typed stands in brackets where other degrees are wanted. */
    public String degrees(Temperature typed) {
        String asTyped = Practices.degrees(typed);
        if (!fahrenheit || typed.scale() == Temperature.Scale.F) {
            return asTyped;
        }
        BigDecimal converted = BigDecimal.valueOf(toFahrenheit(typed.celsius())).setScale(0, RoundingMode.HALF_UP);
        return converted.toPlainString() + " °F (" + asTyped + ")";
    }

    /** How an oven is used, in words. */
    public String oven(Process.Oven oven) {
        return degrees(oven.at())
                + oven.hold().map(time -> " for " + time).orElse("")
                + (oven.thenOff() ? ", then off" : "");
    }

    static double toFahrenheit(double celsius) {
        return Math.rint(celsius * 1.8 + 32);
    }
}
