package lyewright.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Everyday names that no key or common name has, each as the words of which it is made, without the word oil. Some mean one
 * thing; others may mean one or more, and are asked about. Common practice.
 */
final class EverydayNames {

    /** Ordinary coconut oil melts at 76 °F and is often sold by that figure. */
    private static final Set<String> MELTS_AT_76 =
            Set.of("76", "76f", "76°", "76°f", "76deg", "deg", "degree", "f", "°f");

    private static final Map<Set<String>, String> SAME = new LinkedHashMap<>();

    private static final Map<Set<String>, List<String>> PERHAPS = new LinkedHashMap<>();

    /** How a thing is prepared, packed or sold, which may matter: without these words its name is asked about. */
    private static final Set<String> PREPARED = Set.of(
            "ground",
            "powdered",
            "powder",
            "dried",
            "dry",
            "fresh",
            "raw",
            "pure",
            "canned",
            "tinned",
            "frozen",
            "melted",
            "liquid",
            "plain",
            "vegetable",
            "cold",
            "pressed",
            "kitchen",
            "cooking",
            "bamboo",
            "rolled",
            "porridge",
            "brown",
            "white",
            "fine",
            "coarse",
            "cosmetic",
            "grade",
            "food",
            "whole",
            "refined",
            "unrefined",
            "deodorised",
            "deodorized",
            "light",
            "strained",
            "pureed",
            "puree",
            "of",
            "rbd",
            "virgin",
            "flake",
            "pellet",
            "grated",
            "chopped",
            "used",
            "green",
            "blue",
            "purple",
            "pink",
            "red",
            "orange",
            "black",
            "yellow",
            "soap",
            "runny",
            "wild",
            "french");

    /** Says nothing of what a thing is. */
    private static final Set<String> NEUTRAL = Set.of("organic", "local", "natural", "homemade");

    /** What is not one thing: no two makers' are alike. */
    private static final Set<Set<String>> FRAGRANCES = Set.of(
            Set.of("fragrance"),
            Set.of("fo"),
            Set.of("eo"),
            Set.of("perfume"),
            Set.of("parfum"),
            Set.of("scent"),
            Set.of("essential"),
            Set.of("essential", "blend"),
            Set.of("eo", "blend"),
            Set.of("fragrance", "blend"));

    private static final Set<Set<String>> MIXTURES = Set.of(
            Set.of("shortening"),
            Set.of("vegetable", "shortening"),
            Set.of("margarine"),
            Set.of("vegetable"),
            Set.of("vegetable", "fat"),
            Set.of("cooking"),
            Set.of("frying"),
            Set.of("salad"));

