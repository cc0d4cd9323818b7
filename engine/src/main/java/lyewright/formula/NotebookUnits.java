package lyewright.formula;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import lyewright.formula.NotebookLine.Quantity;
import lyewright.measure.Fractions;
import lyewright.measure.MassUnit;
import org.jspecify.annotations.Nullable;

/** The words that stand for a unit in a notebook. */
final class NotebookUnits {

    static final String PERCENT = "%";

    private static final Map<String, String> MASSES = Map.ofEntries(
            Map.entry("mg", "mg"),
            Map.entry("g", "g"),
            Map.entry("gm", "g"),
            Map.entry("gms", "g"),
            Map.entry("gram", "g"),
            Map.entry("grams", "g"),
            Map.entry("gramme", "g"),
            Map.entry("grammes", "g"),
            Map.entry("kg", "kg"),
            Map.entry("kgs", "kg"),
            Map.entry("kilo", "kg"),
            Map.entry("kilos", "kg"),
            Map.entry("kilogram", "kg"),
            Map.entry("kilograms", "kg"),
            Map.entry("oz", "oz"),
            Map.entry("ozs", "oz"),
            Map.entry("ounce", "oz"),
            Map.entry("ounces", "oz"),
            Map.entry("lb", "lb"),
            Map.entry("lbs", "lb"),
            Map.entry("pound", "lb"),
            Map.entry("pounds", "lb"));

    private static final Map<String, String> VOLUMES = Map.ofEntries(
            Map.entry("ml", "ml"),
            Map.entry("mls", "ml"),
            Map.entry("millilitre", "ml"),
            Map.entry("millilitres", "ml"),
            Map.entry("milliliter", "ml"),
            Map.entry("milliliters", "ml"),
            Map.entry("l", "l"),
            Map.entry("litre", "l"),
            Map.entry("litres", "l"),
            Map.entry("liter", "l"),
            Map.entry("liters", "l"));

    /** A grain to some and a gram to others. */
    static final String GRAIN_OR_GRAM = "gr";

    /** Said of amounts, but nobody knows how much each weighs. */
    private static final Set<String> UNSURE = Set.of(
            "cup",
            "cups",
            "tsp",
            "tbsp",
            "spoon",
            "spoons",
            "spoonful",
            "spoonfuls",
            "scoop",
            "scoops",
            "capful",
            "capfuls",
            "handful",
            "handfuls",
            "drop",
            "drops",
            "pinch",
            "pinches",
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

    private static final Set<String> HALVES = Set.of("half", "quarter", "third");

    /** Other words for spoons. A single letter is one as people write recipes: large for the large spoon. */
    private static final Map<String, String> SPOONS = Map.ofEntries(
            Map.entry("T", "tbsp"),
            Map.entry("t", "tsp"),
            Map.entry("tsps", "tsp"),
            Map.entry("teaspoon", "tsp"),
            Map.entry("teaspoons", "tsp"),
            Map.entry("teaspoonful", "tsp"),
            Map.entry("tbs", "tbsp"),
            Map.entry("tbl", "tbsp"),
            Map.entry("tbls", "tbsp"),
            Map.entry("tblsp", "tbsp"),
            Map.entry("tbsps", "tbsp"),
            Map.entry("tablespoon", "tbsp"),
            Map.entry("tablespoons", "tbsp"),
            Map.entry("tablespoonful", "tbsp"));

    private static final Set<String> PERCENTS = Set.of(PERCENT, "percent", "% by weight", "percent by weight");

    private static final Pattern PLAIN = Pattern.compile("[0-9]{0,9}\\.?[0-9]{1,9}");

    /** A comma with other than three digits behind it, or behind a nought, parts no thousands. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9]{1,9},(?:[0-9]{1,2}|[0-9]{4,9})|0,[0-9]{3}");

    private static final Pattern THOUSANDS =
            Pattern.compile("[0-9]{1,3}(?:,[0-9]{3})+\\.[0-9]+|[0-9]{1,3}(?:,[0-9]{3}){2,3}");

    private static final Pattern ONE_COMMA = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

    private static final Pattern WITH_COMMA =
            Pattern.compile("(?<![0-9.,])(?:[0-9]{1,9},(?:[0-9]{1,2}|[0-9]{4,9})|0,[0-9]{3})(?![0-9.,])");

    private NotebookUnits() {}

    /** Decimal commas as points, where they can be nothing else. */
    static String withoutCommas(String text) {
        return WITH_COMMA.matcher(text).replaceAll(found -> found.group().replace(',', '.'));
    }

    /** Whether a number's comma may part thousands or the whole from its parts. */
    static boolean isThousandOrOne(String number) {
        return ONE_COMMA.matcher(number).matches();
    }

    /** Whether a word is a number, part of one, a slip for one (5oo), or a unit. */
    static boolean saysHowMuch(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        return Character.isDigit(word.charAt(0))
                || HALVES.contains(small)
                || MASSES.containsKey(small)
                || VOLUMES.containsKey(small)
                || UNSURE.contains(small)
                || SPOONS.containsKey(word);
    }

    static boolean isUnsure(String symbol) {
        return UNSURE.contains(symbol);
    }

    /** A number with a fraction, or with a comma that can mean one thing only, as a decimal; any other as it is. */
    static String decimal(String number) {
        if (DECIMAL_COMMA.matcher(number).matches()) {
            return number.replace(',', '.');
        }
        if (THOUSANDS.matcher(number).matches()) {
            return number.replace(",", "");
        }
        return Fractions.decimal(number).orElse(number);
    }

    /** Pounds and ounces, or kilograms and grams, in the smaller of the two; null for anything else. */
    static @Nullable String sum(Quantity large, Quantity small) {
        MassUnit of = large.unit().equals("lb") && small.unit().equals("oz")
                ? MassUnit.POUND
                : large.unit().equals("kg") && small.unit().equals("g") ? MassUnit.KILOGRAM : null;
        if (of == null
                || !large.of().isEmpty()
                || !PLAIN.matcher(large.number()).matches()
                || !PLAIN.matcher(small.number()).matches()) {
            return null;
        }
        BigDecimal each = of == MassUnit.POUND ? BigDecimal.valueOf(16) : BigDecimal.valueOf(1000);
        BigDecimal rest = new BigDecimal(small.number());
        return rest.compareTo(each) >= 0
                ? null
                : new BigDecimal(large.number())
                        .multiply(each)
                        .add(rest)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    /** The symbol that one line may say for all lines: of a mass, or percent; null for any other word. */
    static @Nullable String forAll(String words) {
        String small = words.toLowerCase(Locale.ROOT);
        return PERCENTS.contains(small) ? PERCENT : mass(small);
    }

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
        if (PERCENTS.contains(small)) {
            return PERCENT;
        }
        if (SPOONS.containsKey(word) || SPOONS.containsKey(small)) {
            return SPOONS.getOrDefault(word, SPOONS.get(small));
        }
        return isFluid(small) || UNSURE.contains(small) || small.equals(GRAIN_OR_GRAM) ? small : null;
    }

    static boolean isFluid(String word) {
        return word.startsWith("fl") && word.endsWith("oz");
    }

    static boolean isVolume(String symbol) {
        return VOLUMES.containsKey(symbol);
    }
}
