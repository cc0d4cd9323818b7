package lyewright.formula;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a material is called: the words of its key, of its name, and of its name without what is in brackets; the first
 * words of key and name; other names of several words from the brackets; its INCI name.
 */
record Called(
        String title,
        Set<String> key,
        Set<String> name,
        Set<String> plain,
        Set<String> first,
        Set<Set<String>> others,
        Set<String> inci) {

    /** What parts words; a sign that is not here is part of one, so that it makes a name unknown. */
    static final Pattern BETWEEN = Pattern.compile("[\\s()\\[\\]:;=,.\u2022*/\u2013\u2014_-]+");

    private static final Pattern BRACKETED = Pattern.compile("\\(([^)]*)\\)");

    /** Of goat's milk as of goat milk. */
    private static final Pattern POSSESSIVE = Pattern.compile("['\u2019](?:s(?!\\p{L}))?");

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
        return new Called(name, words(key), words(name), words(withoutBrackets(name)), first, others, words(inci));
    }

    static String withoutBrackets(String name) {
        return Wording.tidy(BRACKETED.matcher(name).replaceAll(" "));
    }

    static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        String plain = POSSESSIVE.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("");
        for (String word : BETWEEN.split(plain, -1)) {
            String one = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                    ? word.substring(0, word.length() - 1)
                    : word;
            if (!one.isEmpty() && !one.equals("oil")) {
                words.add(one);
            }
        }
        return words;
    }

    boolean isExactly(Set<String> typed) {
        return key.equals(typed) || name.equals(typed);
    }

    boolean has(String word) {
        return key.contains(word) || name.contains(word);
    }

    boolean hasAll(Set<String> typed) {
        return typed.stream().allMatch(this::has);
    }

    /** Whether words that it has are enough to name it: wax alone is no name of jojoba, a liquid wax. */
    boolean isNamed(Set<String> typed) {
        return others.contains(typed) || first.stream().anyMatch(typed::contains);
    }
}
