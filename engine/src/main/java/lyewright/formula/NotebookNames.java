package lyewright.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.WeakHashMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lyewright.material.Alkali;
import lyewright.material.NearestKey;
import lyewright.material.Tables;
import lyewright.measure.Outcome;

/**
 * What a name of a notebook means: case, the word oil, brackets and the plural do not count. A key or common name in full
 * comes first, then a common name without what is in its brackets, then what has all the words that were typed, the
 * first of its name or all of another name among them; of several in a rank none is chosen.
 */
final class NotebookNames {

    static final String SUPERFAT = "superfat";

    private static final int SHOWN = 6;

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

    /** What parts words; a sign that is not here is part of one, so that it makes a name unknown. */
    private static final Pattern BETWEEN = Pattern.compile("[\\s()\\[\\]:;=,.\u2022*/\u2013\u2014_-]+");

    private static final Pattern BRACKETED = Pattern.compile("\\(([^)]*)\\)");

    /** Taking the names of hundreds of materials apart takes longer than reading a recipe. */
    private static final Map<Tables, NotebookNames> OF_TABLES = Collections.synchronizedMap(new WeakHashMap<>());

    private final Tables tables;
    private final Map<String, Called> called;

    private NotebookNames(Tables tables, Map<String, Called> called) {
        this.tables = tables;
        this.called = called;
    }

    /** The names of some tables, always the same object. */
    static NotebookNames of(Tables tables) {
        return OF_TABLES.computeIfAbsent(tables, given -> {
            Map<String, Called> called = new LinkedHashMap<>();
            given.oils()
                    .forEach(oil -> called.put(
                            oil.key(),
                            Called.of(oil.key(), oil.name(), oil.names().inci())));
            given.additives()
                    .forEach(add -> called.put(
                            add.key(),
                            Called.of(add.key(), add.name(), add.names().inci())));
            return new NotebookNames(given, called);
        });
    }

    /** The same names and some more keys, which have no other name. */
    NotebookNames with(Collection<String> keys) {
        Map<String, Called> more = new LinkedHashMap<>(called);
        keys.forEach(key -> more.putIfAbsent(key, Called.of(key, key, "")));
        return new NotebookNames(tables, more);
    }

