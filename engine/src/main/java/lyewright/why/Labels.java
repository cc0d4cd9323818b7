package lyewright.why;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What things are called in one formula. A name begins with a letter and holds letters, digits, single spaces, hyphens, points
 * and colons; two things that would be called the same are told apart by a number.
 */
final class Labels implements Term.Naming {

    private static final int LONGEST = 30;

    private final Map<Term, String> names = new HashMap<>();
    private final Set<String> taken = new HashSet<>();

    Labels() {
        for (Function function : Function.values()) {
            taken.add(function.word());
        }
    }

    @Override
    public String of(Term named) {
        String known = names.get(named);
        if (known != null) {
            return known;
        }
        String plain = clean(named instanceof Term.Given given ? given.name() : ((Term.Stage) named).name());
        String name = plain;
        for (int i = 2; !taken.add(name); i++) {
            name = plain + " " + i;
        }
        names.put(named, name);
        return name;
    }

    /** A key may be written in any script, with any sign in it. */
    static String clean(String name) {
        StringBuilder clean = new StringBuilder();
        name.codePoints()
                .map(c -> Character.isLetterOrDigit(c) || c == '-' || c == '.' || c == ':' ? c : ' ')
                .forEach(clean::appendCodePoint);
        String words = clean.toString().strip().replaceAll(" +", " ");
        if (words.isEmpty() || !Character.isLetter(words.codePointAt(0))) {
            words = "item " + words;
        }
        int length = words.codePointCount(0, words.length());
        return (length > LONGEST ? words.substring(0, words.offsetByCodePoints(0, LONGEST)) : words).strip();
    }
}
