package lyewright.web.recipe;

import lyewright.measure.Problem;

/** Clauses made sentences: a capital at the head, a full stop at the end. */
final class Sentences {

    private Sentences() {}

    /** What is wrong and what to do. */
    static String whole(Problem problem) {
        return whole(problem.sentence());
    }

    /** A clause by itself. */
    static String whole(String clause) {
        if (clause.isEmpty()) {
            return clause;
        }
        String capital = Character.toUpperCase(clause.charAt(0)) + clause.substring(1);
        char last = clause.charAt(clause.length() - 1);
        return last == '.' || last == '?' || last == '!' ? capital : capital + ".";
    }
}
