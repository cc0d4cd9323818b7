package lyewright.why;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import lyewright.formula.ResolvedFormula.OilPart;
import lyewright.material.Additive;
import lyewright.material.Names;
import lyewright.material.Oil;

/**
 * What things are called in one formula. A name begins with a letter and holds letters, digits, single spaces, hyphens, points
 * and colons; two things that would be called the same are told apart by a number.
 */
final class Labels implements Term.Naming {

    private static final int LONGEST = 40;

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
            words = ("item " + words).strip();
        }
        int length = words.codePointCount(0, words.length());
        return length > LONGEST ? cut(words) : words;
    }

    /** At the end of a word, where there is one. */
    private static String cut(String words) {
        String most = words.substring(0, words.offsetByCodePoints(0, LONGEST));
        int word = most.lastIndexOf(' ');
        return (word > LONGEST / 2 ? most.substring(0, word) : most).strip();
    }

    /** What an oil is called. */
    static String of(Oil oil) {
        return said(oil.name());
    }

    /** What a line of the oils is called. */
    static String of(OilPart part) {
        return said(part.name());
    }

    /** What an addition is called. */
    static String of(Additive additive) {
        return said(additive.name());
    }

    /** A material's name within a formula. */
    static String said(String name) {
        return Names.inSentence(name);
    }
}
