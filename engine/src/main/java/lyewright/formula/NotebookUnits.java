package lyewright.formula;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The words that stand for a unit in a notebook. */
final class NotebookUnits {

    static final String PERCENT = "%";

    private static final Map<String, String> MASSES = Map.ofEntries(
            Map.entry("mg", "mg"),
            Map.entry("g", "g"),
            Map.entry("gram", "g"),
            Map.entry("grams", "g"),
            Map.entry("kg", "kg"),
            Map.entry("kilogram", "kg"),
            Map.entry("kilograms", "kg"),
            Map.entry("oz", "oz"),
            Map.entry("ounce", "oz"),
            Map.entry("ounces", "oz"),
            Map.entry("lb", "lb"),
            Map.entry("lbs", "lb"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"));

    private static final Map<String, String> VOLUMES =
            Map.of("ml", "ml", "millilitre", "ml", "millilitres", "ml", "l", "l", "litre", "l", "litres", "l");

    /** Said of amounts, but nobody knows how much each is; gr is a grain to some and a gram to others. */
    private static final Set<String> UNSURE = Set.of(
            "gr",
            "cup",
            "cups",
            "tsp",
            "tbsp",
            "teaspoon",
            "teaspoons",
            "tablespoon",
            "tablespoons",
            "drop",
            "drops",
            "pinch",
            "dash",
            "part",
            "parts",
            "pint",
            "pints",
            "quart",
            "quarts",
            "gal",
            "gallon",
            "gallons");

    private NotebookUnits() {}

    /** The symbol of a mass; null for any other word. */
    static @Nullable String mass(String word) {
        return MASSES.get(word.toLowerCase(Locale.ROOT));
    }

    /** The symbol that an amount is read with, the word itself where it is surely meant as a unit but none; else null. */
    static @Nullable String symbol(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        if (MASSES.containsKey(small)) {
            return MASSES.get(small);
        }
        if (VOLUMES.containsKey(small)) {
            return VOLUMES.get(small);
        }
        return small.equals(PERCENT) || isFluid(small) || UNSURE.contains(small) ? small : null;
    }

    private static boolean isFluid(String word) {
        return word.startsWith("fl") && word.endsWith("oz");
    }

    static boolean isVolume(String symbol) {
        return VOLUMES.containsKey(symbol);
    }
}
