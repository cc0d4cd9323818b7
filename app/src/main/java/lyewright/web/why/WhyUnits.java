package lyewright.web.why;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.makingsheet.Balance;
import lyewright.makingsheet.MakingSheet;
import lyewright.words.UnitsShown;

/** Numbers of a reason with their unit: what is weighed as its balance shows it, any mass also as a workshop in ounces reads it. */
final class WhyUnits {

    private static final Pattern WEIGHED = Pattern.compile("vessels\\[([0-9]+)]\\.items\\[([0-9]+)]\\.weighGrams");
    private static final String MASS = "g";

    private final UnitsShown units;
    private final MakingSheet sheet;

    WhyUnits(UnitsShown units, MakingSheet sheet) {
        this.units = units;
        this.sheet = sheet;
    }

    static String with(String text, String unit) {
        return unit.isEmpty() ? text : text + " " + unit;
    }

    /**
     * A number.
     *
     * @param figure path of the figure that it is; empty where it is none
     * @param value the number
     * @param text its digits
     * @param unit its unit, perhaps empty
     */
    String said(String figure, double value, String text, String unit) {
        String plain = with(text, unit);
        return unit.equals(MASS)
                ? balance(figure).map(balance -> units.on(balance, value)).orElseGet(() -> units.beside(value, plain))
                : plain;
    }

    private Optional<Balance> balance(String figure) {
        Matcher weighed = WEIGHED.matcher(figure);
        return weighed.matches()
                ? Optional.of(sheet.vessels()
                        .get(Integer.parseInt(weighed.group(1)))
                        .weighings()
                        .get(Integer.parseInt(weighed.group(2)))
                        .balance())
                : Optional.empty();
    }
}
