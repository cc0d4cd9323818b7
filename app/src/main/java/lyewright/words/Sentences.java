package lyewright.words;

import java.util.List;
import lyewright.measure.Problem;

/** Clauses made sentences: a capital at the head, a full stop at the end. */
public final class Sentences {

    private Sentences() {}

    /** The first letter large. */
    public static String upperFirst(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.codePointAt(0);
        return Character.toString(Character.toUpperCase(first)) + text.substring(Character.charCount(first));
    }

    /** Things in a row: oils, soda and water. */
    public static String row(List<String> things) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        int last = things.size() - 1;
        return String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }

    /** A clause by itself; nothing of nothing. */
    public static String whole(String clause) {
        String text = upperFirst(clause);
        return text.isEmpty() || ".?!".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
    }

    /** What is wrong and what to do in one sentence. */
    public static String whole(Problem problem) {
        return whole(problem.sentence());
    }

    /** What is wrong, then what to do, a sentence each. */
    public static String two(Problem problem) {
        return (whole(problem.what()) + " " + whole(problem.remedy())).strip();
    }
}
