package lyewright.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.material.Alkali;

/** Words of the trade for what a recipe needs. Common practice. */
final class TradeWords {

    static final String SUPERFAT = "superfat";

    private static final Map<String, Alkali> ALKALIS = Map.of(
            "soda", Alkali.SODIUM,
            "caustic soda", Alkali.SODIUM,
            "lye", Alkali.SODIUM,
            "sodium hydroxide", Alkali.SODIUM,
            "naoh", Alkali.SODIUM,
            "potash", Alkali.POTASSIUM,
            "caustic potash", Alkali.POTASSIUM,
            "potassium hydroxide", Alkali.POTASSIUM,
            "koh", Alkali.POTASSIUM);

    private static final Set<String> WATERS = Set.of("water", "distilled water", "aqua");

    /** Water with a word before it; an own material may have such a name too. */
    private static final Set<String> MORE_WATERS = Set.of(
            "deionised water",
            "deionized water",
            "demineralised water",
            "purified water",
            "filtered water",
            "boiled water",
            "tap water",
            "rain water",
            "rainwater",
            "spring water",
            "cold water",
            "ice water",
            "ice");

    private static final Set<String> SUPERFATS = Set.of(SUPERFAT, "super fat", "sf", "lye discount");

    private static final Pattern ESSENTIAL = Pattern.compile(
            "(?<![\\p{L}\\p{N}])(?:essential\\s+oils?(?:\\s+of)?|e\\.?\\s?o\\.?)(?![\\p{L}\\p{N}])",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern INFUSION = Pattern.compile(
            "(?:.*[\\s-])?(?:teas?|infusion|tisane|decoction|hydrosol|hydrolate)|.*[\\s-]?water",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern CALLED_WATER =
            Pattern.compile("\\s*(?:distilled\\s+)?water\\s*\\((.*)\\)\\s*", Pattern.CASE_INSENSITIVE);

    private TradeWords() {}

    private static String phrase(String name) {
        return NotebookNames.phrase(name);
    }

    /** Which alkali a name is, if it is one; its formula may stand behind it. */
    static Optional<Alkali> alkali(String name) {
        String phrase = phrase(name);
        for (Alkali alkali : Alkali.values()) {
            String formula = " " + alkali.key();
            String bare = phrase.endsWith(formula) ? phrase.substring(0, phrase.length() - formula.length()) : phrase;
            if (ALKALIS.get(bare) == alkali) {
                return Optional.of(alkali);
            }
        }
        return Optional.empty();
    }

    /** Whether a name is water's; what it was steeped with may stand behind it in brackets. */
    static boolean isWater(String name) {
        String phrase = phrase(name);
        return WATERS.contains(phrase)
                || MORE_WATERS.contains(phrase)
                || steeped(name).isPresent();
    }

    /** What stands in brackets behind water: chamomile tea. */
    static Optional<String> steeped(String name) {
        Matcher called = CALLED_WATER.matcher(name);
        return called.matches() ? Optional.of(called.group(1)) : Optional.empty();
    }

    /** A name that is no material's, but of something that is nearly all water. */
    static boolean isInfusion(String name) {
        return INFUSION.matcher(name.strip()).matches();
    }

    static boolean isSuperfat(String name) {
        return SUPERFATS.contains(phrase(name));
    }

    /** The name without the words for an essential oil; empty where it does not say that it is one. */
    static Optional<String> ofEssential(String name) {
        Matcher essential = ESSENTIAL.matcher(name);
        return essential.find() ? Optional.of(essential.replaceAll(" ").strip()) : Optional.empty();
    }

    /** What is no material's name but is near to one of these was surely meant as it. */
    static Collection<String> all() {
        List<String> trade = new ArrayList<>(new TreeSet<>(ALKALIS.keySet()));
        trade.addAll(WATERS);
        trade.add(SUPERFAT);
        return trade;
    }

    static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
