package lyewright.web.recipe;

import java.math.BigDecimal;
import lyewright.formula.Addition;
import lyewright.formula.Amount;
import lyewright.formula.OilLine;
import lyewright.measure.WrittenMass;
import lyewright.words.Figures;
import lyewright.words.UnitsShown;

/** From one amount as typed to another, in plain words: {@code 50 g more}. Empty where there is nothing plain to say. */
final class TypedChange {

    private static final double LEAST = 0.05;
    private static final int DECIMALS = 2;

    private final UnitsShown units;

    TypedChange(UnitsShown units) {
        this.units = units;
    }

    /** Of an oil: of masses by mass, else by its share of all oils. */
    String oil(OilLine.Amount a, double shareA, OilLine.Amount b, double shareB) {
        return a instanceof OilLine.Weight from && b instanceof OilLine.Weight to
                ? masses(from.mass(), to.mass(), "")
                : points(percent(shareA), percent(shareB), "");
    }

    private static BigDecimal percent(double share) {
        return new BigDecimal(Figures.upTo(100 * share, DECIMALS));
    }

    /** Of an addition, where both are said in the same way. */
    String addition(Addition a, Addition b) {
        Amount from = a.amount();
        Amount to = b.amount();
        if (from instanceof Amount.Percent one && to instanceof Amount.Percent other && one.base() == other.base()) {
            return points(one.share().percent(), other.share().percent(), "");
        }
        if (from instanceof Amount.Per one
                && to instanceof Amount.Per other
                && one.base() == other.base()
                && one.per() == other.per()) {
            return masses(
                    one.mass(),
                    other.mass(),
                    " per " + one.per().symbol() + " " + one.base().word());
        }
        if (from instanceof Amount.Weight one && to instanceof Amount.Weight other) {
            return masses(one.mass(), other.mass(), "");
        }
        return "";
    }

    /** In the unit that both are typed in, else in the reader's. */
    private String masses(WrittenMass a, WrittenMass b, String rate) {
        if (a.unit() != b.unit()) {
            String change = mass(a.grams(), b.grams());
            return change.isEmpty() ? "" : change + rate;
        }
        BigDecimal change = b.value().subtract(a.value());
        return change.signum() == 0
                ? ""
                : plain(change.abs()) + " " + a.unit().symbol() + rate + more(change.signum() > 0);
    }

    /** Of masses that nobody typed. */
    String mass(double gramsA, double gramsB) {
        double change = gramsB - gramsA;
        return Math.abs(change) < LEAST ? "" : units.tenths(Math.abs(change)) + more(change > 0);
    }

    /** Of percentages. */
    String points(BigDecimal a, BigDecimal b, String what) {
        BigDecimal change = b.subtract(a);
        if (change.signum() == 0) {
            return "";
        }
        String points = plain(change.abs()) + (change.abs().compareTo(BigDecimal.ONE) == 0 ? " point" : " points");
        return points + more(change.signum() > 0) + (what.isEmpty() ? "" : " " + what);
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }

    private static String more(boolean more) {
        return more ? " more" : " less";
    }
}
