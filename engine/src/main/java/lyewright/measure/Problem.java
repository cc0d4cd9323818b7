package lyewright.measure;

/**
 * One thing that is wrong with what was given: where, what, and what to do about it. A value, not an exception: a file
 * maps the path to line and column, a form to its field.
 *
 * @param path where it is, as names joined by dots with list places from 0, such as {@code additions.2.amount}; empty for
 *     the whole
 * @param what what is wrong, one clause, with the offending text in it
 * @param remedy what to do about it, one clause
 */
public record Problem(String path, String what, String remedy) {

    /**
     * The same problem, found inside something larger.
     *
     * @param outer the path of the thing that holds it
     * @return the problem with {@code outer} put in front of its path
     */
    public Problem within(String outer) {
        return new Problem(join(outer, path), what, remedy);
    }

    /**
     * The problem as a sentence.
     *
     * @return what, and what to do, joined by a semicolon
     */
    public String sentence() {
        return what + "; " + remedy;
    }

    private static String join(String outer, String inner) {
        if (outer.isEmpty()) {
            return inner;
        }
        return inner.isEmpty() ? outer : outer + "." + inner;
    }
}
