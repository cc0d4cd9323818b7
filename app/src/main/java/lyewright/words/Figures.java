package lyewright.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import lyewright.formula.WrittenFigure;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.Weighing;
import lyewright.measure.Mass;
import lyewright.measure.MassUnit;

/** Numbers as people read them: plain decimals, a point, a fixed count of decimals, never a minus before nothing. */
public final class Figures {

    private static final double SMALL = 100;
    private static final double LARGE = 10_000;
    private static final double KILOGRAM = 1000;

    /** Decimals of a figure that was reckoned from others. */
    private static final int SHOWN = 2;

    /** What only reckoning in binary adds. */
    private static final double ROUNDING = 1e-6;

    private Figures() {}

    /** A number with so many decimals. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    /** A number with up to so many decimals, none that say nothing. */
    public static String upTo(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : plain(rounded);
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    /** A number with its sign, {@code +0.4} or {@code -0.4}; {@code 0.0} for nothing. */
    public static String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        return text.startsWith("-")
                        || BigDecimal.valueOf(value)
                                        .setScale(decimals, RoundingMode.HALF_UP)
                                        .signum()
                                == 0
                ? text
                : "+" + text;
    }

    /** Percent, {@code 18.2 %}. */
    public static String percent(double value, int decimals) {
        return fixed(value, decimals) + " %";
    }

    /** A mass with so many decimals of a gram; from 10 kg on in kilograms, with as many digits. */
    public static String grams(double grams, int decimals) {
        return grams < LARGE ? fixed(grams, decimals) + " g" : fixed(grams / KILOGRAM, decimals + 3) + " kg";
    }

    /**
     * A mass that lies on a shelf: what nobody means is left out. Kilograms to the gram; whole grams from 100 g on, unless it was
     * weighed to the tenth; tenths under that, hundredths under 10 g.
     */
    public static String stocked(double grams) {
        double much = Math.abs(grams);
        if (much >= KILOGRAM) {
            return upTo(grams / KILOGRAM, 3) + " kg";
        }
        boolean toTheTenth = Math.abs(much * 10 - Math.rint(much * 10)) < ROUNDING;
        return upTo(grams, much >= SMALL && !toTheTenth ? 0 : much < 10 ? 2 : 1) + " g";
    }

    /** A figure of somebody's with at most two decimals, and none that say nothing of those that are left out. */
    public static String shown(WrittenFigure figure) {
        return new WrittenFigure(shown(figure.first()), figure.form(), shown(figure.second())).toString();
    }

    private static BigDecimal shown(BigDecimal value) {
        if (value.scale() <= SHOWN) {
            return value;
        }
        // a small doubt is not told as none
        BigDecimal rounded = value.setScale(SHOWN, RoundingMode.HALF_UP);
        BigDecimal kept = rounded.signum() == 0 ? value.round(new MathContext(1, RoundingMode.HALF_UP)) : rounded;
        return new BigDecimal(plain(kept));
    }

    /** Temperatures of a formula file as people read them: {@code 38 °C}, {@code 55 °C, then off}. */
    public static String degrees(String written) {
        return written.replaceAll(" ([CF])\\b", " °$1").replace(" then off", ", then off");
    }

    /** A mass that nobody weighs as such: tenths of a gram under 100 g, whole grams from there. */
    public static String about(double grams) {
        return grams(grams, grams < SMALL ? 1 : 0);
    }

    /** A mass as one balance shows it: with its step's decimals, in its step's unit, then in grams. */
    public static ShownMass shown(Balance balance, double grams) {
        MassUnit unit = balance.step().unit();
        String inGrams = grams(grams, gramDecimals(balance));
        if (unit == MassUnit.GRAM || unit == MassUnit.MILLIGRAM) {
            return new ShownMass(inGrams, List.of());
        }
        int decimals = Math.max(0, balance.step().value().stripTrailingZeros().scale());
        String own = fixed(grams / unit.grams().doubleValue(), decimals) + " " + unit.symbol();
        return new ShownMass(own, List.of(inGrams));
    }

    /** The same on one line, grams in brackets. */
    public static String on(Balance balance, double grams) {
        return shown(balance, grams).text();
    }

    /** The same for what was weighed. */
    public static String on(Balance balance, Mass mass) {
        return on(balance, mass.grams());
    }

    /** Decimals of a gram that a balance tells apart; a step that is no round number of grams needs one more. */
    public static int gramDecimals(Balance balance) {
        MassUnit unit = balance.step().unit();
        if (unit == MassUnit.GRAM || unit == MassUnit.MILLIGRAM || unit == MassUnit.KILOGRAM) {
            BigDecimal step = balance.step().value().multiply(unit.grams()).stripTrailingZeros();
            return Math.max(0, Math.min(3, step.scale()));
        }
        double step = balance.step().grams();
        return step >= 10 ? 0 : step >= 1 ? 1 : step >= 0.1 ? 2 : 3;
    }

    /** What several weighings come to, with the decimals of the finest balance among them. */
    public static String sum(List<Weighing> weighings) {
        double grams = 0;
        int decimals = 0;
        for (Weighing weighing : weighings) {
            grams += weighing.weigh().grams();
            decimals = Math.max(decimals, gramDecimals(weighing.balance()));
        }
        return grams(grams, decimals);
    }
}
