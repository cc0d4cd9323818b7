package lyewright.web.start;

import java.util.List;

/** Clauses as sentences. */
final class Sentences {

    private Sentences() {}

    /** What is wrong, then what to do. */
    static String of(String what, String remedy) {
        return one(what) + " " + one(remedy);
    }

    static String one(String clause) {
        if (clause.isEmpty()) {
            return "";
        }
        int first = clause.codePointAt(0);
        String capital =
                Character.toString(Character.toUpperCase(first)) + clause.substring(Character.charCount(first));
        return capital + (".?!".indexOf(capital.charAt(capital.length() - 1)) >= 0 ? "" : ".");
    }

    /** Things in a row: oils, soda and water. */
    static String row(List<String> things) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        int last = things.size() - 1;
        return String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }
}