    /**
     * What a material is called: the words of its key, of its name, and of its name without what is in brackets; the first
     * words of key and name; other names of several words from the brackets; its INCI name.
     */
    private record Called(
            Set<String> key,
            Set<String> name,
            Set<String> plain,
            Set<String> first,
            Set<Set<String>> others,
            Set<String> inci) {

        static Called of(String key, String name, String inci) {
            Set<String> first = new TreeSet<>(words(BETWEEN.split(key, 2)[0]));
            first.addAll(words(BETWEEN.split(name, 2)[0]));
            Set<Set<String>> others = new HashSet<>();
            Matcher bracketed = BRACKETED.matcher(name);
            while (bracketed.find()) {
                for (String other : bracketed.group(1).split("[,;]", -1)) {
                    if (other.strip().indexOf(' ') > 0) {
                        others.add(words(other));
                    }
                }
            }
            return new Called(
                    words(key),
                    words(name),
                    words(BRACKETED.matcher(name).replaceAll(" ")),
                    first,
                    others,
                    words(inci));
        }

        boolean isExactly(Set<String> typed) {
            return key.equals(typed) || name.equals(typed);
        }

        boolean hasAll(Set<String> typed) {
            return typed.stream().allMatch(word -> key.contains(word) || name.contains(word));
        }

        /** Whether words that it has are enough to name it: wax alone is no name of jojoba, a liquid wax. */
        boolean isNamed(Set<String> typed) {
            return others.contains(typed) || first.stream().anyMatch(typed::contains);
        }
    }

    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        for (String word : BETWEEN.split(text.toLowerCase(Locale.ROOT), -1)) {
            String one = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                    ? word.substring(0, word.length() - 1)
                    : word;
            if (!one.isEmpty() && !one.equals("oil")) {
                words.add(one);
            }
        }
        return words;
    }

    private static String phrase(String name) {
        return String.join(" ", BETWEEN.split(name.toLowerCase(Locale.ROOT), -1))
                .strip();
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

    /** Whether a line says lye, which is the alkali to some and what it becomes in water to others. */
    static boolean isSolutionToo(String line) {
        return words(line).contains("lye");
    }

    static boolean isWater(String name) {
        return WATERS.contains(phrase(name));
    }

    static boolean isSuperfat(String name) {
        return phrase(name).equals(SUPERFAT);
    }

    /** Whether a name is a material's key or common name in full, an alkali's or water. */
    boolean isThing(String name) {
        Set<String> typed = words(name);
        return alkali(name).isPresent()
                || isWater(name)
                || called.values().stream().anyMatch(material -> material.isExactly(typed));
    }

    /** Whether a name is a key as it stands, but for case and the word oil, so that the key says all that was typed. */
    boolean isKey(String name, String key) {
        return words(name).equals(words(key));
    }

    /** The key of the one material that is meant. */
    Outcome<String> key(String name) {
        return key(name, key -> true);
    }

    /** The key of the one material that is meant, among those that may stand here. */
    Outcome<String> key(String name, Predicate<String> here) {
        Set<String> typed = words(name);
        if (typed.isEmpty()) {
            return Outcome.refused(Wording.quote(name) + " names no material", "write which, as in coconut oil 350 g");
        }
        List<String> having = keys(here, material -> material.hasAll(typed));
        List<List<String>> ranks = List.of(
                keys(here, material -> material.isExactly(typed)),
                keys(here, material -> material.plain().equals(typed)),
                having);
        for (List<String> rank : ranks) {
            if (rank.size() == 1 && rank == having && !of(rank.get(0)).isNamed(typed)) {
                return Outcome.refused(
                        Wording.quote(name) + " may mean " + rank.get(0), "if it does, write " + rank.get(0));
            }
            if (rank.size() == 1) {
                return Outcome.ok(rank.get(0));
            }
            if (!rank.isEmpty()) {
                return Outcome.refused(Wording.quote(name) + " may be " + shown(having), "write one");
            }
        }
        return byInci(name, typed, here);
    }

    /** An assessor's table may have the names that stand on labels; one that several materials share names none of them. */
    private Outcome<String> byInci(String name, Set<String> typed, Predicate<String> here) {
        List<String> so = keys(here, material -> material.inci().equals(typed));
        if (so.size() == 1) {
            return Outcome.ok(so.get(0));
        }
        return so.isEmpty()
                ? unknown(name)
                : Outcome.refused(Wording.quote(name) + " may be " + shown(so), "write one");
    }

    /** Whether any material that may stand here has all the words that were typed. */
    boolean mayBe(String name, Predicate<String> here) {
        Set<String> typed = words(name);
        return !typed.isEmpty()
                && !keys(here, material -> material.hasAll(typed)).isEmpty();
    }

    private Called of(String key) {
        return Objects.requireNonNull(called.get(key));
    }

    private List<String> keys(Predicate<String> here, Predicate<Called> fits) {
        return called.entrySet().stream()
                .filter(entry -> fits.test(entry.getValue()))
                .map(Map.Entry::getKey)
                .filter(here)
                .toList();
    }

    private static String shown(List<String> keys) {
        return keys.size() <= SHOWN
                ? Wording.oneOf(keys)
                : String.join(", ", keys.subList(0, SHOWN)) + " or one of " + (keys.size() - SHOWN) + " more";
    }

    private Outcome<String> unknown(String name) {
        List<String> near = NearestKey.among(phrase(name), ownKeys());
        if (near.isEmpty()) {
            near = tables.nearest(name);
        }
        if (near.isEmpty()) {
            near = NearestKey.among(phrase(name), trade());
        }
        return Outcome.refused(
                Wording.quote(name) + " is not known",
                near.isEmpty()
                        ? "write its common name or its key in the tables; begin a remark with #"
                        : "did you mean " + Wording.oneOf(near) + "?");
    }

    private List<String> ownKeys() {
        return called.keySet().stream().filter(key -> !tables.has(key)).toList();
    }

    private static Collection<String> trade() {
        List<String> trade = new ArrayList<>(new TreeSet<>(ALKALIS.keySet()));
        trade.addAll(WATERS);
        trade.add(SUPERFAT);
        return trade;
    }
}
