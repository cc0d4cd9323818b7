package lyewright.words;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Sentences that speak of degrees Celsius, for whoever reads degrees Fahrenheit. */
final class FahrenheitText {

    private static final Pattern CELSIUS = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)(?: to ([0-9]+(?:\\.[0-9]+)?))? °C");

    private static final Pattern KELVIN = Pattern.compile("([0-9]+(?:\\.[0-9]+)?) K\\b");

    private static final double FAHRENHEIT_IN_KELVIN = 1.8;

    private FahrenheitText() {}

    /** The same sentence: {@code 68 °F (20 °C)} for {@code 20 °C}, {@code 18 °F} for a difference of {@code 10 K}. */
    static String of(String sentence) {
        String apart = KELVIN.matcher(sentence)
                .replaceAll(difference ->
                        Figures.fixed(FAHRENHEIT_IN_KELVIN * Double.parseDouble(difference.group(1)), 0) + " °F");
        return CELSIUS.matcher(apart).replaceAll(FahrenheitText::degrees);
    }

    private static String degrees(MatchResult celsius) {
        String to = celsius.group(2) == null ? "" : " to " + fahrenheit(celsius.group(2));
        return fahrenheit(celsius.group(1)) + to + " °F (" + celsius.group() + ")";
    }

    private static String fahrenheit(String celsius) {
        return Figures.fixed(UnitsShown.toFahrenheit(Double.parseDouble(celsius)), 0);
    }
}