    static {
        same("olive-virgin", "evoo", "evoo olive", "extra virgin olive", "olive extra virgin evoo");
        same("rapeseed-low-erucic", "canola");
        same("soya", "soybean", "soy bean");
        same("soya-milk", "soy milk", "soybean milk");
        same("hempseed", "hemp", "hemp seed");
        same("grapeseed", "grape seed");
        same("flaxseed", "flax", "flax seed", "lin seed");
        same("wheat-germ", "wheatgerm");
        same("sunflower-high-oleic", "ho sunflower", "sunflower ho", "higholeic sunflower");
        same("safflower-high-oleic", "ho safflower", "safflower ho");
        same("rice-bran", "rbo", "ricebran");
        same("palm-kernel", "pko", "palmkernel");
        same("tallow", "beef fat", "beef dripping", "rendered beef fat");
        same("castor", "ricinus");
        same("beeswax", "bee wax");
        same("almond-sweet", "sweetalmond");
        same("oatmeal", "rolled oat", "porridge oat", "oat flake", "jumbo oat");
        same("colloidal-oats", "ground oat", "oat powder", "oatmeal powder", "colloidal oatmeal", "oatmeal colloidal");
        same("sugar", "white sugar", "granulated sugar", "caster sugar", "castor sugar", "cane sugar");
        same("pink-salt", "himalayan salt", "himalaya salt", "pink himalayan salt");
        same("activated-charcoal", "activated carbon", "ac charcoal", "active charcoal");
        same("glycerin", "glycerine", "glycerol", "vegetable glycerin", "vegetable glycerine");
        same("titanium-dioxide", "td", "tio2", "titanium");
        same("loofah", "luffa", "loofa");
        same("poppy-seed", "poppyseed", "poppy");
        same("maize-starch", "cornstarch", "corn starch", "cornflour");
        same("sodium-bicarbonate", "bicarb", "bicarbonate of soda");
        same("beer", "stout", "ale", "lager", "porter");
        same("coconut-milk", "canned coconut milk", "tinned coconut milk");
        same("goat-milk-powder", "powdered goat milk", "goat powder milk");
        same("coconut-milk-powder", "powdered coconut milk");
        same("buttermilk-powder", "powdered buttermilk");
        same("cow-milk-powder", "milk powder", "powdered milk", "dried milk");
        same("tocopherol", "vit e", "vitamine e", "e vitamin");

        perhaps("oat", "oatmeal", "colloidal-oats", "oat-bran", "oat-milk");
        perhaps("charcoal", "activated-charcoal");
        perhaps("egg", "egg-yolk");
        perhaps("suet", "tallow");
        perhaps("dripping", "tallow");
        perhaps("bacon fat", "lard");
        perhaps("pork fat", "lard");
        perhaps("washing soda", "sodium-carbonate");
        perhaps("aloe vera gel", "aloe-juice");
        perhaps("aloe gel", "aloe-juice");
        perhaps("marigold", "calendula-petals");
        perhaps("marigold petal", "calendula-petals");
        perhaps("dried lavender", "lavender-buds");
        perhaps("lavender flower", "lavender-buds");
        perhaps("pink clay", "rose-clay", "red-clay");
        perhaps("sl", "sodium-lactate");
        perhaps("rose geranium", "geranium-oil");
        perhaps("shea nut", "shea-butter", "shea-butter-refined");
        perhaps("corn flour", "maize-starch");
        perhaps("soy", "soya", "soya-milk");
        perhaps("dye", "mica-dyed");
    }

    private EverydayNames() {}

    private static void same(String key, String... names) {
        for (String name : names) {
            SAME.put(Set.copyOf(Called.words(name)), key);
        }
    }

    private static void perhaps(String name, String... keys) {
        PERHAPS.put(Set.copyOf(Called.words(name)), List.of(keys));
    }

    /** The keys of all that everyday names lead to, as often as they do. */
    static List<String> all() {
        return Stream.concat(SAME.values().stream(), PERHAPS.values().stream().flatMap(List::stream))
                .toList();
    }

    /** The key that everyday words mean, if they do. */
    static Optional<String> same(Set<String> words) {
        if (words.contains("coconut") && words.stream().anyMatch(word -> word.startsWith("76"))) {
            Set<String> rest = new TreeSet<>(words);
            rest.removeAll(MELTS_AT_76);
            rest.remove("coconut");
            return rest.isEmpty() ? Optional.of("coconut") : Optional.empty();
        }
        return Optional.ofNullable(SAME.get(words));
    }

    /** The keys that everyday words may mean. */
    static List<String> perhaps(Set<String> words) {
        return PERHAPS.getOrDefault(words, List.of());
    }

    /** The words without those that say nothing of what the thing is. */
    static Set<String> withoutNeutral(Set<String> words) {
        Set<String> bare = new TreeSet<>(words);
        bare.removeAll(NEUTRAL);
        return bare.isEmpty() ? words : bare;
    }

    /** The words without how the thing is prepared; empty where that leaves nothing, or takes nothing away. */
    static Optional<Set<String>> unprepared(Set<String> words) {
        Set<String> bare = new TreeSet<>(words);
        bare.removeAll(PREPARED);
        return bare.isEmpty() || bare.equals(words) ? Optional.empty() : Optional.of(bare);
    }

    /** What to say of a name that is that of many different things; empty for any other. */
    static Optional<List<String>> tooWide(Set<String> words) {
        if (FRAGRANCES.contains(words)) {
            return Optional.of(
                    List.of(
                            "does not say which",
                            "write which, as in lavender essential oil; a fragrance oil is a material of your own, from its papers"));
        }
        if (MIXTURES.contains(words)) {
            return Optional.of(List.of(
                    "is a mixture, and no two makers' are alike",
                    "write the oils that its label names, or describe it as a material of your own"));
        }
        return Optional.empty();
    }
}
