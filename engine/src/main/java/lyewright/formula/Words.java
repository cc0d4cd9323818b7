package lyewright.formula;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Chooses among the words of an enum. */
final class Words {

    private Words() {}

    /** The value a word stands for; null, and noted with the words there are, where it stands for none. */
    static <E> @Nullable E choose(Findings findings, String path, String word, E[] values, Function<E, String> wordOf) {
        for (E value : values) {
            if (wordOf.apply(value).equals(word)) {
                return value;
            }
        }
        List<String> words = Arrays.stream(values).map(wordOf).toList();
        findings.add(path, Wording.quote(word) + " is not known here", "write " + Wording.oneOf(words));
        return null;
    }
}
